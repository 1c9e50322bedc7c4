package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
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
  @CommandLine.Mixin private final BankOption bank = new BankOption();

  @Parameters(arity = "0..1", paramLabel = "CASE", description = "A saved case: its name or file.")
  private @Nullable String caseName;

  @Option(names = "--line", description = "Line by line, for screen readers and pipes.")
  private boolean line;

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

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

  @Option(
      names = "--theme",
      paramLabel = "NAME",
      description = "How the full screen looks: plain, contrast or mono.")
  private @Nullable String theme;

  @Option(names = "--no-color", description = "No colours on the full screen.")
  private boolean noColour;

  @Option(
      names = "--transcript",
      paramLabel = "FILE",
      description =
          "Full screen: also append to this file what the line face would say, for speech or braille.")
  private @Nullable Path transcript;

  @Override
  int run(Surroundings surroundings) throws IOException {
    InterviewCommand.Wanted wanted = new InterviewCommand.Wanted();
    wanted.bank = bank.folder();
    wanted.caseName = Optional.ofNullable(caseName);
    wanted.home = Optional.ofNullable(home);
    wanted.asker = Optional.ofNullable(asker);
    wanted.route = Optional.ofNullable(route);
    wanted.script = Optional.ofNullable(script);
    wanted.theme = Optional.ofNullable(theme);
    wanted.noColour = noColour;
    wanted.transcript = Optional.ofNullable(transcript);
    wanted.line = line;
    wanted.ascii = bank.ascii();
    wanted.review = review;
    return new InterviewCommand(surroundings, wanted).run();
  }
}
