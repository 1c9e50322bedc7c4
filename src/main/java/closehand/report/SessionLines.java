package closehand.report;

import closehand.strain.DayLoad;
import closehand.strain.Pace;
import closehand.strain.SessionPlan;
import closehand.strain.SessionPlan.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** One session of play with its pauses, and the reason for every number in it. */
final class SessionLines {
  /**
   * The pause that short pauses off the controls are not: an interval of 20 to 30 minutes and at
   * least 2 minutes are from a hospital's sheet on pressure relief; care is individual (NPIAP,
   * EPUAP, PPPIA 2025).
   */
  private static final String RELIEF = "These pauses do not take your weight off. For that, stop ";

  private static final String NOT_ASKED =
      "at the interval your health team set, which is not asked here, or every 20 to 30 minutes where"
          + " none is set, and take at least 2 minutes.";

  private SessionLines() {}

  /** When to take the weight off: at the interval that was said, or at the usual one. */
  static String relief(PageInput input) {
    OptionalDouble own = input.limits().reliefMinutes();
    return own.isPresent()
        ? RELIEF
            + "every "
            + PlayLimit.words((int) Math.round(own.getAsDouble()))
            + ", your own interval, and take at least 2 minutes."
        : RELIEF + NOT_ASKED;
  }

  /** What answers, cautions and the load of the plans say about pauses. */
  static Pace pace(PageInput input) {
    return new Pace(
        known(input, "end.minutes"),
        known(input, "goal.sessionMin"),
        input.limits().reliefMinutes(),
        input.warns("C-PEM"),
        input.warns("C-PAIN2H"),
        input.warns("C-FATIGUE"),
        input.warns("C-PAINLOAD"),
        input.load().filter(DayLoad::isHeavy).isPresent());
  }

  private static OptionalDouble known(PageInput input, String fact) {
    OptionalDouble number = input.facts().number(fact);
    return number.orElse(0) > 0 ? number : OptionalDouble.empty();
  }

  /**
   * "One session: 10 and 10 minutes with 30 seconds off the controls in between. Then rest ...".
   */
  static String sentence(SessionPlan plan) {
    List<String> stretches = new ArrayList<>();
    List<Integer> pieces = new ArrayList<>();
    String hands = "";
    for (Step step : plan.steps()) {
      if (step instanceof Step.Play play) {
        pieces.add(play.minutes());
      } else if (step instanceof Step.HandsOff off) {
        hands = " with " + off.seconds() + " seconds off the controls in between";
      } else if (step instanceof Step.Break longer) {
        stretches.add(minutes(pieces));
        stretches.add("a break of " + PlayLimit.words(longer.minutes()));
        pieces.clear();
      }
    }
    boolean broken = !stretches.isEmpty();
    stretches.add(minutes(pieces) + (broken && !hands.isEmpty() ? ", each time" : "") + hands);
    return "One session: "
        + String.join("; ", stretches)
        + ". Then rest for "
        + PlayLimit.words(plan.restMinutes())
        + " or more.";
  }

  /** "15 and 15 minutes", "4 times 7 minutes". */
  private static String minutes(List<Integer> pieces) {
    int last = pieces.size() - 1;
    boolean alike = pieces.stream().distinct().count() == 1;
    if (alike && last > 1) {
      return pieces.size() + " times " + PlayLimit.words(pieces.get(0));
    }
    List<String> numbers = pieces.stream().map(String::valueOf).toList();
    return Phrases.and(numbers) + (last == 0 && pieces.get(0) == 1 ? " minute" : " minutes");
  }

  /** The session and its reasons, for the clinician. */
  static List<Piece> withReasons(PageInput input) {
    SessionPlan plan = SessionPlan.of(pace(input));
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("One session, and the reason for every number"));
    pieces.add(Paragraph.of(sentence(plan)));
    for (SessionPlan.Reason reason : plan.reasons()) {
      pieces.add(
          Paragraph.item(
              Phrases.upper(reason.number())
                  + ": "
                  + reason.because()
                  + ". ("
                  + Phrases.upper(reason.basis())
                  + ".)"));
    }
    pieces.add(
        Paragraph.item(
            "The evidence on pauses comes from office work. The session never grows by plan."));
    return pieces;
  }
}
