package closehand.cli;

import java.io.IOException;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** One command with its options; knows the surroundings through the command it stands under. */
abstract class Subcommand implements Callable<Integer> {
  @CommandLine.ParentCommand private Commands.@Nullable Root root;

  @Override
  public final Integer call() throws IOException {
    return run(Objects.requireNonNull(root).surroundings());
  }

  /** Does the work; gives the exit code. */
  abstract int run(Surroundings surroundings) throws IOException;
}
