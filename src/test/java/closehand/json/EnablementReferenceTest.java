package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Enablement;
import closehand.interview.Provenance;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Every operator against every kind of answer, as HL7's own validator sees it. All questions that
 * conditions open are required: an answer given where the validator sees none wanted is an error,
 * and so is one left out where it sees one wanted.
 */
class EnablementReferenceTest {
  private static final ResponseWriter.Header HEADER =
      new ResponseWriter.Header("quiet-heron", "volunteer", "2026-11-24T10:00:00+01:00", false);

  private static final Map<String, List<Value>> VALUES =
      Map.of(
          "b", List.of(new Value.Flag(true), new Value.Flag(false)),
          "n", List.of(new Value.Number(4), new Value.Number(5), new Value.Number(6)),
          "d", List.of(new Value.Number(2.4), new Value.Number(2.5), new Value.Number(2.6)),
          "c", List.of(new Value.Code("yes"), new Value.Code("no")),
          "m",
              List.of(
                  new Value.Codes(List.of("yes")),
                  new Value.Codes(List.of("yes", "no")),
                  new Value.Codes(List.of("no", "unsure"))),
          "s", List.of(new Value.Text("ab"), new Value.Text("AB")),
          "l",
              List.of(
                  new Value.Texts(List.of("ab")),
                  new Value.Texts(List.of("cd", "ab")),
                  new Value.Texts(List.of("cd"))));

  private static Questionnaire form() {
    List<Problem> problems = new ArrayList<>();
    Optional<Questionnaire> form =
        CoreForm.json(MatrixForm.text(), problems)
            .flatMap(v -> QuestionnaireReader.read(v, problems));
    // This form has no help texts, and prefixes where a bank has none.
    problems.removeIf(
        p ->
            p.code().equals("missing")
                || p.code().equals("missing-help")
                || p.code().equals("unknown-key"));
    assertEquals(List.of(), problems);
    return form.orElseThrow();
  }

  @Test
  void bothSeeTheSameQuestionsApply() {
    FhirReference.get().know(MatrixForm.text());
    Questionnaire form = form();
    List<String> patterns = new ArrayList<>();
    for (int round = 0; round < 8; round++) {
      Answers answers = Answers.NONE;
      for (Map.Entry<String, List<Value>> kind : VALUES.entrySet()) {
        // Kinds that start at different rounds meet in different combinations.
        int state = (round + kind.getKey().charAt(0)) % (kind.getValue().size() + 2);
        answers = with(answers, kind.getKey(), state, kind.getValue());
      }
      Answers all = answerWhatApplies(form, answers);
      String response = ResponseWriter.write(form, all, HEADER);
      assertTrue(response.contains("\"completed\""));
      assertEquals(List.of(), FhirReference.get().errors(response), "round " + round);
      patterns.add(all.byFact().keySet().toString());
    }
    assertEquals(patterns.size(), patterns.stream().distinct().count());
  }

  @Test
  void aQuestionTooManyOrTooFewIsSeen() {
    FhirReference.get().know(MatrixForm.text());
    Questionnaire form = form();
    Answers answers = answerWhatApplies(form, Answers.NONE);
    String sound = ResponseWriter.write(form, answers, HEADER);
    assertEquals(List.of(), FhirReference.get().errors(sound));
    String tooMany = sound.replace("\"t3\"", "\"t0\"");
    assertFalse(FhirReference.get().errors(tooMany).isEmpty());
    String tooFew =
        ResponseWriter.write(form, answers.without("opened.not"), HEADER)
            .replace("in-progress", "completed");
    assertFalse(FhirReference.get().errors(tooFew).isEmpty());
  }

  private static Answers with(Answers answers, String fact, int state, List<Value> values) {
    if (state == 0) {
      return answers;
    }
    Answer answer =
        state == 1
            ? new Answer.Absent(Answer.Reason.UNKNOWN)
            : new Answer.Given(values.get(state - 2));
    return answers.with(fact, new Answers.Recorded(answer, Provenance.PLAYER_TOLD));
  }

  /** Answers every required question that applies, from the first to the last. */
  private static Answers answerWhatApplies(Questionnaire form, Answers answers) {
    Map<String, Answers.Recorded> all = new LinkedHashMap<>(answers.byFact());
    Answers now = answers;
    for (String fact : form.fieldsByFact().keySet()) {
      boolean wanted = !VALUES.containsKey(fact) && Enablement.of(form, now).applies(fact);
      if (wanted) {
        all.put(
            fact,
            new Answers.Recorded(new Answer.Given(new Value.Flag(true)), Provenance.PLAYER_TOLD));
        now = new Answers(all, List.of());
      }
    }
    return now;
  }
}
