package closehand.cli;

import java.io.IOException;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** One command with its options; knows the surroundings through the command it stands under. */
abstract class Subcommand implements Callable<Integer> {
  @CommandLine.ParentCommand private Commands.@Nullable Root root;

  @CommandLine.Spec private CommandLine.Model.@Nullable CommandSpec spec;

  @Override
  public final Integer call() throws IOException {
    Commands.Root above = Objects.requireNonNull(root);
    if (above.screen().given() && !takesWhatStandsBefore()) {
      CommandLine line = Objects.requireNonNull(spec).commandLine();
      throw new CommandLine.ParameterException(
          line, "Options of " + line.getCommandName() + " come after its name.");
    }
    return run(above.surroundings());
  }

  /** Whether options given before this command's name count for it. */
  boolean takesWhatStandsBefore() {
    return false;
  }

  /** What was asked for before this command's name. */
  final InterviewCommand.Wanted before() {
    return Objects.requireNonNull(root).screen().wanted();
  }

  /** Does the work; gives the exit code. */
  abstract int run(Surroundings surroundings) throws IOException;
}
