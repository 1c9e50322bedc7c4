package closehand.screen.terminal;

import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Which face serves here: the full screen, or line by line.
 *
 * @param fullScreen whether the full screen serves
 * @param why why it does not, as a sentence; empty where it does
 */
public record FaceChoice(boolean fullScreen, String why) {
  /** The variable that asks for the line face; these values ask for nothing. */
  static final String LINE = "CLOSEHAND_LINE";

  private static final Set<String> NO = Set.of("", "false", "0", "no");

  /**
   * What the choice depends on.
   *
   * @param lineAsked whether {@code --line} was given
   * @param scripted whether the answers come from a file or a pipe
   * @param typed whether input and output are a terminal
   * @param environment environment variables
   * @param operatingSystem its name as Java says it
   */
  public record Circumstances(
      boolean lineAsked,
      boolean scripted,
      boolean typed,
      Map<String, String> environment,
      String operatingSystem) {}

  /** Decides, and says why. */
  public static FaceChoice of(Circumstances here) {
    if (here.lineAsked()) {
      return line("Line by line, because --line was given.");
    }
    if (!NO.contains(here.environment().getOrDefault(LINE, "").strip().toLowerCase(Locale.ROOT))) {
      return line("Line by line, because " + LINE + " is set.");
    }
    if (here.scripted() || !here.typed()) {
      return line("Line by line, because input or output is not a terminal.");
    }
    if (here.operatingSystem().toLowerCase(Locale.ROOT).startsWith("windows")) {
      return line("Line by line, because the full screen does not serve in the Windows console.");
    }
    String terminal = here.environment().getOrDefault("TERM", "").strip();
    if (terminal.isEmpty() || terminal.equals("dumb")) {
      return line("Line by line, because this terminal shows plain lines only.");
    }
    return new FaceChoice(true, "");
  }

  /** The line face, where the terminal could not be set up after all. */
  public static FaceChoice noSetUp() {
    return line("Line by line, because this terminal could not be set up for the full screen.");
  }

  private static FaceChoice line(String why) {
    return new FaceChoice(false, why);
  }
}
