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

  /** Every problem, each once, in the order of the files. */
  public static List<Problem> check(Bank bank) {
    List<Problem> problems = new ArrayList<>();
    new QuestionnaireCheck(bank.questionnaire(), problems).check();
    new RuleCheck(bank, new FactKinds(bank), problems).check();
    new CatalogueCheck(bank, problems).check();
    return problems.stream().distinct().toList();
  }
}
