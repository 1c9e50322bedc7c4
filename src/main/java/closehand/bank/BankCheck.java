package closehand.bank;

import java.util.ArrayList;
import java.util.List;

/**
 * Is a bank sound? Finds, in one pass, everything a bank's author got wrong that the form of the
 * files does not show. Loops among terms and failing examples are found where conditions are
 * evaluated, in the rules package.
 */
public final class BankCheck {
  private BankCheck() {}

  /** Every problem of a bank that was read without one, each once. */
  public static List<Problem> check(Bank bank) {
    return check(bank, Doubt.NONE);
  }

  /**
   * Every problem, each once, except those that only follow from what could not be read.
   *
   * @param doubt what could not be read
   */
  public static List<Problem> check(Bank bank, Doubt doubt) {
    List<Problem> problems = new ArrayList<>();
    FactKinds kinds = new FactKinds(bank, doubt);
    new QuestionnaireCheck(bank.questionnaire(), doubt, problems).check();
    new TermCheck(bank, kinds, problems).check();
    new RuleCheck(bank, kinds, doubt, problems).check();
    new CatalogueCheck(bank, doubt, problems).check();
    PlanFiguresCheck.check(bank, doubt, problems);
    bank.tasks().ifPresent(t -> new TaskCheck(bank, t, kinds, doubt, problems).check());
    return problems.stream().distinct().toList();
  }
}
