package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseFolder;
import closehand.casefile.CaseName;
import closehand.casefile.CaseStore;
import closehand.casefile.LocalDisk;
import closehand.casefile.Passphrases;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** The folder of cases of one run. */
final class Cases {
  private final Path folder;
  private final CaseStore store;

  private Cases(Path folder) {
    this.folder = folder;
    this.store = new CaseStore(folder, new LocalDisk());
  }

  /** The cases in this folder. */
  static Cases at(Path folder) {
    return new Cases(folder);
  }

  /** The cases in this folder, or in the place the system has for a user's data. */
  static Cases in(Optional<Path> home, Surroundings surroundings) {
    return new Cases(
        home.orElseGet(
            () ->
                CaseFolder.standard(
                    surroundings.environment(),
                    System.getProperty("os.name", ""),
                    Path.of(System.getProperty("user.home", ".")))));
  }

  Path folder() {
    return folder;
  }

  CaseStore store() {
    return store;
  }

  /** Opens a case by its name, or by its file where that is no name. */
  CaseStore.Opened open(String nameOrFile, Bank bank, Passphrases passphrases) throws IOException {
    return CaseName.isLawful(nameOrFile)
        ? store.open(nameOrFile, bank.questionnaire(), passphrases)
        : store.open(Path.of(nameOrFile), bank.questionnaire(), passphrases);
  }
}
