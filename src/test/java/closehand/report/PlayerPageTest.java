package closehand.report;

import static closehand.report.Story.because;
import static closehand.report.Story.supports;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.CautionClass;
import closehand.interview.Answer;
import closehand.interview.Value;
import closehand.rules.Finding;
import closehand.rules.Standing;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The page the player takes home. */
class PlayerPageTest {
  private static String page(Story story) {
    return PlayerPage.of(story.input(), Glyphs.ASCII);
  }

  /** The page with its lines joined, to look for sentences. */
  private static String read(Story story) {
    return page(story).replaceAll("\\s+", " ");
  }

  private static void assertSays(String sentence, Story story) {
    String page = read(story);
    assertTrue(page.contains(sentence), () -> "<" + sentence + "> in " + page);
  }

  private static void assertNeverSays(String words, Story story) {
    String page = read(story);
    assertFalse(page.contains(words), () -> "<" + words + "> in " + page);
  }

  @Test
  void aWholeInterviewGivesOneSheet() throws IOException {
    String page = PlayerPage.of(Stories.leftHanded().input(), Glyphs.UNICODE);
    assertTrue(page.lines().count() <= Room.FULL_PAGE);
    PageShape.check(page, Glyphs.UNICODE);
    PageShape.isKind(page);
    Golden.check("player", page);
  }

  @Test
  void theSamePageInAscii() throws IOException {
    String page = page(Stories.leftHanded());
    PageShape.check(page, Glyphs.ASCII);
    assertFalse(page.contains("?"), "nothing of it had to be replaced");
    Golden.check("player-ascii", page);
  }

  @Test
  void whenTheSessionMustEndTheNoticeStandsAlone() {
    Story story =
        Stories.leftHanded()
            .stop(CautionClass.STOP_ALL, SmallBank.CHEST, because("R004", "It hurts now."));
    assertEquals(StopNotice.of(story.advice().stops(), Glyphs.ASCII), page(story));
    assertTrue(page(story).startsWith("STOP. CHEST OR BREATHING\n"));
    assertNeverSays("mouse", story);
  }

  @Test
  void whileTasksAreStoppedGoalsAreKeptAndIdeasWait() {
    Story story =
        Stories.leftHanded()
            .stop(CautionClass.STOP_TASKS, SmallBank.CHEST, because("R004", "It hurt lately."));
    assertSays("STOP. NO TASKS FOR NOW. CHEST OR BREATHING", story);
    assertSays("You want to: \"Walk & fight again, like Zoe\".", story);
    assertSays("Suggestions come after medical review.", story);
    assertNeverSays("mouse", story);
  }

  @Test
  void whileAPartIsStoppedIdeasAreADraftAndThePartIsNamed() {
    Story story =
        Stories.leftHanded()
            .picks("safe.skin", "broken")
            .says("safe.skin.where", new Value.Codes(List.of("armR")))
            .stop(CautionClass.STOP_PART, SmallBank.SKIN, because("R011", "Skin is open."));
    assertSays("Where: right arm or hand.", story);
    assertSays("DRAFT FOR A CLINICIAN TO REVIEW: WHAT TO TRY", story);
    assertSays("Show this page to a clinician before you try any of it.", story);
    assertSays("Thumb mouse, left hand", story);
  }

  @Test
  void cautionsComeBeforeGoalsAndIdeas() {
    String page = page(Stories.leftHanded());
    assertTrue(page.indexOf("TAKE CARE") < page.indexOf("YOUR GOALS"));
    assertTrue(page.indexOf("YOUR GOALS") < page.indexOf("WHAT TO TRY"));
  }

  @Test
  void aCautionForOneSideNamesIt() {
    assertSays("Right side: That shoulder must stay supported.", Stories.leftHanded());
  }

  @Test
  void aTitleThatSaysMoreThanTheMessageStays() {
    assertSays("- Pressure relief: Play makes it easy", Stories.leftHanded());
    assertNeverSays("One limb does most of the work:", Stories.leftHanded());
  }

  @Test
  void oppositeThingsToDoAtOnceBothStandOnThePage() {
    Story story = Story.player().cares(SmallBank.LEVEL).cares(SmallBank.FAINT);
    assertSays("Pounding headache and a flushed face: sit up, loosen, follow your plan.", story);
    assertSays("If you feel faint: lean back and raise your legs.", story);
    assertSays("If you pass out, call the emergency number.", story);
    assertSays("Tight kit: Ask your team. Call the emergency number", story);
  }

  @Test
  void manyCautionsAreShortEach() {
    Story story = Stories.leftHanded();
    for (int i = 0; i < 5; i++) {
      story.cares(SmallBank.PRESSURE);
    }
    assertSays("Pressure relief: Set a reminder at your own interval.", story);
    assertNeverSays("Play makes it easy to forget", story);
  }

  @Test
  void theLimitOfTheHealthTeamIsPrintedInTheirWords() {
    assertSays(
        "The limit your health team set: \"No lifting over 1 kg\"",
        Story.player().tells("safe.advice.words", "No lifting over 1 kg"));
  }

  @Test
  void openSafetyQuestionsAreNamedAndNobodyIsPressed() {
    Story open = Story.player().notCleared(SmallBank.CHEST, "safe.chest").open("SAF-03");
    assertSays("Still open among the safety questions: chest and breath.", open);
    Story declined =
        Story.player()
            .leavesOut("safe.skin", Answer.Reason.DECLINED)
            .notCleared(SmallBank.SKIN, "safe.skin");
    assertSays(
        "Sore skin: you would rather not say, and that is fine. We treat it as unsure.", declined);
    assertNeverSays("Still open among the safety questions", declined);
  }

