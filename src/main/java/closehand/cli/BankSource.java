package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.BankCheck;
import closehand.bank.Problem;
import closehand.json.BankFiles;
import closehand.json.BankFolder;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.rules.Examples;
import closehand.rules.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
    BankReader.Result result = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE);
    if (result.bank().isEmpty()) {
      throw new IllegalStateException("the embedded bank cannot be read");
    }
    return new Loaded(result.bank(), List.of());
  }

  /** Everything that is wrong with a bank; the bank only if it holds no error. */
  static Loaded check(Optional<Path> folder) throws IOException {
    BankReader.Result result = BankReader.read(files(folder), BankReader.Extent.WHOLE);
    List<Problem> problems = new ArrayList<>(result.problems());
    if (result.bank().isPresent()) {
      Bank bank = result.bank().get();
      problems.addAll(BankCheck.check(bank));
      List<String> loops = RuleBook.cycles(bank);
      if (!loops.isEmpty()) {
        problems.add(cycle(bank, loops));
      } else if (!Problem.anyError(problems)) {
        problems.addAll(Examples.check(bank));
      }
    }
    return new Loaded(Problem.anyError(problems) ? Optional.empty() : result.bank(), problems);
  }

  private static Problem cycle(Bank bank, List<String> loops) {
    return bank.terms().stream()
        .filter(t -> loops.contains(t.id()))
        .findFirst()
        .map(
            t ->
                Problem.error(
                    t.where(),
                    "cycle",
                    "These terms need each other: " + String.join(", ", loops) + ".",
                    "Break the loop."))
        .orElseThrow();
  }

  private static BankFiles files(Optional<Path> folder) throws NoSuchFileException {
    if (folder.isEmpty()) {
      return new EmbeddedBank();
    }
    if (!Files.isDirectory(folder.get())) {
      throw new NoSuchFileException(folder.get().toString());
    }
    return new BankFolder(folder.get());
  }
}
