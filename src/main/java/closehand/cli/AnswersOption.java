package closehand.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Where answers come from. */
final class AnswersOption {
  @Parameters(arity = "0..1", paramLabel = "CASE", description = "A saved case: its name or file.")
  private @Nullable String caseName;

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description = "A flat answers file; - reads standard input.")
  private @Nullable String answers;

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

  /** The same where a command reads its words itself. */
  static AnswersOption of(
      Optional<String> caseName, Optional<String> answers, Optional<Path> home) {
    AnswersOption option = new AnswersOption();
    option.caseName = caseName.orElse(null);
    option.answers = answers.orElse(null);
    option.home = home.orElse(null);
    return option;
  }

  Optional<String> caseName() {
    return Optional.ofNullable(caseName);
  }

  Optional<String> answers() {
    return Optional.ofNullable(answers);
  }

  Optional<Path> home() {
    return Optional.ofNullable(home);
  }
}
