package closehand.report;

import static closehand.report.Story.because;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Approach;
import closehand.bank.CautionClass;
import closehand.rules.Change.To;
import closehand.rules.Standing;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The quiet line, the notice of a stop, the text of the advice. */
class ShortTextsTest {
  private static String quiet(Story story, int open) {
    return QuietLine.of(story.advice(), open, Glyphs.ASCII);
  }

  @Test
  void theQuietLineNamesTheLeadingIdeas() {
    assertEquals(
        "So far: thumb mouse, left; foot switches; spoken commands. Still open:\n41 questions.\n",
        quiet(Stories.leftHanded(), 41));
  }

  @Test
  void itSaysWhenThereIsNothingYetOrNothingLeft() {
    assertEquals("So far: nothing yet. Still open: 1 question.\n", quiet(Story.player(), 1));
    assertEquals("So far: nothing yet. Nothing is open.\n", quiet(Story.player(), 0));
  }

  @Test
  void settingsAreNamedOnlyAlone() {
    assertEquals(
        "So far: settings first. Still open: 2 questions.\n",
        quiet(Story.player().suggests(SmallBank.SET), 2));
  }

  @Test
  void stopsAreSaidInWords() {
    assertEquals(
        "STOP: chest or breathing. Please read the notice.\n",
        quiet(Story.player().stop(CautionClass.STOP_ALL, SmallBank.CHEST), 9));
    assertEquals(
        "Suggestions wait for a medical review: chest or breathing. Still open: 9\nquestions.\n",
        quiet(Story.player().stop(CautionClass.STOP_TASKS, SmallBank.CHEST), 9));
    assertTrue(
        quiet(Stories.leftHanded().stop(CautionClass.STOP_PART, SmallBank.SKIN), 9)
            .startsWith("So far, for a clinician to review: thumb mouse, left"));
  }

  @Test
  void itNeverTakesMoreThanTwoLines() {
    for (int open : List.of(0, 1, 41, 123456)) {
      for (CautionClass stop :
          List.of(CautionClass.STOP_PART, CautionClass.STOP_TASKS, CautionClass.STOP_ALL)) {
        Story story = Stories.leftHanded().suggests(SmallBank.BALL);
        assertTrue(quiet(story, open).lines().count() <= 2);
        assertTrue(quiet(story.stop(stop, SmallBank.CHEST), open).lines().count() <= 2);
      }
    }
  }

  @Test
  void aStopSaysWhatToDoWhomToAskAndWhy() throws IOException {
    Story story =
        Story.player()
            .stop(CautionClass.STOP_ALL, SmallBank.CHEST, because("R004", "It hurts now."));
    String notice = StopNotice.of(story.advice().stops().get(0), Glyphs.UNICODE);
    PageShape.check(notice, Glyphs.UNICODE);
    PageShape.isKind(notice);
    Golden.check("stop", notice);
  }

  @Test
  void theAdviceAsText() throws IOException {
    String text = SuggestionText.of(Stories.leftHanded().input(), Glyphs.ASCII);
    PageShape.check(text, Glyphs.ASCII);
    Golden.check("advice", text);
  }

  @Test
  void theAdvicePutsCautionsFirstAndWaitsForAReview() {
    String text =
        SuggestionText.of(
            Stories.leftHanded().stop(CautionClass.STOP_TASKS, SmallBank.CHEST).input(),
            Glyphs.ASCII);
    assertTrue(text.startsWith("STOP. NO TASKS FOR NOW. CHEST OR BREATHING\n"));
    assertTrue(text.contains("Suggestions come after medical review."));
    assertFalse(text.contains("MOUSE_L"));
  }

  @Test
  void whenTheSessionMustEndNothingElseIsSaid() {
    Story story = Stories.leftHanded().stop(CautionClass.STOP_ALL, SmallBank.CHEST);
    assertEquals(
        StopNotice.of(story.advice().stops(), Glyphs.ASCII),
        SuggestionText.of(story.input(), Glyphs.ASCII));
  }

