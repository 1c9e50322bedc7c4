package closehand.interview;

import static closehand.interview.Forms.form;
import static closehand.interview.Forms.is;
import static closehand.interview.Forms.one;
import static closehand.interview.Forms.question;
import static closehand.interview.Forms.section;
import static closehand.interview.Forms.whole;
import static closehand.interview.Story.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Questionnaire;
import closehand.bank.TaskKind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Safety questions are asked again around bodily tasks, and bad news ends the tasks. */
class RecheckStoryTest {
  private static final Questionnaire TASKS =
      form(
          section(
              "SAF",
              question("SAF-03", one("safe.chest", "no", "now", "known").again()),
              question("SAF-06", one("safe.sciT6", "no", "yes")),
              question(
                  "SAF-07", one("safe.adNow", "no", "yes").when(is("safe.sciT6", "yes")).again()),
              question("END-02", whole("pain.now", 0, 10, "{score}").again())),
          section(
              "HND",
              question("HND-01", one("hand.preferred", "L", "R")),
              question(
                  "HND-09",
                  whole("grip.L", 0, 4, "1").task(TaskKind.STRENGTH),
                  whole("grip.R", 0, 4, "1").task(TaskKind.STRENGTH)),
              question("HND-10", one("hand.open", "full", "part")),
              question("DIG-09", whole("tap.L", 0, 80, "{press}").task(TaskKind.TIMED))),
          section("EQP", question("EQP-05", one("helper", "none", "nearby"))));

  /** Up to the check before the first run of tasks, with pain at 2. */
  private static Story atTheCheck() {
    return given(TASKS)
        .answer("safe.chest", "no")
        .answer("safe.sciT6", "no")
        .answer("pain.now", "2")
        .answer("hand.preferred", "L")
        .expectNext("safe.chest")
        .expectAgain(Prompt.Again.BEFORE_TASKS);
  }

  private static Story inTheFirstRun() {
    return atTheCheck()
        .answer("safe.chest", "no")
        .expectNext("pain.now")
        .answer("pain.now", "2")
        .expectNext("grip.L");
  }

  private static Story afterTheFirstRun() {
    return inTheFirstRun()
        .answer("grip.L", "3")
        .expectNext("grip.R")
        .answer("grip.R", "2")
        .expectNext("safe.chest")
        .expectAgain(Prompt.Again.AFTER_TASKS);
  }

  @Test
  void theChecksStandBeforeAndAfterEveryRun() {
    Story story =
        afterTheFirstRun()
            .answer("safe.chest", "no")
            .answer("pain.now", "3")
            .expectNext("hand.open")
            .expectAgain(Prompt.Again.NO)
            .answer("hand.open", "full")
            .expectNext("safe.chest")
            .expectAgain(Prompt.Again.BEFORE_TASKS)
            .answer("safe.chest", "no")
            .answer("pain.now", "3")
            .expectNext("tap.L")
            .answer("tap.L", "31")
            .expectNext("safe.chest")
            .answer("safe.chest", "no")
            .answer("pain.now", "3")
            .expectNext("helper")
            .answer("helper", "none")
            .expectFinished();
    assertEquals(Optional.empty(), story.now().tasksStopped());
  }

  @Test
  void theEarlierAnswerIsShownAndTheNewOneReplacesIt() {
    Story story = atTheCheck().answer("safe.chest", "no");
    assertEquals(
        Optional.of(new Answer.Given(new Value.Number(2))),
        story.now().current().orElseThrow().earlier().map(Answers.Recorded::answer));
    story.answer("pain.now", "1").expectValue("pain.now", new Value.Number(1));
  }

  @Test
  void painThatRisesByTwoEndsTheTasks() {
    Story story =
        afterTheFirstRun()
            .answer("safe.chest", "no")
            .answer("pain.now", "4")
            .expectNext("hand.open")
            .answer("hand.open", "full")
            .expectNext("helper")
            .expectPassedOver("tap.L");
    assertEquals(
        Optional.of("No more tasks in this sitting: pain has risen from 2 to 4."),
        story.now().tasksStopped());
    assertEquals(
        List.of(TaskKind.TIMED),
        story.now().heldBack().stream().flatMap(h -> h.field().task().stream()).toList());
    story.jump("tap.L").expectRefused("pain has risen");
    story.answer("helper", "none").expectFinished().expectOpen("tap.L");
  }

