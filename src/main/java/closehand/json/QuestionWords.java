package closehand.json;

import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Question;
import closehand.bank.TaskKind;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads this project's own extensions of a question, which take one word out of a few. */
final class QuestionWords {
  private final FhirExtensions extensions;
  private final List<Problem> problems;

  QuestionWords(FhirExtensions extensions, List<Problem> problems) {
    this.extensions = extensions;
    this.problems = problems;
  }

  Question.Route route() {
    List<Question.Route> all = List.of(Question.Route.values());
    int found = word("path", all.stream().map(Question.Route::code).toList());
    return found < 0 ? Question.Route.FULL : all.get(found);
  }

  Question.AskedBy askedBy() {
    List<Question.AskedBy> all = List.of(Question.AskedBy.values());
    int found = word("asked-by", all.stream().map(Question.AskedBy::code).toList());
    return found < 0 ? Question.AskedBy.VOLUNTEER : all.get(found);
  }

  Optional<TaskKind> task() {
    word("task", Arrays.stream(TaskKind.values()).map(TaskKind::code).toList());
    return extensions.textOf(FhirExtensions.OWN + "task").flatMap(TaskKind::of);
  }

  /** 0 to 3; 0 if none is given. */
  int weight() {
    String url = FhirExtensions.OWN + "safety-weight";
    int weight = extensions.numberOf(url).orElse(0.0).intValue();
    if (weight < 0 || weight > 3) {
      extensions
          .value(url)
          .ifPresent(
              v ->
                  problems.add(
                      Problem.error(
                          v.where(), "out-of-range", "A safety weight is from 0 to 3.", "")));
    }
    return weight;
  }

  /** Which of the known words it is; -1 if none is given or it is not known. */
  private int word(String name, List<String> known) {
    Optional<JsonValue> value = extensions.value(FhirExtensions.OWN + name);
    if (!(value.orElse(null) instanceof JsonValue.Str text) || text.value().isBlank()) {
      return -1;
    }
    int found = known.indexOf(text.value());
    if (found < 0) {
      problems.add(
          Problem.error(
              text.where(),
              "unknown-value",
              "\"" + text.value() + "\" is not one of " + String.join(", ", known) + ".",
              Hint.didYouMean(text.value(), known)));
    }
    return found;
  }
}
