package closehand.cli;

import closehand.bank.Bank;
import closehand.report.Glyphs;
import closehand.screen.terminal.FullScreen;
import closehand.screen.terminal.Theme;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Goes through the usual commands once with an invented example and shows nothing.
 *
 * <p>The launcher lets Java make its archive of loaded classes while this runs, so that afterwards
 * every command finds its classes there. Nothing is left behind.
 */
final class Rehearsal {
  private static final String EXAMPLE = "/examples/quiet-heron/answers.json";

  /** A new interview of a volunteer's, not sealed; answers, keys that move, help, and the end. */
  private static final String TYPED = "1323011\u001b[B\u001b[A2ub?0 \u001b[Bo00s0q1";

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
      onScreen(home);
    } finally {
      remove(home);
    }
    return ExitCode.DONE;
  }

  /** Begins an interview on the full screen, answers, moves, reads and leaves. */
  private void onScreen(Path home) throws IOException {
    Bank bank = BankSource.load(Optional.empty()).bank().orElseThrow();
    Cases cases = Cases.at(home.resolve("screen"));
    Surroundings here = silent(new byte[0]);
    try (ScreenSession session =
        new ScreenSession(here, cases, Optional.empty(), () -> bank, Glyphs.UNICODE)) {
      FullScreen.rehearse(session.face(), TYPED, here.characters(), Theme.PLAIN);
      session.finish();
    }
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
    Closehand.run(arguments, silent(input));
  }

  private Surroundings silent(byte[] input) {
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), false, surroundings.characters());
    return new Surroundings(
        new ByteArrayInputStream(input),
        nowhere,
        nowhere,
        surroundings.environment(),
        surroundings.clock(),
        false,
        surroundings.characters());
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
