package closehand.json;

import closehand.bank.Bank;
import closehand.bank.BankCheck;
import closehand.bank.Catalogue;
import closehand.bank.Doubt;
import closehand.bank.Path;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What could be read of a bank, sound or not, with its files, so that everything wrong with it can
 * be told in one pass and in the order of the files.
 */
public final class BankDraft {
  private final Optional<Bank> bank;
  private final Set<Catalogue> incomplete;
  private final List<Problem> form;
  private final Map<String, Optional<JsonValue>> documents;

  /**
   * A draft.
   *
   * @param documents the files in the order they were read; empty for one that could not be
   */
  BankDraft(
      Optional<Bank> bank,
      Set<Catalogue> incomplete,
      List<Problem> form,
      Map<String, Optional<JsonValue>> documents) {
    this.bank = bank;
    this.incomplete = Set.copyOf(incomplete);
    this.documents = new LinkedHashMap<>(documents);
    this.form = inFileOrder(form);
  }

  /** What is wrong with the form of the files, in their order. */
  List<Problem> form() {
    return form;
  }

  /** Everything wrong with form and meaning, in the order of the files, each once. */
  public List<Problem> check() {
    List<Problem> all = new ArrayList<>(form);
    bank.ifPresent(b -> all.addAll(BankCheck.check(b, new Doubt(incomplete, form))));
    return inFileOrder(all);
  }

  /**
   * Problems of this bank in the order of its files, each once; those that only know their place
   * inside a file are given their line.
   */
  public List<Problem> inFileOrder(List<Problem> problems) {
    List<String> files = List.copyOf(documents.keySet());
    return problems.stream()
        .map(this::located)
        .distinct()
        .sorted(
            Comparator.<Problem>comparingInt(p -> files.indexOf(p.where().file()))
                .thenComparing(Problem.BY_PLACE))
        .toList();
  }

  private Problem located(Problem problem) {
    Where where = problem.where();
    Optional<JsonValue> document = documents.getOrDefault(where.file(), Optional.empty());
    if (where.line() > 0 || document.isEmpty()) {
      return problem;
    }
    JsonValue at = document.get();
    Path path = Path.ROOT;
    for (String step : where.path().steps()) {
      Optional<JsonValue> next = step(at, step);
      if (next.isEmpty()) {
        break;
      }
      at = next.get();
      path = path.child(step);
    }
    Where exact = new Where(where.file(), at.where().line(), at.where().column(), path);
    return new Problem(problem.severity(), exact, problem.code(), problem.what(), problem.mend());
  }

  private static Optional<JsonValue> step(JsonValue value, String step) {
    if (value instanceof JsonValue.Obj object) {
      return object.member(step);
    }
    if (value instanceof JsonValue.Arr array && isIndex(step)) {
      int index = Integer.parseInt(step);
      return index < array.items().size()
          ? Optional.of(array.items().get(index))
          : Optional.empty();
    }
    return Optional.empty();
  }

  private static boolean isIndex(String step) {
    return !step.isEmpty() && step.length() < 8 && step.chars().allMatch(c -> c >= '0' && c <= '9');
  }
}
