package closehand.casefile;

import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import closehand.bank.Where;
import closehand.json.CaseDocument;
import closehand.json.CaseReader;
import closehand.json.CaseWriter;
import closehand.json.JsonReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A folder of cases, one file each.
 *
 * <p>A case is replaced whole in one step, and its content before that is kept beside it. Files and
 * folders are open to their owner alone.
 */
public final class CaseStore {
  private static final String END = ".json";
  private static final String SEALED_END = ".sealed";
  private static final String PREVIOUS_END = ".previous";
  private static final String BEFORE_END = ".before";
  static final String LOCK_END = ".lock";
  private static final int ATTEMPTS = 3;

  private final Path folder;
  private final Disk disk;

  /** A store in this folder, which is created with the first case. */
  public CaseStore(Path folder, Disk disk) {
    this.folder = folder;
    this.disk = disk;
  }

  /** What came of opening a case: the case, or problems that say why not. */
  public sealed interface Opened {
    /** It is open. */
    record Case(CaseFile file) implements Opened {}

    /** It cannot be opened. */
    record Refused(List<Problem> problems) implements Opened {
      public Refused {
        problems = List.copyOf(problems);
      }
    }
  }

  /**
   * Where the case with this name lies.
   *
   * @throws IllegalArgumentException if no case can have this name
   */
  public Path path(String name) {
    if (!CaseName.isLawful(name)) {
      throw new IllegalArgumentException("no case can have this name");
    }
    return folder.resolve(name + END);
  }

  /**
   * Where the case with this name lies if it is sealed.
   *
   * @throws IllegalArgumentException if no case can have this name
   */
  public Path sealedPath(String name) {
    path(name);
    return folder.resolve(name + SEALED_END);
  }

  /**
   * Where the case with this name lies, sealed or not; the place of a clear one if it is not there.
   */
  public Path where(String name) throws IOException {
    Path sealed = sealedPath(name);
    return disk.names(folder).contains(name + SEALED_END) ? sealed : path(name);
  }

  /** Where the content before the last save lies. */
  Path previous(String name) {
    path(name);
    return folder.resolve(name + PREVIOUS_END);
  }

  /**
   * Asks for the lock of a case, which is to be held while it is saved, and clears away what
   * broken-off saves left behind.
   *
   * @throws IOException if the folder cannot be made
   */
  public CaseLock.Taking lock(String name, Holder me) throws IOException {
    path(name);
    disk.createFolder(folder);
    CaseLock.Taking taking = CaseLock.take(folder.resolve(name + LOCK_END), me);
    if (taking instanceof CaseLock.Taking.Taken) {
      sweepQuietly(name);
    }
    return taking;
  }

  /**
   * Saves a case under its name, replacing what was there; that is kept beside it.
   *
   * @param key what it is sealed with; with none it is saved in the clear
   * @throws IOException if it is not saved; what was there before is then still there
   */
  public void save(CaseDocument document, Questionnaire questionnaire, Optional<SealKey> key)
      throws IOException {
    String name = document.saved().name();
    Path target = key.isPresent() ? sealedPath(name) : path(name);
    byte[] clear = CaseWriter.write(document, questionnaire).getBytes(StandardCharsets.UTF_8);
    if (clear.length > JsonReader.MAXIMUM_BYTES) {
      // A file that could not be opened again would be worse than the one before.
      throw new FileSystemException(target.toString(), null, "the case is too large");
    }
    disk.createFolder(folder);
    replacement(name)
        .put(key.map(k -> Seal.seal(clear, k)).orElse(clear), target, Optional.of(previous(name)));
  }

