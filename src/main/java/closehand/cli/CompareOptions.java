package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be typed after {@code closehand compare}. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description =
        "Set two set-ups that were tried side by side: what worked, pain, effort, and what follows.")
final class CompareOptions extends Subcommand {
  @CommandLine.Mixin private final BankOption bank = new BankOption();

  @Parameters(paramLabel = "CASE", description = "A saved case: its name or file.")
  private String caseName = "";

  @Option(
      names = "--between",
      arity = "2",
      paramLabel = "SET-UP",
      description = "Two set-ups by name; the two tried last if left out.")
  private String @Nullable [] between;

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

  @Option(names = "--json", description = "As JSON, for other programs.")
  private boolean json;

  @Override
  int run(Surroundings surroundings) throws IOException {
    AnswersOption source =
        AnswersOption.of(Optional.of(caseName), Optional.empty(), Optional.ofNullable(home));
    return new CompareCommand(surroundings, bank, source)
        .run(between == null ? java.util.List.of() : java.util.List.of(between), json);
  }
}
