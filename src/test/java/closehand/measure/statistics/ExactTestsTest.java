package closehand.measure.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.stat.inference.MannWhitneyUTest;
import org.junit.jupiter.api.Test;

/** Exact tests of few tries. Names begin with what the figures rest on. */
class ExactTestsTest {
  private static final Sample A = Sample.of(20, 20, 26, 25, 22, 23);
  private static final Sample B = Sample.of(28, 25, 24, 27, 30, 30, 29);

  /** Darwin 1876: heights of crossed less self-fertilised plants, in eighths of an inch. */
  private static final Sample PAIRS =
      Sample.of(49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48);

  /** How many of all orders give each U: c(m,n,u) = c(m-1,n,u-n) + c(m,n-1,u). */
  private static double orders(int m, int n, int u) {
    if (u < 0 || m < 0 || n < 0) {
      return 0;
    }
    if (m == 0 || n == 0) {
      return u == 0 ? 1 : 0;
    }
    return orders(m - 1, n, u - n) + orders(m, n - 1, u);
  }

  /** Two groups without equal values whose U is this: each pair won costs one step. */
  private static Ranks ranks(int m, int n, int u) {
    double[] first = new double[m];
    double[] second = new double[n];
    int left = u;
    for (int i = 0; i < m; i++) {
      first[i] = (i + 1) * 1000;
    }
    for (int j = n - 1; j >= 0; j--) {
      int above = Math.min(m, left);
      left -= above;
      second[j] = above * 1000 + 1 + j;
    }
    return Ranks.of(Sample.of(first), Sample.of(second));
  }

  private static int critical(int m, int n) {
    int u = -1;
    while (ranks(m, n, u + 1).chance().twoSided() <= 0.05) {
      u++;
    }
    return u;
  }

  @Test
  void pub_criticalValuesOfU() {
    int[] five = {2, 3, 5, 6, 7, 8, 9, 11};
    int[] eight = {6, 8, 10, 13, 15, 17, 19, 22};
    int[] four = {0, 1, 2, 3, 4, 4, 5};
    int[] three = {0, 1, 1, 2, 2, 3};
    for (int i = 0; i < five.length; i++) {
      assertEquals(five[i], critical(5, 5 + i));
      assertEquals(eight[i], critical(8, 5 + i));
    }
    for (int i = 0; i < four.length; i++) {
      assertEquals(four[i], critical(4, 4 + i));
    }
    for (int i = 0; i < three.length; i++) {
      assertEquals(three[i], critical(3, 5 + i));
    }
    assertEquals(23, critical(10, 10));
    assertEquals(127, critical(20, 20));
  }

  @Test
  void self_smallestChancesSoFewTriesCanReach() {
    double[][] rows = {{3, 3, .100}, {4, 4, .0286}, {3, 5, .0357}, {4, 5, .0159}, {5, 5, .0079}};
    for (double[] row : rows) {
      Chance chance = ranks((int) row[0], (int) row[1], 0).chance();
      assertEquals(row[2], chance.twoSided(), 0.00005);
      assertTrue(chance.exact());
    }
    assertEquals(.0556, ranks(5, 5, 3).chance().twoSided(), 0.00005, "not 18 as rank sum");
    assertFalse(ranks(5, 5, 3).chance().isSmall());
  }

  @Test
  void self_everyCountIsTheOneOfTheRecursion() {
    for (int m = 1; m <= 7; m++) {
      for (int n = 1; n <= 7; n++) {
        double all = Permutation.ways(m + n, m);
        double upTo = 0;
        for (int u = 0; 2 * u < m * n; u++) {
          upTo += orders(m, n, u);
          Ranks ranks = ranks(m, n, u);
          assertEquals(u, ranks.smaller(), 0);
          assertEquals(2 * upTo / all, ranks.chance().twoSided(), 1e-12, m + " " + n + " " + u);
        }
      }
    }
  }

