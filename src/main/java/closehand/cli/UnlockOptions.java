package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be typed after {@code closehand unlock}. */
@Command(
    name = "unlock",
    mixinStandardHelpOptions = true,
    description = "Write a copy of a sealed case that opens without a passphrase.")
final class UnlockOptions extends Subcommand {
  @Parameters(arity = "1", paramLabel = "CASE", description = "A saved case: its name or file.")
  private String caseName = "";

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "Write the copy to this new file.")
  private Path out = Path.of("");

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

  @Override
  int run(Surroundings surroundings) throws IOException {
    return new UnlockCommand(surroundings, Cases.in(Optional.ofNullable(home), surroundings))
        .run(caseName, out);
  }
}