  @Test
  void aSlowRiseOverSeveralRunsCountsToo() {
    Story story =
        afterTheFirstRun()
            .answer("safe.chest", "no")
            .answer("pain.now", "3")
            .answer("hand.open", "full")
            .answer("safe.chest", "no")
            .answer("pain.now", "4")
            .expectNext("helper");
    assertTrue(story.now().tasksStopped().isPresent());
  }

  @Test
  void painOfSevenEndsTheTasksBeforeTheyBegin() {
    Story story =
        atTheCheck()
            .answer("safe.chest", "no")
            .answer("pain.now", "7")
            .expectNext("hand.open")
            .expectPassedOver("grip.L", "grip.R");
    assertEquals(
        Optional.of("No more tasks in this sitting: pain has reached 7 of 10."),
        story.now().tasksStopped());
  }

  @Test
  void painThatCannotBeSaidIsNotTakenForNone() {
    atTheCheck()
        .answer("safe.chest", "no")
        .say(Answer.Reason.UNKNOWN)
        .expectNext("hand.open")
        .expectPassedOver("grip.L", "grip.R");
  }

  @Test
  void aSafetyAnswerThatIsNoLongerClearEndsTheTasks() {
    Story story = afterTheFirstRun().answer("safe.chest", "now").expectNext("pain.now");
    assertEquals(
        Optional.of(
            "No more tasks in this sitting: this is not clear any more: Label of safe.chest"),
        story.now().tasksStopped());
    story.answer("pain.now", "2").expectNext("hand.open");
  }

  @Test
  void whatWasKnownBeforeAndIsTheSameNowEndsNothing() {
    Story story =
        given(TASKS)
            .answer("safe.chest", "known")
            .answer("safe.sciT6", "no")
            .answer("pain.now", "2")
            .answer("hand.preferred", "L")
            .answer("safe.chest", "known")
            .answer("pain.now", "2")
            .expectNext("grip.L");
    assertEquals(Optional.empty(), story.now().tasksStopped());
  }

  @Test
  void onlyQuestionsThatApplyAreAskedAgain() {
    given(TASKS)
        .answer("safe.chest", "no")
        .answer("safe.sciT6", "yes")
        .answer("safe.adNow", "no")
        .answer("pain.now", "0")
        .answer("hand.preferred", "L")
        .expectNext("safe.chest")
        .answer("safe.chest", "no")
        .expectNext("safe.adNow")
        .answer("safe.adNow", "yes")
        .answer("pain.now", "0")
        .expectNext("hand.open")
        .expectPassedOver("grip.L", "grip.R");
  }

  @Test
  void aCheckCannotBePassedButDecliningItEndsTheTasks() {
    Story story =
        atTheCheck()
            .onward()
            .expectRefused("asked again for safety")
            .say(Answer.Reason.DECLINED)
            .answer("pain.now", "2")
            .expectNext("hand.open");
    assertEquals(
        Optional.of(
            "No more tasks in this sitting: this is not clear any more: Label of safe.chest"),
        story.now().tasksStopped());
  }

  @Test
  void aHoldPassesOverTheTaskAndAsksNothingAgain() {
    given(TASKS)
        .answer("safe.chest", "no")
        .answer("safe.sciT6", "no")
        .answer("pain.now", "2")
        .hold(TaskKind.STRENGTH)
        .answer("hand.preferred", "L")
        .expectNext("hand.open")
        .expectPassedOver("grip.L", "grip.R")
        .hold(TaskKind.STRENGTH, TaskKind.BREATH)
        .expectPassedOver("grip.L", "grip.R")
        .answer("hand.open", "full")
        .expectNext("safe.chest")
        .expectAgain(Prompt.Again.BEFORE_TASKS)
        .expectPassedOver()
        .hold(TaskKind.STRENGTH, TaskKind.HEAD)
        .expectPassedOver()
        .hold()
        .answer("safe.chest", "no")
        .answer("pain.now", "2")
        .expectNext("tap.L")
        .answer("tap.L", "9")
        .answer("safe.chest", "no")
        .answer("pain.now", "2")
        .expectNext("helper")
        .answer("helper", "none")
        .expectNext("safe.chest")
        .expectAgain(Prompt.Again.BEFORE_TASKS);
  }

  @Test
  void aHoldThatComesAfterTheCheckPassesOverTheTaskNotYetBegun() {
    Story story =
        inTheFirstRun()
            .hold(TaskKind.STRENGTH)
            .expectNext("hand.open")
            .expectPassedOver("grip.L", "grip.R");
    assertEquals(2, story.now().heldBack().size());
    assertEquals(
        "This must wait: strength tasks are on hold.", story.now().heldBack().get(0).because());
  }

