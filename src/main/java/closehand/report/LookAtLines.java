package closehand.report;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What waits for a clinician's eye: answers to look at, and questions left. */
final class LookAtLines {
  private LookAtLines() {}

  /** Both lists; nothing where both are empty. */
  static List<Piece> of(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    List<Piece> answers = answers(input);
    if (!answers.isEmpty()) {
      pieces.add(new Heading("Answers for a clinician to look at"));
      pieces.addAll(answers);
    }
    Set<String> left = left(input);
    if (!left.isEmpty()) {
      pieces.add(new Heading("Questions left for a clinician"));
      left.forEach(question -> pieces.add(Paragraph.item(question)));
    }
    return pieces;
  }

  private static List<Piece> answers(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    for (Question question : input.bank().questionnaire().questions()) {
      boolean refer = question.askedBy() == Question.AskedBy.VOLUNTEER_REFER;
      if (refer && !isClear(question, input.answers())) {
        pieces.addAll(FoundLines.question(question, input.answers()));
      }
    }
    return pieces;
  }

  private static boolean isClear(Question question, Answers answers) {
    for (Field field : question.fields()) {
      Optional<Answer> answer = answers.answer(field.fact());
      if (answer.isPresent() && !isClear(field.type(), answer.get())) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether an answer says there is nothing to report: the first option, "none", no, nothing. A
   * number never says more than the answer beside it.
   */
  private static boolean isClear(FactType type, Answer answer) {
    Value value = answer.given().orElse(null);
    if (value instanceof Value.Flag flag) {
      return !flag.value();
    }
    if (value instanceof Value.Code code) {
      return type.choices().stream().map(Option::code).findFirst().equals(Optional.of(code.code()));
    }
    if (value instanceof Value.Codes codes) {
      return codes.codes().stream()
          .allMatch(c -> type.option(c).filter(Option::exclusive).isPresent());
    }
    if (value instanceof Value.Number) {
      return true;
    }
    if (value instanceof Value.Text text) {
      return text.words().isBlank();
    }
    return value instanceof Value.Texts texts && texts.words().isEmpty();
  }

  private static Set<String> left(PageInput input) {
    Set<String> names = new LinkedHashSet<>();
    for (String open : input.openQuestions()) {
      Labels.question(input.bank().questionnaire(), open)
          .filter(q -> q.askedBy() == Question.AskedBy.CLINICIAN)
          .ifPresent(q -> names.add(q.id() + ": " + Labels.of(q)));
    }
    return names;
  }
}
