package closehand.cli;

import closehand.bank.Problem;
import closehand.bank.Where;
import closehand.casefile.CaseName;
import closehand.casefile.CaseStore;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which files a replay reads: saved cases by name, files as they were named, and whatever could be
 * a case in a folder. Links inside a folder are not followed, and what is left out is told.
 */
final class ReplayCases {
  private static final String CLEAR = ".json";
  private static final String SEALED = ".sealed";

  private final CaseStore store;
  private final List<One> files = new ArrayList<>();
  private final Set<Path> seen = new HashSet<>();
  private final List<Problem> leftOut = new ArrayList<>();

  private ReplayCases(CaseStore store) {
    this.store = store;
  }

  /**
   * A file to read.
   *
   * @param file where it lies
   * @param named whether somebody named it, who may mean a link
   */
  record One(Path file, boolean named) {
    /** How it is opened. */
    OpenOption[] options() {
      return named ? new OpenOption[0] : new OpenOption[] {LinkOption.NOFOLLOW_LINKS};
    }

    /** Whether it can be read without waiting for somebody to write into it. */
    boolean isPlain() {
      return named
          ? Files.isRegularFile(file)
          : Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }
  }

  /** Gathers the files behind these words. */
  static ReplayCases of(List<String> words, CaseStore store) throws IOException {
    ReplayCases gathered = new ReplayCases(store);
    for (String word : words) {
      gathered.gather(word);
    }
    return gathered;
  }

  /** The files, in order. */
  List<One> files() {
    return Collections.unmodifiableList(files);
  }

  /** What is left out and why, one for each. */
  List<Problem> leftOut() {
    return Collections.unmodifiableList(leftOut);
  }

  private void gather(String word) throws IOException {
    Path path = Path.of(word);
    if (Files.isDirectory(path)) {
      List<Path> here = new ArrayList<>();
      Files.walkFileTree(path, new Walk(here));
      Collections.sort(here);
      here.forEach(f -> add(new One(f, /* named= */ false)));
    } else if (CaseName.isLawful(word) && !Files.exists(path)) {
      add(new One(store.where(word), /* named= */ false));
    } else {
      add(new One(path, /* named= */ true));
    }
  }

  /** One file counts once, whichever ways lead to it. */
  private void add(One one) {
    Path real;
    try {
      real = one.file().toRealPath();
    } catch (IOException e) {
      // What is not there, or cannot be looked at, is told when it is read.
      real = one.file().toAbsolutePath().normalize();
    }
    if (seen.add(real)) {
      files.add(one);
    }
  }

  private final class Walk extends SimpleFileVisitor<Path> {
    private final List<Path> here;

    Walk(List<Path> here) {
      this.here = here;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      String name = file.toString();
      boolean couldBeCase = name.endsWith(CLEAR) || name.endsWith(SEALED);
      if (attributes.isSymbolicLink() && (couldBeCase || Files.isDirectory(file))) {
        leave(file, "link", "This is a link, so it is left out.", "Name what it leads to.");
      } else if (couldBeCase) {
        here.add(file);
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException e) {
      leave(file, "unreadable", "This cannot be read.", "Look at its rights.");
      return FileVisitResult.CONTINUE;
    }

    private void leave(Path file, String code, String what, String mend) {
      leftOut.add(Problem.error(Where.file(file.toString()), code, what, mend));
    }
  }
}
