package closehand.json;

import closehand.bank.Bank;
import closehand.bank.FlatValue;
import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.interview.FlatAnswers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Answers from a file of either form: a saved case or flat answers. Read once, matched with as many
 * banks as wanted.
 */
public final class AnyAnswers {
  private final String file;
  private final byte[] bytes;
  private final Optional<Map<String, FlatValue>> flat;

  private AnyAnswers(String file, byte[] bytes, Optional<Map<String, FlatValue>> flat) {
    this.file = file;
    this.bytes = bytes;
    this.flat = flat;
  }

  /**
   * Reads a file.
   *
   * @param file the name used in messages
   * @param problems receives whatever is wrong
   * @return nothing when it cannot be read
   */
  public static Optional<AnyAnswers> read(String file, byte[] bytes, List<Problem> problems) {
    List<Problem> found = new ArrayList<>();
    Optional<AnyAnswers> answers =
        JsonReader.read(file, bytes, found).flatMap(d -> of(file, bytes, d, found));
    problems.addAll(found);
    return answers;
  }

  /** Whether a document says of itself that it is a saved case. */
  public static boolean isCase(JsonValue document) {
    return document instanceof JsonValue.Obj object
        && object.member("format").orElse(null) instanceof JsonValue.Str format
        && format.value().equals(CaseWriter.FORMAT);
  }

  private static Optional<AnyAnswers> of(
      String file, byte[] bytes, JsonValue document, List<Problem> found) {
    if (isCase(document)) {
      return Optional.of(new AnyAnswers(file, bytes, Optional.empty()));
    }
    Map<String, FlatValue> values = FlatReader.read(document, found);
    return Problem.anyError(found)
        ? Optional.empty()
        : Optional.of(new AnyAnswers(file, bytes, Optional.of(values)));
  }

  /**
   * The answers that fit a bank; what the bank does not ask is left out with a problem.
   *
   * @return nothing when a saved case cannot be read with it
   */
  public Optional<Answers> matching(Bank bank, List<Problem> problems) {
    if (flat.isPresent()) {
      FlatAnswers answers = FlatAnswers.of(bank, flat.get());
      problems.addAll(answers.problems());
      return Optional.of(answers.answers());
    }
    return CaseReader.read(file, bytes, bank.questionnaire(), problems)
        .map(r -> r.document().saved().answers());
  }
}
