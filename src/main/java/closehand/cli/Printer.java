package closehand.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The printer of this machine, reached by the command that POSIX names for it. What is printed goes
 * to that command alone and is written into no file of ours.
 */
final class Printer {
  private static final List<String> COMMANDS = List.of("lp", "lpr");
  private static final long SECONDS = 20;

  private final Path command;

  private Printer(Path command) {
    this.command = command;
  }

  /** The printer behind the first such command on the search path; nothing where there is none. */
  static Optional<Printer> in(Map<String, String> environment) {
    for (String name : COMMANDS) {
      for (String folder : environment.getOrDefault("PATH", "").split(":", -1)) {
        Optional<Path> command = command(folder, name);
        if (command.isPresent()) {
          return command.map(Printer::new);
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Path> command(String folder, String name) {
    try {
      Path file = Path.of(folder).resolve(name);
      boolean there = !folder.isEmpty() && Files.isRegularFile(file) && Files.isExecutable(file);
      return there ? Optional.of(file) : Optional.empty();
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** Hands text over; tells whether the printing system took it. */
  boolean print(String text) {
    try {
      Process printing =
          new ProcessBuilder(command.toString())
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      try (OutputStream paper = printing.getOutputStream()) {
        paper.write(text.getBytes(StandardCharsets.UTF_8));
      }
      boolean ended = printing.waitFor(SECONDS, TimeUnit.SECONDS);
      if (!ended) {
        printing.destroy();
      }
      return ended && printing.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
