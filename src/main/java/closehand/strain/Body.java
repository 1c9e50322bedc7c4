package closehand.strain;

import closehand.interview.Answers;
import closehand.interview.Value;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What is known of the person that a load depends on.
 *
 * @param effort how hard play was as a share of the own maximum, 0 to 1, where rated
 * @param tapsInTenSeconds fastest tapping by body part, above 0, where measured
 */
public record Body(OptionalDouble effort, Map<String, Double> tapsInTenSeconds) {
  /** Nothing known. */
  public static final Body UNKNOWN = new Body(OptionalDouble.empty(), Map.of());

  /**
   * Counts for an effort that nobody has rated, before the factor of the control: a tenth of the
   * own maximum. Our choice; it lets plans be compared, no more.
   */
  public static final double UNRATED_EFFORT = 0.1;

  private static final double TOP_RATING = 10;

  public Body {
    tapsInTenSeconds = Map.copyOf(tapsInTenSeconds);
  }

  /** What the answers hold: effort after a trial, taps of each finger in ten seconds. */
  public static Body of(Answers answers) {
    Map<String, Double> taps = new HashMap<>();
    for (String side : new String[] {"L", "R"}) {
      for (String digit : new String[] {"T", "I", "M", "R", "L"}) {
        double count = number(answers, "digit." + side + ".tap10." + digit).orElse(0);
        if (count > 0) {
          taps.put(side + "." + digit, count);
        }
      }
    }
    OptionalDouble rated = number(answers, "trial.effort");
    return new Body(
        rated.isPresent() && rated.getAsDouble() <= TOP_RATING
            ? OptionalDouble.of(rated.getAsDouble() / TOP_RATING)
            : OptionalDouble.empty(),
        taps);
  }

  private static OptionalDouble number(Answers answers, String fact) {
    return answers.value(fact).orElse(null) instanceof Value.Number number
        ? OptionalDouble.of(number.value())
        : OptionalDouble.empty();
  }

  /**
   * The effort to count for a control.
   *
   * @param factor how hard the control is for this body, 1 for neutral
   */
  public double effortFor(double factor) {
    return effort.orElse(Math.min(1, UNRATED_EFFORT * factor));
  }

  /** The fastest tapping of a body part, where measured. */
  public OptionalDouble taps(String effector) {
    Double taps = tapsInTenSeconds.get(effector);
    return taps == null ? OptionalDouble.empty() : OptionalDouble.of(taps);
  }
}
