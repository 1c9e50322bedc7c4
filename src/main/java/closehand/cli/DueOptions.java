package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What can be typed after {@code closehand due}. */
@Command(
    name = "due",
    mixinStandardHelpOptions = true,
    description = "Which cases somebody should ask after, and since when. Names and days only.")
final class DueOptions extends Subcommand {
  @CommandLine.Mixin private final BankOption bank = new BankOption();

  @Option(
      names = "--by",
      paramLabel = "DATE",
      description = "The last day that counts, such as 2026-12-24; today if left out.")
  private @Nullable String by;

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

  @Option(names = "--json", description = "As JSON, for other programs.")
  private boolean json;

  @Override
  int run(Surroundings surroundings) throws IOException {
    Cases cases = Cases.in(Optional.ofNullable(home), surroundings);
    return new DueCommand(surroundings, bank, cases)
        .run(Optional.ofNullable(by).orElseGet(surroundings::today), json);
  }
}
