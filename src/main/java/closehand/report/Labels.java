package closehand.report;

import closehand.bank.Field;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a fact is called on pages. */
public final class Labels {
  private Labels() {}

  /** The short name of a question, or its text where it has none. */
  public static String of(Question question) {
    return question.shortName().orElse(question.text());
  }

  /** The question's name, and the field's label where the question has several and it says more. */
  public static String of(Question question, Field field) {
    String name = Phrases.bare(of(question));
    return question.fields().size() == 1 || label(field).equalsIgnoreCase(name)
        ? of(question)
        : name + ", " + Phrases.lower(label(field));
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
    return field != null && several && unique ? label(field) : of(questionnaire, fact);
  }

  /**
   * The names of facts in one sentence; where several are found out by one question, its name
   * stands for them.
   */
  static String sentence(Questionnaire questionnaire, List<String> facts) {
    Map<String, List<String>> byQuestion = new LinkedHashMap<>();
    for (String fact : facts) {
      byQuestion
          .computeIfAbsent(ofQuestion(questionnaire, fact), q -> new ArrayList<>())
          .add(Phrases.bare(of(questionnaire, fact)));
    }
    List<String> names = new ArrayList<>();
    byQuestion.forEach(
        (question, named) -> names.add(named.size() == 1 ? named.get(0) : Phrases.bare(question)));
    return Phrases.sentence(String.join("; ", names));
  }

  /** A field's label without its question mark and with a comma for its colon. */
  static String label(Field field) {
    String label = field.label().replace(": ", ", ");
    return label.endsWith("?") ? label.substring(0, label.length() - 1) : label;
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
