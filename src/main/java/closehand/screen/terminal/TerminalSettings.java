package closehand.screen.terminal;

import closehand.screen.frame.ScreenSize;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/**
 * The settings of the terminal's line discipline, as {@code stty} keeps them: saved, changed so
 * that every key arrives at once, and put back.
 *
 * <p>The size is asked of {@code stty} too, never of the terminal itself: its answer would arrive
 * among the keys, and its digits could be taken for answers.
 */
final class TerminalSettings {
  private static final File TERMINAL = new File("/dev/tty");
  private static final String KEY_BY_KEY = "stty -icanon -echo -isig -ixon min 1 time 0";

  private final String saved;
  private final ScreenSize first;

  private TerminalSettings(String saved, ScreenSize first) {
    this.saved = saved;
    this.first = first;
  }

  /**
   * Saves the settings and has every key sent at once, none of them as a signal.
   *
   * @return nothing where there is no terminal or no {@code stty}
   */
  static Optional<TerminalSettings> takeOver() {
    try {
      String[] answer = ask("stty -g && " + KEY_BY_KEY + " && stty size").split("\n", 2);
      boolean understood = answer.length == 2 && answer[0].matches("[0-9a-fA-F:=;a-z]+");
      return understood
          ? Optional.of(new TerminalSettings(answer[0], size(answer[1])))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Starts a process as for asking, and asks nothing. */
  static void rehearse() throws IOException {
    ask(":", new File("/dev/null"));
  }

  /** The size when the terminal was taken over. */
  ScreenSize firstSize() {
    return first;
  }

  /** The size now; {@link ScreenSize#USUAL} where the terminal does not know its own. */
  ScreenSize size() throws IOException {
    return size(ask("stty size"));
  }

  /** Reads rows and columns as {@code stty size} prints them. */
  static ScreenSize size(String printed) {
    String[] numbers = printed.strip().toLowerCase(Locale.ROOT).split(" +");
    boolean two = numbers.length == 2 && isSize(numbers[0]) && isSize(numbers[1]);
    return two
        ? new ScreenSize(Integer.parseInt(numbers[1]), Integer.parseInt(numbers[0]))
        : ScreenSize.USUAL;
  }

  private static boolean isSize(String number) {
    return number.matches("[1-9][0-9]{0,3}");
  }

  /** Puts the saved settings back. */
  void giveBack() throws IOException {
    ask("stty " + saved);
  }

  private static String ask(String command) throws IOException {
    return ask(command, TERMINAL);
  }

  private static String ask(String command, File of) throws IOException {
    Process shell =
        new ProcessBuilder("/bin/sh", "-c", command)
            .redirectInput(of)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    return new String(shell.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
  }
}