  @Test
  void leavingARunByAJumpAsksAgainFirst() {
    inTheFirstRun()
        .jump("EQP-05")
        .expectNext("safe.chest")
        .expectAgain(Prompt.Again.AFTER_TASKS)
        .answer("safe.chest", "no")
        .answer("pain.now", "2")
        .expectNext("helper");
  }

  @Test
  void jumpingToATaskAsksAgainFirst() {
    given(TASKS)
        .answer("safe.chest", "no")
        .jump("DIG-09")
        .expectNext("safe.chest")
        .answer("safe.chest", "no")
        .expectNext("pain.now")
        .answer("pain.now", "1")
        .expectNext("tap.L")
        .answer("tap.L", "12")
        .expectNext("safe.chest")
        .expectAgain(Prompt.Again.AFTER_TASKS);
  }

  @Test
  void jumpingAwayFromTheCheckDropsItUntilATaskComes() {
    atTheCheck()
        .jump("helper")
        .answer("helper", "none")
        .expectNext("safe.chest")
        .expectAgain(Prompt.Again.BEFORE_TASKS);
  }

  @Test
  void correctingATypedTaskResultByBackNeedsNoCheck() {
    inTheFirstRun()
        .answer("grip.L", "3")
        .back()
        .expectNext("grip.L")
        .answer("grip.L", "4")
        .expectNext("grip.R");
    afterTheFirstRun().back().expectNext("grip.R").answer("grip.R", "1").expectNext("safe.chest");
  }

  @Test
  void aTaskCannotBeEnteredPastTheCheck() {
    atTheCheck().answerFor("tap.L", new Value.Number(20)).expectRefused("before a task come first");
  }

  @Test
  void aRunInWhichEveryTaskWasPassedIsStillFollowedByTheCheck() {
    inTheFirstRun()
        .onward()
        .onward()
        .expectNext("safe.chest")
        .expectAgain(Prompt.Again.AFTER_TASKS);
  }

  @Test
  void anInterviewThatEndsWithATaskEndsWithTheCheck() {
    Questionnaire short1 =
        form(
            section(
                "A",
                question("A-1", whole("pain.now", 0, 10, "{score}").again()),
                question("A-2", whole("tap.L", 0, 80, "{press}").task(TaskKind.TIMED))));
    given(short1)
        .answer("pain.now", "1")
        .answer("pain.now", "1")
        .answer("tap.L", "40")
        .expectNext("pain.now")
        .answer("pain.now", "1")
        .expectFinished();
  }

  @Test
  void aBankThatAsksNothingAgainGoesStraightToTheTask() {
    given(
            form(
                section(
                    "A", question("A-2", whole("tap.L", 0, 80, "{press}").task(TaskKind.TIMED)))))
        .answer("tap.L", "40")
        .expectFinished();
  }

  @Test
  void nothingIsAskedAgainBeforeTasksThatCannotBeDoneForPain() {
    Story story =
        given(TASKS)
            .answer("safe.chest", "no")
            .answer("safe.sciT6", "no")
            .answer("pain.now", "10")
            .answer("hand.preferred", "L")
            .expectPassedOver("grip.L", "grip.R")
            .expectNext("hand.open");
    assertTrue(
        story.now().passedOver().get(0).because().contains("while pain now is at 7 of 10 or more"));
    story
        .jump("END-02")
        .answer("pain.now", "3")
        .expectNext("safe.chest")
        .expectAgain(Prompt.Again.BEFORE_TASKS);
  }

  @Test
  void theStopIsForThisSittingOnly() {
    Story story = atTheCheck().answer("safe.chest", "no").answer("pain.now", "8");
    assertFalse(story.now().tasksStopped().isEmpty());
    story.resume().answer("hand.open", "full");
    assertEquals(Optional.empty(), story.now().tasksStopped());
    story.expectNext("safe.chest").expectAgain(Prompt.Again.BEFORE_TASKS);
  }

  @Test
  void aCaseClosedDuringTheCheckOpensAtTheTask() {
    Interview closed = atTheCheck().now();
    Interview opened =
        Interview.reopen(
            TASKS, closed.answers(), closed.route(), closed.asker(), closed.bookmark());
    Story.of(opened)
        .resume()
        .expectNext("safe.chest")
        .answer("safe.chest", "no")
        .answer("pain.now", "2")
        .expectNext("grip.L");
  }
}
