package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be typed after {@code closehand check}. */
@Command(name = "check", mixinStandardHelpOptions = true, description = "Is a question bank sound?")
final class CheckOptions extends Subcommand {

  @Parameters(
      arity = "0..1",
      paramLabel = "BANK",
      description = "The bank's folder; the bank inside the program if left out.")
  private @Nullable Path folder;

  @Option(
      names = "--deep",
      description =
          "Also look for rules that never fire, gaps, contradictions and the like; never blocks.")
  private boolean deep;

  @Option(names = "--print", description = "Print the bank as a paper to review and sign.")
  private boolean print;

  @Option(
      names = "--diff",
      paramLabel = "OLD",
      description = "Say in words what changed since the bank in this folder.")
  private @Nullable Path old;

  @Option(names = "--ascii", description = "Only plain ASCII characters.")
  private boolean ascii;

  @Override
  int run(Surroundings surroundings) throws IOException {
    CheckCommand.Wanted wanted =
        new CheckCommand.Wanted(deep, print, Optional.ofNullable(old), ascii);
    return new CheckCommand(surroundings).run(Optional.ofNullable(folder), wanted);
  }
}
