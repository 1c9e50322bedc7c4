package closehand.strain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.strain.SessionPlan.Step;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Sessions stay within the player's own time, with pauses that suit, and never grow by plan. */
class SessionPlanTest {
  private static Pace pace(
      double comfortable,
      double wished,
      boolean days,
      boolean late,
      boolean tires,
      boolean rises,
      boolean heavy) {
    return new Pace(
        some(comfortable), some(wished), OptionalDouble.empty(), days, late, tires, rises, heavy);
  }

  private static OptionalDouble some(double minutes) {
    return minutes > 0 ? OptionalDouble.of(minutes) : OptionalDouble.empty();
  }

  private static List<String> words(SessionPlan plan) {
    return plan.steps().stream().map(SessionPlanTest::words).toList();
  }

  private static String words(Step step) {
    if (step instanceof Step.Play play) {
      return "play " + play.minutes();
    }
    return step instanceof Step.Break longer ? "break " + longer.minutes() : "hands off 30 s";
  }

  @Test
  void fortyComfortableMinutesArePlayedInThreeParts() {
    SessionPlan plan = SessionPlan.of(Pace.UNKNOWN.comfortable(40));
    assertEquals(
        List.of("play 14", "hands off 30 s", "play 13", "hands off 30 s", "play 13"), words(plan));
    assertEquals(40, plan.playMinutes());
    assertEquals(10, plan.restMinutes());
  }

  @Test
  void aLongerBreakComesBeforeAnHour() {
    SessionPlan plan = SessionPlan.of(Pace.UNKNOWN.comfortable(60));
    assertEquals(
        List.of(
            "play 15",
            "hands off 30 s",
            "play 15",
            "break 10",
            "play 15",
            "hands off 30 s",
            "play 15"),
        words(plan));
  }

  @Test
  void aHandInTheUpperBandPausesTwiceAsOften() {
    SessionPlan usual = SessionPlan.of(Pace.UNKNOWN.comfortable(28));
    SessionPlan careful = SessionPlan.of(Pace.UNKNOWN.comfortable(28).heavyHand(true));
    assertEquals(1, usual.steps().stream().filter(s -> !(s instanceof Step.Play)).count());
    assertEquals(3, careful.steps().stream().filter(s -> !(s instanceof Step.Play)).count());
    assertTrue(careful.steps().contains(new Step.Break(10)), "a break after 25 minutes at most");
    assertTrue(
        careful.reasons().stream().anyMatch(r -> r.because().contains("one hand has much to do")));
  }

  @Test
  void painThatSettlesLateHalvesTheSession() {
    SessionPlan plan = SessionPlan.of(pace(40, 90, false, true, false, false, false));
    assertEquals(20, plan.playMinutes());
    assertEquals(20, plan.restMinutes());
    assertTrue(plan.reasons().get(0).because().startsWith("half of the 40 minutes"));
  }

  @Test
  void tirednessMeansTwoThirdsAndAsMuchRest() {
    SessionPlan plan = SessionPlan.of(pace(30, 0, false, false, true, false, false));
    assertEquals(20, plan.playMinutes());
    assertEquals(20, plan.restMinutes());
  }

  @Test
  void whereOverdoingCostsDaysTheSessionEndsWellBeforeTheLimit() {
    SessionPlan plan = SessionPlan.of(pace(30, 0, true, false, false, false, false));
    assertEquals(15, plan.playMinutes());
    assertTrue(plan.reasons().get(0).because().contains("stop earlier"));
  }

  @Test
  void anUnknownTimeBeginsShort() {
    assertEquals(10, SessionPlan.of(Pace.UNKNOWN).playMinutes());
    assertEquals(5, SessionPlan.of(pace(0, 0, true, false, false, false, false)).playMinutes());
  }

  @Test
  void nobodyIsToldToPlayLongerThanTheyWish() {
    assertEquals(15, SessionPlan.of(pace(60, 15, false, false, false, false, false)).playMinutes());
    assertEquals(8, SessionPlan.of(pace(0, 8, false, false, false, false, false)).playMinutes());
  }

  @Test
  void theWeightIsTakenOffAtThePlayersOwnTimes() {
    Pace own =
        new Pace(some(40), some(0), OptionalDouble.of(10), false, false, false, false, false);
    SessionPlan plan = SessionPlan.of(own);
    assertEquals(4, plan.steps().stream().filter(s -> s instanceof Step.Play).count());
    assertTrue(plan.reasons().stream().anyMatch(r -> r.basis().equals("your own times")));
  }

  @Test
  void everyPossibleSessionKeepsItsPromises() {
    for (int comfortable = 0; comfortable <= 240; comfortable += comfortable < 30 ? 1 : 7) {
      for (int flags = 0; flags < 32; flags++) {
        for (double wish : new double[] {0, 5, 45, 240}) {
          Pace pace =
              pace(
                  comfortable,
                  wish,
                  (flags & 1) > 0,
                  (flags & 2) > 0,
                  (flags & 4) > 0,
                  (flags & 8) > 0,
                  (flags & 16) > 0);
          check(pace, SessionPlan.of(pace));
        }
      }
    }
  }

  private static void check(Pace pace, SessionPlan plan) {
    int played = 0;
    int sinceBreak = 0;
    boolean lastWasPlay = false;
    int small = pace.halved() ? 7 : 15;
    for (Step step : plan.steps()) {
      if (step instanceof Step.Play play) {
        assertFalse(lastWasPlay, "a pause between two parts");
        assertTrue(play.minutes() >= 1 && play.minutes() <= small);
        played += play.minutes();
        sinceBreak += play.minutes();
        lastWasPlay = true;
      } else {
        assertTrue(lastWasPlay);
        lastWasPlay = false;
        sinceBreak = step instanceof Step.Break ? 0 : sinceBreak;
      }
      assertTrue(sinceBreak <= (pace.halved() ? 25 : 50));
    }
    assertTrue(lastWasPlay, "it ends with play, then rest");
    assertEquals(plan.playMinutes(), played);
    double most = pace.comfortableMinutes().orElse(10);
    assertTrue(played <= most, "never longer than the comfortable time");
    assertTrue(pace.wishedMinutes().isEmpty() || played <= pace.wishedMinutes().getAsDouble());
    if (pace.settlesLate() || pace.costsDays()) {
      assertTrue(played <= Math.max(1, most / 2), "at most half");
    }
    for (SessionPlan.Reason reason : plan.reasons()) {
      assertFalse(
          reason.number().isBlank() || reason.because().isBlank() || reason.basis().isBlank());
    }
    numbersHaveReasons(plan);
  }

  /** Each number that is printed stands at the head of a reason. */
  private static void numbersHaveReasons(SessionPlan plan) {
    String numbers = plan.reasons().stream().map(SessionPlan.Reason::number).toList().toString();
    assertTrue(numbers.contains(" of play") && numbers.contains(" of rest"));
    boolean pauses = plan.steps().stream().anyMatch(s -> s instanceof Step.HandsOff);
    assertEquals(pauses, numbers.contains("30 seconds") && numbers.contains("every"));
    boolean breaks = plan.steps().stream().anyMatch(s -> s instanceof Step.Break);
    assertEquals(breaks, numbers.contains("of break"));
  }
}
