package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be typed after {@code closehand replay}. */
@Command(
    name = "replay",
    mixinStandardHelpOptions = true,
    description = "What would move in many cases under another question bank, and by which rules.")
final class ReplayOptions extends Subcommand {
  @Parameters(
      arity = "1..*",
      paramLabel = "CASE",
      description = "Saved cases by name or file, flat answers files, or folders of these.")
  private List<String> cases = new ArrayList<>();

  @Option(
      names = "--bank",
      required = true,
      paramLabel = "DIR",
      description = "The new question bank.")
  private @Nullable Path bank;

  @Option(
      names = "--against",
      paramLabel = "DIR",
      description = "The old question bank; the one inside the program if left out.")
  private @Nullable Path old;

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

  @Option(names = "--json", description = "As JSON, for other programs.")
  private boolean json;

  @Option(names = "--ascii", description = "Only plain ASCII characters.")
  private boolean ascii;

  @Override
  int run(Surroundings surroundings) throws IOException {
    ReplayCommand command =
        new ReplayCommand(surroundings, Cases.in(Optional.ofNullable(home), surroundings), ascii);
    return command.run(cases, Optional.ofNullable(old), Optional.ofNullable(bank), json);
  }
}
