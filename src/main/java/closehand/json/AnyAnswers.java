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
import java.util.Set;

/**
 * Answers from a file of either form: a saved case or flat answers. Read once, matched with as many
 * banks as wanted.
 */
public final class AnyAnswers {
  /** What a saved case holds besides its answers; not looked at. */
  private static final Set<String> BESIDES =
      Set.of("consents", "history", "suggested", "measured", "plans", "trials");

  private final JsonValue document;
  private final Optional<Map<String, FlatValue>> flat;

  private AnyAnswers(JsonValue document, Optional<Map<String, FlatValue>> flat) {
    this.document = document;
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
        JsonReader.read(file, bytes, AnyAnswers::isBesides, found).flatMap(d -> of(d, found));
    problems.addAll(found);
    return answers;
  }

  private static boolean isBesides(List<JsonValue.Member> before, String name) {
    return BESIDES.contains(name)
        && !before.isEmpty()
        && before.get(0).name().equals("format")
        && isFormat(before.get(0).value());
  }

  private static boolean isFormat(JsonValue value) {
    return value instanceof JsonValue.Str format && format.value().equals(CaseWriter.FORMAT);
  }

  /** Whether a document says of itself that it is a saved case. */
  public static boolean isCase(JsonValue document) {
    return document instanceof JsonValue.Obj object
        && object.member("format").filter(AnyAnswers::isFormat).isPresent();
  }

  private static Optional<AnyAnswers> of(JsonValue document, List<Problem> found) {
    if (isCase(document)) {
      return Optional.of(new AnyAnswers(document, Optional.empty()));
    }
    Map<String, FlatValue> values = FlatReader.read(answersOf(document), found);
    return Problem.anyError(found)
        ? Optional.empty()
        : Optional.of(new AnyAnswers(document, Optional.of(values)));
  }

  /**
   * The document without what is no answer: changed actions of games, and what was said of load.
   */
  private static JsonValue answersOf(JsonValue document) {
    return OwnLimitsReader.rest(GameChangesReader.split(document).rest());
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
    return CaseReader.answers(document, bank.questionnaire(), problems);
  }
}
