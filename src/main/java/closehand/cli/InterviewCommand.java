package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** Holds an interview. */
final class InterviewCommand {
  static final class Wanted {
    Optional<Path> bank = Optional.empty();
    Optional<String> caseName = Optional.empty();
    Optional<Path> home = Optional.empty();
    Optional<String> asker = Optional.empty();
    Optional<String> route = Optional.empty();
    Optional<String> script = Optional.empty();
    boolean ascii;
  }

  InterviewCommand(Surroundings surroundings, Wanted wanted) {}

  int run() throws IOException {
    return 0;
  }
}
