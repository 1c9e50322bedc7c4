package closehand.measure.practice;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * What came of one prompt.
 *
 * @param round which round, from 0
 * @param action the action that was asked for
 * @param input the input it is on
 * @param hit whether its key came
 * @param millis from the prompt to the key; empty where it was not or could not be timed
 * @param wrong the input that was pressed instead, where it is one of the plan
 * @param beside whether that one lies beside the right one
 * @param marks what else was noticed
 */
public record Try(
    int round,
    String action,
    String input,
    boolean hit,
    OptionalLong millis,
    Optional<String> wrong,
    boolean beside,
    Marks marks) {

  /**
   * What was noticed with a press and did not count.
   *
   * @param held the key came again and again because it was held
   * @param bounced the key came twice at once
   * @param along another key came along with it
   */
  public record Marks(boolean held, boolean bounced, boolean along) {
    /** Nothing. */
    public static final Marks NONE = new Marks(false, false, false);

    /** Both together; what turns out to be held did not bounce. */
    Marks and(Marks more) {
      return new Marks(
          held || more.held, (bounced || more.bounced) && !held && !more.held, along || more.along);
    }
  }

  /** The same with its time stretched. */
  Try times(double factor) {
    OptionalLong stretched =
        millis.isPresent() ? OptionalLong.of(Math.round(factor * millis.getAsLong())) : millis;
    return new Try(round, action, input, hit, stretched, wrong, beside, marks);
  }

  Try with(Marks next) {
    return new Try(round, action, input, hit, millis, wrong, beside, next);
  }
}
