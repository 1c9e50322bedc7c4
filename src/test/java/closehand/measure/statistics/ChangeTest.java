package closehand.measure.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.hipparchus.stat.correlation.KendallsCorrelation;
import org.junit.jupiter.api.Test;

/** Wobble, overlap and practice. Names begin with what the figures rest on. */
class ChangeTest {
  @Test
  void r1_mem_aReliableChangeOfAScale() {
    Wobble wobble = Wobble.ofStudy(7.5, .80);
    assertEquals(3.354, wobble.error(), 0.0005);
    assertEquals(4.743, wobble.ofDifference(), 0.0005);
    assertEquals(3.162, wobble.multiple(47.5 - 32.5), 0.0005);
  }

  @Test
  void r2_pub_aScaleThatNeedsAlmostFivePoints() {
    Wobble wobble = Wobble.ofStudy(7.6, .95);
    assertEquals(1.699, wobble.error(), 0.0005);
    assertEquals(2.403, wobble.ofDifference(), 0.0005);
    assertEquals(4.711, wobble.smallestChange(), 0.0005);
  }

  /** Published 4.9 and 5.1 from figures before rounding. */
  @Test
  void r3_pub_gripOfInjuredArmsAbove20Kilograms() {
    assertEquals(4.989, new Wobble(1.8).smallestChange(), 0.0005);
    assertEquals(5.1, GripChange.around(20.1).rise(), 0);
    assertFalse(GripChange.around(30).hold(-5.2));
  }

  @Test
  void r4_pub_theErrorOfAWeakGripGrowsWithIt() {
    double[][] rows = {{5, 3.29, -2.44}, {10, 5.34, -4.49}, {20, 9.44, -8.59}};
    for (double[] row : rows) {
      assertEquals(row[1], GripChange.around(row[0]).rise(), 0.0005);
      assertEquals(row[2], GripChange.around(row[0]).fall(), 0.0005);
    }
    assertTrue(GripChange.around(5).hold(3));
    assertFalse(GripChange.around(5).hold(3.3));
  }

  @Test
  void r5_pub_gripAfterHandInjuryInNewtons() {
    assertEquals(6.220, 61 / 9.80665, 0.0005);
    assertEquals(61, new Wobble(22.01).smallestChange(), 0.01);
  }

  @Test
  void r6_pub_pegsWithParkinsons() {
    Wobble usedMore = Wobble.ofStudy(15.7, .88);
    Wobble other = Wobble.ofStudy(12.4, .91);
    assertEquals(5.439, usedMore.error(), 0.0005);
    assertEquals(3.720, other.error(), 0.0005);
    assertEquals(15.08, usedMore.smallestChange(), 0.005);
    assertEquals(10.31, other.smallestChange(), 0.005);
  }

  @Test
  void r7_self_tapsBesideOnesOwnRepeats() {
    Wobble wobble = Wobble.ofRepeats(Sample.of(48, 50, 47, 51, 49));
    assertEquals(1.5811, wobble.error(), 0.00005);
    assertEquals(4.383, wobble.smallestChange(), 0.0005);
    assertEquals(1.960, wobble.smallestChange(5, 5), 0.0005);
  }

  @Test
  void p3_pub_pegsWithMultipleSclerosis() {
    assertEquals(4.380, new Wobble(1.58).smallestChange(), 0.0005);
    assertEquals(22.57, 4.380 / .194, 0.01);
    assertEquals(7.456, new Wobble(2.69).smallestChange(), 0.0005);
    assertEquals(25.62, 7.456 / .291, 0.005);
  }

  /** The least change is from memory: it stands in the test, not in the program. */
  @Test
  void b3_mem_blocksAfterAStroke() {
    Wobble wobble = new Wobble(5.5 / 1.96 / Math.sqrt(2));
    assertTrue(36 - 31 < wobble.smallestChange());
    assertTrue(37 - 31 > wobble.smallestChange());
  }

  private record Row(
      Sample a,
      Sample b,
      int better,
      int trend,
      double tau,
      double won,
      double less,
      double beyond) {}

  @Test
  void pub_overlapOfTwoPhases() {
    List<Row> rows =
        List.of(
            new Row(
                Sample.of(20, 20, 26, 25, 22, 23),
                Sample.of(28, 25, 24, 27, 30, 30, 29),
                35,
                4,
                .8333,
                38.5 / 42,
                .7381,
                5 / 7.0),
            new Row(Sample.of(3, 3, 4, 5), Sample.of(4, 5, 6, 7, 7), 16, 5, .8, .9, .55, .6),
            new Row(Sample.of(1, 2, 3, 4, 5), Sample.of(6, 7, 8, 9, 10), 25, 10, 1, 1, .6, 1));
    for (Row row : rows) {
      Overlap overlap = Overlap.of(row.a, row.b);
      assertEquals(row.better, overlap.better());
      assertEquals(row.trend, overlap.trend());
      assertEquals(row.tau, overlap.tau(), 0.00005);
      assertEquals(row.won, overlap.wonShare(), 0.00005);
      assertEquals(row.less, overlap.tauLessTrend(), 0.00005);
      assertEquals(row.beyond, overlap.beyond(), 1e-12);
    }
  }

  @Test
  void pub_kendalls1970Example() {
    List<Double> first = List.of(1.0, 2.5, 2.5, 4.5, 4.5, 6.5, 6.5, 8.0, 9.5, 9.5);
    List<Double> second = List.of(1.0, 2.0, 4.5, 4.5, 4.5, 4.5, 8.0, 8.0, 8.0, 10.0);
    Kendall kendall = Kendall.of(first, second);
    assertEquals(33, kendall.rising());
    assertEquals(.8590, kendall.tau(), 0.00005);
  }

  @Test
  void hipparchus_tauWithEqualValues() {
    Random random = new Random(9);
    for (int round = 0; round < 200; round++) {
      int size = 4 + random.nextInt(10);
      double[] a = random.ints(size, 0, 6).asDoubleStream().toArray();
      double[] b = random.ints(size, 0, 6).asDoubleStream().toArray();
      double other = new KendallsCorrelation().correlation(a, b);
      Kendall kendall = Kendall.of(Sample.of(a).values(), Sample.of(b).values());
      assertEquals(Double.isNaN(other) ? 0 : other, kendall.tau(), 1e-12);
    }
  }

  @Test
  void l1_self_timesFallByThePowerOfPractice() {
    Learning learning = new Learning(10, .4);
    assertEquals(7.5786, learning.at(2), 0.00005);
    assertEquals(5.2531, learning.at(5), 0.00005);
    assertEquals(3.9811, learning.at(10), 0.00005);
    assertEquals(3.0171, learning.at(20), 0.00005);
  }

  @Test
  void l2_pub_wordsTypedOnAMiniKeyboard() {
    double rate = Math.log(60.03 / 31.72) / Math.log(20);
    assertEquals(.2129, rate, 0.00005);
    assertEquals(51.79, new Learning(31.72, -rate).at(10), 0.005);
  }

  /** Invented data. */
  @Test
  void l3_self_aCurveThroughEightBlocks() {
    Sample times = Sample.of(10, 8.1, 7.3, 6.6, 6.2, 5.9, 5.7, 5.5);
    Learning learning = Learning.of(times).orElseThrow();
    assertEquals(9.9505, learning.first(), 0.00005);
    assertEquals(.2892, learning.rate(), 0.00005);
    assertEquals(-0.2, Learning.lastChange(times), 1e-9);
    assertTrue(Learning.of(Sample.of(10, 8.1, 7.3, 6.6, 6.2, 5.9, 5.7)).isEmpty());
  }
}
