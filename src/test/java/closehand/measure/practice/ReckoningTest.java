package closehand.measure.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.measure.practice.Findings.About;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** What practice finds, held against invented players of whom everything is known. */
class ReckoningTest {
  private static final int PLAYERS = 200;
  private static final Sheet SHEET = SomeSheet.twelve();

  private int near;
  private int all;

  private void hold(About found, double truth) {
    all++;
    near += Math.abs(found.value() - truth) <= 2 * found.error() ? 1 : 0;
  }

  private static Findings found(SimulatedPlayer player, long seed) {
    PracticeRun run = player.practises(SHEET, 1, seed);
    assertEquals(PracticeRun.Stage.DONE, run.stage());
    return Reckoning.of(run.counted());
  }

  private static SimulatedPlayer player(long seed) {
    return new SimulatedPlayer(SHEET.targets().stream().map(Sheet.Target::input).toList(), seed);
  }

  /** The usual of the twelve inputs at the middle of the counted rounds. */
  private static double usual(SimulatedPlayer player) {
    double logs = 0;
    for (Sheet.Target target : SHEET.targets()) {
      SimulatedPlayer.Truth truth = player.truth(target.input());
      logs += Math.log(truth.times()) + 1.5 * Math.log(1 + truth.dropARound());
    }
    return Math.exp(logs / SHEET.targets().size());
  }

  @Test
  void differencesInTimeAreFoundWithinTwiceTheStatedErrorNineteenTimesInTwenty() {
    for (long seed = 0; seed < PLAYERS; seed++) {
      SimulatedPlayer player = player(seed);
      Findings findings = found(player, seed);
      double usual = usual(player);
      for (Findings.OfInput input : findings.inputs()) {
        SimulatedPlayer.Truth truth = player.truth(input.input());
        double times = truth.times() * Math.pow(1 + truth.dropARound(), 1.5) / usual;
        hold(input.difference(), findings.usualMillis() * (times - 1));
      }
    }
    assertTrue(near >= 0.93 * all, near + " of " + all);
  }

  @Test
  void missesAndTiringAreFoundWithinTwiceTheStatedError() {
    for (long seed = 0; seed < PLAYERS; seed++) {
      SimulatedPlayer player = player(seed);
      for (Findings.OfInput input : found(player, seed).inputs()) {
        SimulatedPlayer.Truth truth = player.truth(input.input());
        hold(input.missShare(), truth.missShare());
        hold(input.drop(), Math.pow(1 + truth.dropARound(), 3) - 1);
      }
    }
    assertTrue(near >= 0.93 * all, near + " of " + all);
  }

  @Test
  void theTruthIsNearerThanWithoutPractice() {
    double without = 0;
    double with = 0;
    for (long seed = 0; seed < PLAYERS; seed++) {
      SimulatedPlayer player = player(seed);
      Findings findings = found(player, seed);
      double usual = usual(player);
      for (Findings.OfInput input : findings.inputs()) {
        SimulatedPlayer.Truth truth = player.truth(input.input());
        double times = truth.times() * Math.pow(1 + truth.dropARound(), 1.5) / usual;
        double real = findings.usualMillis() * (times - 1);
        without += real * real;
        with += Math.pow(input.difference().value() - real, 2);
      }
    }
    assertTrue(with < 0.2 * without, with + " beside " + without);
  }

  @Test
  void aPlayerWhoseInputsAreAllAlikeIsNotToldDifferences() {
    for (long seed = 0; seed < 20; seed++) {
      SimulatedPlayer same = new SimulatedPlayer(List.of(), seed);
      for (Findings.OfInput input : found(same, seed).inputs()) {
        assertTrue(
            Math.abs(input.difference().value()) < 3 * input.difference().error(), input::toString);
      }
    }
  }

  @Test
  void theFirstRoundIsForWarmingUpAndCountsNowhere() {
    Try early =
        new Try(
            0, "act0", "in0", true, OptionalLong.of(900), Optional.empty(), false, Try.Marks.NONE);
    assertEquals(Findings.NOTHING, Reckoning.of(List.of(early)));
    assertEquals(Findings.NOTHING, Reckoning.of(List.of()));
  }

  @Test
  void withoutTimesMissesAreToldAllTheSame() {
    Try missed =
        new Try(
            1,
            "act0",
            "in0",
            false,
            OptionalLong.empty(),
            Optional.of("in1"),
            true,
            Try.Marks.NONE);
    Findings findings = Reckoning.of(List.of(missed, missed));
    Findings.OfInput input = findings.of("in0").orElseThrow();
    assertEquals(2, input.misses());
    assertEquals(2, input.beside());
    assertEquals(0, input.timed());
    assertEquals(0, input.difference().value());
  }
}
