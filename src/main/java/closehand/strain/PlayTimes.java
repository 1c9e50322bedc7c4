package closehand.strain;

import closehand.interview.Answers;
import closehand.interview.Value;

/** How much somebody plays, from the goals. */
public final class PlayTimes {
  /** Hours a day where nothing was asked: our choice. */
  static final double UNKNOWN_HOURS = 1;

  private static final int UNKNOWN_DAYS = 3;
  private static final double WEEK = 7;
  private static final double HOUR = 60;

  private PlayTimes() {}

  /**
   * The time of play that the answers wish for: minutes of a good session, or of a usual one, and
   * sessions a week; more than one a day where there are more than seven.
   */
  public static PlayTime of(Answers answers) {
    double minutes = number(answers, "goal.sessionMin", number(answers, "play.minutes", 0));
    double sessions = number(answers, "play.perWeek", UNKNOWN_DAYS);
    double perDay = Math.max(1, sessions / WEEK);
    double hours = minutes > 0 ? perDay * minutes / HOUR : UNKNOWN_HOURS;
    int days = (int) Math.max(1, Math.min(WEEK, sessions));
    return new PlayTime(Math.min(PlayTime.DAY, hours), days);
  }

  private static double number(Answers answers, String fact, double otherwise) {
    return answers.value(fact).orElse(null) instanceof Value.Number number && number.value() > 0
        ? number.value()
        : otherwise;
  }
}
