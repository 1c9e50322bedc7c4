package closehand.cli;

import closehand.casefile.CaseName;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** Writes what is in a sealed case to a file that opens without a passphrase. */
final class UnlockCommand {
  private final Surroundings surroundings;
  private final Cases cases;

  UnlockCommand(Surroundings surroundings, Cases cases) {
    this.surroundings = surroundings;
    this.cases = cases;
  }

  int run(String nameOrFile, Path out) throws IOException {
    Path file =
        CaseName.isLawful(nameOrFile) ? cases.store().where(nameOrFile) : Path.of(nameOrFile);
    Optional<byte[]> document = cases.store().document(file, surroundings.passphrases());
    if (document.isEmpty()) {
      surroundings
          .error()
          .println("The case was not opened: no passphrase, a wrong one, or a damaged file.");
      return ExitCode.BAD_DATA;
    }
    return NewFile.write(out, document.get(), surroundings);
  }
}
