package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.json.BankFiles;
import closehand.json.BankFolder;
import closehand.json.BankInspection;
import closehand.json.EmbeddedBank;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Loads a question bank: the one inside the program, or one in a folder after a full check. */
final class BankSource {
  private BankSource() {}

  /** What came of loading or checking a bank. */
  record Loaded(Optional<Bank> bank, List<Problem> problems) {}

  /**
   * A bank to work with. The embedded bank was checked when the program was built; a folder is
   * checked now, and gives no bank when it holds an error.
   */
  static Loaded load(Optional<Path> folder) throws IOException {
    if (folder.isPresent()) {
      return check(folder);
    }
    return new Loaded(Optional.of(EmbeddedBank.forUse()), List.of());
  }

  /** The same beside the rest of a start. */
  static Ahead<Loaded> ahead(Optional<Path> folder) {
    return Ahead.begin("bank", new Loading(folder));
  }

  /** Loads a bank on another thread. */
  private record Loading(Optional<Path> folder) implements Supplier<Loaded> {
    @Override
    public Loaded get() {
      try {
        return load(folder);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** The same as soon as somebody says so or needs it. */
  static Ahead<Loaded> later(Optional<Path> folder) {
    return Ahead.later("bank", new Loading(folder));
  }

  /** What {@link #ahead} loads, once it is. */
  static Loaded await(Ahead<Loaded> ahead) throws IOException {
    try {
      return ahead.get();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** Everything that is wrong with a bank; the bank only if it holds no error. */
  static Loaded check(Optional<Path> folder) throws IOException {
    BankInspection inspection = BankInspection.of(files(folder));
    return new Loaded(inspection.bank(), inspection.problems());
  }

  private static BankFiles files(Optional<Path> folder) throws IOException {
    if (folder.isEmpty()) {
      return new EmbeddedBank();
    }
    if (Files.isRegularFile(folder.get())) {
      throw new NotDirectoryException(folder.get().toString());
    }
    if (!Files.isDirectory(folder.get())) {
      throw new NoSuchFileException(folder.get().toString());
    }
    return new BankFolder(folder.get());
  }
}
