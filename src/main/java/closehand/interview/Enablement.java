package closehand.interview;

import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Questionnaire;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which fields apply, given some answers: {@code enableWhen} of HL7 FHIR R4.
 *
 * <p>A field applies when its own condition and those of all groups around it hold. A condition on
 * a question that does not apply, or that has no answer, sees no answer there, whatever is
 * remembered. An answer without a value ("don't know") exists, but compares with nothing. Of
 * several answers one suffices: "!=" holds when some answer differs, even where another is equal.
 * Source: HL7 FHIR R4 (4.0.1), Questionnaire, {@code enableWhen} and its comments, and the code
 * system of its operators.
 */
public final class Enablement {
  private static final byte APPLIES = 1;
  private static final byte DOES_NOT = 2;

  private final Outline outline;
  private final Answers answers;
  private final byte[] worked;
  private final byte[] workedMaybe;
  private final byte[] holding;
  private final byte[] holdingMaybe;

  private Enablement(Outline outline, Answers answers) {
    this.outline = outline;
    this.answers = answers;
    this.worked = new byte[outline.places().size()];
    this.workedMaybe = new byte[worked.length];
    this.holding = new byte[outline.gates().count()];
    this.holdingMaybe = new byte[holding.length];
  }

  /** Works out what applies. */
  public static Enablement of(Questionnaire questionnaire, Answers answers) {
    return new Enablement(Outline.of(questionnaire), answers);
  }

  /** Works out what applies. */
  public static Enablement of(Outline outline, Answers answers) {
    return new Enablement(outline, answers);
  }

  /**
   * Whether it was worked out for just these answers. The same object, since comparing all answers
   * would cost more than working it out again.
   */
  @SuppressWarnings("ReferenceEquality")
  boolean isOf(Answers some) {
    return answers == some;
  }

  /** Whether this field applies; never for a fact that the questionnaire does not have. */
  public boolean applies(String fact) {
    Optional<Outline.Place> place = outline.place(fact);
    return place.isPresent() && applies(place.get());
  }

  /** Whether this field applies. */
  boolean applies(Outline.Place place) {
    return judge(place, worked, /* certain= */ true);
  }

  /**
   * Whether this field applies, or could once open questions are answered. Errs on the side of yes;
   * good enough to say about how many questions there are.
   */
  public boolean mayApply(String fact) {
    Optional<Outline.Place> place = outline.place(fact);
    return place.isPresent() && mayApply(place.get());
  }

  /** The same of a field. */
  boolean mayApply(Outline.Place place) {
    return judge(place, workedMaybe, /* certain= */ false);
  }

  /** The answers that apply, in the order of the interview. */
  public Answers effective() {
    Map<String, Answers.Recorded> kept = new LinkedHashMap<>();
    for (Outline.Place place : outline.places()) {
      Answers.Recorded recorded = answers.byFact().get(place.fact());
      if (recorded != null && applies(place)) {
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

  private boolean judge(Outline.Place place, byte[] memory, boolean certain) {
    int at = place.index();
    if (memory[at] == 0) {
      memory[at] = DOES_NOT; // a condition that leads back to its own field never holds
      memory[at] = allHold(place, certain) ? APPLIES : DOES_NOT;
    }
    return memory[at] == APPLIES;
  }

  private boolean allHold(Outline.Place place, boolean certain) {
    for (int gate : outline.gates().of(place)) {
      if (!holds(gate, certain)) {
        return false;
      }
    }
    return true;
  }

  private boolean holds(int number, boolean certain) {
    byte[] memory = certain ? holding : holdingMaybe;
    if (memory[number] == 0) {
      memory[number] = holds(outline.gates().gate(number), certain) ? APPLIES : DOES_NOT;
    }
    return memory[number] == APPLIES;
  }

  private boolean holds(Gates.Gate gate, boolean certain) {
    boolean all = gate.condition().all();
    for (int i = 0; i < gate.places().length; i++) {
      boolean holds = holds(gate, i) || (!certain && mayHold(gate, i));
      if (holds != all) {
        return holds;
      }
    }
    return all;
  }

  private boolean mayHold(Gates.Gate gate, int test) {
    int at = gate.places()[test];
    if (at == Gates.NOWHERE) {
      return false;
    }
    Outline.Place place = outline.places().get(at);
    return judge(place, workedMaybe, /* certain= */ false)
        && !(applies(place) && exists(place.field()));
  }

  private boolean holds(Gates.Gate gate, int number) {
    EnableWhen.Test test = gate.condition().tests().get(number);
    int at = gate.places()[number];
    boolean exists = at != Gates.NOWHERE && exists(outline.places().get(at));
    if (test.operator() == EnableWhen.Operator.EXISTS) {
      return test.expected() instanceof EnableWhen.Expected.Flag wanted && wanted.value() == exists;
    }
    return exists && anyMatches(outline.places().get(at).field(), test);
  }

  private boolean exists(Outline.Place place) {
    return applies(place) && exists(place.field());
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
    Answers.Recorded recorded = answers.byFact().get(field.fact());
    return recorded != null
        && (recorded.answer() instanceof Answer.Absent || !values(field).isEmpty());
  }

  /** The single values given to a field; several choices count one by one. */
  private List<Value> values(Field field) {
    Optional<Value> value = answers.value(field.fact());
    if (value.isEmpty()) {
      return List.of();
    }
    if (value.get() instanceof Value.Codes codes) {
      List<String> picked = codes.codes().isEmpty() ? none(field.type()) : codes.codes();
      List<Value> values = new ArrayList<>(picked.size());
      for (String code : picked) {
        values.add(new Value.Code(code));
      }
      return values;
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
