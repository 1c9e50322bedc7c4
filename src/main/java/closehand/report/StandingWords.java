package closehand.report;

import closehand.rules.Standing;

/** How an approach stands, in a few words. */
public final class StandingWords {
  private StandingWords() {}

  /** Such as "suggested, strong". */
  public static String of(Standing.Status status) {
    return switch (status) {
      case STRONG -> "suggested, strong";
      case WORTH_TRYING -> "suggested, worth trying";
      case UNDECIDED -> "undecided: open answers could still bring it in";
      case NOT_SUGGESTED -> "neither suggested nor ruled out";
      case RULED_OUT -> "ruled out for now";
    };
  }
}
