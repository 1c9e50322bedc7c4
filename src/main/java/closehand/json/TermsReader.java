package closehand.json;

import closehand.bank.Problem;
import closehand.bank.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads terms: numbers computed from answers, and yes or no worked out from them. */
final class TermsReader {
  private final List<Problem> problems;
  private final ConditionReader conditions;

  TermsReader(List<Problem> problems) {
    this.problems = problems;
    this.conditions = new ConditionReader(problems);
  }

  List<Term> read(List<JsonValue> values) {
    List<Term> terms = new ArrayList<>();
    for (JsonValue value : values) {
      if (value instanceof JsonValue.Obj object) {
        String over =
            object.member("for").orElse(null) instanceof JsonValue.Str word ? word.value() : "";
        for (Template template : Template.instances(over)) {
          term(template.fill(object)).ifPresent(terms::add);
        }
      } else {
        ObjectReading.wrongType(value, "a term", problems);
      }
    }
    return terms;
  }

  private Optional<Term> term(JsonValue.Obj object) {
    ObjectReading in = new ObjectReading(object, problems);
    in.optional("for");
    String id = in.text("id");
    String text = in.text("text");
    Optional<JsonValue> when = in.optional("when");
    List<Term> found = new ArrayList<>();
    when.ifPresent(w -> found.add(new Term.Derived(id, text, conditions.read(w), object.where())));
    computed(in, found, id, text, "max", Term.Computation.MAXIMUM);
    computed(in, found, id, text, "min", Term.Computation.MINIMUM);
    computed(in, found, id, text, "count", Term.Computation.COUNT);
    computed(in, found, id, text, "difference", Term.Computation.DIFFERENCE);
    in.finish();
    if (found.size() != 1) {
      problems.add(
          Problem.error(
              object.where(),
              "missing",
              "A term has exactly one of when, max, min, count and difference.",
              ""));
      return Optional.empty();
    }
    return Optional.of(found.get(0));
  }

  private void computed(
      ObjectReading in,
      List<Term> found,
      String id,
      String text,
      String name,
      Term.Computation computation) {
    Optional<JsonValue> value = in.optional(name);
    if (value.isEmpty()) {
      return;
    }
    List<String> of =
        value.get() instanceof JsonValue.Str one
            ? List.of(one.value())
            : ObjectReading.texts(ObjectReading.items(value.get(), problems), problems);
    found.add(new Term.Computed(id, text, computation, of, in.where()));
  }
}