  /**
   * Seals a case that was kept in the clear, and every other file with its content.
   *
   * <p>The sealed case is written first. If the machine dies before the clear files are gone, the
   * sealed one counts, and the clear ones go when the case is next locked.
   *
   * @throws IOException if it cannot be sealed
   */
  public void seal(CaseDocument document, Questionnaire questionnaire, SealKey key)
      throws IOException {
    save(document, questionnaire, Optional.of(key));
    String name = document.saved().name();
    if (disk.names(folder).contains(name + BEFORE_END)) {
      byte[] before = disk.read(before(name), Seal.MOST_SEALED);
      if (!Seal.isSealed(before)) {
        putBeside(name, before(name), Seal.seal(before, key));
      }
    }
    removeClear(name);
    replacement(name).settle();
  }

  /** Removes what is in the clear of a case that is sealed. */
  private void removeClear(String name) throws IOException {
    List<String> files = disk.names(folder);
    if (!files.contains(name + SEALED_END)) {
      return;
    }
    disk.delete(path(name));
    if (files.contains(name + PREVIOUS_END)
        && !Seal.isSealed(disk.read(previous(name), Seal.MOST_SEALED))) {
      disk.delete(previous(name));
    }
  }

  /**
   * Puts a file that belongs to a case beside it, such as a page.
   *
   * @throws IOException if it is not written; what was there before is then still there
   */
  public void putBeside(String name, Path file, byte[] bytes) throws IOException {
    disk.createFolder(folder);
    replacement(name).put(bytes, file, Optional.empty());
  }

  /**
   * Keeps a copy of a case as it is now, which no later save replaces.
   *
   * @throws IOException if it cannot be kept
   */
  public void keepAsItWas(String name, Path file) throws IOException {
    putBeside(name, before(name), disk.read(file, Integer.MAX_VALUE));
  }

  /** Where a case lies as it was before answers were left out. */
  private Path before(String name) {
    return folder.resolve(name + BEFORE_END);
  }

  private Replacement replacement(String name) {
    return new Replacement(disk, folder, name);
  }

  /**
   * Opens the case with this name.
   *
   * @throws IOException if the disk fails
   */
  public Opened open(String name, Questionnaire questionnaire, Passphrases passphrases)
      throws IOException {
    if (!CaseName.isLawful(name)) {
      return refused(
          name, "wrong-name", "No case is called that.", "Names have small letters and hyphens.");
    }
    return open(where(name), questionnaire, passphrases);
  }

  /**
   * The name under which a case from this file is saved here: its own, unless it would then replace
   * another case.
   */
  private String nameHere(Path file, String name) throws IOException {
    List<String> names = names();
    for (String here : names) {
      if (where(here).toAbsolutePath().equals(file.toAbsolutePath())) {
        return here;
      }
    }
    if (!CaseName.isLawful(name)) {
      return freshName(0);
    }
    return names.contains(name) ? suffixed(name, names) : name;
  }

  private static String suffixed(String name, List<String> taken) {
    String beginning = name.substring(0, Math.min(name.length(), CaseName.LONGEST - 5));
    int suffix = 2;
    while (taken.contains(beginning + "-" + suffix)) {
      suffix++;
    }
    return beginning + "-" + suffix;
  }

  /**
   * Opens a case file anywhere. Where saving it here under its own name would replace another case,
   * it gets another name, with a warning.
   *
   * @throws IOException if the disk fails
   */
  public Opened open(Path file, Questionnaire questionnaire, Passphrases passphrases)
      throws IOException {
    byte[] bytes;
    try {
      bytes = disk.read(file, Seal.MOST_SEALED + 1);
    } catch (NoSuchFileException e) {
      return refused(file.toString(), "no-such-case", "There is no such case.", "");
    } catch (NotPlainFile e) {
      return refused(file.toString(), "not-a-file", "This is a folder or a link, not a case.", "");
    } catch (AccessDeniedException e) {
      return refused(
          file.toString(), "unreadable", "This case may not be read.", "Look at its rights.");
    }
    if (!Seal.isSealed(bytes)) {
      return read(file, bytes, questionnaire, Optional.empty());
    }
    Optional<Seal.Opened> opened = unsealed(bytes, passphrases);
    return opened.isEmpty()
        ? refused(
            file.toString(),
            "sealed",
            "This case is sealed and was not opened: no passphrase, a wrong one, or a damaged file.",
            "The passphrase is asked for at the terminal. Nothing opens a case without it.")
        : read(file, opened.get().clear(), questionnaire, Optional.of(opened.get().key()));
  }

