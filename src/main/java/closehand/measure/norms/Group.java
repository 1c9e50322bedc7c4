package closehand.measure.norms;

/**
 * The people a row of a table is about.
 *
 * @param sex as the table has it
 * @param hand which hand
 * @param leastAge years, inclusive
 * @param mostAge years, inclusive
 */
public record Group(Sex sex, Hand hand, int leastAge, int mostAge) {
  /** As the published tables divide people. */
  public enum Sex {
    /** Women. */
    FEMALE,
    /** Men. */
    MALE
  }

  /** Which hand. */
  public enum Hand {
    /** Right. */
    RIGHT,
    /** Left. */
    LEFT,
    /** The source does not say, so it stands for both. */
    EITHER
  }

  /** Whether a person belongs here. */
  boolean holds(Sex of, Hand with, int age) {
    return sex == of && (hand == Hand.EITHER || hand == with) && age >= leastAge && age <= mostAge;
  }
}
