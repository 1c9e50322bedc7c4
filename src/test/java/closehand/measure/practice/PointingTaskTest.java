package closehand.measure.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.StopSign;
import closehand.measure.practice.PointingTask.Condition;
import closehand.measure.practice.PointingTask.Stage;
import closehand.measure.statistics.Difficulty;
import closehand.measure.statistics.Verdict;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Stories of pointing along a line, with invented players. */
class PointingTaskTest {
  private long now = 1_000;

  /** Somebody who points: how long a selection takes, and how far it falls from the middle. */
  private record Pointer(double secondsABit, double spread) {}

  private PointingTask block(PointingTask before, Pointer pointer, Chance chance) {
    PointingTask task = before.begun();
    assertEquals(Stage.AIMING, task.stage());
    while (task.stage() == Stage.AIMING) {
      Condition condition = task.now();
      double bits = Difficulty.bits(condition.distance(), condition.width());
      now += Math.round(1_000 * pointer.secondsABit() * bits * (1 + 0.1 * chance.normal()));
      int column = (int) Math.round(task.middle(task.side()) + pointer.spread() * chance.normal());
      task = task.selected(column, now);
    }
    return task.pain(1);
  }

  private PointingFindings found(Pointer first, Pointer second, long seed) {
    Chance chance = new Chance(seed);
    PointingTask task = PointingTask.of(List.of("mouse", "trackball"), 80, 720).pain(1);
    for (Pointer pointer : List.of(first, second, second, first)) {
      task = block(task, pointer, chance);
    }
    assertEquals(Stage.DONE, task.stage());
    return PointingFindings.of(task);
  }

  @Test
  void waysAreTakenInTurnSoThatPracticeFavoursNeither() {
    assertEquals(
        List.of(0, 1, 1, 0), PointingTask.of(List.of("mouse", "trackball"), 80, 720).order());
    assertEquals(List.of(0, 0), PointingTask.of(List.of("mouse"), 80, 720).order());
  }

  @Test
  void targetsAreWideEnoughAndNeitherTooEasyNorTooHardOnEveryScreen() {
    for (int columns = PointingTask.LEAST_COLUMNS; columns <= 200; columns++) {
      PointingTask task = PointingTask.of(List.of("mouse"), columns, 720);
      for (Condition condition : task.conditions()) {
        double bits = Difficulty.bits(condition.distance(), condition.width());
        assertTrue(condition.width() >= 5, condition::toString);
        assertTrue(bits >= 1.6 && bits <= 3.5, condition + " " + bits);
        assertTrue(condition.distance() + condition.width() <= columns, condition::toString);
      }
    }
  }

  @Test
  void theEasierWayIsFoundAndTheOtherIsNotRunDown() {
    PointingFindings findings = found(new Pointer(0.3, 1.5), new Pointer(0.6, 1.5), 1);
    assertEquals(Optional.of(Verdict.Side.FIRST), findings.verdict().flatMap(Verdict::ahead));
    assertTrue(findings.words().contains("mouse is better, also after allowing for wobble."));
  }

  @Test
  void twoLikeWaysAreSeldomToldApart() {
    int told = 0;
    for (long seed = 0; seed < 100; seed++) {
      Pointer same = new Pointer(0.4, 1.5);
      told +=
          found(same, same, seed).verdict().filter(v -> v instanceof Verdict.Better).isPresent()
              ? 1
              : 0;
    }
    assertTrue(told <= 10, "told apart " + told);
  }

  @Test
  void selectionsThatSpreadLessThanCellsCanTellAreSaidToBeTooFine() {
    PointingFindings findings = found(new Pointer(0.3, 0), new Pointer(0.3, 2), 1);
    assertTrue(findings.ways().get(0).tooFine());
    assertFalse(findings.ways().get(1).tooFine());
    assertEquals(Optional.empty(), findings.verdict());
    assertTrue(
        findings.words().get(0).startsWith("mouse: too fine to measure with character cells."));
  }

  @Test
  void theFirstClickOnlyBeginsAndASecondPressAtOnceDoesNotCount() {
    PointingTask task = PointingTask.of(List.of("mouse"), 80, 720).pain(1).begun();
    task = task.selected(task.middle(0), 1_000);
    assertEquals(List.of(), task.going());
    task = task.selected(task.middle(0), 1_080);
    assertEquals(1, task.clicks());
    assertTrue(task.said().contains("does not count"));
    task = task.selected(task.middle(1) + 3, 2_000);
    assertEquals(1.0, task.going().get(0).selection().seconds());
    assertEquals(3.0, task.going().get(0).selection().along());
  }

  @Test
  void aResizeThrowsThePartAwayAndTheTargetsFitTheNewScreen() {
    PointingTask task = PointingTask.of(List.of("mouse"), 80, 720).pain(1).begun();
    task = task.selected(10, 1_000).selected(60, 2_000);
    task = task.disturbed(Happening.What.SIZE, 50);
    assertEquals(Stage.READY, task.stage());
    assertEquals(List.of(), task.going());
    assertEquals(50, task.columns());
    assertTrue(task.said().endsWith("nothing of it counts."));
  }

  @Test
  void painStopsAndFinishedPartsStay() {
    PointingTask task =
        block(
            PointingTask.of(List.of("mouse"), 80, 720).pain(3), new Pointer(0.3, 1), new Chance(1));
    int counted = task.counted().size();
    assertEquals(3 * PointingTask.SELECTIONS, counted);
    assertEquals(
        Optional.of(StopReason.of(StopSign.PAIN)),
        PointingTask.of(List.of("a"), 80, 720).pain(7).stop());
    PointingTask stopped = task.begun().selected(20, now).stopped(StopReason.of(StopSign.NUMB));
    assertEquals(counted, stopped.counted().size());
    assertEquals(List.of(), stopped.going());
  }
}
