package closehand.json;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.bank.Term;
import closehand.bank.Where;
import closehand.rules.Examples;
import closehand.rules.RuleBook;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A bank inspected as its author wants it: everything that is wrong, in one pass, from the form of
 * its files to examples that come out otherwise than they say.
 *
 * @param bank the bank; empty if it holds an error
 * @param problems all that is wrong, in the order of its files, each once
 */
public record BankInspection(Optional<Bank> bank, List<Problem> problems) {
  public BankInspection {
    problems = List.copyOf(problems);
  }

  /**
   * Inspects a bank. Loops among terms and the examples are looked at when nothing else is wrong.
   *
   * @throws IOException if a file is there but cannot be read
   */
  public static BankInspection of(BankFiles files) throws IOException {
    BankReader.Result result = BankReader.read(files, BankReader.Extent.WHOLE);
    List<Problem> problems = new ArrayList<>(result.draft().check());
    if (result.bank().isEmpty() || Problem.anyError(problems)) {
      return new BankInspection(Optional.empty(), problems);
    }
    Bank bank = result.bank().get();
    List<String> loops = RuleBook.cycles(bank);
    problems.addAll(loops.isEmpty() ? workedOut(bank, files) : cycles(bank, loops));
    Optional<Bank> sound = Problem.anyError(problems) ? Optional.empty() : Optional.of(bank);
    return new BankInspection(sound, result.draft().inFileOrder(problems));
  }

  private static List<Problem> cycles(Bank bank, List<String> loops) {
    List<Problem> problems = new ArrayList<>();
    for (Term term : bank.terms()) {
      if (loops.contains(term.id())) {
        problems.add(
            Problem.error(
                term.where(),
                "cycle",
                "\"" + term.id() + "\" is worked out from itself in the end.",
                "Break the loop: " + String.join(", ", loops) + "."));
      }
    }
    return problems;
  }

  private static List<Problem> workedOut(Bank bank, BankFiles files) {
    try {
      return Examples.check(bank);
    } catch (IllegalArgumentException tooFine) {
      return List.of(
          Problem.error(
              Where.file(files.displayName("bank.json")),
              "too-fine",
              "The rules cannot be worked out: " + tooFine.getMessage() + ".",
              "Compare that fact with fewer different numbers."));
    }
  }
}
