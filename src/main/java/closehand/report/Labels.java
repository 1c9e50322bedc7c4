package closehand.report;

import closehand.bank.Field;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import java.util.Map;
import java.util.Optional;

/** What a fact is called on pages. */
public final class Labels {
  private Labels() {}

  /** The short name of a question, or its text where it has none. */
  public static String of(Question question) {
    return question.shortName().orElse(question.text());
  }

  /** The question's name, and the field's label where the question has several. */
  public static String of(Question question, Field field) {
    return question.fields().size() == 1
        ? of(question)
        : Phrases.bare(of(question)) + ", " + Phrases.lower(field.label());
  }

  /** The name of a fact; the fact id where the questionnaire does not have it. */
  public static String of(Questionnaire questionnaire, String fact) {
    Optional<Question> question = questionnaire.questionOf(fact);
    return question
        .map(
            q ->
                q.fields().stream()
                    .filter(f -> f.fact().equals(fact))
                    .findFirst()
                    .map(f -> of(q, f))
                    .orElse(fact))
        .orElse(fact);
  }

  /** The field's label alone where no other field has the same; otherwise as {@link #of}. */
  static String brief(Questionnaire questionnaire, String fact) {
    Map<String, Field> fields = questionnaire.fieldsByFact();
    Field field = fields.get(fact);
    boolean several = questionnaire.questionOf(fact).filter(q -> q.fields().size() > 1).isPresent();
    boolean unique =
        field != null
            && fields.values().stream().filter(f -> f.label().equals(field.label())).count() == 1;
    return field != null && several && unique ? field.label() : of(questionnaire, fact);
  }

  /** The name of the question with this id, or of the one that finds out this fact. */
  public static String ofQuestion(Questionnaire questionnaire, String idOrFact) {
    return question(questionnaire, idOrFact).map(Labels::of).orElse(idOrFact);
  }

  /** The question with this id, or the one that finds out this fact. */
  static Optional<Question> question(Questionnaire questionnaire, String idOrFact) {
    return questionnaire.questions().stream()
        .filter(q -> q.id().equals(idOrFact))
        .findFirst()
        .or(() -> questionnaire.questionOf(idOrFact));
  }
}
