package closehand.measure.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Nothing is counted falsely: in doubt the go does not count, and this is said. */
class FalseTapsTest {
  /** A held key: the delay, then the repeats. */
  private static long[] held(long delay, long period, int repeats) {
    return IntStream.rangeClosed(1, repeats).mapToLong(i -> i == 1 ? delay : period).toArray();
  }

  @TestFactory
  Stream<DynamicTest> aHeldKeySpoilsTheGoAtEveryRateOfRepeat() {
    return Stream.of(20L, 25L, 33L, 40L, 50L, 66L, 100L, 200L, 500L)
        .flatMap(
            period ->
                Stream.of(250L, 500L, 660L, 1000L)
                    .map(
                        delay ->
                            DynamicTest.dynamicTest(
                                delay + " ms, then every " + period + " ms",
                                () ->
                                    Sitting.tappingByKeys()
                                        .next()
                                        .tap(held(delay, period, period < 70 ? 2 : 9))
                                        .expect(Step.NotCounted.class)
                                        .expectSaid("A key was held down"))));
  }

  @Test
  void aHeldKeyInTheMiddleOfTappingSpoilsTheGo() {
    Sitting.tappingByKeys().next().tap(250, 310, 240, 660, 40, 40).expect(Step.NotCounted.class);
  }

  @Test
  void aPasteSpoilsTheGoWhetherItIsToldOrNot() {
    Sitting.tappingByKeys().next().tap(1, 1, 1).expect(Step.NotCounted.class);
    Sitting.tappingByKeys()
        .next()
        .send(new TaskMessage.Spoil(Spoilt.PASTED))
        .expectSaid("Something was pasted");
  }

  @TestFactory
  Stream<DynamicTest> whateverHappensToTheWindowSpoilsTheGoAndIsSaid() {
    return Stream.of(Spoilt.FOCUS_LOST, Spoilt.RESIZED, Spoilt.PASTED)
        .map(
            cause ->
                DynamicTest.dynamicTest(
                    cause.code(),
                    () -> {
                      Sitting sitting = Sitting.tappingByKeys().next().tap(300, 280);
                      sitting.send(new TaskMessage.Spoil(cause)).expectSaid(cause.words());
                      sitting.next().pain(2).expect(Step.Ready.class);
                      assertEquals(0, sitting.now().counted());
                    }));
  }

  @Test
  void whenTheTerminalIsCutOffNothingIsLeftOfTheGo() {
    Sitting sitting = Sitting.tappingByKeys().next().tap(300, 280);
    sitting.send(new TaskMessage.Spoil(Spoilt.DISCONNECTED));
    assertTrue(sitting.now().isOver());
    assertEquals(0, sitting.now().counted());
    assertTrue(sitting.ended().results().isEmpty());
  }

  @Test
  void aMachineThatSleptSpoilsTheGo() {
    Sitting.tappingByKeys().next().tap(300).wait(30).expectSaid("The machine paused");
  }

  @Test
  void aWindowThatChangesBetweenGoesSpoilsNothing() {
    Sitting sitting = Sitting.tappingByKeys().send(new TaskMessage.Spoil(Spoilt.RESIZED));
    sitting.expect(Step.Ready.class).next().tap(400).wait(10).pain(2);
    assertEquals(1, sitting.now().counted());
  }

  @Test
  void anotherKeyStopsTheGo() {
    Sitting.tappingByKeys().next().tap(300).key("b").expect(Step.Why.class);
  }

  @Test
  void bouncesAreNotCounted() {
    Taps taps = Taps.NONE;
    for (long at : new long[] {0, 12, 200, 400, 415, 600}) {
      taps = taps.with(at * 1_000_000);
    }
    assertFalse(taps.repeats());
    assertEquals(4, taps.count(0, 10_000_000_000L));
  }

  /** 2,000 made-up hands, 1 to 7 taps a second, each as even as a practised hand (5 percent). */
  @Test
  void tappingHandsAreHardlyEverTakenForAHeldKey() {
    Random random = new Random(20261130);
    int wrong = 0;
    for (int hand = 0; hand < 2000; hand++) {
      double gap = 1000 / (1 + 6 * random.nextDouble());
      long[] gaps = new long[(int) (10_000 / gap)];
      for (int i = 0; i < gaps.length; i++) {
        gaps[i] = Math.max(80, Math.round(gap * (1 + 0.05 * random.nextGaussian())));
      }
      Taps taps = Taps.NONE.with(0);
      long at = 0;
      for (long one : gaps) {
        at += one * 1_000_000;
        taps = taps.with(at);
      }
      assertEquals(gaps.length + 1, taps.count(0, Long.MAX_VALUE), () -> Arrays.toString(gaps));
      wrong += taps.repeats() ? 1 : 0;
    }
    assertTrue(wrong <= 20, wrong + " of 2000 hands taken for a held key");
  }
}
