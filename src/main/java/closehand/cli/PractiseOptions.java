package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What can be typed after {@code closehand practise}. */
@Command(
    name = "practise",
    mixinStandardHelpOptions = true,
    description =
        "Check every button, practise a control plan in short rounds, and see what would change in"
            + " it.")
final class PractiseOptions extends Subcommand {
  private static final int MOST_WEEKS = 5_200;

  @CommandLine.Mixin private final BankOption bank = new BankOption();
  @CommandLine.Mixin private final AnswersOption source = new AnswersOption();

  @Option(
      names = "--game",
      paramLabel = "N",
      description = "This game, counted from 0 in the order of the answers; the first otherwise.")
  private @Nullable Integer game;

  @Option(
      names = "--log",
      paramLabel = "FILE",
      description = "Prompts and presses that were logged elsewhere; - reads standard input.")
  private @Nullable Path log;

  @Option(
      names = "--prompts",
      description = "Print the prompts of a run, for logging them elsewhere.")
  private boolean prompts;

  @Option(
      names = "--pointing",
      paramLabel = "WAY[,WAY]",
      split = ",",
      description =
          "Point to and fro with one or two things that move the pointer, such as mouse,trackball;"
              + " one may be the arrow keys.")
  private List<String> ways = new ArrayList<>();

  @Option(
      names = "--week",
      paramLabel = "N",
      description = "Weeks with this plan, from 1; second meanings come from the third on.")
  private @Nullable Integer week;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "The same number gives the same order of prompts.")
  private @Nullable Long seed;

  @Option(names = "--line", description = "Line by line, for screen readers; without times.")
  private boolean line;

  @Override
  int run(Surroundings surroundings) throws IOException {
    if (week != null && (week < 1 || week > MOST_WEEKS)) {
      surroundings.error().println("--week is a number from 1 to " + MOST_WEEKS + ".");
      return ExitCode.USAGE;
    }
    if (ways.size() > 2) {
      surroundings.error().println("--pointing takes one or two names.");
      return ExitCode.USAGE;
    }
    return new PractiseCommand(
            surroundings,
            bank,
            source,
            new PractiseCommand.Wanted(
                game == null ? OptionalInt.empty() : OptionalInt.of(game),
                Optional.ofNullable(log),
                prompts,
                ways.stream().map(String::strip).filter(w -> !w.isEmpty()).toList(),
                week == null ? OptionalInt.empty() : OptionalInt.of(week),
                seed == null ? OptionalLong.empty() : OptionalLong.of(seed),
                line))
        .run();
  }
}
