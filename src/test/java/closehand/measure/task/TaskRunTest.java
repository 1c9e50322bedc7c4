package closehand.measure.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Task;
import closehand.bank.TaskBook;
import closehand.interview.Measured;
import closehand.interview.Provenance;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A task from the first word to its result, and everything that can end it. */
class TaskRunTest {
  @Test
  void tapsCountedBySomebodyBecomeAMeasuredAnswerWithItsCircumstances() {
    Sitting sitting = Sitting.inTheRoom("T1.L.I").pick(0).next().wait(10).pain(2);
    sitting.go(31).pain(2).expect(Step.Another.class).yes();
    sitting.go(28).pain(3).expect(Step.Once.class).no().expect(Step.Result.class);
    sitting.expectSaid("29 taps").expectSaid("Jobs that must come quickly can go here");
    assertEquals(Map.of("digit.L.tap10.I", new Value.Number(29)), sitting.ended().results());
    assertEquals(
        "Tap check, left index finger, the middle of 2 goes, counted by somebody watching,"
            + " sitting, as in play, arm and feet supported, afternoon, 25 minutes into the session,"
            + " in one room",
        sitting.ended().note());
    Measured measured = sitting.ended().measured();
    assertEquals(Measured.Ending.DONE, measured.ending());
    assertEquals(30, measured.timedSeconds());
    assertEquals(
        List.of(true, false, false), measured.goes().stream().map(Measured.Go::practice).toList());
    assertEquals(
        new Measured.Circumstances("room", "sittingAsInPlay", "armAndFeet", "afternoon", 25),
        measured.circumstances());
  }

  @Test
  void theKeyboardCountsOnlyWhatCameInTheTime() {
    Sitting sitting = Sitting.tappingByKeys().next();
    // 0, 2, 4, 6, 8 and 9.9 seconds count; the one after the end does not.
    sitting.tap(2000, 2000, 2000, 2000, 1900).wait(1).pain(2);
    assertEquals(Map.of("taps", new Value.Number(6)), sitting.now().goes().get(1).values());
  }

  @Test
  void timeBeginsWithTheFirstTapAndNoHasteIsAsked() {
    Sitting sitting = Sitting.tappingByKeys().next().wait(60).expect(Step.Going.class);
    assertEquals(Optional.empty(), sitting.now().endsAt());
    sitting.tap(500).wait(10).expect(Step.PainNow.class);
  }

  @Test
  void aDropIsWorkedOutOfTheFirstAndTheLastTenSeconds() {
    Sitting sitting = Sitting.inTheRoom("T1b").pick(0).next().wait(30).number(40).number(26);
    sitting.pain(2).expect(Step.Result.class).expectSaid("Tapping tires soon");
    assertEquals(Map.of("end.tapDrop", new Value.Number(35)), sitting.ended().results());
  }

  @Test
  void upToThreeGoesAndTheMiddleOneIsKept() {
    Sitting sitting = Sitting.inTheRoom("T2.R.T").next().wait(10).pain(2);
    sitting.go(9).pain(2).yes().go(3).pain(2).yes().go(8).pain(2).expect(Step.Result.class);
    assertEquals(Map.of("digit.R.holdS.T", new Value.Number(8)), sitting.ended().results());
  }

  @Test
  void cellsReachedInMostGoesCountAsReached() {
    Sitting sitting = Sitting.inTheRoom("T3.L.T").next().next().pain(2);
    for (List<Integer> cells : List.of(List.of(0, 1, 4), List.of(0, 4), List.of(1, 4, 5))) {
      sitting.next().next().send(new TaskMessage.Picks(cells)).pain(2);
      if (sitting.now().step() instanceof Step.Another) {
        sitting.yes();
      }
    }
    assertEquals(
        Map.of("digit.L.panel.T", new Value.Codes(List.of("A1", "A2", "B1"))),
        sitting.ended().results());
  }

  @TestFactory
  Stream<DynamicTest> eachOfTheTenStopsEndsTheTaskAtOnceFromAGo() {
    assertEquals(10, Sitting.BOOK.stops().all().size());
    return Sitting.BOOK.stops().all().stream()
        .map(stop -> DynamicTest.dynamicTest(stop.words(), () -> stops(stop)));
  }

  private static void stops(TaskBook.Stop stop) {
    Sitting sitting = Sitting.inTheRoom("T1.L.I").pick(0).next().wait(10).pain(2).next();
    sitting.key("x").expect(Step.Why.class).pick(Sitting.BOOK.stops().all().indexOf(stop));
    if (stop.waits()) {
      sitting.expect(Step.Settling.class).expectSaid("60 seconds").no();
    }
    sitting.expectStopped(stop.id()).expectSaid("not done again today");
    assertEquals(Measured.Ending.STOPPED, sitting.ended().measured().ending());
    assertEquals(stop.id(), sitting.ended().measured().stop());
    assertEquals(Map.of(), sitting.ended().results(), "a stopped task gives no result");
    assertEquals(stop.endsTasks(), sitting.ended().noMoreTasks().isPresent());
    assertTrue(sitting.next().now().isOver());
  }

  @Test
  void aSpasmThatSettlesIsWaitedForOnceAndTheSecondOneEndsTheTask() {
    Sitting sitting = Sitting.inTheRoom("T1.L.I").pick(0).next().key("x").pick(5).yes();
    sitting.expect(Step.NotCounted.class).next().pain(2).expect(Step.Ready.class);
    sitting.next().key("x").pick(5).expectStopped("spasm");
  }

