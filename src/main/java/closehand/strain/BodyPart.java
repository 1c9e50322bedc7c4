package closehand.strain;

import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.Optional;

/** What the methods need to know of a body part, by its name in the bank. */
public final class BodyPart {
  /** Every name, as people type it. */
  public static final String NAMES =
      "T, I, M, R and L are thumb, index, middle, ring and little finger, after L. or R. for the side"
          + " as in R.T; so are hand, forearm, elbow, shoulder, foot and knee, as in L.foot; alone"
          + " stand head, chin, cheek, brow, jaw, breath, voice and eyes.";

  private BodyPart() {}

  /** That a body part is not known, with the names that are. */
  static Problem unknown(Where where) {
    return Problem.error(where, "unknown-effector", "This body part is not known.", NAMES);
  }

  /** One of the two hands. */
  public enum Hand {
    /** The left one. */
    LEFT("left hand"),
    /** The right one. */
    RIGHT("right hand");

    private final String words;

    Hand(String words) {
      this.words = words;
    }

    /** Plain words. */
    public String words() {
      return words;
    }
  }

  /**
   * The hand that a finger, thumb or hand such as {@code R.T} belongs to; empty for other parts.
   */
  public static Optional<Hand> hand(String effector) {
    if (!isDigit(effector) && !effector.endsWith(".hand")) {
      return Optional.empty();
    }
    return Optional.of(effector.startsWith("L.") ? Hand.LEFT : Hand.RIGHT);
  }

  /** Whether this is one finger or thumb. */
  public static boolean isDigit(String effector) {
    return effector.length() == 3
        && effector.charAt(1) == '.'
        && "TIMRL".indexOf(effector.charAt(2)) >= 0;
  }

  /** The region with an endurance curve that is nearest to this part; empty where none is. */
  public static Optional<Region> region(String effector) {
    if (hand(effector).isPresent()) {
      return Optional.of(Region.HAND);
    }
    return switch (effector.length() > 2 ? effector.substring(2) : "") {
      case "elbow", "forearm" -> Optional.of(Region.ELBOW);
      case "shoulder" -> Optional.of(Region.SHOULDER);
      case "knee" -> Optional.of(Region.KNEE);
      case "foot" -> Optional.of(Region.ANKLE);
      default -> Optional.empty();
    };
  }
}