  @Test
  void costsAreSaidWithoutRepeatingTheUnit() {
    Approach foot = SmallBank.FOOT;
    assertEquals(
        "Set-up: 10 to 20 minutes. Cost: up to about 50, or about 50 to 200 coins.",
        KitWords.effortAndCost(SmallBank.bank(), foot));
    assertEquals(
        "Set-up: 10 to 20 minutes. Cost: nothing to pay, or up to about 50 coins.",
        KitWords.effortAndCost(SmallBank.bank(), SmallBank.VOICE));
  }

  @Test
  void whatTheReasonsRestOnIsNamedBeforeSafetyQuestions() {
    Story story =
        Story.player()
            .suggests(SmallBank.MOUSE, Story.supports("R1", SmallBank.MOUSE, 2, "It fits."))
            .changes(SmallBank.MOUSE, "safe.chest", "Yes, now", Standing.Status.UNDECIDED)
            .changes(SmallBank.MOUSE, "env.noise", "Loud", Standing.Status.RULED_OUT)
            .changes(SmallBank.MOUSE, "safe.skin", "Open", Standing.Status.NOT_SUGGESTED);
    Standing mouse = story.advice().suggestions().get(0);
    assertEquals(
        List.of("safe.skin", "env.noise"),
        ChangeWords.telling(story.input(), mouse, 2).stream().map(Change::fact).toList());
    assertEquals(
        "This would change if your answer to \"What your skin is like\" was \"Open\".",
        ChangeWords.brief(story.input(), mouse, Glyphs.ASCII));
    assertEquals(
        List.of("safe.skin", "env.noise", "safe.chest"),
        ChangeWords.telling(story.input(), mouse, 9).stream().map(Change::fact).toList());
  }

  @Test
  void manyUndecidedIdeasShareOneParagraph() {
    Story story = Story.player();
    for (int i = 0; i < 9; i++) {
      story.undecided(
          SmallBank.BALL, "voice.chat", "env.noise", i < 3 ? "safe.skin" : "end.minutes");
    }
    String text = SuggestionText.of(story.input(), Glyphs.ASCII).replaceAll("\\s+", " ");
    String end = "Most of them wait for: Noise and chat; minutes before a rest; sore skin.";
    assertTrue(text.contains(end), text);
    assertFalse(text.contains("waits for"), text);
  }

  @Test
  void aPartWithoutAJobIsNamedOnlyWhereNothingElseChanges() {
    Story story =
        Story.player()
            .suggests(SmallBank.MOUSE, Story.supports("R1", SmallBank.MOUSE, 2, "It fits."))
            .changes(SmallBank.MOUSE, "hand.L.role", "No job today", Standing.Status.RULED_OUT);
    Standing mouse = story.advice().suggestions().get(0);
    assertEquals(1, ChangeWords.telling(story.input(), mouse, 9).size());
    story.changes(SmallBank.MOUSE, "env.noise", "Loud", Standing.Status.RULED_OUT);
    assertEquals(
        List.of("env.noise"),
        ChangeWords.telling(story.input(), mouse, 9).stream().map(Change::fact).toList());
  }

  @Test
  void aQuotationThatEndsASentenceNeedsNoSecondFullStop() {
    assertEquals("\"Rest.\"", Phrases.afterQuote("\"Rest.\""));
    assertEquals("\"Rest\".", Phrases.afterQuote("\"Rest\""));
  }

  @Test
  void aChangeIsPutInWords() {
    assertEquals("Loud", words("env.noise", new To.Option("loud")));
    assertEquals("No", words("voice.chat", new To.Flag(false)));
    assertEquals("20 minutes or less", words("end.minutes", new To.Between(0, 20)));
    assertEquals("30 minutes or more", words("end.minutes", new To.Between(30, 240)));
    assertEquals("from 20 to 30 minutes", words("end.minutes", new To.Between(20, 30)));
    assertEquals("Relax", words("goal.good", new To.Picked("relax", true)));
    assertEquals("without Relax", words("goal.good", new To.Picked("relax", false)));
    assertEquals("Nothing special", words("goal.good", new To.Picked("none", true)));
  }

  private static String words(String fact, To to) {
    closehand.rules.Change change = new closehand.rules.Change(fact, to, Standing.Status.RULED_OUT);
    return Change.of(SmallQuestions.questionnaire(), change).whatWouldBe();
  }
}
