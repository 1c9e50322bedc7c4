package closehand.line;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * A typed line that means stop, wherever something is asked. Whoever is in pain types what comes
 * first, so anything that begins with the word counts, in any letter case.
 */
public final class StopTyped {
  private static final String PAIN = "pain";

  private StopTyped() {}

  /** Whether a line begins with "stop" or with "pain"; marks before the word do not matter. */
  public static boolean in(String line) {
    String word = word(line);
    return word.startsWith("stop") || word.startsWith(PAIN);
  }

  /** Whether a line that means stop speaks of pain; {@code p} alone does. */
  public static boolean ofPain(String line) {
    String word = word(line);
    return word.equals("p") || word.contains(PAIN);
  }

  private static String word(String line) {
    return line.replaceFirst("^[\\p{P}\\p{S}\\s]+", "").strip().toLowerCase(Locale.ROOT);
  }

  /**
   * Asks which sign it was.
   *
   * @param usual what counts where Enter alone is typed or the input has ended
   * @param signs all that can be picked, by their numbers from 1
   */
  public static <T> T which(Console console, T usual, List<T> signs, Function<T, String> words) {
    return Choice.of(console, Optional.of(usual), signs, words).orElse(usual);
  }
}
