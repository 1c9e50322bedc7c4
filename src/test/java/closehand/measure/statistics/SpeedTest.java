package closehand.measure.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.measure.norms.Bell;
import java.util.List;
import java.util.Random;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

/** Taps, choices and getting tired. Names begin with what the figures rest on. */
class SpeedTest {
  @Test
  void hipparchus_middlesAndSpread() {
    Random random = new Random(10);
    for (int round = 0; round < 100; round++) {
      double[] values = random.doubles(2 + random.nextInt(12), 1, 9).toArray();
      DescriptiveStatistics other = new DescriptiveStatistics(values);
      Sample sample = Sample.of(values);
      assertEquals(other.getMean(), sample.mean(), 1e-12);
      assertEquals(other.getPercentile(50), sample.median(), 1e-12);
      assertEquals(other.getStandardDeviation(), sample.deviation(), 1e-12);
    }
    assertThrows(IllegalArgumentException.class, () -> Sample.of(1).deviation());
    assertThrows(IllegalArgumentException.class, () -> Sample.of(Double.NaN));
  }

  @Test
  void t1_self_tapsEachSecond() {
    assertEquals(5.70, Taps.perSecond(57, 10), 1e-12);
    assertEquals(175.4, 1000 / Taps.perSecond(57, 10), 0.05);
  }

  @Test
  void t2_self_oneHandBesideTheOther() {
    assertEquals(8.77, Taps.sideDifferencePercent(57, 52), 0.005);
    assertEquals(14.04, Taps.sideDifferencePercent(57, 49), 0.005);
  }

  @Test
  void t3_self_evenness() {
    Sample times = Taps.between(List.of(0.0, 170.0, 350.0, 515.0, 705.0, 880.0));
    assertEquals(Sample.of(170, 180, 165, 190, 175), times);
    assertEquals(176, times.mean(), 1e-9);
    assertEquals(9.618, times.deviation(), 0.0005);
    assertEquals(.0546, times.variation(), 0.00005);
  }

  @Test
  void aKeyThatIsHeldIsNoTapping() {
    assertTrue(Taps.isHeldKey(Sample.of(.4, .033, .033, .033, .033)));
    assertFalse(Taps.isHeldKey(Sample.of(.4, .033, .033, .033, .2, .033)), "a bounce or two");
    assertFalse(Taps.isHeldKey(Sample.of(.15, .14, .16, .15, .15)));
  }

  /** Tables of pegs and blocks are from memory: they stand in the test, not in the program. */
  @Test
  void p1_p2_b1_b2_mem_pegsAndBlocks() {
    assertEquals(1.000, Bell.deviations(18.06, 16.41, 1.65), 0.0005);
    assertEquals(3.866, Bell.deviations(31.0, 20.33, 2.76), 0.0005);
    assertEquals(-2.990, Bell.deviations(50, 79.0, 9.7), 0.0005);
    assertEquals(-1.000, Bell.deviations(75.5, 83.4, 7.9), 0.0005);
  }

  @Test
  void self_aRulerCaughtFalling() {
    assertEquals(.17490, Reaction.secondsOfFall(15), 0.000005);
    assertEquals(.20196, Reaction.secondsOfFall(20), 0.000005);
    assertEquals(.24735, Reaction.secondsOfFall(30), 0.000005);
  }

  /** What a bit costs is second-hand and stands in the test alone; so does the other form. */
  @Test
  void h1_to_h4_self_whatAChoiceCosts() {
    int[] choices = {2, 4, 8};
    double[] forced = {155.0, 310.0, 465.0};
    double[] withNoSignal = {245.7, 359.9, 491.3};
    for (int i = 0; i < choices.length; i++) {
      assertEquals(forced[i], 155 * Reaction.bits(choices[i]), 0.05);
      assertEquals(withNoSignal[i], 155 * Reaction.bits(choices[i] + 1), 0.05);
    }
    assertEquals(87.7, 150 * (Reaction.bits(3) - Reaction.bits(2)), 0.05);
    assertEquals(25.5, 150 * (Reaction.bits(9) - Reaction.bits(8)), 0.05);
    assertEquals(2, Reaction.bits(List.of(.25, .25, .25, .25)), 1e-12);
    assertTrue(Reaction.bits(List.of(.7, .1, .1, .1, 0.0)) < 2);
  }

  @Test
  void k1_self_tapsGoingDown() {
    Decline decline = new Decline(Sample.of(61, 58, 55, 53, 51, 50));
    assertEquals(-2.2286, decline.line().slope(), 0.00005);
    assertEquals(60.238, decline.line().intercept(), 0.0005);
    assertEquals(18.03, decline.percent(), 0.005);
    assertEquals(15.13, decline.percentByThirds(), 0.005);
    assertEquals(10.38, decline.percentBelowHighest(), 0.005);
    assertEquals(-.04049, decline.lineOfLogarithms().slope(), 0.000005);
  }

  @Test
  void k2_pub_beside194And176People() {
    assertEquals(2.609, Bell.deviations(35, 17.0, 6.9), 0.0005);
    assertEquals(2.467, Bell.deviations(35, 16.5, 7.5), 0.0005);
    assertEquals(1.884, Bell.deviations(30, 17.0, 6.9), 0.0005);
    assertEquals(Decline.EASE_OFF_PERCENT, 17 + 1.645 * 6.9, 0.05);
  }

  /** The figures of the curve are from memory: they stand in the test, not in the program. */
  @Test
  void k3_mem_howLongAHoldLasts() {
    double[][] rows = {{.15, 711.5}, {.30, 233.1}, {.50, 102.4}};
    for (double[] row : rows) {
      assertEquals(
          row[1], new Learning(33.55 * Math.pow(100, 1.61), 1.61).at((int) (100 * row[0])), 0.1);
    }
  }

  @Test
  void stretchesWithoutAnyTapGiveNoDecline() {
    assertThrows(IllegalArgumentException.class, () -> new Decline(Sample.of(10, 0)));
    assertThrows(IllegalArgumentException.class, () -> new Decline(Sample.of(10)));
  }
}
