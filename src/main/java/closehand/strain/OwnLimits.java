package closehand.strain;

import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What was said about one body that the interview does not ask.
 *
 * @param effort how hard a press is as a share of the own maximum, 0 to 1, by body part
 * @param reliefMinutes how often this person takes the weight off, as their health team set it
 * @param accepted red parts that a clinician accepted, by whom and why; one for each part at most
 */
public record OwnLimits(
    Map<String, Double> effort, OptionalDouble reliefMinutes, List<Accepted> accepted) {
  /** Nothing was said. */
  public static final OwnLimits NONE = new OwnLimits(Map.of(), OptionalDouble.empty(), List.of());

  private static final double SHORTEST_MINUTES = 5;
  private static final double LONGEST_MINUTES = 240;

  /** Copies efforts and acceptances. */
  public OwnLimits {
    effort = Map.copyOf(effort);
    accepted = List.copyOf(accepted);
  }

  /**
   * The same with an effort rated for one body part.
   *
   * @param rating from 0, nothing, to 10, the most this person can do there
   * @param problems receives what cannot be
   */
  public OwnLimits rated(Where where, String effector, double rating, List<Problem> problems) {
    Body body = new Body(effort, Map.of()).rated(where, effector, rating, problems);
    return new OwnLimits(body.effort(), reliefMinutes, accepted);
  }

  /**
   * The same with an interval of pressure relief.
   *
   * @param minutes from 5 to 240
   * @param problems receives what cannot be
   */
  public OwnLimits relieving(Where where, double minutes, List<Problem> problems) {
    if (minutes >= SHORTEST_MINUTES && minutes <= LONGEST_MINUTES) {
      return new OwnLimits(effort, OptionalDouble.of(minutes), accepted);
    }
    problems.add(
        Problem.error(
            where,
            "relief-range",
            "The interval of pressure relief is a number of minutes from 5 to 240.",
            "Give the interval the health team set; leave it out where none is set."));
    return this;
  }

  /** The same with a red part accepted, in place of what was accepted of that part before. */
  public OwnLimits accepting(Accepted one) {
    OwnLimits others = withoutAccepted(one.effector());
    List<Accepted> next = new ArrayList<>(others.accepted());
    next.add(one);
    return new OwnLimits(effort, reliefMinutes, next);
  }

  /** The same with nothing accepted for this body part. */
  public OwnLimits withoutAccepted(String effector) {
    return new OwnLimits(
        effort,
        reliefMinutes,
        accepted.stream().filter(a -> !a.effector().equals(effector)).toList());
  }

  /** The same with no effort rated for this body part. */
  public OwnLimits withoutEffort(String effector) {
    Map<String, Double> fewer = new HashMap<>(effort);
    fewer.remove(effector);
    return new OwnLimits(fewer, reliefMinutes, accepted);
  }

  /** The parts that are accepted above their red lines. */
  public Set<String> acceptedParts() {
    return accepted.stream().map(Accepted::effector).collect(Collectors.toUnmodifiableSet());
  }
}
