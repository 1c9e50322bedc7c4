package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Term;
import closehand.interview.Answers;
import java.util.ArrayList;
import java.util.List;

/**
 * Conditions of a bank that belong to no rule, such as what must hold before a task. Immutable and
 * thread-safe.
 */
public final class Conditions {
  private static final String NAME = "condition ";

  private final Program program;
  private final BaseStates bases;
  private final int count;

  private Conditions(Program program, int count) {
    this.program = program;
    this.bases = new BaseStates(program.table());
    this.count = count;
  }

  /**
   * Makes conditions out over the facts and terms of a bank that passed its check.
   *
   * @throws IllegalArgumentException when one asks for something that does not exist or suit
   */
  public static Conditions of(Bank bank, List<Condition> conditions) {
    List<Term> terms = new ArrayList<>(bank.terms());
    for (int i = 0; i < conditions.size(); i++) {
      Condition one = conditions.get(i);
      terms.add(new Term.Derived(NAME + i, "", one, one.where()));
    }
    Bank alone =
        new Bank(
            bank.questionnaire(),
            terms,
            List.of(),
            bank.themes(),
            List.of(),
            List.of(),
            List.of(),
            bank.games(),
            bank.cautions(),
            bank.sources(),
            bank.planFigures(),
            bank.tasks(),
            bank.fingerprint());
    return new Conditions(Program.of(alone), conditions.size());
  }

  /** What is known of each condition, in the order given. */
  public List<Outcome> in(Answers answers) {
    long[] state = program.settle(bases.of(answers));
    List<Outcome> outcomes = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      outcomes.add(Node.compare(state[program.table().slotOf(NAME + i)], Shape.YES));
    }
    return outcomes;
  }
}
