package closehand.report;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Provenance;
import closehand.interview.Value;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.List;

/** One answer for the clinician: in words, with who gave it and how it is known. */
final class AnswerWords {
  private AnswerWords() {}

  /** The answer in words, then "(helper, seen)" unless the player told it. */
  static String of(Field field, Answers.Recorded recorded) {
    return value(field, recorded.answer()) + mark(recorded.provenance());
  }

  private static String value(Field field, Answer answer) {
    if (answer.given().orElse(null) instanceof Value.Codes codes && !codes.codes().isEmpty()) {
      return several(field.type(), codes.codes());
    }
    String words = Wording.of(field, answer);
    return words.isBlank() ? "nothing noted" : words;
  }

  /** Options whose words begin with their code, such as "B2: middle row", go by their code. */
  private static String several(FactType type, List<String> codes) {
    List<String> words = new ArrayList<>();
    for (String code : codes) {
      String display = type.option(code).map(Option::display).orElse(code);
      words.add(display.startsWith(code + ":") ? code : display);
    }
    return String.join(", ", words);
  }

  /** Whether the player gave this answer and told it, so that it goes without a mark. */
  static boolean toldByThePlayer(Answers.Recorded recorded) {
    return isUsual(recorded.provenance());
  }

  private static boolean isUsual(Provenance provenance) {
    return provenance.by() == Provenance.By.PLAYER && provenance.how() == Provenance.How.TOLD;
  }

  private static String mark(Provenance provenance) {
    return isUsual(provenance)
        ? ""
        : " (" + provenance.by().code() + ", " + provenance.how().code() + ")";
  }
}
