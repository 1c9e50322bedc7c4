package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be typed after {@code closehand forget}. */
@Command(
    name = "forget",
    mixinStandardHelpOptions = true,
    description = "Remove a case with everything the program keeps of it.")
final class ForgetOptions extends Subcommand {
  @Parameters(arity = "1", paramLabel = "CASE", description = "The name of a saved case.")
  private String caseName = "";

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

  @Option(names = "--yes", description = "Do not ask again.")
  private boolean sure;

  @Override
  int run(Surroundings surroundings) throws IOException {
    return new ForgetCommand(surroundings, Cases.in(Optional.ofNullable(home), surroundings))
        .run(caseName, sure);
  }
}