  /**
   * The document in a case file as it is, whatever schema or bank it was made with.
   *
   * @return nothing if the file is sealed and was not opened
   * @throws IOException if the file cannot be read
   */
  public Optional<byte[]> document(Path file, Passphrases passphrases) throws IOException {
    byte[] bytes = disk.read(file, Seal.MOST_SEALED + 1);
    return Seal.isSealed(bytes)
        ? unsealed(bytes, passphrases).map(Seal.Opened::clear)
        : Optional.of(bytes);
  }

  private static Optional<Seal.Opened> unsealed(byte[] bytes, Passphrases passphrases) {
    for (int attempt = 1; attempt <= ATTEMPTS; attempt++) {
      Optional<char[]> passphrase = passphrases.ask(attempt);
      if (passphrase.isEmpty()) {
        return Optional.empty();
      }
      try {
        return Optional.of(Seal.open(bytes, passphrase.get()));
      } catch (Seal.Refused e) {
        // Asked again.
      } finally {
        Arrays.fill(passphrase.get(), ' ');
      }
    }
    return Optional.empty();
  }

  private Opened read(Path file, byte[] bytes, Questionnaire questionnaire, Optional<SealKey> key)
      throws IOException {
    List<Problem> problems = new ArrayList<>();
    Optional<CaseReader.Result> result =
        CaseReader.read(file.toString(), bytes, questionnaire, problems);
    return result.isEmpty()
        ? new Opened.Refused(problems)
        : opened(file, result.get(), problems, key);
  }

  private Opened opened(
      Path file, CaseReader.Result result, List<Problem> problems, Optional<SealKey> key)
      throws IOException {
    String inside = result.document().saved().name();
    String name = nameHere(file, inside);
    List<Problem> warnings = new ArrayList<>(problems);
    if (!name.equals(inside)) {
      warnings.add(
          Problem.warning(
              Where.file(file.toString()),
              "other-name",
              "The file and the case in it have different names; it is kept as " + name + ".",
              ""));
    }
    return new Opened.Case(
        new CaseFile(file, result.document().named(name), result.dropped(), warnings, key));
  }

  private static Opened refused(String file, String code, String what, String mend) {
    return new Opened.Refused(List.of(Problem.error(Where.file(file), code, what, mend)));
  }

  /** The names of all cases here, in alphabetical order. */
  public List<String> names() throws IOException {
    Set<String> names = new TreeSet<>();
    for (String file : disk.names(folder)) {
      for (String end : List.of(END, SEALED_END)) {
        if (file.endsWith(end)) {
          names.add(file.substring(0, file.length() - end.length()));
        }
      }
    }
    return names.stream().filter(CaseName::isLawful).toList();
  }

  /**
   * A name that no case here has, chosen by a number; the next free one after it where the first is
   * taken.
   */
  public String freshName(long number) throws IOException {
    List<String> taken = names();
    for (int i = 0; i < CaseName.count(); i++) {
      String name = CaseName.of(number + i);
      if (!taken.contains(name)) {
        return name;
      }
    }
    return suffixed(CaseName.of(number), taken);
  }

  /**
   * Removes a case, its previous content and everything a broken-off save left of it. A disk may
   * keep copies that no program can reach.
   */
  public void delete(String name) throws IOException {
    disk.delete(path(name));
    disk.delete(sealedPath(name));
    disk.delete(previous(name));
    disk.delete(before(name));
    Replacement replacement = replacement(name);
    replacement.sweep();
    replacement.settle();
  }

  /** Where nothing may be removed, a case can still be written. */
  private void sweepQuietly(String name) {
    try {
      replacement(name).sweep();
      removeClear(name);
    } catch (IOException e) {
      // What is left behind does no harm and is removed another time.
    }
  }
}
