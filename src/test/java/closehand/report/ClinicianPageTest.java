package closehand.report;

import static closehand.report.Story.because;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.CautionClass;
import closehand.interview.Answer;
import closehand.interview.Value;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The pages for the clinician: everything, with reasons, rules and sources. */
class ClinicianPageTest {
  private static void assertSays(String sentence, Story story) {
    String page = read(story);
    assertTrue(page.contains(sentence), () -> "<" + sentence + "> in " + page);
  }

  private static String read(Story story) {
    return ClinicianPage.of(story.input(), Glyphs.ASCII).replaceAll("\\s+", " ");
  }

  @Test
  void aWholeInterview() throws IOException {
    String page = ClinicianPage.of(Stories.leftHanded().input(), Glyphs.UNICODE);
    PageShape.check(page, Glyphs.UNICODE);
    Golden.check("clinician", page);
  }

  @Test
  void answersSayWhoGaveThemAndHowTheyAreKnown() {
    assertSays(
        "Press force. Left thumb, index finger: A trigger; left middle finger: A light key; right"
            + " thumb: Nothing yet (helper, seen); right index finger: rather not say.",
        Stories.leftHanded());
    assertSays("Note on right thumb: \"tired by noon\"", Stories.leftHanded());
  }

  @Test
  void cellsGoByTheirCode() {
    assertSays("Side cells reached: A1, B2.", Stories.leftHanded());
  }

  @Test
  void aCautionHasItsRuleAndItsBasis() {
    assertSays(
        "CARE C-SHOULDER: Right side: That shoulder must stay supported. - R042.R: Your right shoulder slips,"
            + " so that arm stays supported. Basis: S1, common practice.",
        Stories.leftHanded());
  }

  @Test
  void withoutWarningsItPromisesNothing() {
    assertSays("No warning signs in the answers given.", Story.player());
  }

  @Test
  void aStopAndALoweredOneAndOneNotCleared() {
    Story story =
        Story.player()
            .stop(CautionClass.STOP_PART, SmallBank.SKIN, because("R011", "Skin is open."))
            .lowered("C-CHEST")
            .notCleared(SmallBank.CHEST, "safe.chest");
    assertSays("STOP-PART C-SKIN: Skin check first.", story);
    assertSays("The player reads: Ask a nurse to look at it today.", story);
    assertSays(
        "Lowered: C-CHEST Chest or breathing, by A. Clinician on 20 November 2026: \"Seen today\"",
        story);
    assertSays("Not cleared (C-CHEST), since this is not answered: Chest and breath.", story);
  }

  @Test
  void answersThatAreNotAllClearAreListedApart() {
    Story clear = Story.player().picks("safe.chest", "no").picks("safe.skin", "none");
    assertFalse(read(clear).contains("ANSWERS FOR A CLINICIAN TO LOOK AT"));
    Story not =
        clear
            .leavesOut("safe.chest", Answer.Reason.UNKNOWN)
            .picks("safe.skin", "broken")
            .says("safe.skin.where", new Value.Codes(List.of("armL")));
    assertSays(
        "ANSWERS FOR A CLINICIAN TO LOOK AT - Chest and breath: don't know. - Sore skin. What"
            + " your skin is like: Open; where is it: Left arm or hand.",
        not);
  }

  @Test
  void questionsLeftForAClinicianAreNamed() {
    assertSays(
        "QUESTIONS LEFT FOR A CLINICIAN - SAF-13: Limits",
        Story.player().open("DIG-03", "safe.advice.words"));
  }

  @Test
  void everyApproachHasItsPointsAndRules() {
    assertSays("Thumb mouse, left hand [MOUSE_L]: strong, 4 points", Stories.leftHanded());
    assertSays("+3 R025: Your left thumb reaches two side cells.", Stories.leftHanded());
    assertSays("-1 R085: A switch on the floor can slip.", Stories.leftHanded());
    assertSays("Trackball [BALL]: undecided, 0 points (-1 to 2) Waits for:", Stories.leftHanded());
    assertSays("One-handed pad, right hand [PAD_R]: ruled out", Stories.leftHanded());
    assertSays(
        "This would change if: your answer to \"Noise and chat, noise in the room\" was \"Loud\""
            + " (then ruled out).",
        Stories.leftHanded());
  }

  @Test
  void gamesAreAlsoJudgedAlone() {
    assertSays(
        "Story action (the castle one): thumb mouse, left. - City building: spoken commands.",
        Stories.leftHanded());
  }

  @Test
  void effortIsSaidOnceForPartsAlike() {
    assertSays("x 1.8 for side panel: left thumb, index finger (R060)", Stories.leftHanded());
  }

  @Test
  void sourcesStandWithTheirStatus() {
    assertSays("S1: Somebody, a guide to breaks, 1999. Status: confirmed.", Stories.leftHanded());
    assertSays(
        "Without a published source: common practice, practice estimate.", Stories.leftHanded());
    assertSays("The content is rules of thumb.", Stories.leftHanded());
  }

  @Test
  void whereTheSessionMustEndOnlyTheStopsStand() {
    Story story =
        Stories.leftHanded()
            .picks("safe.skin", "broken")
            .lowered("C-SKIN")
            .stop(CautionClass.STOP_ALL, SmallBank.CHEST, because("R004", "It hurts now."));
    assertSays("STOPS - STOP-ALL C-CHEST: Chest or breathing.", story);
    assertSays("R004: It hurts now. Basis: S1, common practice.", story);
    assertSays("Lowered: C-SKIN", story);
    assertSays("WHO SAID WHAT, ON 25 NOVEMBER 2026", story);
    assertSays("S1: Somebody, a guide to breaks, 1999.", story);
    for (String word : List.of("MOUSE_L", "Trackball", "SUGGESTIONS", "ADVICE", "Withheld")) {
      assertFalse(read(story).contains(word), word);
    }
  }

  @Test
  void everyFieldKeepsItsLabel() {
    assertSays(
        "Press force. Right thumb: A trigger.", Story.player().picks("digit.R.press.T", "4"));
    assertSays("Press force. Left thumb: A trigger.", Story.player().picks("digit.L.press.T", "4"));
    assertEquals(
        "highest pain: 2; pain after: 2; left thumb, index finger: 0",
        Grid.sentence(
            List.of(
                new Grid.Cell("Highest pain", "2"),
                new Grid.Cell("Pain after", "2"),
                new Grid.Cell("Left thumb", "0"),
                new Grid.Cell("Left index finger", "0"))));
  }

  @Test
  void whileSuggestionsAreWithheldNoneIsPrinted() {
    assertSays(
        "Withheld until a medical review.",
        Stories.leftHanded().stop(CautionClass.STOP_TASKS, SmallBank.CHEST));
  }
}
