package closehand.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Goes through the usual commands once with an invented example and shows nothing.
 *
 * <p>The launcher lets Java make its archive of loaded classes while this runs, so that afterwards
 * every command finds its classes there. Nothing is left behind.
 */
final class Rehearsal {
  private static final String EXAMPLE = "/examples/quiet-heron/answers.json";

  private final Surroundings surroundings;

  Rehearsal(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  int run() throws IOException {
    byte[] answers = example();
    Path home = Files.createTempDirectory("closehand");
    try {
      quietly(answers, "advise", "--answers", "-");
      quietly(answers, "advise", "--answers", "-", "--json");
      quietly(answers, "summary", "--answers", "-", "--for", "player");
      quietly(answers, "summary", "--answers", "-", "--for", "clinician");
      quietly(script(), "interview", "--line", "--script", "-", "--home", home.toString());
    } finally {
      remove(home);
    }
    return ExitCode.DONE;
  }

  private static byte[] example() throws IOException {
    try (InputStream in = Rehearsal.class.getResourceAsStream(EXAMPLE)) {
      return in == null ? "{}".getBytes(StandardCharsets.UTF_8) : in.readAllBytes();
    }
  }

  private static byte[] script() {
    return "?\nb\n1\no\nq\n".getBytes(StandardCharsets.UTF_8);
  }

  private void quietly(byte[] input, String... arguments) {
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), false, surroundings.characters());
    Closehand.run(
        arguments,
        new Surroundings(
            new ByteArrayInputStream(input),
            nowhere,
            nowhere,
            surroundings.environment(),
            surroundings.clock(),
            false,
            surroundings.characters()));
  }

  private static void remove(Path home) throws IOException {
    List<Path> all;
    try (Stream<Path> files = Files.walk(home)) {
      all = files.sorted(java.util.Comparator.reverseOrder()).toList();
    }
    for (Path one : all) {
      Files.delete(one);
    }
  }
}
