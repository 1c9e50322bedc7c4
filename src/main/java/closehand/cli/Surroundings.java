package closehand.cli;

import closehand.casefile.Passphrase;
import closehand.casefile.Passphrases;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Locale;
import java.util.Map;

/**
 * The world around one run: what it reads, where it writes, what time it is.
 *
 * @param input standard input
 * @param output results
 * @param error messages
 * @param environment environment variables
 * @param clock the time
 * @param typed whether a person types at a terminal
 * @param characters the character set of the terminal
 * @param secrets where passphrases are typed
 */
record Surroundings(
    InputStream input,
    PrintStream output,
    PrintStream error,
    Map<String, String> environment,
    Clock clock,
    boolean typed,
    Charset characters,
    Secrets secrets) {
  private static final int MANY_COLUMNS = 500;

  /** The surroundings of this process, with its standard output. */
  static Surroundings ofProcess(Outlet outlet) {
    Charset characters = terminalCharacters();
    return new Surroundings(
        System.in,
        new PrintStream(outlet, false, characters),
        new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.err), true, characters),
        System.getenv(),
        new LocalClock(),
        System.console() != null,
        characters,
        Secrets.ofProcess());
  }

  /** Surroundings in which no passphrase can be typed. */
  Surroundings(
      InputStream input,
      PrintStream output,
      PrintStream error,
      Map<String, String> environment,
      Clock clock,
      boolean typed,
      Charset characters) {
    this(input, output, error, environment, clock, typed, characters, Secrets.NONE);
  }

  /** Asks for the passphrase of a sealed case. */
  Passphrases passphrases() {
    return attempt -> {
      if (attempt > 1) {
        error.println("Wrong passphrase, or the file is damaged.");
      }
      return secrets
          .read("Passphrase of the case (not shown; Enter gives up): ")
          .map(Passphrase::kept);
    };
  }

  private static Charset terminalCharacters() {
    String name =
        System.getProperty("stdout.encoding", System.getProperty("native.encoding", "UTF-8"));
    try {
      return Charset.forName(name);
    } catch (IllegalArgumentException e) {
      return StandardCharsets.UTF_8;
    }
  }

  /** Whether only plain ASCII can be shown. */
  boolean plainAscii() {
    return !characters.name().toUpperCase(Locale.ROOT).startsWith("UTF");
  }

  /**
   * How many columns the terminal has; many where nobody knows. The launcher says so in {@code
   * CLOSEHAND_COLUMNS}; otherwise the terminal is asked, which only works where there is {@code
   * stty}.
   */
  int columns() {
    String said =
        environment.getOrDefault("CLOSEHAND_COLUMNS", environment.getOrDefault("COLUMNS", ""));
    return number(said).orElseGet(() -> typed ? askTerminal() : MANY_COLUMNS);
  }

  private static int askTerminal() {
    try {
      Process stty = new ProcessBuilder("sh", "-c", "stty size </dev/tty 2>/dev/null").start();
      String answer =
          new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII).strip();
      return number(answer.substring(answer.indexOf(' ') + 1)).orElse(MANY_COLUMNS);
    } catch (java.io.IOException e) {
      return MANY_COLUMNS;
    }
  }

  private static java.util.Optional<Integer> number(String text) {
    boolean digits =
        !text.isEmpty() && text.length() <= 4 && text.chars().allMatch(c -> c >= '0' && c <= '9');
    return digits ? java.util.Optional.of(Integer.parseInt(text)) : java.util.Optional.empty();
  }

  /** Today as an ISO date. */
  String today() {
    return java.time.LocalDate.now(clock).toString();
  }
}
