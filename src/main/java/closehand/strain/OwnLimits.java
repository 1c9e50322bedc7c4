package closehand.strain;

import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What somebody knows about their own body that the interview does not ask.
 *
 * @param effort how hard a press is as a share of the own maximum, 0 to 1, by body part
 * @param reliefMinutes how often this person takes the weight off, as their health team set it
 */
public record OwnLimits(Map<String, Double> effort, OptionalDouble reliefMinutes) {
  /** Nothing was said. */
  public static final OwnLimits NONE = new OwnLimits(Map.of(), OptionalDouble.empty());

  private static final double SHORTEST_MINUTES = 5;
  private static final double LONGEST_MINUTES = 240;

  /** Copies the efforts. */
  public OwnLimits {
    effort = Map.copyOf(effort);
  }

  /**
   * The same with an effort rated for one body part.
   *
   * @param rating from 0, nothing, to 10, the most this person can do there
   * @param problems receives what cannot be
   */
  public OwnLimits rated(Where where, String effector, double rating, List<Problem> problems) {
    Body body = new Body(effort, Map.of()).rated(where, effector, rating, problems);
    return new OwnLimits(body.effort(), reliefMinutes);
  }

  /**
   * The same with an interval of pressure relief.
   *
   * @param minutes from 5 to 240
   * @param problems receives what cannot be
   */
  public OwnLimits relieving(Where where, double minutes, List<Problem> problems) {
    if (minutes >= SHORTEST_MINUTES && minutes <= LONGEST_MINUTES) {
      return new OwnLimits(effort, OptionalDouble.of(minutes));
    }
    problems.add(
        Problem.error(
            where,
            "relief-range",
            "The interval of pressure relief is a number of minutes from 5 to 240.",
            "Give the interval the health team set; leave it out where none is set."));
    return this;
  }
}
