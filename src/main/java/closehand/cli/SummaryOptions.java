package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What can be typed after {@code closehand summary}. */
@Command(
    name = "summary",
    mixinStandardHelpOptions = true,
    description = "The page that goes home.")
final class SummaryOptions extends Subcommand {
  @CommandLine.Mixin private final BankOption bank = new BankOption();
  @CommandLine.Mixin private final AnswersOption source = new AnswersOption();

  @Option(
      names = "--for",
      paramLabel = "READER",
      description = "player (the usual), clinician, or setup for whoever sets the controls up.")
  private String reader = "player";

  @Option(names = "--out", paramLabel = "FILE", description = "Write the page to this file.")
  private @Nullable Path out;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The date on the page, such as 2026-11-25; today if left out.")
  private @Nullable String date;

  @Override
  int run(Surroundings surroundings) throws IOException {
    SummaryCommand command = new SummaryCommand(surroundings, bank, source);
    return command.run(reader, Optional.ofNullable(out), Optional.ofNullable(date));
  }
}
