package closehand.measure.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.StopSign;
import closehand.interview.Answer;
import closehand.interview.CaseRecord;
import closehand.interview.Event;
import closehand.interview.Value;
import closehand.measure.CoreStops;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The dialogue about a trial, and what stops it. All players are invented. */
class TrialDialogueTest {
  private static final String TODAY = "2026-11-25";

  private static TrialDialogue dialogue(List<Trial> earlier, String... typed) {
    TrialDialogue now = TrialDialogue.on(Trial.begun(TODAY), earlier, CoreStops.all());
    for (String line : typed) {
      now = now.answered(line);
    }
    return now;
  }

  private static TrialDialogue ready(List<Trial> earlier) {
    return dialogue(
        earlier,
        "1",
        "pad",
        "5",
        "1",
        "2",
        "moon race",
        "lap",
        "steer",
        "brake",
        "boost",
        "",
        "1",
        "2",
        "2");
  }

  private static String question(TrialDialogue dialogue) {
    return dialogue.put().orElseThrow().question();
  }

  @Test
  void eachOfTheTenStopSignsEndsTheTrialAtWhateverQuestion() {
    for (StopSign sign : StopSign.values()) {
      for (TrialDialogue before : List.of(dialogue(List.of()), ready(List.of()))) {
        TrialDialogue after = before.stopped(sign);
        assertEquals(Optional.of(sign), after.trial().stopped());
        assertTrue(after.said().get(0).startsWith("Stop here."), after.said().toString());
        assertTrue(after.said().toString().contains("your own doctor, nurse or clinic"));
        assertEquals("Pain now, after a rest?", question(after));
        assertEquals(after.trial(), after.back().trial(), "a stop is not taken back");
        assertTrue(after.answered("1").answered("").trial().done());
      }
    }
  }

  @Test
  void theTenSignsCanBePickedByTheirNumberWhenTheyAreAskedFor() {
    TrialDialogue played = ready(List.of()).answered("1");
    assertEquals(StopSign.values().length, played.put().orElseThrow().choices().size());
    for (StopSign sign : StopSign.values()) {
      TrialDialogue after = played.answered(Integer.toString(sign.ordinal() + 1));
      assertEquals(Optional.of(sign), after.trial().stopped());
    }
    assertEquals(Optional.empty(), played.answered("0").trial().stopped());
  }

  @Test
  void painThatIsHighOrUpByTwoStopsWhenItIsSaid() {
    assertEquals(
        Optional.of(StopSign.PAIN), ready(List.of()).answered("3").trial().stopped(), "1 to 3");
    assertEquals(Optional.empty(), ready(List.of()).answered("2").trial().stopped(), "1 to 2");
    TrialDialogue high =
        dialogue(
            List.of(),
            "1",
            "pad",
            "",
            "",
            "",
            "moon race",
            "lap",
            "steer",
            "brake",
            "boost",
            "",
            "7");
    assertEquals(Optional.of(StopSign.PAIN), high.trial().stopped(), "before anything was played");
    TrialDialogue atTheEnd =
        ready(List.of())
            .answered("1")
            .answered("")
            .answered("12")
            .answered("8")
            .answered("8")
            .answered("8")
            .answered("4");
    assertEquals(Optional.of(StopSign.PAIN), atTheEnd.trial().stopped());
    assertTrue(atTheEnd.answered("").trial().done());
    assertEquals(8, atTheEnd.trial().actions().get(0).worked().orElseThrow(), "counts stay");
  }

  @Test
  void aTrialGoneOnWithWhosePainWasChangedInTheFileStopsAtOnce() {
    Trial edited =
        ready(List.of())
            .trial()
            .feeling(Felt.UNSAID.withPain(7), java.util.OptionalInt.empty(), Felt.UNSAID);
    TrialDialogue again = TrialDialogue.on(edited, List.of(), CoreStops.all());
    assertEquals(Optional.of(StopSign.PAIN), again.trial().stopped());
    assertTrue(again.said().get(0).startsWith("Stop here."));
    assertTrue(again.trial().counts() && !again.trial().done());
  }

  @Test
  void whatWasStoppedIsNotTriedAgainThatDay() {
    Trial stopped = ready(List.of()).answered("3").answered("2").answered("").trial();
    assertTrue(stopped.done());
    TrialDialogue again = dialogue(List.of(stopped), "1", "pad");
    assertEquals(
        List.of("That set-up was stopped today. Please leave it for another day."), again.said());
    assertEquals("", again.trial().setUp().name());
    assertEquals("mouse", dialogue(List.of(stopped), "1", "mouse").trial().setUp().name());
  }

  @Test
  void afterAStopOfTheBodyAReviewComesBeforeAnotherTrial() {
    Trial stopped = ready(List.of()).stopped(StopSign.SPASM).answered("1").answered("").trial();
    List<Trial> earlier = List.of(stopped);
    assertTrue(Gate.closed(earlier, CaseRecord.NONE, "2026-12-01", CoreStops.all()).isPresent());
    String later = "2026-11-30T10:00:00Z";
    assertTrue(
        opens(earlier, reviewBegun(later), said("pain.now", later), said("safe.chest", later)));
    assertFalse(opens(earlier, reviewBegun(later)), "begun and left at once");
    assertFalse(opens(earlier, reviewBegun(later), said("pain.now", later)), "half of it");
    String same = TODAY + "T23:00:00Z";
    assertFalse(
        opens(earlier, reviewBegun(same), said("pain.now", same), said("safe.chest", same)),
        "never on the day of the stop");
    Event unsure =
        event(Event.What.ANSWERED, "pain.now", later, new Answer.Absent(Answer.Reason.UNKNOWN));
    assertFalse(opens(earlier, reviewBegun(later), unsure, said("safe.chest", later)), "not known");
    Trial wish = ready(List.of()).stopped(StopSign.WISH).answered("1").answered("").trial();
    assertTrue(
        Gate.closed(List.of(wish), CaseRecord.NONE, TODAY, CoreStops.all()).isEmpty(),
        "a wish is enough");
  }

