package closehand.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Questionnaire;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Steering an interview to a proposed question. */
class SteerTest {
  private static final Questionnaire CORE = core();

  private static Questionnaire core() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE)
          .bank()
          .orElseThrow()
          .questionnaire();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static Interview begin() {
    return Interview.begin(CORE, Interview.Route.BRIEF, Provenance.By.CLINICIAN)
        .after(new Message.Give(new Value.Code("yes"), Provenance.PLAYER_TOLD));
  }

  private static String question(Interview interview) {
    return interview.current().orElseThrow().question().id();
  }

  @Test
  void theProposedQuestionComesAndNothingBetweenIsPassed() {
    Interview steered = begin().after(new Message.Steer("HND-03"));
    assertEquals("HND-03", question(steered));
    assertEquals(Optional.empty(), steered.refusal());
    assertTrue(
        steered.open().stream()
            .filter(o -> o.question().id().equals("SAF-01"))
            .allMatch(o -> o.why() == StillOpen.Why.NOT_YET_ASKED));
    Prompt prompt = steered.current().orElseThrow();
    assertEquals("Question 2: " + prompt.section().title(), prompt.position());
  }

  @Test
  void whatCannotBeAskedIsRefusedAndTheInterviewStaysWhereItIs() {
    Interview before = begin();
    Interview after = before.after(new Message.Steer("SAF-99"));
    assertTrue(after.refusal().isPresent());
    assertEquals(before.at(), after.at());
    assertTrue(begin().after(new Message.Steer("CON-01")).refusal().isPresent(), "answered");
  }

  @Test
  void backLeadsToWhatWasShownLast() {
    Interview steered = begin().after(new Message.Steer("HND-03")).after(new Message.Back());
    assertEquals("CON-01", question(steered));
  }

  @Test
  void questionsAskedAgainAfterABreakComeFirst() {
    Interview resumed = begin().after(new Message.Resume());
    assertEquals("CON-01", question(resumed));
    Interview steered = resumed.after(new Message.Steer("HND-03"));
    assertTrue(steered.refusal().isPresent());
    assertEquals("CON-01", question(steered));
  }

  @Test
  void aTaskThatIsProposedBringsTheCheckBeforeTasks() {
    Interview steered = begin().after(new Message.Steer("pain.now"));
    assertEquals(Optional.empty(), steered.refusal());
    String task =
        CORE.fieldsByFact().values().stream()
            .filter(f -> f.task().isPresent() && f.conditions().isEmpty())
            .findFirst()
            .orElseThrow()
            .fact();
    Interview atTask = begin().after(new Message.Steer(task));
    assertEquals(Optional.empty(), atTask.refusal());
    assertEquals(Prompt.Again.BEFORE_TASKS, atTask.current().orElseThrow().again());
    Interview elsewhere = atTask.after(new Message.Steer("HND-03"));
    assertEquals("HND-03", question(elsewhere), "a check that has not begun is dropped");
  }
}
