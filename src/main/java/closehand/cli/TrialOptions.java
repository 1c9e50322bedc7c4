package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be typed after {@code closehand trial}. */
@Command(
    name = "trial",
    mixinStandardHelpOptions = true,
    description = {
      "Take down a trial of a set-up, question by question: what worked of ten, and how it felt.",
      "Everything is kept after every answer; a trial broken off is gone on with the same day."
    })
final class TrialOptions extends Subcommand {
  @CommandLine.Mixin private final BankOption bank = new BankOption();

  @Parameters(paramLabel = "CASE", description = "A saved case, by its name.")
  private String caseName = "";

  @Option(names = "--line", description = "Line by line, for screen readers and pipes.")
  private boolean line;

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

  @Override
  int run(Surroundings surroundings) throws IOException {
    Cases cases = Cases.in(Optional.ofNullable(home), surroundings);
    return new TrialCommand(surroundings, bank, cases, line).run(caseName);
  }
}