  private static boolean opens(List<Trial> earlier, Event... since) {
    return Gate.closed(earlier, CaseRecord.NONE.with(List.of(since)), "2026-12-01", CoreStops.all())
        .isEmpty();
  }

  private static Event reviewBegun(String at) {
    return new Event(
        at, 0, Event.What.REVIEW_BEGUN, "", Optional.empty(), Optional.empty(), "volunteer", "");
  }

  private static Event said(String fact, String at) {
    return event(Event.What.CONFIRMED, fact, at, new Answer.Given(new Value.Number(1)));
  }

  private static Event event(Event.What what, String fact, String at, Answer to) {
    return new Event(at, 0, what, fact, Optional.empty(), Optional.of(to), "player", "");
  }

  @Test
  void theNextTrialOffersTheSameSetUpSceneAndActions() {
    Trial first = ready(List.of()).trial().ended(Optional.empty(), true);
    TrialDialogue next = dialogue(List.of(first), "2");
    assertEquals(List.of("pad"), next.put().orElseThrow().choices());
    next = next.answered("1");
    assertEquals(5, next.trial().setUp().minutesToSetUp().orElseThrow());
    assertTrue(question(next).contains("on loan"), "at home, nothing known is asked again");
    assertFalse(next.answered("2026-11-01").said().isEmpty(), "a day gone by");
    next = next.answered("2026-12-20");
    assertTrue(question(next).endsWith("Last time: moon race."), question(next));
    next = next.answered("").answered("");
    assertTrue(question(next).contains("steer, brake, boost"), question(next));
    next = next.answered("");
    assertEquals(List.of("steer", "brake", "boost"), next.trial().actionNames());
    assertEquals("Pain now, before you play?", question(next));
  }

  @Test
  void backTakesTheLastAnswerAway() {
    TrialDialogue two = dialogue(List.of(), "1", "pad");
    assertEquals("Which set-up or plan is tried?", question(two.back()));
    assertEquals("", two.back().trial().setUp().name());
    assertEquals(1, two.back().back().back().said().size(), "none before the first");
  }

  @Test
  void badValuesAreRefusedWithWhatWouldFit() {
    TrialDialogue now = TrialDialogue.on(Trial.begun(TODAY), List.of(), CoreStops.all());
    List<String> refused = new ArrayList<>();
    for (String bad : List.of("", "3", "home", "-1", "1.5", "99999999999")) {
      TrialDialogue after = now.answered(bad);
      assertEquals(now.trial(), after.trial(), bad);
      refused.addAll(after.said());
    }
    assertEquals(6, refused.size());
    TrialDialogue named = dialogue(List.of(), "1", "x".repeat(61));
    assertEquals(List.of("Up to 60 letters, please."), named.said());
    TrialDialogue actions = dialogue(List.of(), "1", "pad", "", "", "", "g", "s", "jump");
    assertFalse(actions.answered("").said().isEmpty(), "three at least");
    assertFalse(actions.answered("JUMP").said().isEmpty(), "twice the same");
    TrialDialogue five = actions;
    for (String action : List.of("a", "b", "c", "d")) {
      five = five.answered(action);
    }
    assertEquals("Pain now, before you play?", question(five), "five at most");
    assertFalse(five.answered("").said().isEmpty(), "pain is not left out");
    assertFalse(five.answered("11").said().isEmpty());
  }

  @Test
  void painAfterTheRestMakesAWishToStopAStopForPain() {
    for (String pain : List.of("3", "7")) {
      TrialDialogue stopped = ready(List.of()).stopped(StopSign.WISH).answered(pain);
      assertEquals(Optional.of(StopSign.PAIN), stopped.trial().stopped(), "1 to " + pain);
      assertTrue(stopped.said().toString().contains("still there after a day"));
      Trial done = stopped.answered("").trial();
      assertTrue(done.done());
      assertTrue(Gate.closed(List.of(done), CaseRecord.NONE, TODAY, CoreStops.all()).isPresent());
    }
    TrialDialogue little = ready(List.of()).stopped(StopSign.WISH).answered("2");
    assertEquals(Optional.of(StopSign.WISH), little.trial().stopped());
    TrialDialogue early = dialogue(List.of(), "1").stopped(StopSign.WISH).answered("7");
    assertEquals(Optional.of(StopSign.PAIN), early.trial().stopped(), "nothing said before");
  }

  @Test
  void painAfterTheRestLeavesAnotherSignAsItIsAndAddsItsAdvice() {
    TrialDialogue upset = ready(List.of()).stopped(StopSign.DISTRESS).answered("8");
    assertEquals(Optional.of(StopSign.DISTRESS), upset.trial().stopped());
    assertEquals(StopWords.of(StopSign.PAIN, CoreStops.all()), upset.said());
    TrialDialogue chest = ready(List.of()).stopped(StopSign.CHEST).answered("8");
    assertEquals(
        StopWords.of(StopSign.CHEST, CoreStops.all()), chest.said(), "what is urgent stays first");
  }
}
