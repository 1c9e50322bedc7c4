package closehand.measure.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/** Pointing: checks F1 to F5. Names begin with what the figures rest on. */
class PointingTest {
  /** Width and distance in inches, time in ms: Fitts 1954, 1-oz stylus. */
  private static final double[][] CELLS_OF_1954 = {
    {0.25, 2, 392}, {0.25, 4, 484}, {0.25, 8, 580}, {0.25, 16, 731},
    {0.5, 2, 281}, {0.5, 4, 372}, {0.5, 8, 469}, {0.5, 16, 595},
    {1, 2, 212}, {1, 4, 260}, {1, 8, 357}, {1, 16, 481},
    {2, 2, 180}, {2, 4, 203}, {2, 8, 279}, {2, 16, 388}
  };

  private record Regression(Line line, Sample bitsPerSecond) {}

  private static Regression regression(DoubleBinaryOperator index) {
    List<Double> bits = new ArrayList<>();
    List<Double> times = new ArrayList<>();
    List<Double> rates = new ArrayList<>();
    SimpleRegression other = new SimpleRegression();
    for (double[] cell : CELLS_OF_1954) {
      double id = index.applyAsDouble(cell[1], cell[0]);
      bits.add(id);
      times.add(cell[2]);
      rates.add(1000 * id / cell[2]);
      other.addData(id, cell[2]);
    }
    Line line = Line.through(bits, times);
    assertEquals(other.getIntercept(), line.intercept(), 1e-9, "Hipparchus");
    assertEquals(other.getSlope(), line.slope(), 1e-9, "Hipparchus");
    assertEquals(other.getR(), line.correlation(), 1e-12, "Hipparchus");
    return new Regression(line, new Sample(rates));
  }

  /** The cells are from memory; that they give the published 12.8 and 94.7 speaks for them. */
  @Test
  void f1_pub_coefficientsOf1954FromCellsFromMemory() {
    Regression of1954 = regression(Difficulty::bitsOf1954);
    assertEquals(12.8, of1954.line().intercept(), 0.05);
    assertEquals(94.7, of1954.line().slope(), 0.05);
    assertEquals(.9831, of1954.line().correlation(), 0.00005);
    assertEquals(10.10, of1954.bitsPerSecond().mean(), 0.005);
    assertEquals(1.33, of1954.bitsPerSecond().deviation(), 0.005);
  }

  @Test
  void f2_self_theSameCellsWithTheLaterIndex() {
    Regression later = regression(Difficulty::bits);
    assertEquals(27.69, later.line().intercept(), 0.005);
    assertEquals(111.54, later.line().slope(), 0.005);
    assertEquals(.9936, later.line().correlation(), 0.00005);
    assertEquals(8.193, later.bitsPerSecond().mean(), 0.0005);
  }

  @Test
  void f3_self_howHardTargetsAre() {
    assertEquals(4.0875, Difficulty.bits(512, 32), 0.00005);
    assertEquals(3.1699, Difficulty.bits(160, 20), 0.00005);
    assertEquals(3.1699, Difficulty.bits(40, 5), 0.00005);
    assertEquals(1.0, Difficulty.bits(300, 300), 1e-12);
    assertEquals(3.4594, Difficulty.bits(60, 6), 0.00005);
    assertThrows(IllegalArgumentException.class, () -> Difficulty.bits(10, 0));
  }

  private static List<Selection> tenSelections() {
    double[] ends = {59, 61.5, 60.5, 58, 62, 60, 61, 59.5, 63.5, 60};
    double[] seconds = {.91, .84, .97, 1.02, .88, .93, .86, .95, .81, .99};
    List<Selection> all = new ArrayList<>();
    for (int i = 0; i < ends.length; i++) {
      all.add(Selection.onLine(0, 60, ends[i], seconds[i]));
    }
    return all;
  }

