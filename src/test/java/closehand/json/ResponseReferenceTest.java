package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Questionnaire;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Prompt;
import closehand.interview.Provenance;
import closehand.interview.StillOpen;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** HL7's own validator judges what is written, and with it which questions were put. */
class ResponseReferenceTest {
  private static final ResponseWriter.Header HEADER =
      new ResponseWriter.Header("quiet-heron", "volunteer", "2026-11-24T10:00:00+01:00", false);

  /**
   * Every question made required: a question that the validator holds to apply, but that was not
   * put, is then an error, as is an answer to a question that it holds not to apply.
   */
  private static final String ALL_REQUIRED =
      FhirReference.get()
          .allRequired(CoreForm.text(), "http://closehand.invalid/fhir/Questionnaire/required");

  @Test
  void wholeWalksThroughTheCoreBankSatisfyIt() {
    FhirReference.get().know(ALL_REQUIRED);
    Questionnaire form = CoreForm.read(ALL_REQUIRED);
    for (int seed = 1; seed <= 5; seed++) {
      Interview end = walk(form, new Dice(seed), Integer.MAX_VALUE);
      assertTrue(end.finished());
      Answers all = withTasksOnHold(end, new Dice(seed));
      String response = ResponseWriter.write(form, all, HEADER);
      assertTrue(response.contains("\"completed\""), "seed " + seed);
      assertEquals(List.of(), FhirReference.get().complaints(response), "seed " + seed);
    }
  }

  /** Bad news by chance stops the tasks; fills in what they would have found. */
  private static Answers withTasksOnHold(Interview end, Dice dice) {
    Interview now = end;
    while (!now.open().isEmpty()) {
      StillOpen open = now.open().get(0);
      assertTrue(open.field().task().isPresent(), open.field().fact());
      Answer answer = new Answer.Given(dice.value(open.field().type()));
      Answers more =
          now.answers().with(open.field().fact(), new Answers.Recorded(answer, dice.provenance()));
      now = Interview.reopen(now.questionnaire(), more, now.route(), now.asker(), Optional.empty());
    }
    return now.answers();
  }

  @Test
  void brokenOffWalksWithChangedMindsSatisfyIt() {
    FhirReference.get().know(CoreForm.text());
    Questionnaire form = CoreForm.questionnaire();
    for (int seed = 1; seed <= 5; seed++) {
      Interview some = walk(form, new Dice(1000 + seed), 90 * seed);
      String response = ResponseWriter.write(form, some.answers(), HEADER);
      assertEquals(List.of(), FhirReference.get().errors(response), "seed " + seed);
    }
  }

  @Test
  void theJudgeIsAwake() {
    FhirReference.get().know(CoreForm.text());
    Questionnaire form = CoreForm.questionnaire();
    Answers answers =
        Answers.NONE.with(
            "consent.state",
            new Answers.Recorded(
                new Answer.Given(new closehand.interview.Value.Code("yes")),
                Provenance.PLAYER_TOLD));
    String sound = ResponseWriter.write(form, answers, HEADER);
    assertEquals(List.of(), FhirReference.get().errors(sound));
    assertFalse(FhirReference.get().errors(sound.replace("\"yes\"", "\"perhaps\"")).isEmpty());
    assertFalse(
        FhirReference.get().errors(sound.replace("consent.state", "age.adultPresent")).isEmpty());
    assertFalse(
        FhirReference.get().complaints(sound.replace("|1", "|99")).isEmpty(), "unknown form");
  }

  /** Answers, jumps, goes back and passes, all by chance; at most so many steps. */
  private static Interview walk(Questionnaire form, Dice dice, int steps) {
    Interview now = Interview.begin(form, Interview.Route.FULL, Provenance.By.CLINICIAN);
    List<String> facts = List.copyOf(form.fieldsByFact().keySet());
    boolean toTheEnd = steps == Integer.MAX_VALUE;
    for (int step = 0; step < Math.min(steps, 5000) && !now.finished(); step++) {
      if (dice.oneIn(20)) {
        now = now.after(new Message.JumpTo(dice.of(facts)));
      } else if (dice.oneIn(20)) {
        now = now.after(new Message.Back());
      } else if (!toTheEnd && dice.oneIn(20)) {
        now = now.after(new Message.Onward());
      }
      if (!now.finished()) {
        now = answer(now, dice, toTheEnd);
      }
    }
    return now;
  }

  private static Interview answer(Interview now, Dice dice, boolean toTheEnd) {
    Prompt prompt = now.current().orElseThrow();
    Answer answer = dice.answer(prompt.field().type());
    if (answer instanceof Answer.Given given) {
      return now.after(new Message.Give(given.value(), dice.provenance()));
    }
    Answer.Reason reason = ((Answer.Absent) answer).reason();
    boolean later = reason == Answer.Reason.LATER && toTheEnd;
    return now.after(
        new Message.NoAnswer(later ? Answer.Reason.UNKNOWN : reason, dice.provenance()));
  }
}
