package closehand.plan;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Questionnaire;
import closehand.interview.Answers;
import closehand.interview.Provenance;
import closehand.interview.Value;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Answers as a plan reads them. It notes every fact that was asked for and is not known, so that a
 * plan can say what it waits for.
 */
public final class KnownFacts {
  private final Map<String, Field> fields;
  private final Answers answers;
  private final Set<String> missing = new LinkedHashSet<>();

  /**
   * Starts on the answers that apply.
   *
   * @param answers without those whose question no longer applies
   */
  public KnownFacts(Questionnaire questionnaire, Answers answers) {
    this.fields = questionnaire.fieldsByFact();
    this.answers = answers;
  }

  /** The facts that were looked for in vain, in the order looked for. */
  public List<String> missing() {
    return List.copyOf(missing);
  }

  private Optional<Value> value(String fact) {
    Optional<Value> value = answers.value(fact);
    if (value.isEmpty() && fields.containsKey(fact)) {
      missing.add(fact);
    }
    return value;
  }

  /** A number, or the place of the option picked on its scale. */
  public OptionalDouble number(String fact) {
    Value value = value(fact).orElse(null);
    if (value instanceof Value.Number number) {
      return OptionalDouble.of(number.value());
    }
    Field field = fields.get(fact);
    if (value instanceof Value.Code code && field != null) {
      FactType type = field.type();
      return type.option(code.code()).map(o -> o.ordinal()).orElse(OptionalDouble.empty());
    }
    return OptionalDouble.empty();
  }

  /** Whether a number is known and at least this. */
  public boolean atLeast(String fact, double least) {
    OptionalDouble number = number(fact);
    return number.isPresent() && number.getAsDouble() >= least;
  }

  /** The code of the option picked. */
  public Optional<String> code(String fact) {
    return value(fact).orElse(null) instanceof Value.Code code
        ? Optional.of(code.code())
        : Optional.empty();
  }

  /** The codes of the options picked, where the question was answered. */
  public Optional<List<String>> codes(String fact) {
    return value(fact).orElse(null) instanceof Value.Codes codes
        ? Optional.of(codes.codes())
        : Optional.empty();
  }

  /** A list of words, empty where there is none. */
  public List<String> words(String fact) {
    return answers.value(fact).orElse(null) instanceof Value.Texts texts
        ? texts.words()
        : List.of();
  }

  /** Free words, empty where there are none. */
  public String text(String fact) {
    return answers.value(fact).orElse(null) instanceof Value.Text text ? text.words() : "";
  }

  /** A yes or no, where one was given. */
  public Optional<Boolean> flag(String fact) {
    return value(fact).orElse(null) instanceof Value.Flag flag
        ? Optional.of(flag.value())
        : Optional.empty();
  }

  /** Whether a fact was measured or seen, not only told. */
  public boolean isFirm(String fact) {
    Answers.Recorded recorded = answers.byFact().get(fact);
    return recorded != null && recorded.provenance().how() != Provenance.How.TOLD;
  }
}
