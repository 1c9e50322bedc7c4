package closehand.rules.proof;

import closehand.bank.Bank;
import closehand.rules.Reading;
import closehand.rules.RuleBook;
import closehand.rules.Search;
import java.util.ArrayList;
import java.util.List;

/** Looks a sound bank through for everything that its author may not have meant. */
public final class DeepCheck {
  /** Steps that one search may take before it gives up. */
  static final int BUDGET = 200_000;

  private DeepCheck() {}

  /**
   * Every advisory, in the order of their kinds and of the bank.
   *
   * @throws IllegalArgumentException for a bank that does not pass its check
   */
  public static List<Advisory> of(Bank bank) {
    return of(bank, BUDGET);
  }

  /**
   * The same with another budget.
   *
   * @param budget steps that one search may take before it gives up
   */
  public static List<Advisory> of(Bank bank, int budget) {
    RuleBook book = RuleBook.of(bank);
    Search search = Search.of(book, budget);
    Reading reading = Reading.of(book);
    List<Advisory> found = new ArrayList<>();
    Firing firing = new Firing(search, reading);
    new RuleProofs(bank, firing).alone(found);
    new PairProofs(bank, firing).pairs(found);
    Against against = new Against(bank, firing);
    against.points(found);
    new ApproachProofs(bank, search, firing, against).allExcluded(found);
    new QuestionProofs(bank, search, reading).questions(found);
    new BandProofs(bank, search, reading, firing).bands(found);
    return List.copyOf(found);
  }
}
