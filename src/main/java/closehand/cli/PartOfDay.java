package closehand.cli;

import java.time.Clock;
import java.time.LocalTime;

/** The time of day in a word: how a hand works can depend on it. */
final class PartOfDay {
  private static final int[] FROM_HOURS = {0, 6, 12, 14, 18, 22};
  private static final String[] WORDS = {
    "night", "morning", "midday", "afternoon", "evening", "night"
  };

  private PartOfDay() {}

  /** Now. */
  static String at(Clock clock) {
    int hour = LocalTime.now(clock).getHour();
    String word = WORDS[0];
    for (int i = 0; i < WORDS.length; i++) {
      word = hour >= FROM_HOURS[i] ? WORDS[i] : word;
    }
    return word;
  }
}
