package closehand.cli;

import java.io.IOException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What can be typed after {@code closehand advise}. */
@Command(
    name = "advise",
    mixinStandardHelpOptions = true,
    description =
        "What the answers point to: suggestions with reasons, cautions, what is ruled out and what is open.")
final class AdviseOptions extends Subcommand {
  @CommandLine.Mixin private final BankOption bank = new BankOption();
  @CommandLine.Mixin private final AnswersOption source = new AnswersOption();

  @Option(names = "--json", description = "One JSON object for other programs.")
  private boolean json;

  @Override
  int run(Surroundings surroundings) throws IOException {
    return new AdviseCommand(surroundings, bank, source).run(json);
  }
}