  @Test
  void painThatRisesByTwoOrReachesSevenOrIsNotKnownEndsTheTask() {
    Sitting.inTheRoom("T1.L.I").pick(0).next().wait(10).pain(4).expectStopped("pain");
    Sitting.inTheRoom("T1.L.I").pick(0).next().wait(10).pain(3).expect(Step.Ready.class);
    Sitting.inTheRoom("T1.L.I")
        .pick(0)
        .next()
        .wait(10)
        .send(new TaskMessage.NotKnown())
        .expectStopped("pain");
  }

  @Test
  void stopForPainWorksAtEveryStepFromTheFirstWordOn() {
    Sitting sitting = Sitting.of(Sitting.setup("T1.L.I", /* onCall= */ false));
    List<TaskMessage> way =
        List.of(
            new TaskMessage.Next(0),
            new TaskMessage.Say(true),
            new TaskMessage.Say(true),
            new TaskMessage.Say(true),
            new TaskMessage.Pick(0),
            new TaskMessage.Pick(0),
            new TaskMessage.Pick(0),
            new TaskMessage.Next(0),
            new TaskMessage.Clock(11_000_000_000L),
            new TaskMessage.Number(2));
    List<Step> seen = new ArrayList<>();
    for (TaskMessage message : way) {
      seen.add(sitting.now().step());
      assertEquals(new Step.Stopped("pain"), sitting.now().after(new TaskMessage.Pain()).step());
      sitting.send(message);
    }
    assertEquals(10, seen.stream().distinct().count(), "no step stood still: " + seen);
  }

  @Test
  void threeGoesInARowThatDoNotWorkOutAreEnough() {
    Sitting sitting = Sitting.inTheRoom("T1.L.I").pick(0).next().wait(10).pain(2);
    sitting.go(0).pain(2).expect(Step.Another.class).yes();
    sitting.next().wait(3).next().expect(Step.NotCounted.class).next().pain(2).yes();
    sitting.next().wait(3).next().next().expectStopped("distress");
  }

  @Test
  void twelveMinutesADayAreNotGoneBeyond() {
    TaskSetup setup = Sitting.setup("T2.L.T", /* onCall= */ false);
    TaskSetup late =
        new TaskSetup(
            setup.task(),
            setup.book(),
            false,
            Provenance.By.VOLUNTEER,
            List.of(),
            setup.pain(),
            695,
            0,
            "evening",
            50,
            true);
    Sitting sitting = Sitting.of(late).prepare().next().wait(10).pain(2);
    sitting.go(8).pain(2).expect(Step.Another.class).yes().expect(Step.Result.class);
    sitting.expectSaid("all the timed work for today");
  }

  @Test
  void restBetweenTasksIsWaitedForWithoutACountdown() {
    TaskSetup setup = Sitting.setup("T2.L.T", /* onCall= */ false);
    TaskSetup tired =
        new TaskSetup(
            setup.task(),
            setup.book(),
            false,
            Provenance.By.VOLUNTEER,
            List.of(),
            setup.pain(),
            20,
            60,
            "evening",
            50,
            true);
    Sitting sitting = Sitting.of(tired).prepare().expect(Step.Resting.class);
    sitting.wait(20).next().expect(Step.Resting.class).expectSaid("Take your time");
    sitting.wait(41).next().expect(Step.Ready.class);
  }

  @Test
  void aRefusedTaskCannotBeTalkedInto() {
    TaskSetup setup = Sitting.setup("T1.L.I", /* onCall= */ false);
    TaskSetup refused =
        new TaskSetup(
            setup.task(),
            setup.book(),
            false,
            Provenance.By.VOLUNTEER,
            List.of("Not now."),
            setup.pain(),
            0,
            0,
            "noon",
            5,
            true);
    Sitting sitting = Sitting.of(refused).expect(Step.Refused.class).next();
    assertTrue(sitting.now().isOver());
    assertEquals(Map.of(), sitting.next().yes().pick(0).ended().results());
  }

  @Test
  void overACallSomebodyCountsAndTheHelperIsAskedFor() {
    Sitting sitting = Sitting.of(Sitting.setup("T1.L.I", /* onCall= */ true)).next();
    sitting.expectSaid("stop signal").yes().yes().yes().expectSaid("helper in the room").no();
    sitting.expectSaid("Wait for the helper").next().yes().pick(0).pick(0);
    sitting.expect(Step.Ready.class).next().wait(10).pain(2).go(20).pain(2).no().yes();
    assertFalse(sitting.now().keys());
    sitting.expectSaid("first idea only").expectSaid("over a call");
  }

  @Test
  void noSentenceOfAnyTaskIsAPassMarkOrAComparisonWithOthers() {
    List<String> never =
        List.of(
            "normal",
            "average",
            "fail",
            "passed the",
            "score",
            "healthy",
            "poor",
            "test",
            "deficit");
    for (Task task : Sitting.BOOK.tasks()) {
      List<String> all = new ArrayList<>();
      task.readings().forEach(r -> all.add(r.say()));
      task.measures().forEach(m -> all.add(m.ask()));
      all.add(task.words().toString());
      all.add(task.go().toString());
      for (String word : never) {
        assertTrue(
            all.stream()
                .map(s -> " " + s.toLowerCase(Locale.ROOT).replaceAll("[^a-z ]", " ") + " ")
                .noneMatch(s -> s.contains(" " + word + " ")),
            task.key() + " says " + word);
      }
    }
  }
}
