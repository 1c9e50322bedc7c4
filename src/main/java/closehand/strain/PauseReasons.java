package closehand.strain;

import java.util.List;

/** How often to pause in a session, and the reason for each number. */
final class PauseReasons {
  private PauseReasons() {}

  /** Minutes of play between two small pauses, at most. */
  static int smallPauseAfter(Pace pace) {
    int usual = pace.halved() ? SessionPlan.SMALL_PAUSE_AFTER / 2 : SessionPlan.SMALL_PAUSE_AFTER;
    return Math.max(1, (int) Math.min(usual, pace.reliefMinutes().orElse(usual)));
  }

  /** Adds the reasons for the pauses that there are. */
  static void add(Pace pace, List<SessionPlan.Step> steps, List<SessionPlan.Reason> reasons) {
    if (steps.stream().anyMatch(s -> s instanceof SessionPlan.Step.HandsOff)) {
      reasons.add(smallPause());
      reasons.add(often(pace));
    }
    if (steps.stream().anyMatch(s -> s instanceof SessionPlan.Step.Break)) {
      reasons.add(
          new SessionPlan.Reason(
              SessionLength.words(SessionPlan.BREAK_MINUTES) + " of break",
              "5 to 10 minutes off after "
                  + (pace.halved() ? "25 minutes, because " + halvedBecause(pace) : "50 minutes")
                  + ", before you are tired",
              "HSE guidance on display-screen work; studies of office work"));
    }
  }

  private static SessionPlan.Reason smallPause() {
    return new SessionPlan.Reason(
        SessionPlan.HANDS_OFF_SECONDS + " seconds off the controls",
        "let go of everything, and let the part of you that plays rest",
        "Henning et al. 1997, office work");
  }

  private static SessionPlan.Reason often(Pace pace) {
    int after = smallPauseAfter(pace);
    String number = "every " + SessionLength.words(after) + " at most";
    double relief = pace.reliefMinutes().orElse(Double.POSITIVE_INFINITY);
    if (relief <= after) {
      return new SessionPlan.Reason(
          number, "that is when you take your weight off", "your own times");
    }
    return pace.halved()
        ? new SessionPlan.Reason(
            number, "twice as often as usual, because " + halvedBecause(pace), "our choice")
        : new SessionPlan.Reason(
            number,
            "our choice, and sooner than the 20 minutes of the study: short, frequent pauses help more"
                + " than long, rare ones",
            "common practice; McLean et al. 2001, office work, found every 20 minutes better than"
                + " every 40");
  }

  private static String halvedBecause(Pace pace) {
    if (pace.settlesLate()) {
      return "pain takes you long to settle";
    }
    return pace.painRises() ? "your pain goes up in play" : "one hand has much to do in this plan";
  }
}
