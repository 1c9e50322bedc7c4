package closehand.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A small world for one run of the program: what is typed, what comes out, and a clock that stands.
 */
final class World {
  private final ByteArrayOutputStream output = new ByteArrayOutputStream();
  private final ByteArrayOutputStream error = new ByteArrayOutputStream();
  private int code;

  /** Runs the program once with these words typed at standard input. */
  static World run(String typed, String... arguments) {
    return run(typed, false, List.of(), arguments);
  }

  /** Runs the program once with a person typing these words at a terminal. */
  static World typed(String typed, String... arguments) {
    return run(typed, true, List.of(), arguments);
  }

  /** Runs the program once with a person at a terminal who types these passphrases when asked. */
  static World typed(List<String> secrets, String typed, String... arguments) {
    return run(typed, true, secrets, arguments);
  }

  private static World run(
      String typed, boolean terminal, List<String> secrets, String... arguments) {
    World world = new World();
    Iterator<String> next = secrets.iterator();
    world.code =
        Closehand.run(
            arguments,
            new Surroundings(
                new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(world.output, true, StandardCharsets.UTF_8),
                new PrintStream(world.error, true, StandardCharsets.UTF_8),
                Map.of("COLUMNS", "72"),
                Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC),
                terminal,
                StandardCharsets.UTF_8,
                prompt ->
                    next.hasNext() ? Optional.of(next.next().toCharArray()) : Optional.empty()));
    return world;
  }

  int code() {
    return code;
  }

  String output() {
    return output.toString(StandardCharsets.UTF_8);
  }

  String error() {
    return error.toString(StandardCharsets.UTF_8);
  }
}