  /** Invented data. */
  @Test
  void f4_self_throughputOfTenSelectionsInCells() {
    Throughput throughput = Throughput.of(6, tenSelections()).orElseThrow();
    assertEquals(1.5811, throughput.deviation(), 0.00005);
    assertEquals(6.5348, throughput.width(), 0.0002);
    assertEquals(60.500, throughput.distance(), 1e-9);
    assertEquals(3.3587, throughput.bits(), 0.00005);
    assertEquals(0.9160, throughput.seconds(), 1e-9);
    assertEquals(3.6667, throughput.bitsPerSecond(), 0.00005);
    assertEquals(1, throughput.missed());
    assertEquals(3.7767, Difficulty.bits(60, 6) / throughput.seconds(), 0.00005, "nominal width");
    assertFalse(throughput.isTooFine(1));
    assertTrue(throughput.isTooFine(6));
  }

  @Test
  void f5_self_whatFellAsideIsProjectedOnTheWay() {
    Selection one =
        new Selection(
            new Selection.Point(100, 100),
            new Selection.Point(400, 100),
            new Selection.Point(394, 112),
            1);
    assertEquals(300, one.distance(), 1e-9);
    assertEquals(13.416, one.off(), 0.0005);
    assertEquals(294.245, one.moved(), 0.0005);
    assertEquals(-6.000, one.along(), 0.0005);
    assertEquals(294.000, one.distance() + one.along(), 0.0005);
  }

  @Test
  void self_roundingToCellsWidensWhatSpreadsLittle() {
    double[][] rows = {{0.5, 0.577, 0.15}, {1, 1.041, 0.04}, {2, 2.021, 0.01}};
    for (double[] row : rows) {
      double read = Math.sqrt(row[0] * row[0] + 1.0 / 12);
      assertEquals(row[1], read, 0.0005);
      assertEquals(row[2], read / row[0] - 1, 0.006);
    }
    assertTrue(EffectiveWidth.isTooFine(Sample.of(0, 0, 0, 0.5), 1));
    assertFalse(EffectiveWidth.isTooFine(Sample.of(0, 0, 0, 1), 1));
  }

  @Test
  void aPressThatWasNotMeantForTheTargetIsLeftOutAndAMissIsNot() {
    List<Selection> all = new ArrayList<>(tenSelections());
    Throughput before = Throughput.of(6, all).orElseThrow();
    all.add(Selection.onLine(0, 60, 3, 0.2));
    all.add(Selection.onLine(0, 60, 73, 0.9));
    assertEquals(before, Throughput.of(6, all).orElseThrow());
    all.add(Selection.onLine(0, 60, 66, 0.9));
    Throughput after = Throughput.of(6, all).orElseThrow();
    assertEquals(11, after.counted());
    assertEquals(2, after.missed());
    assertTrue(after.bitsPerSecond() < before.bitsPerSecond(), "a miss costs");
  }

  @Test
  void inAChainTheWayBeginsWhereTheEarlierSelectionFell() {
    List<Selection> there = new ArrayList<>();
    there.add(Selection.onLine(0, 40, 42, 1));
    there.add(Selection.onLine(40, 0, -1, 1));
    there.add(Selection.onLine(0, 40, 39, 1));
    double alone = Throughput.of(8, there).orElseThrow().distance();
    double chain = Throughput.ofChain(8, there).orElseThrow().distance();
    assertEquals((42 + 41 + 39) / 3.0, alone, 1e-9);
    assertEquals((42 + 43 + 40) / 3.0, chain, 1e-9);
  }

  @Test
  void nothingIsToldOfOneSpotOrOneSelection() {
    Selection one = Selection.onLine(0, 60, 60, 1);
    assertTrue(Throughput.of(6, List.of(one)).isEmpty());
    assertTrue(Throughput.of(6, List.of(one, one, one)).isEmpty());
    assertThrows(IllegalArgumentException.class, () -> Selection.onLine(0, 60, 60, 0));
  }

  @Test
  void conditionsCountAlikeHoweverManySelectionsTheyHold() {
    Throughput slow = new Throughput(20, 0, 1, 4, 60, 4, 2);
    Throughput quick = new Throughput(5, 0, 1, 4, 60, 4, 1);
    assertEquals(3, Throughput.meanBitsPerSecond(List.of(slow, quick)), 1e-12);
  }
}
