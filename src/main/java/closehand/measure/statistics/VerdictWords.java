package closehand.measure.statistics;

/** A verdict in everyday words; the only place that has words for it. */
public final class VerdictWords {
  /** What stands below any comparison. */
  public static final String GROUND =
      "This compares your tries with each other and with nobody else's. The way of comparing was not made for"
          + " disabled players; what you feel counts first.";

  private VerdictWords() {}

  /**
   * One or two sentences.
   *
   * @param first the name of the first set-up
   * @param second the name of the second set-up
   */
  public static String of(Verdict verdict, String first, String second) {
    if (verdict instanceof Verdict.TooFew few) {
      return "Too few tries to tell. Still needed: " + needed(few, first, second) + ".";
    }
    if (verdict instanceof Verdict.LooksBetter looks) {
      return name(looks.side(), first, second)
          + " looks better; repeat to be surer."
          + practice(looks.mayBePractice());
    }
    if (verdict instanceof Verdict.Better better) {
      return name(better.side(), first, second)
          + " is better, also after allowing for wobble."
          + practice(better.mayBePractice());
    }
    return "Within normal wobble: your tries differ by as much anyway.";
  }

  private static String needed(Verdict.TooFew few, String first, String second) {
    String a = few.firstMissing() == 0 ? "" : few.firstMissing() + " more with " + first;
    String b = few.secondMissing() == 0 ? "" : few.secondMissing() + " more with " + second;
    return a + (a.isEmpty() || b.isEmpty() ? "" : ", ") + b;
  }

  private static String name(Verdict.Side side, String first, String second) {
    return side == Verdict.Side.FIRST ? first : second;
  }

  private static String practice(boolean may) {
    return may ? " It may be practice: go back to the other one and try again." : "";
  }
}
