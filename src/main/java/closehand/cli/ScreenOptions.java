package closehand.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** How an interview looks and where cases lie: the same with the command and without. */
final class ScreenOptions {
  @CommandLine.Mixin private final BankOption bank = new BankOption();

  @Option(names = "--line", description = "Line by line, for screen readers and pipes.")
  private boolean line;

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

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

  /** What was asked for with these. */
  InterviewCommand.Wanted wanted() {
    return addedTo(new InterviewCommand.Wanted());
  }

  /** The same on top of what was asked for before the name of the command. */
  InterviewCommand.Wanted addedTo(InterviewCommand.Wanted wanted) {
    wanted.bank = bank.folder().or(() -> wanted.bank);
    wanted.home = Optional.ofNullable(home).or(() -> wanted.home);
    wanted.theme = Optional.ofNullable(theme).or(() -> wanted.theme);
    wanted.transcript = Optional.ofNullable(transcript).or(() -> wanted.transcript);
    wanted.noColour |= noColour;
    wanted.line |= line;
    wanted.ascii |= bank.ascii();
    return wanted;
  }

  /** Whether any of these was given. */
  boolean given() {
    return line
        || noColour
        || bank.ascii()
        || bank.folder().isPresent()
        || home != null
        || theme != null
        || transcript != null;
  }
}