  /** Every group of the size is dealt out and its ranks added up, slowly and plainly. */
  @Test
  void self_tiesAreCountedAsFullEnumerationCountsThem() {
    Random random = new Random(5);
    for (int round = 0; round < 300; round++) {
      int m = 1 + random.nextInt(5);
      int n = 1 + random.nextInt(5);
      Sample a = few(random, m);
      Sample b = few(random, n);
      List<Double> all = new ArrayList<>(a.values());
      all.addAll(b.values());
      double seen = won(a.values(), b.values());
      int asFar = 0;
      int every = 0;
      for (int mask = 0; mask < 1 << (m + n); mask++) {
        if (Integer.bitCount(mask) == n) {
          List<Double> left = new ArrayList<>();
          List<Double> right = new ArrayList<>();
          for (int i = 0; i < m + n; i++) {
            ((mask >> i & 1) == 1 ? right : left).add(all.get(i));
          }
          every++;
          double half = m * n / 2.0;
          asFar += Math.abs(won(left, right) - half) >= Math.abs(seen - half) ? 1 : 0;
        }
      }
      Ranks ranks = Ranks.of(a, b);
      assertEquals(seen, ranks.pairsWon(), 1e-9);
      assertEquals((double) asFar / every, ranks.chance().twoSided(), 1e-12);
    }
  }

  private static Sample few(Random random, int size) {
    return new Sample(random.ints(size, 0, 5).mapToObj(i -> (double) i).toList());
  }

  private static double won(List<Double> first, List<Double> second) {
    double won = 0;
    for (double a : first) {
      for (double b : second) {
        won += b > a ? 1 : b == a ? 0.5 : 0;
      }
    }
    return won;
  }

  @Test
  void hipparchus_exactRanksWithoutEqualValues() {
    Random random = new Random(6);
    for (int round = 0; round < 100; round++) {
      double[] a = random.doubles(2 + random.nextInt(9)).toArray();
      double[] b = random.doubles(2 + random.nextInt(9), 0.2, 1.2).toArray();
      MannWhitneyUTest other = new MannWhitneyUTest();
      Ranks ranks = Ranks.of(Sample.of(a), Sample.of(b));
      assertEquals(other.mannWhitneyU(a, b), ranks.smaller(), 1e-9);
      // At the very middle, where it must be 1, the library counts the middle twice.
      boolean middle = 2 * ranks.smaller() == ranks.pairs();
      double expected = middle ? 1 : other.mannWhitneyUTest(a, b, true);
      assertEquals(expected, ranks.chance().twoSided(), 1e-9);
    }
  }

  @Test
  void pub_darwinsPairs() {
    assertEquals(314, PAIRS.mean() * PAIRS.size(), 1e-9);
    Chance chance = Permutation.signs(PAIRS);
    assertEquals(2 * 863 / 32_768.0, chance.twoSided(), 1e-12);
    assertEquals(.052673, chance.twoSided(), 0.0000005);
    assertTrue(chance.exact());
    assertFalse(chance.isSmall());
  }

  @Test
  void self_p2_meansAndRanksDealtOutAnew() {
    assertEquals(4.904762, B.mean() - A.mean(), 0.0000005);
    assertEquals(14 / 1716.0, Permutation.means(A, B).twoSided(), 1e-12);
    assertEquals(.008159, Permutation.means(B, A).twoSided(), 0.0000005);
    Ranks ranks = Ranks.of(A, B);
    assertEquals(16 / 1716.0, ranks.chance().twoSided(), 1e-12);
    assertEquals(3.5, ranks.smaller(), 0);
    assertEquals(.014743, Ranks.approximate(A, B).twoSided(), 0.0000005);
  }

  @Test
  void self_meansAreCountedAsFullEnumerationCountsThem() {
    Random random = new Random(7);
    for (int round = 0; round < 200; round++) {
      double[] all = random.ints(8, 0, 30).mapToDouble(i -> i / 10.0).toArray();
      Sample a = Sample.of(all[0], all[1], all[2]);
      Sample b = Sample.of(all[3], all[4], all[5], all[6], all[7]);
      int asFar = 0;
      for (int mask = 0; mask < 256; mask++) {
        if (Integer.bitCount(mask) == 3) {
          List<Double> left = new ArrayList<>();
          List<Double> right = new ArrayList<>();
          for (int i = 0; i < 8; i++) {
            ((mask >> i & 1) == 1 ? left : right).add(all[i]);
          }
          double apart = Math.abs(new Sample(left).mean() - new Sample(right).mean());
          asFar += apart >= Math.abs(a.mean() - b.mean()) - 1e-9 ? 1 : 0;
        }
      }
      assertEquals(asFar / 56.0, Permutation.means(a, b).twoSided(), 1e-12);
    }
  }

