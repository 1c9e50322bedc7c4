package closehand.strain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.strain.CumulativeStrain.GameTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where the printed branches meet, and what follows from the methods themselves. */
class InvariantsTest {
  @Test
  void theBranchesMeet() {
    assertEquals(RevisedStrainIndex.effort(0.4), RevisedStrainIndex.effort(Math.nextUp(0.4)), 1e-9);
    assertEquals(22.6, 0.00334 * Math.pow(90, 1.96), 0.005);
    assertEquals(22.6, RevisedStrainIndex.frequency(Math.nextUp(90.0)), 0.005);
    assertEquals(19.05, 19.17 * Math.log(60) - 59.44, 0.005);
    assertEquals(19.05, RevisedStrainIndex.duration(Math.nextUp(60.0)), 0.005);
    assertEquals(1, RevisedStrainIndex.hours(8), 0.001);
    assertEquals(1, RevisedStrainIndex.posture(0), 0);
    assertEquals(1, RevisedStrainIndex.posture(-1e-12), 1e-9);
    assertEquals(1, RevisedStrainIndex.posture(30), 0);
  }

  @Test
  void noMultiplierEverFallsAcrossItsJoint() {
    for (double at = 0.0001; at < 200; at += 0.0007) {
      assertTrue(
          RevisedStrainIndex.frequency(at + 0.0007) >= RevisedStrainIndex.frequency(at), "" + at);
      assertTrue(
          RevisedStrainIndex.duration(at + 0.0007) >= RevisedStrainIndex.duration(at), "" + at);
      if (at < 23) {
        assertTrue(RevisedStrainIndex.hours(at + 0.0007) >= RevisedStrainIndex.hours(at), "" + at);
      }
      if (at < 0.999) {
        assertTrue(
            RevisedStrainIndex.effort(at + 0.0007) >= RevisedStrainIndex.effort(at), "" + at);
      }
    }
  }

  @Test
  void twoHalvesOfAPressAreThePress() {
    List<Exertion> halves =
        List.of(new Exertion("R.I", 0.2, 10, 1), new Exertion("R.I", 0.2, 15, 1));
    double whole = RevisedStrainIndex.index(new Exertion("R.I", 0.2, 25, 1), 3);
    assertEquals(8.861044, whole, 1e-6);
    assertEquals(whole, CompositeStrain.of(halves, 3).amount().orElseThrow(), 1e-9);
    List<Exertion> often =
        List.of(new Exertion("R.I", 0.1, 80, 0.2), new Exertion("R.I", 0.1, 40, 0.2));
    assertEquals(
        RevisedStrainIndex.index(new Exertion("R.I", 0.1, 120, 0.2), 3),
        CompositeStrain.of(often, 3).amount().orElseThrow(),
        1e-9);
  }

  @Test
  void twoPartsOfADayAreTheDay() {
    List<Exertion> hand = List.of(new Exertion("R.I", 0.2, 10, 1), new Exertion("R.M", 0.1, 8, 2));
    assertEquals(
        CompositeStrain.of(hand, 5).amount().orElseThrow(),
        CumulativeStrain.of(List.of(new GameTime(hand, 2), new GameTime(hand, 3)))
            .amount()
            .orElseThrow(),
        1e-9);
  }

  @Test
  void onePressIsItsHandAndOneGameIsItsDay() {
    Exertion press = new Exertion("L.T", 0.15, 12, 0.4, -10);
    double index = RevisedStrainIndex.index(press, 2);
    assertEquals(index, CompositeStrain.of(List.of(press), 2).amount().orElseThrow(), 1e-9);
    assertEquals(
        index,
        CumulativeStrain.of(List.of(new GameTime(List.of(press), 2))).amount().orElseThrow(),
        1e-9);
  }

  @Test
  void aHarderHoldLastsLessLong() {
    for (Region region : Region.values()) {
      for (double share = 0.10; share < 0.99; share += 0.01) {
        assertTrue(
            Endurance.seconds(region, share + 0.01) < Endurance.seconds(region, share),
            region.words());
      }
    }
  }

  @Test
  void percentAndSharesOutsideTheDataAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> Endurance.seconds(Region.HAND, 20));
    assertThrows(IllegalArgumentException.class, () -> Endurance.seconds(Region.HAND, 0.09));
    assertThrows(IllegalArgumentException.class, () -> Endurance.rohmertSeconds(0.15));
    assertThrows(IllegalArgumentException.class, () -> Endurance.seconds(Region.HAND, Double.NaN));
  }

  /** Order of the abstract of Frey Law and Avin at a middle effort. */
  @Test
  void pub_ankleLastsLongestAndShoulderShortest() {
    List<Region> order =
        List.of(
            Region.ANKLE, Region.TRUNK, Region.HAND, Region.ELBOW, Region.KNEE, Region.SHOULDER);
    for (int i = 1; i < order.size(); i++) {
      assertTrue(Endurance.seconds(order.get(i - 1), 0.5) > Endurance.seconds(order.get(i), 0.5));
    }
  }
}
