package closehand.interview;

import static closehand.interview.Forms.form;
import static closehand.interview.Forms.is;
import static closehand.interview.Forms.one;
import static closehand.interview.Forms.question;
import static closehand.interview.Forms.section;
import static closehand.interview.Forms.whole;
import static closehand.interview.Story.given;
import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.Questionnaire;
import closehand.bank.TaskKind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A measured task is only reached through the questions before it, and left through those after.
 */
class MeasuredTaskStoryTest {
  private static final Questionnaire QUESTIONS =
      form(
          section("CON", question("CON-01", one("consent.state", "yes", "no"))),
          section(
              "SAF",
              question("SAF-03", one("safe.chest", "no", "now", "known").again()),
              question("END-02", whole("pain.now", 0, 10, "{score}").again())),
          section(
              "HND",
              question("HND-01", one("hand.preferred", "L", "R")),
              question(
                  "STK-01", one("stick.L", "0", "1", "2", "3").when(is("hand.preferred", "L"))),
              question("DIG-06", whole("keys.L", 0, 30, "1"))),
          section("EQP", question("EQP-05", one("helper", "none", "nearby"))));

  private static final Message.TakeUpTask STICK =
      new Message.TakeUpTask("stick.L", Set.of(TaskKind.TIMED), false);

  private static Measured measured(Measured.Ending ending, String stop) {
    return new Measured(
        "",
        "T8",
        "L",
        Provenance.By.VOLUNTEER,
        new Measured.Circumstances("room", "sittingAsInPlay", "armAndFeet", "morning", 12),
        false,
        List.of(),
        20,
        ending,
        stop,
        List.of("stick.L"));
  }

  private static final Message.EndTask DONE =
      new Message.EndTask(
          measured(Measured.Ending.DONE, ""),
          Map.of("stick.L", new Value.Code("2")),
          "Stick control, one go, in one room",
          Optional.empty());

  private static final Message.EndTask STOPPED =
      new Message.EndTask(
          measured(Measured.Ending.STOPPED, "chest"),
          Map.of(),
          "",
          Optional.of("No more tasks in this sitting: a chest symptom."));

  private static Story atTheHands() {
    return given(QUESTIONS)
        .answer("consent.state", "yes")
        .answer("safe.chest", "no")
        .answer("pain.now", "2")
        .answer("hand.preferred", "L")
        .expectNext("stick.L");
  }

  private static Story due() {
    return atTheHands()
        .send(STICK)
        .expectNext("safe.chest")
        .expectAgain(Prompt.Again.BEFORE_TASKS)
        .answer("safe.chest", "no")
        .answer("pain.now", "3")
        .expectNext("stick.L");
  }

  @Test
  void theQuestionsBeforeTasksComeFirstAlsoForAQuestionThatIsNoTask() {
    Story story = atTheHands();
    assertEquals(Optional.empty(), story.now().taskDue());
    story.send(STICK);
    assertEquals(Optional.empty(), story.now().taskDue());
    assertEquals(Optional.of("stick.L"), due().now().taskDue());
  }

  @Test
  void theResultIsAnAnswerKnownByMeasuringAndTheQuestionsAfterTasksFollow() {
    Story story = due().send(DONE).expectNext("safe.chest").expectAgain(Prompt.Again.AFTER_TASKS);
    Answers.Recorded recorded = story.now().answers().byFact().get("stick.L");
    assertEquals(new Answer.Given(new Value.Code("2")), recorded.answer());
    assertEquals(
        new Provenance(
            Provenance.By.VOLUNTEER,
            Provenance.How.MEASURED,
            "Measured: Stick control, one go, in one room"),
        recorded.provenance());
    assertEquals(1, story.now().measured().size());
    story.answer("safe.chest", "no").answer("pain.now", "3").expectNext("keys.L");
  }

  @Test
  void whatSomebodyNotedBesideTheAnswerBeforeStays() {
    Story noted = atTheHands().answer("stick.L", "1").note("a firm one");
    noted.send(STICK).answer("safe.chest", "no").answer("pain.now", "2").send(DONE);
    assertEquals(
        "a firm one Measured: Stick control, one go, in one room",
        noted.now().answers().byFact().get("stick.L").provenance().note());
  }

  @Test
  void aStopEndsTheTasksAsksAgainAndLeavesNoResult() {
    Story story = due().send(STOPPED).expectNext("safe.chest");
    assertEquals(
        Optional.of("No more tasks in this sitting: a chest symptom."), story.now().tasksStopped());
    story.answer("safe.chest", "no").answer("pain.now", "2").expectNext("keys.L");
    story.send(new Message.TakeUpTask("keys.L", Set.of(TaskKind.TIMED), false));
    story.expectRefused("a chest symptom");
    assertEquals(Optional.empty(), story.now().answers().value("stick.L"));
  }

  @Test
  void painFoundBeforeTheTaskKeepsItFromBeingDue() {
    Story story = atTheHands().send(STICK).answer("safe.chest", "no").answer("pain.now", "7");
    assertEquals(Optional.empty(), story.now().taskDue());
    story.send(DONE).expectRefused("No task may be run");
  }

  @Test
  void aHoldThatComesInBetweenKeepsItFromBeingDue() {
    Story story = due().hold(TaskKind.TIMED);
    assertEquals(Optional.empty(), story.now().taskDue());
    story.send(DONE).expectRefused("No task may be run");
    atTheHands().hold(TaskKind.TIMED).send(STICK).expectRefused("on hold");
  }

  @Test
  void noJumpLeadsAroundTheQuestionsBeforeIt() {
    Story jumped = atTheHands().send(STICK).jump("keys.L").jump("stick.L");
    assertEquals(Optional.empty(), jumped.now().taskDue());
    jumped.send(DONE).expectRefused("No task may be run");
    Story back = due().jump("helper").expectNext("helper");
    assertEquals(Optional.empty(), back.now().taskDue());
  }

  @Test
  void aCaseOpenedAgainAsksForConsentAndHasNoTaskDue() {
    Story story = due().resume().expectNext("consent.state");
    assertEquals(Optional.empty(), story.now().taskDue());
    story.send(STICK).expectRefused("asked again come first");
    story.send(DONE).expectRefused("No task may be run");
  }

  @Test
  void onlyAClinicianTakesUpWhatIsForClinicians() {
    Message.TakeUpTask sip = new Message.TakeUpTask("stick.L", Set.of(TaskKind.BREATH), true);
    atTheHands().send(sip).expectRefused("Only a clinician");
    atTheHands()
        .send(new Message.Conduct(Provenance.By.CLINICIAN))
        .send(sip)
        .expectNext("safe.chest");
  }

  @Test
  void aTaskWhoseQuestionDoesNotApplyIsNotTakenUp() {
    given(QUESTIONS)
        .answer("consent.state", "yes")
        .answer("safe.chest", "no")
        .answer("pain.now", "2")
        .answer("hand.preferred", "R")
        .send(STICK)
        .expectRefused("does not apply");
  }

  @Test
  void theRecordOfACaseTakesInWhatWasMeasuredWithItsTime() {
    Interview before = due().now();
    Interview after = before.after(DONE);
    CaseRecord record =
        History.after(
            CaseRecord.NONE, before, after, new History.Stamp("2026-11-30T10:00:00Z", 60));
    assertEquals(
        List.of(measured(Measured.Ending.DONE, "").at("2026-11-30T10:00:00Z")), record.measured());
    CaseRecord again =
        History.after(record, after, after, new History.Stamp("2026-11-30T10:01:00Z", 120));
    assertEquals(1, again.measured().size());
  }
}
