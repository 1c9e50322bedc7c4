package closehand.strain;

import closehand.bank.Effectors;
import closehand.bank.Problem;
import closehand.bank.Where;
import closehand.interview.Answers;
import closehand.interview.Value;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What is known of the person that a load depends on.
 *
 * @param effort how hard a press is as a share of the own maximum, 0 to 1, by body part, where
 *     rated
 * @param tapsInTenSeconds fastest tapping by body part, above 0, where measured
 */
public record Body(Map<String, Double> effort, Map<String, Double> tapsInTenSeconds) {
  /** Nothing known. */
  public static final Body UNKNOWN = new Body(Map.of(), Map.of());

  /**
   * Counts for an effort that nobody has rated, before the factor of the control: a tenth of the
   * own maximum. Our choice; it lets plans be compared, no more.
   */
  public static final double UNRATED_EFFORT = 0.1;

  public Body {
    effort = Map.copyOf(effort);
    tapsInTenSeconds = Map.copyOf(tapsInTenSeconds);
  }

  /**
   * What the answers hold: taps of each finger in ten seconds. The effort of a whole trial is asked
   * too, but it is no effort of one press and is left aside.
   */
  public static Body of(Answers answers) {
    Map<String, Double> taps = new HashMap<>();
    for (String side : new String[] {"L", "R"}) {
      for (String digit : new String[] {"T", "I", "M", "R", "L"}) {
        String fact = "digit." + side + ".tap10." + digit;
        if (answers.value(fact).orElse(null) instanceof Value.Number count && count.value() > 0) {
          taps.put(side + "." + digit, count.value());
        }
      }
    }
    return new Body(Map.of(), taps);
  }

  /**
   * The same with an effort rated for one body part.
   *
   * @param rating from 0, nothing, to 10, the most this person can do there
   * @param problems receives what cannot be
   */
  public Body rated(Where where, String effector, double rating, List<Problem> problems) {
    if (!Effectors.all().contains(effector)) {
      problems.add(BodyPart.unknown(where));
      return this;
    }
    OptionalDouble share = Effort.ofRating(where, rating, problems);
    Map<String, Double> more = new HashMap<>(effort);
    share.ifPresent(s -> more.put(effector, s));
    return new Body(more, tapsInTenSeconds);
  }

  /**
   * The effort to count for a control.
   *
   * @param factor how hard the control is for this body, 1 for neutral
   */
  public double effortFor(String effector, double factor) {
    Double rated = effort.get(effector);
    return rated == null ? Math.min(1, UNRATED_EFFORT * factor) : rated;
  }

  /** The fastest tapping of a body part, where measured. */
  public OptionalDouble taps(String effector) {
    Double taps = tapsInTenSeconds.get(effector);
    return taps == null ? OptionalDouble.empty() : OptionalDouble.of(taps);
  }
}
