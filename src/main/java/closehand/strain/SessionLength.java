package closehand.strain;

import closehand.interview.Wording;
import java.util.List;

/** How long a session is, and how long the rest after it. */
final class SessionLength {
  private static final double HALF = 0.5;
  private static final double TWO_THIRDS = 2.0 / 3;
  private static final int STEP_MINUTES = 5;
  private static final int IN_STEPS_FROM = 15;
  private static final int UNKNOWN_MINUTES = 10;
  private static final int UNKNOWN_MINUTES_CAREFUL = 5;
  private static final int LEAST_REST_MINUTES = 5;

  private SessionLength() {}

  /** Minutes of play, at least 1, with the reason. */
  static int minutes(Pace pace, List<SessionPlan.Reason> reasons) {
    if (pace.comfortableMinutes().isEmpty()) {
      return unknown(pace, reasons);
    }
    double comfortable = pace.comfortableMinutes().getAsDouble();
    double share = pace.settlesLate() || pace.costsDays() ? HALF : pace.tires() ? TWO_THIRDS : 1;
    int minutes = rounded(comfortable * share, share < 1);
    double wish = pace.wishedMinutes().orElse(comfortable);
    if (wish >= 1 && wish < minutes) {
      int wished = (int) wish;
      reasons.add(
          reason(
              wished,
              "that is a good session for you, and it is within your own limit",
              "your answer"));
      return wished;
    }
    String yours = words(comfortable) + " that you can play before you want a rest";
    reasons.add(
        share == 1
            ? reason(minutes, "you want a rest after that time", "your answer")
            : reason(
                minutes,
                (share == HALF ? "half" : "two thirds")
                    + " of the "
                    + yours
                    + ", because "
                    + why(pace),
                basis(pace)));
    return minutes;
  }

  private static int unknown(Pace pace, List<SessionPlan.Reason> reasons) {
    boolean careful = pace.costsDays() || pace.settlesLate();
    int minutes = careful ? UNKNOWN_MINUTES_CAREFUL : UNKNOWN_MINUTES;
    int wish = (int) pace.wishedMinutes().orElse(minutes);
    minutes = Math.max(1, Math.min(minutes, wish));
    reasons.add(
        reason(
            minutes,
            "we do not know yet how long you can play before you want a rest, so begin short",
            "common practice, no source"));
    return minutes;
  }

  private static String why(Pace pace) {
    if (pace.costsDays()) {
      return "overdoing it costs you days; stop earlier if your body says so";
    }
    return pace.settlesLate()
        ? "pain takes you more than two hours to settle"
        : "you tire within a session";
  }

  private static String basis(Pace pace) {
    if (pace.costsDays()) {
      return "NICE guideline NG206 asks to stay within your own limit; half is a practice estimate";
    }
    return pace.settlesLate()
        ? "two-hour rule of joint protection; half is the careful end of a third to a half"
        : "practice estimate, no source";
  }

  /** Minutes of rest afterwards, with the reason. */
  static int rest(Pace pace, int minutes, List<SessionPlan.Reason> reasons) {
    boolean asLong = pace.tires() || pace.costsDays() || pace.settlesLate();
    int rest = Math.max(LEAST_REST_MINUTES, asLong ? minutes : Math.min(minutes, 10));
    reasons.add(
        new SessionPlan.Reason(
            words(rest) + " of rest",
            asLong
                ? "you rest at least as long as you played, or longer"
                : "a break off the controls before you do anything else with the same part of your body",
            asLong ? "practice estimate, no source" : "HSE guidance on display-screen work"));
    return rest;
  }

  private static SessionPlan.Reason reason(int minutes, String because, String basis) {
    return new SessionPlan.Reason(words(minutes) + " of play", because, basis);
  }

  /** Down to steps of 5, for short times to whole minutes; never nothing. */
  private static int rounded(double minutes, boolean inSteps) {
    int step = !inSteps || minutes < IN_STEPS_FROM ? 1 : STEP_MINUTES;
    // Two thirds of 15 is 10, whatever the last binary digit says.
    return Math.max(1, (int) Math.floor(minutes / step + 1e-9) * step);
  }

  static String words(double minutes) {
    return Wording.number(minutes) + (minutes == 1 ? " minute" : " minutes");
  }
}
