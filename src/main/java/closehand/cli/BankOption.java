package closehand.cli;

import closehand.report.Glyphs;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options that every command with a bank takes. */
final class BankOption {
  @Option(
      names = "--bank",
      paramLabel = "DIR",
      description = "Use the question bank in this folder.")
  private @Nullable Path folder;

  @Option(names = "--ascii", description = "Only plain ASCII characters.")
  private boolean ascii;

  boolean ascii() {
    return ascii;
  }

  Optional<Path> folder() {
    return Optional.ofNullable(folder);
  }

  Glyphs glyphs(Surroundings surroundings) {
    return ascii || surroundings.plainAscii() ? Glyphs.ASCII : Glyphs.UNICODE;
  }
}
