package closehand.cli;

import java.io.Console;
import java.util.Optional;

/**
 * Reads a secret that is typed at the terminal and not shown. A secret never comes from an
 * argument, a variable of the environment or a file: those are seen by others or kept by the
 * system.
 */
@FunctionalInterface
interface Secrets {
  /** Nobody is there to type one. */
  Secrets NONE = new Nobody();

  /** Types nothing. */
  final class Nobody implements Secrets {
    @Override
    public Optional<char[]> read(String prompt) {
      return Optional.empty();
    }
  }

  /** What is typed after this prompt; nothing when nobody can type or wants to. */
  Optional<char[]> read(String prompt);

  /** The terminal of this process, if it has one. */
  static Secrets ofProcess() {
    Console console = System.console();
    return console == null
        ? NONE
        : prompt ->
            Optional.ofNullable(console.readPassword("%s", prompt)).filter(s -> s.length > 0);
  }
}
