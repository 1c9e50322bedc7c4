package closehand.cli;

import closehand.strain.BodyPart;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What can be typed after {@code closehand plan}. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description =
        "Which action of each game sits on which input under which part of the body, and why.")
final class PlanOptions extends Subcommand {
  private static final int MOST_PARTS = 20;
  private static final long MOST_SECONDS = 3600;
  private static final int MILLISECONDS = 1000;

  @CommandLine.Mixin private final BankOption bank = new BankOption();
  @CommandLine.Mixin private final AnswersOption source = new AnswersOption();

  @Option(
      names = "--game",
      paramLabel = "N",
      description = "Only this game, counted from 0 in the order of the answers.")
  private @Nullable Integer game;

  @Option(
      names = "--approaches",
      paramLabel = "A,B",
      split = ",",
      description = "Only these controls, such as MOUSE_SIDE_L,SW_FOOT.")
  private List<String> approaches = new ArrayList<>();

  @Option(
      names = "--max-parts",
      paramLabel = "K",
      description = "At most this many separate parts (3 is usual).")
  private @Nullable Integer parts;

  @Option(
      names = "--seconds",
      paramLabel = "S",
      description =
          "Look for at most this long for each game; without it the work is limited, not"
              + " the time.")
  private @Nullable Double seconds;

  @Option(
      names = "--set",
      paramLabel = "ACTION=INPUT",
      description = "Keep an action on an input, such as jump=B3; the rest is planned around it.")
  private List<String> wishes = new ArrayList<>();

  @Option(
      names = "--explain",
      paramLabel = "ACTION",
      description = "Why an action sits where it does, and what other places would cost.")
  private @Nullable String explain;

  @Option(
      names = "--load",
      description = "What the plan asks of the body, by every method, with limits and sources.")
  private boolean load;

  @Option(
      names = "--effort",
      paramLabel = "PART=0..10",
      split = ",",
      description =
          "How hard a press is there, 0 to 10 of the most this player can do, such as R.T=3; R.T="
              + " takes it back. "
              + BodyPart.NAMES)
  private List<String> efforts = new ArrayList<>();

  @Option(
      names = "--relief",
      paramLabel = "MINUTES",
      description = "How often this player takes the weight off, as their health team set it.")
  private @Nullable String relief;

  @Option(
      names = "--accept",
      paramLabel = "PART=NAME: REASON",
      description =
          "A clinician accepts a red part of the body, by name and with a reason; R.T= takes it back."
              + " The parts are named as for --effort.")
  private List<String> accepts = new ArrayList<>();

  @Option(
      names = "--compare",
      description = "Each suggested control alone, and what each adds to the best plan.")
  private boolean compare;

  @Option(
      names = "--keep",
      description =
          "Keep this plan in the case, as it is given now, and for later ones the wishes of --set and"
              + " what --effort, --relief and --accept said.")
  private boolean keep;

  @Option(names = "--json", description = "One JSON object for other programs.")
  private boolean json;

  @Override
  int run(Surroundings surroundings) throws IOException {
    boolean wrongParts = parts != null && (parts < 1 || parts > MOST_PARTS);
    boolean wrongTime = seconds != null && !(seconds > 0 && seconds <= MOST_SECONDS);
    if (wrongParts || wrongTime) {
      surroundings
          .error()
          .println(
              wrongParts
                  ? "--max-parts is a number from 1 to " + MOST_PARTS + "."
                  : "--seconds is a number above 0 and at most " + MOST_SECONDS + ".");
      return ExitCode.USAGE;
    }
    PlanCommand.Wanted wanted =
        new PlanCommand.Wanted(
            game == null ? OptionalInt.empty() : OptionalInt.of(game),
            approaches,
            parts == null ? OptionalInt.empty() : OptionalInt.of(parts),
            seconds == null
                ? OptionalLong.empty()
                : OptionalLong.of(Math.round(seconds * MILLISECONDS)),
            wishes,
            Optional.ofNullable(explain),
            efforts,
            accepts,
            Optional.ofNullable(relief),
            load,
            compare,
            keep,
            json);
    return new PlanCommand(surroundings, bank, source, wanted).run();
  }
}