  @Test
  void aLimitWithoutItsWordsIsAskedFor() {
    Story story = Story.player().picks("safe.advice", "limits");
    assertSays("We do not have its words yet: please bring them.", story);
    assertNeverSays(
        "We do not have its words yet", story.tells("safe.advice.words", "No lifting over 1 kg"));
  }

  @Test
  void partsThatRestAreNamedFirst() {
    Story story =
        Story.player()
            .cares(SmallBank.OVERUSE)
            .picks("digit.R.state.T", "rest")
            .counts("digit.L.pain.I", 6)
            .counts("digit.L.pain.M", 5);
    assertSays(
        "TAKE CARE - Your left index finger and right thumb rest today: give them no button and no"
            + " stick. - One limb",
        story);
  }

  @Test
  void adviceOnWhatIsNotSuggestedStaysAway() {
    Finding rule = supports("R026", SmallBank.MOUSE, 1, "It fits.", "settings", "Map the panel.");
    assertNeverSays("Map the panel.", Story.player().fires(rule));
    assertSays("Map the panel.", Story.player().suggests(SmallBank.MOUSE, rule));
  }

  @Test
  void whatProtectsIsNeverTrimmed() {
    Story story = Story.player();
    for (int i = 0; i < 7; i++) {
      story.cares(SmallBank.PRESSURE);
    }
    story.cares(SmallBank.LEVEL).cares(SmallBank.FAINT).cares(SmallBank.FRAGILE);
    assertSays("No straps and no clamps on your limbs.", story);
    assertSays("If you pass out, call the emergency number.", story);
  }

  @Test
  void aLoweredStopSaysWhoLookedAtIt() {
    assertSays(
        "Skin check first: a clinician has looked at this (A. Clinician, 20 November 2026).",
        Story.player().lowered("C-SKIN"));
  }

  @Test
  void whatMakesThePageProvisionalIsSaid() {
    assertNeverSays("Provisional", Stories.leftHanded());
    assertNeverSays("Provisional", Stories.leftHanded().open("DIG-03"));
    assertSays(
        "Provisional: this may change, because some questions are still open (press force), you"
            + " were in pain that day, we met over a video call and your seat does not hold you steady yet.",
        Stories.leftHanded()
            .open("DIG-03", "COG-02")
            .fires(Story.awaits("R043", "digit.L.press.T"))
            .counts("pain.now", 5)
            .picks("session.mode", "video")
            .picks("seat.trunk", "leans"));
  }

  @Test
  void anIdeaHasItsReasonsAndWhatWouldChangeIt() {
    assertSays(
        "Suggested because: Your left thumb reaches two side cells. Your left hand slides a"
            + " mouse. This would change if your answer to \"Noise in the room\" was \"Loud\".",
        Story.player()
            .suggests(
                SmallBank.MOUSE,
                supports("R026", SmallBank.MOUSE, 1, "Your left hand slides a mouse."),
                supports("R025", SmallBank.MOUSE, 3, "Your left thumb reaches two side cells."))
            .changes(SmallBank.MOUSE, "env.noise", "Loud", Standing.Status.RULED_OUT));
    assertSays("Against it: A switch on the floor can slip.", Stories.leftHanded());
    assertSays("Placing it: On a board that does not slip.", Stories.leftHanded());
    assertSays(
        "Set-up: 10 to 20 minutes. Cost: up to about 50, or about 50 to 200 coins.",
        Stories.leftHanded());
  }

  @Test
  void noMoreThanFourIdeasAreToldInFull() {
    Story story = Stories.leftHanded();
    story.suggests(SmallBank.BALL, supports("R047", SmallBank.BALL, 1, "Your palm rolls it."));
    story.suggests(SmallBank.PAD_LEFT, supports("R031", SmallBank.PAD_LEFT, 1, "It fits."));
    assertSays("Also worth trying:", story);
    assertNeverSays("5. ", story);
  }

  @Test
  void whatIsRuledOutForOneReasonOnBothSidesIsSaidOnce() {
    assertSays(
        "One-handed pad, either side: Your right and left side does not press.",
        Stories.leftHanded());
  }

  @Test
  void settingsComeFromEachGameInTurnAndSayEachThingOnce() {
    assertSays("Turn on auto-run.", Stories.leftHanded());
    assertSays("Build while the game is paused.", Stories.leftHanded());
    assertSays(
        "Swap holds on your left thumb and index finger for a toggle.", Stories.leftHanded());
  }

  @Test
  void withoutAnyIdeaThePageSaysSo() {
    assertSays("Nothing yet. The answers so far do not point", Story.player());
  }

  @Test
  void whatSomebodyTypedCannotTouchThePage() {
    Story story =
        Story.player()
            .tells("goal.main", "\u001b[2J\u202eevil\nWHOM TO ASK\u0000" + "x".repeat(100));
    for (Glyphs glyphs : Glyphs.values()) {
      String page = PlayerPage.of(story.input(), glyphs);
      PageShape.check(page, glyphs);
      assertTrue(page.codePoints().noneMatch(c -> c == 0x1b || c == 0x202e || c == 0));
      assertEquals(1, page.lines().filter(l -> l.startsWith("WHOM TO ASK")).count());
    }
  }

  @Test
  void thePageEndsWithWhatItIsNot() {
    assertSays(
        "This is a list of ideas to try, not medical advice. Your health team's advice comes"
            + " first. Small interview, version 0.1. 25 November 2026.",
        Stories.leftHanded());
  }
}
