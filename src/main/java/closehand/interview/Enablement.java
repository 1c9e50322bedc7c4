package closehand.interview;

import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Questionnaire;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Which fields apply, given some answers: {@code enableWhen} of HL7 FHIR R4.
 *
 * <p>A field applies when its own condition and those of all groups around it hold. A condition on
 * a question that does not apply, or that has no answer, sees no answer there, whatever is
 * remembered. An answer without a value ("don't know") exists, but compares with nothing. Source:
 * HL7 FHIR R4 (4.0.1), Questionnaire, {@code enableWhen} and its comments.
 */
public final class Enablement {
  private static final byte APPLIES = 1;
  private static final byte DOES_NOT = 2;

  private final Outline outline;
  private final Answers answers;
  private final byte[] worked;
  private final byte[] workedMaybe;

  private Enablement(Outline outline, Answers answers) {
    this.outline = outline;
    this.answers = answers;
    this.worked = new byte[outline.places().size()];
    this.workedMaybe = new byte[worked.length];
  }

  /** Works out what applies. */
  public static Enablement of(Questionnaire questionnaire, Answers answers) {
    return new Enablement(Outline.of(questionnaire), answers);
  }

  /** Works out what applies. */
  public static Enablement of(Outline outline, Answers answers) {
    return new Enablement(outline, answers);
  }

  /** Whether this field applies; never for a fact that the questionnaire does not have. */
  public boolean applies(String fact) {
    return outline.place(fact).filter(p -> judge(p, worked, this::holds)).isPresent();
  }

  /**
   * Whether this field applies, or could once open questions are answered. Errs on the side of yes;
   * good enough to say about how many questions there are.
   */
  public boolean mayApply(String fact) {
    return outline.place(fact).filter(p -> judge(p, workedMaybe, this::mayHold)).isPresent();
  }

  /** The answers that apply, in the order of the interview. */
  public Answers effective() {
    Map<String, Answers.Recorded> kept = new LinkedHashMap<>();
    for (Outline.Place place : outline.places()) {
      Answers.Recorded recorded = answers.byFact().get(place.fact());
      if (recorded != null && applies(place.fact())) {
        kept.put(place.fact(), recorded);
      }
    }
    return new Answers(kept, answers.lowered());
  }

  /** The answers that were given but do not apply at the moment, in the order given. */
  public Answers setAside() {
    Map<String, Answers.Recorded> aside = new LinkedHashMap<>(answers.byFact());
    aside.keySet().removeIf(this::applies);
    return new Answers(aside, List.of());
  }

  /** Whether somebody answered this and the answer counts; value-less answers are answers. */
  boolean answered(String fact) {
    return applies(fact) && outline.place(fact).filter(p -> exists(p.field())).isPresent();
  }

  private boolean judge(Outline.Place place, byte[] memory, Predicate<EnableWhen.Test> test) {
    int at = place.index();
    if (memory[at] == 0) {
      memory[at] = DOES_NOT; // a condition that leads back to its own field never holds
      memory[at] = allHold(place.field(), test) ? APPLIES : DOES_NOT;
    }
    return memory[at] == APPLIES;
  }

  private static boolean allHold(Field field, Predicate<EnableWhen.Test> test) {
    for (EnableWhen when : field.conditions()) {
      boolean holds =
          when.all() ? when.tests().stream().allMatch(test) : when.tests().stream().anyMatch(test);
      if (!holds) {
        return false;
      }
    }
    return true;
  }

  private boolean mayHold(EnableWhen.Test test) {
    return holds(test) || (mayApply(test.fact()) && !answered(test.fact()));
  }

  private boolean holds(EnableWhen.Test test) {
    boolean exists = answered(test.fact());
    if (test.operator() == EnableWhen.Operator.EXISTS) {
      return test.expected() instanceof EnableWhen.Expected.Flag wanted && wanted.value() == exists;
    }
    return exists
        && outline.place(test.fact()).filter(p -> anyMatches(p.field(), test)).isPresent();
  }

  private boolean anyMatches(Field field, EnableWhen.Test test) {
    for (Value value : values(field)) {
      if (Comparison.holds(value, test, field.type())) {
        return true;
      }
    }
    return false;
  }

  /** Whether a response would hold an answer here: an empty choice without "none" is no answer. */
  private boolean exists(Field field) {
    return answers.answer(field.fact()).filter(a -> a instanceof Answer.Absent).isPresent()
        || !values(field).isEmpty();
  }

  /** The single values given to a field; several choices count one by one. */
  private List<Value> values(Field field) {
    Optional<Value> value = answers.value(field.fact());
    if (value.isEmpty()) {
      return List.of();
    }
    if (value.get() instanceof Value.Codes codes) {
      List<String> picked = codes.codes().isEmpty() ? none(field.type()) : codes.codes();
      return picked.stream().<Value>map(Value.Code::new).toList();
    }
    if (value.get() instanceof Value.Texts texts) {
      return texts.words().stream().<Value>map(Value.Text::new).toList();
    }
    return List.of(value.get());
  }

  private static List<String> none(FactType type) {
    return type.choices().stream().filter(Option::exclusive).map(Option::code).limit(1).toList();
  }
}
