package closehand.rules;

import closehand.bank.Approach;
import java.util.List;

/**
 * How one approach stands.
 *
 * @param approach the approach
 * @param status where it stands
 * @param points the sum over rules that fire
 * @param lowest the lowest sum the open rules allow
 * @param highest the highest sum the open rules allow
 * @param inFavour rules that fire and give points for it
 * @param against rules that fire and give points against it
 * @param ruledOutBy rules that fire and rule it out
 * @param mayBeRuledOutBy open rules that would rule it out
 * @param waitsFor the facts its standing still waits for, in bank order
 */
public record Standing(
    Approach approach,
    Status status,
    int points,
    int lowest,
    int highest,
    List<Finding> inFavour,
    List<Finding> against,
    List<Finding> ruledOutBy,
    List<Finding> mayBeRuledOutBy,
    List<String> waitsFor) {
  public Standing {
    inFavour = List.copyOf(inFavour);
    against = List.copyOf(against);
    ruledOutBy = List.copyOf(ruledOutBy);
    mayBeRuledOutBy = List.copyOf(mayBeRuledOutBy);
    waitsFor = FactNames.unchanging(waitsFor);
  }

  /** Where an approach stands. */
  public enum Status {
    /** Suggested, 2 points or more. */
    STRONG,
    /** Suggested, 1 point. */
    WORTH_TRYING,
    /** Not suggested, but open answers could still bring it in. */
    UNDECIDED,
    /** Neither suggested nor ruled out, whatever the open answers. */
    NOT_SUGGESTED,
    /** Ruled out. */
    RULED_OUT;

    /** Whether it is suggested. */
    public boolean suggested() {
      return this == STRONG || this == WORTH_TRYING;
    }
  }
}
