package closehand.json;

import closehand.bank.Condition;
import closehand.bank.Findings;
import closehand.bank.Problem;
import closehand.bank.Term;
import java.util.ArrayList;
import java.util.List;

/** Reads terms: numbers computed from answers, and yes or no worked out from them. */
final class TermsReader {
  private final List<Problem> problems;

  TermsReader(List<Problem> problems) {
    this.problems = problems;
  }

  List<Term> read(List<JsonValue> values) {
    List<Term> terms = new ArrayList<>();
    for (JsonValue value : values) {
      if (!(value instanceof JsonValue.Obj object)) {
        ObjectReading.wrongType(value, "an object: a term", problems);
        continue;
      }
      Findings findings = new Findings(problems);
      for (Template template : Template.of(object, problems)) {
        List<Problem> found = new ArrayList<>();
        terms.add(new Instance(found).term(template.fill(object)));
        findings.addInstance(found);
      }
    }
    return terms;
  }

  /** Reads one instance of a term. */
  private record Instance(List<Problem> problems) {
    Term term(JsonValue.Obj object) {
      ObjectReading in = new ObjectReading(object, problems);
      in.optional("for");
      String id = in.text("id");
      String text = in.text("text");
      List<Term> found = new ArrayList<>();
      in.optional("when")
          .map(new ConditionReader(problems)::read)
          .ifPresent(c -> found.add(new Term.Derived(id, text, c, object.where())));
      for (Kind kind : KINDS) {
        in.optional(kind.name)
            .ifPresent(
                v -> found.add(new Term.Computed(id, text, kind.computation, of(v), in.where())));
      }
      if (found.isEmpty()) {
        in.missing(
            List.of("when", "max", "min", "count", "difference"),
            "This term does not say what it is worked out from.",
            "Add when, max, min, count or difference.");
      } else if (found.size() > 1) {
        problems.add(
            Problem.error(
                object.where(),
                "term-shape",
                "This term says twice what it is worked out from.",
                "Keep one of when, max, min, count and difference."));
      }
      in.finish();
      return found.isEmpty()
          ? new Term.Derived(id, text, new Condition.Always(object.where()), object.where())
          : found.get(0);
    }

    private List<String> of(JsonValue value) {
      return value instanceof JsonValue.Str one
          ? List.of(one.value())
          : ObjectReading.texts(ObjectReading.items(value, problems), problems);
    }
  }

  private record Kind(String name, Term.Computation computation) {}

  private static final List<Kind> KINDS =
      List.of(
          new Kind("max", Term.Computation.MAXIMUM),
          new Kind("min", Term.Computation.MINIMUM),
          new Kind("count", Term.Computation.COUNT),
          new Kind("difference", Term.Computation.DIFFERENCE));
}
