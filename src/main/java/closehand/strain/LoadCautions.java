package closehand.strain;

import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.List;

/** Which cautions the figures of a plan raise, each with its figures. */
final class LoadCautions {
  /** Share of all presses from which one hand does most of the work: our choice. */
  static final double MOST_OF_THE_WORK = 0.75;

  /** Fewer presses a minute than this are no burden whichever hand makes them: our choice. */
  private static final double WORTH_SHARING = 20;

  private static final double LONG_SESSION_HOURS = 1;

  private LoadCautions() {}

  static List<LoadCaution> of(
      List<EffectorReading> effectors, List<HandReading> hands, double hoursPerDay) {
    List<LoadCaution> cautions = new ArrayList<>();
    effectors.forEach(e -> repeat(e, cautions));
    effectors.forEach(e -> hold(e, cautions));
    double presses = effectors.stream().mapToDouble(e -> e.presses().perMinute()).sum();
    hands.forEach(h -> overuse(h, presses, cautions));
    breaks(hands, hoursPerDay, cautions);
    return List.copyOf(cautions);
  }

  private static void repeat(EffectorReading part, List<LoadCaution> cautions) {
    if (part.presses().repeats()) {
      String subject = LoadWords.yours(part.effector());
      double taps = part.presses().tappingShare().orElse(0);
      String because =
          subject
              + " makes "
              + Wording.number(oneDecimal(part.presses().perMinute()))
              + " presses a minute"
              + (part.presses().perMinute() > LoadLight.AMBER_PER_MINUTE
                  ? " (up to 30 is green)"
                  : "")
              + (taps > LoadLight.AMBER_TAPPING
                  ? ", " + percent(taps) + " of its fastest tapping (up to 20 % is green)"
                  : "");
      cautions.add(new LoadCaution(LoadCaution.REPEAT, subject, because));
    }
  }

  private static void hold(EffectorReading part, List<LoadCaution> cautions) {
    List<String> because = new ArrayList<>();
    if (part.presses().holds()) {
      because.add(
          "holds for " + percent(part.presses().heldShare()) + " of play (up to 25 % is green)");
    }
    part.hold()
        .figure()
        .filter(f -> f.band() != Band.LOWER)
        .ifPresent(
            f ->
                because.add(
                    "has a hold of "
                        + percent(f.value())
                        + " of a careful limit for holding still"));
    if (!because.isEmpty()) {
      String subject = LoadWords.yours(part.effector());
      cautions.add(
          new LoadCaution(
              LoadCaution.STATIC, subject, subject + " " + String.join(", and ", because)));
    }
  }

  private static void overuse(HandReading hand, double presses, List<LoadCaution> cautions) {
    if (hand.pressShare() > MOST_OF_THE_WORK && presses >= WORTH_SHARING) {
      String subject = "your " + hand.hand().words();
      cautions.add(
          new LoadCaution(
              LoadCaution.OVERUSE,
              subject,
              subject
                  + " makes "
                  + percent(hand.pressShare())
                  + " of all presses (from "
                  + percent(MOST_OF_THE_WORK)
                  + ")"));
    }
  }

  private static void breaks(
      List<HandReading> hands, double hoursPerDay, List<LoadCaution> cautions) {
    List<String> because = new ArrayList<>();
    if (hoursPerDay > LONG_SESSION_HOURS) {
      because.add("you plan " + Wording.number(oneDecimal(hoursPerDay)) + " hours of play a day");
    }
    for (HandReading hand : hands) {
      hand.composite()
          .figure()
          .filter(f -> f.band() == Band.UPPER)
          .ifPresent(
              f ->
                  because.add(
                      "your "
                          + hand.hand().words()
                          + " comes to "
                          + Wording.number(oneDecimal(f.value()))
                          + ", above the method's line of 10"));
    }
    if (!because.isEmpty()) {
      cautions.add(
          new LoadCaution(LoadCaution.BREAK, "your sessions", String.join(", and ", because)));
    }
  }

  private static double oneDecimal(double value) {
    return Math.round(10 * value) / 10.0;
  }

  static String percent(double share) {
    return Math.round(100 * share) + " %";
  }
}
