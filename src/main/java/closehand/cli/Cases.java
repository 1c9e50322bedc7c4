package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseFolder;
import closehand.casefile.CaseName;
import closehand.casefile.CaseStore;
import closehand.casefile.CaseTraces;
import closehand.casefile.LocalDisk;
import closehand.casefile.Passphrases;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
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

  /**
   * The cases in this folder, or in the place the system has for a user's data; there the folders
   * are this program's own and are closed to others.
   */
  static Cases in(Optional<Path> home, Surroundings surroundings) {
    if (home.isPresent()) {
      return at(home.get());
    }
    Path standard =
        CaseFolder.standard(
            surroundings.environment(),
            System.getProperty("os.name", ""),
            Path.of(System.getProperty("user.home", ".")));
    Optional.ofNullable(standard.getParent()).ifPresent(CaseFolder::closeToOthers);
    CaseFolder.closeToOthers(standard);
    return at(standard);
  }

  /** Which case was broken off last, and how to go on with it; nothing where none was. */
  Optional<String> brokenOff() {
    List<String> names;
    try {
      names = traces().brokenOff();
    } catch (IOException e) {
      return Optional.empty();
    }
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            (names.size() == 1
                    ? "1 case was left unfinished when its window closed without a word."
                    : names.size()
                        + " cases were left unfinished when their windows closed without a word.")
                + " To go on with "
                + (names.size() == 1 ? "it" : "the latest")
                + " instead: closehand interview "
                + names.get(0));
  }

  Path folder() {
    return folder;
  }

  CaseStore store() {
    return store;
  }

  /** What the files in the folder tell without being opened. */
  CaseTraces traces() {
    return new CaseTraces(folder, new LocalDisk());
  }

  /** Opens a case by its name, or by its file where that is no name. */
  CaseStore.Opened open(String nameOrFile, Bank bank, Passphrases passphrases) throws IOException {
    return CaseName.isLawful(nameOrFile)
        ? store.open(nameOrFile, bank.questionnaire(), passphrases)
        : store.open(Path.of(nameOrFile), bank.questionnaire(), passphrases);
  }
}
