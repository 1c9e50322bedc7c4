package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** What can be typed after {@code closehand check}. */
@Command(name = "check", mixinStandardHelpOptions = true, description = "Is a question bank sound?")
final class CheckOptions extends Subcommand {

  @Parameters(
      arity = "0..1",
      paramLabel = "BANK",
      description = "The bank's folder; the bank inside the program if left out.")
  private @Nullable Path folder;

  @Override
  int run(Surroundings surroundings) throws IOException {
    return new CheckCommand(surroundings).run(Optional.ofNullable(folder));
  }
}
