package closehand.cli;

import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be typed after {@code closehand interview}. */
@Command(
    name = "interview",
    mixinStandardHelpOptions = true,
    description = "Hold an interview, or go on with one.")
final class InterviewOptions extends Subcommand {
  @CommandLine.Mixin private final ScreenOptions screen = new ScreenOptions();

  @Parameters(arity = "0..1", paramLabel = "CASE", description = "A saved case: its name or file.")
  private @Nullable String caseName;

  @Option(
      names = "--asker",
      paramLabel = "WHO",
      description = "player, helper, volunteer or clinician.")
  private @Nullable String asker;

  @Option(
      names = "--route",
      paramLabel = "ROUTE",
      description = "core (the short interview), full, or brief (only what tells most).")
  private @Nullable String route;

  @Option(
      names = "--review",
      description = "Ask again what a review asks: changes, warning signs and pain.")
  private boolean review;

  @Option(
      names = "--script",
      paramLabel = "FILE",
      description = "Read one answer a line from this file; - reads standard input.")
  private @Nullable String script;

  @Override
  boolean takesWhatStandsBefore() {
    return true;
  }

  @Override
  int run(Surroundings surroundings) throws IOException {
    InterviewCommand.Wanted wanted = screen.addedTo(before());
    wanted.caseName = Optional.ofNullable(caseName);
    wanted.asker = Optional.ofNullable(asker);
    wanted.route = Optional.ofNullable(route);
    wanted.script = Optional.ofNullable(script);
    wanted.review = review;
    return new InterviewCommand(surroundings, wanted).run();
  }
}