  @Test
  void upTo32ValuesAreCountedAndMoreAreSaidToBeNear() {
    Random random = new Random(8);
    Sample ten = new Sample(random.doubles(10).boxed().toList());
    Sample twelve = new Sample(random.doubles(12, 0.4, 1.4).boxed().toList());
    Chance counted = Permutation.means(ten, twelve);
    assertTrue(counted.exact());
    assertEquals(counted(ten, twelve), counted.twoSided(), 1e-12);
    Sample many = new Sample(random.doubles(16).boxed().toList());
    Sample more = new Sample(random.doubles(17, 0.2, 1.2).boxed().toList());
    Chance near = Permutation.means(many, more);
    assertFalse(near.exact());
    Chance without = Permutation.means(many, new Sample(more.values().subList(0, 16)));
    assertTrue(without.exact());
    assertEquals(without.twoSided(), near.twoSided(), 0.1, "one value more");
    assertFalse(Permutation.signs(new Sample(java.util.Collections.nCopies(33, 1.0))).exact());
    assertEquals(
        Math.pow(2, -31),
        Permutation.signs(new Sample(java.util.Collections.nCopies(32, 1.0))).twoSided(),
        1e-18);
  }

  @Test
  void self_signsAreCountedAsFullEnumerationCountsThem() {
    Random random = new Random(14);
    for (int round = 0; round < 200; round++) {
      double[] all =
          random.ints(1 + random.nextInt(9), -20, 21).mapToDouble(i -> i / 10.0).toArray();
      double seen = Math.abs(java.util.Arrays.stream(all).sum());
      int asFar = 0;
      for (int signs = 0; signs < 1 << all.length; signs++) {
        double sum = 0;
        for (int i = 0; i < all.length; i++) {
          sum += (signs >> i & 1) == 0 ? all[i] : -all[i];
        }
        asFar += Math.abs(sum) >= seen - 1e-9 ? 1 : 0;
      }
      double share = (double) asFar / (1 << all.length);
      assertEquals(share, Permutation.signs(Sample.of(all)).twoSided(), 1e-12);
    }
  }

  /** All 646,646 ways of ten and twelve, by bits. */
  private static double counted(Sample ten, Sample twelve) {
    double[] all = new double[22];
    for (int i = 0; i < all.length; i++) {
      all[i] = i < 10 ? ten.values().get(i) : twelve.values().get(i - 10);
    }
    double sum = java.util.Arrays.stream(all).sum();
    double apart = Math.abs(ten.mean() - twelve.mean());
    int asFar = 0;
    int every = 0;
    for (int mask = 0; mask < 1 << 22; mask++) {
      if (Integer.bitCount(mask) == 10) {
        double chosen = 0;
        for (int i = 0; i < 22; i++) {
          chosen += (mask >> i & 1) == 1 ? all[i] : 0;
        }
        every++;
        asFar += Math.abs(chosen / 10 - (sum - chosen) / 12) >= apart - 1e-9 ? 1 : 0;
      }
    }
    assertEquals(646_646, every);
    return (double) asFar / every;
  }

  @Test
  void nothingParts_nothingStandsOut() {
    Sample same = Sample.of(8, 8, 8, 8);
    assertEquals(1, Permutation.means(same, same).twoSided(), 0);
    assertEquals(1, Ranks.of(same, same).chance().twoSided(), 0);
    assertEquals(1, Permutation.signs(Sample.of(0, 0, 0)).twoSided(), 0);
    List<Double> many = java.util.Collections.nCopies(40, 8.0);
    assertEquals(1, Permutation.means(new Sample(many), same).twoSided(), 0);
    assertEquals(1, Ranks.of(new Sample(many), new Sample(many)).chance().twoSided(), 0);
    assertThrows(IllegalArgumentException.class, () -> Permutation.signs(Sample.of()));
  }
}
