package closehand.measure.before;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.Answers;
import closehand.interview.Value;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is asked before anything begins, each story with the core bank's own questions. */
class BeforeTest {
  private static Before after(Before before, int... choices) {
    Before now = before;
    for (int choice : choices) {
      now = now.answered(choice);
    }
    return now;
  }

  @Test
  void whatMustBeReadyComesFirstThenTheChestThenPain() {
    Before all = SomeBefore.BEFORE;
    assertEquals(5, all.asks().size());
    assertTrue(all.ask().words().contains("stop signal together, just now?"));
    assertTrue(after(all, 0, 0, 0).ask().words().contains("chest"));
    assertTrue(after(all, 0, 0, 0, 0).asksNumber());
    Before well = after(all, 0, 0, 0, 0, 3);
    assertTrue(well.over());
    assertEquals(Optional.empty(), well.ended());
    assertEquals(Optional.of(new Value.Number(3)), well.answers().get("pain.now"));
    assertEquals(Optional.of(new Value.Code("no")), well.answers().get("safe.chest"));
  }

  @Test
  void aSignalThatWasNotTriedIsTriedFirstHoweverOftenNotYetIsSaid() {
    Before notYet = after(SomeBefore.BEFORE, 1, 1, 1);
    assertEquals(0, notYet.at());
    assertTrue(notYet.said().contains("Try it out first"), notYet.said());
    assertEquals(1, after(notYet, 0).at());
  }

  @Test
  void overACallTheHelperAndTheNumberAreAskedAboutToo() {
    assertEquals(6, SomeBefore.of(true, Answers.NONE).asks().size());
  }

  @Test
  void highPainOrASignOrNotKnowingEndsItAndIsRemembered() {
    for (int pain : new int[] {7, 8, 9, 10}) {
      Before hurts = after(SomeBefore.BEFORE, 0, 0, 0, 0, pain);
      assertTrue(hurts.ended().orElse("").contains("pain is at 7 or more"), pain + "");
      assertEquals(Optional.of(new Value.Number(pain)), hurts.answers().get("pain.now"));
    }
    assertEquals(Optional.empty(), after(SomeBefore.BEFORE, 0, 0, 0, 0, 6).ended());
    for (int chest = 1; chest < 5; chest++) {
      Before sign = after(SomeBefore.BEFORE, 0, 0, 0, chest);
      assertTrue(sign.over() && sign.ended().isPresent(), "chest " + chest);
      assertTrue(sign.answers().containsKey("safe.chest"));
    }
    Before unsure = after(SomeBefore.BEFORE, 0, 0, 0, 4);
    assertEquals(Optional.empty(), unsure.answers().get("safe.chest"));
    assertTrue(unsure.ended().orElse("").contains("not known"));
  }

  @Test
  void whatADoctorKnowsAlreadyAndStaysAsItWasEndsNothing() {
    Answers known = Answers.NONE.with("safe.chest", SomeBefore.told(new Value.Code("known")));
    int asKnown =
        SomeBefore.BEFORE.asks().get(3).choices().size() - 2; // the last choice but "not sure"
    Before same = after(SomeBefore.of(false, known), 0, 0, 0, asKnown);
    assertEquals(Optional.of(new Value.Code("known")), same.answers().get("safe.chest"));
    assertEquals(Optional.empty(), same.ended());
    assertFalse(same.over());
  }

  @Test
  void whereASpinalInjuryIsKnownHowItFeelsNowIsAskedToo() {
    Answers injury = Answers.NONE.with("safe.sciT6", SomeBefore.told(new Value.Code("yes")));
    List<Ask> asks = SomeBefore.of(false, injury).asks();
    assertEquals(6, asks.size());
    assertTrue(
        asks.stream()
            .anyMatch(a -> a instanceof Ask.Anew n && n.field().fact().equals("safe.adNow")));
  }

  @Test
  void whatIsNoChoiceChangesNothingAndWhoLeavesBeginsNothing() {
    Before first = SomeBefore.BEFORE;
    assertEquals(first, first.answered(-1).answered(2).answered(99));
    Before pain = after(first, 0, 0, 0, 0);
    assertEquals(pain, pain.answered(11));
    Before left = first.left();
    assertTrue(left.over() && left.ended().isPresent() && left.answers().isEmpty());
    assertEquals(left, left.answered(0));
  }
}
