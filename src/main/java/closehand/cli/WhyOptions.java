package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be typed after {@code closehand why}. */
@Command(
    name = "why",
    mixinStandardHelpOptions = true,
    description =
        "Why a control, an input, a part of the body or a caution stands as it does, and what would change it.")
final class WhyOptions extends Subcommand {
  @CommandLine.Mixin private final BankOption bank = new BankOption();

  @Parameters(
      arity = "0..2",
      paramLabel = "[CASE] [NAME]",
      description = {
        "A saved case (not with --answers), then what to explain:",
        "nothing: the control that comes first,",
        "MOUSE_SIDE_R: a control,",
        "trigger: a kind of input,",
        "R.T: a part of the body (here the right thumb),",
        "C-NECK: a caution."
      })
  private List<String> words = new ArrayList<>();

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description = "A flat answers file; - reads standard input.")
  private @Nullable String answers;

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

  @Option(names = "--all", description = "Unfold what stands behind worked-out facts as well.")
  private boolean all;

  @Option(names = "--json", description = "As JSON, for other programs.")
  private boolean json;

  @Override
  int run(Surroundings surroundings) throws IOException {
    boolean flat = answers != null;
    int names = words.size() - (flat ? 0 : 1);
    if (names < 0 || names > 1) {
      surroundings
          .error()
          .println("Name a case, or a file with --answers, and then what to explain.");
      return ExitCode.USAGE;
    }
    Optional<String> name =
        names == 0 ? Optional.empty() : Optional.of(words.get(words.size() - 1));
    AnswersOption source =
        AnswersOption.of(
            flat ? Optional.empty() : Optional.of(words.get(0)),
            Optional.ofNullable(answers),
            Optional.ofNullable(home));
    return new WhyCommand(surroundings, bank, source).run(name, all, json);
  }
}
