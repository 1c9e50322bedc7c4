package closehand.rules.why;

import closehand.interview.Answers;
import closehand.rules.Change;
import closehand.rules.RuleBook;
import closehand.rules.Standing;
import closehand.rules.Variation;
import closehand.rules.Variations;
import closehand.rules.Verdict;
import closehand.rules.WhatIf;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What would turn the advice: single answers first, and pairs only when somebody asks. */
public final class Turns {
  /**
   * So many pairs of changes that act on the same rules are tried at most; more would take longer
   * than anybody waits. All others are.
   */
  public static final int MOST_PAIRS = 100_000;

  private final RuleBook book;
  private final Answers answers;
  private final Variations variations;
  private final List<Variation> singles;
  private Variations.@Nullable Pairs pairs;

  private Turns(RuleBook book, Answers answers) {
    this.book = book;
    this.answers = answers;
    this.variations = Variations.of(book, answers);
    this.singles = variations.singles();
  }

  /** Tries every other single answer. */
  public static Turns of(RuleBook book, Answers answers) {
    return new Turns(book, answers);
  }

  /** What leads now. */
  public Verdict now() {
    return variations.now();
  }

  /** Single changes after which something else leads, nearest first. */
  public List<Variation> singles() {
    return singles;
  }

  /** Single changes after which this approach leads, nearest first. */
  public List<Variation> bringingForward(String approach) {
    return leading(singles, approach);
  }

  /** Pairs of changes after which something else leads, nearest first. */
  public List<Variation> pairs() {
    return triedPairs().found();
  }

  /** Pairs of changes after which this approach leads, nearest first. */
  public List<Variation> pairsBringingForward(String approach) {
    return leading(pairs(), approach);
  }

  /** Whether every pair was tried, so that what is not found does not exist. */
  public boolean everyPairTried() {
    return triedPairs().everyPairTried();
  }

  /** Single changes after which this approach stands otherwise, nearest first. */
  public List<Change> standingChanges(String approach) {
    Optional<Standing> standing =
        book.advise(answers).standings().stream()
            .filter(s -> s.approach().id().equals(approach))
            .findFirst();
    return standing.isEmpty() || standing.get().status().suggested()
        ? List.of()
        : WhatIf.of(book, answers).changes(approach);
  }

  private static List<Variation> leading(List<Variation> some, String approach) {
    return some.stream().filter(v -> v.then().leader().equals(Optional.of(approach))).toList();
  }

  private synchronized Variations.Pairs triedPairs() {
    Variations.Pairs tried = pairs;
    if (tried == null) {
      tried = variations.pairs(MOST_PAIRS);
      pairs = tried;
    }
    return tried;
  }
}
