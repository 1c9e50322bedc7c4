package closehand.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** How long to play comes from answers and cautions, and the page says from which. */
class PaceTest {
  private static void assertSays(String sentence, Story story) {
    String page = PlayerPage.of(story.input(), Glyphs.ASCII).replaceAll("\\s+", " ");
    assertTrue(page.contains(sentence), () -> "<" + sentence + "> in " + page);
  }

  @Test
  void withoutACautionTheComfortableTimeCounts() {
    assertSays(
        "You can play about 40 minutes before you want a rest. So stop by then, or sooner if it"
            + " hurts.",
        Story.player().counts("end.minutes", 40));
  }

  @Test
  void tirednessMeansTwoThirdsAndAsMuchRest() {
    assertSays(
        "You can play about 30 minutes before you want a rest, and you tire within a session. So"
            + " play 20 minutes at most (two thirds), then rest for as long.",
        Story.player().counts("end.minutes", 30).cares(SmallBank.TIRES));
  }

  @Test
  void painThatSettlesLateMeansHalf() {
    assertSays(
        "So for now play 20 minutes at most (half), then rest.",
        Story.player().counts("end.minutes", 40).cares(SmallBank.PAIN));
  }

  @Test
  void painCountsMoreThanTiredness() {
    assertSays(
        "and you tire within a session, and your pain takes long to settle. So for now play 20"
            + " minutes at most (half)",
        Story.player().counts("end.minutes", 40).cares(SmallBank.PAIN).cares(SmallBank.TIRES));
  }

  @Test
  void whereOverdoingCostsDaysTheLimitIsNotTheGoal() {
    Story story = Story.player().counts("end.minutes", 30).cares(SmallBank.CRASH);
    assertSays(
        "So stop before 15 minutes (half), also on a better day; then rest; never add"
            + " time by plan.",
        story);
    assertSays("Add an action only when you feel ready.", story);
    assertSays("So stop before 15 minutes", story.cares(SmallBank.TIRES));
  }

  @Test
  void aLongWishIsSplit() {
    assertSays(
        "Your good session of 90 minutes then needs rests in between.",
        Story.player().counts("end.minutes", 30).counts("goal.sessionMin", 90));
  }

  @Test
  void anUnknownTimeStartsSmall() {
    assertSays("Begin with 10 to 15 minutes or less, then rest.", Story.player());
    assertSays("Begin with 10 to 15 minutes or less", Story.player().counts("end.minutes", 0));
  }

  @Test
  void aShortTimeNeverBecomesNothing() {
    assertSays(
        "So play 2 minutes at most (two thirds)",
        Story.player().counts("end.minutes", 3).cares(SmallBank.TIRES));
    assertSays(
        "So for now play 1 minute at most (half)",
        Story.player().counts("end.minutes", 1).cares(SmallBank.PAIN));
  }

  @Test
  void breaksAreAlwaysThere() {
    assertSays(
        "Pause for 30 seconds every 10 to 15 minutes. After 50 to 60 minutes at most, take 5 to 10"
            + " minutes off.",
        Story.player());
  }

  @Test
  void noFigureStandsAboveTheLimit() {
    Story story = Story.player().counts("end.minutes", 12).cares(SmallBank.CRASH);
    assertSays("So stop before 6 minutes (half)", story);
    assertSays("Start with less than 6 minutes.", story);
    assertNeverSays("50 to 60 minutes", story);
    assertNeverSays("10 to 15 minutes", story);
    assertSays("Start with less than 6 minutes.", story.cares(SmallBank.TIRES));
    Story longer = Story.player().counts("end.minutes", 40);
    assertSays(
        "One session: 14, 13 and 13 minutes with 30 seconds off the controls in between. Then rest for"
            + " 10 minutes or more.",
        longer);
    assertSays("Make the first try 10 to 15 minutes.", longer);
    assertNeverSays("50 to 60 minutes", longer);
  }

  @Test
  void theSessionKeepsToTheLimitAndHasItsReasons() {
    assertSays(
        "One session: 6 minutes. Then rest for 6 minutes",
        Story.player().counts("end.minutes", 12).cares(SmallBank.CRASH));
    assertSays(
        "One session: 10 and 10 minutes with 30 seconds off the controls in between. Then rest for 20",
        Story.player().counts("end.minutes", 30).cares(SmallBank.TIRES));
    assertSays(
        "One session: 7, 7 and 6 minutes",
        Story.player().counts("end.minutes", 40).cares(SmallBank.PAIN));
    String page =
        ClinicianPage.of(
                Story.player().counts("end.minutes", 40).cares(SmallBank.PAIN).input(),
                Glyphs.ASCII)
            .replaceAll("\\s+", " ");
    assertTrue(page.contains("20 minutes of play: half of the 40 minutes that you can play"), page);
    assertTrue(
        page.contains(
            "Every 7 minutes at most: twice as often as usual, because pain takes you long"),
        page);
    assertTrue(page.contains("never grows by plan"), page);
  }

  private static void assertNeverSays(String words, Story story) {
    String page = PlayerPage.of(story.input(), Glyphs.ASCII).replaceAll("\\s+", " ");
    assertFalse(page.contains(words), () -> "<" + words + "> in " + page);
  }

  @Test
  void fewJobsAreThreeWhenThePlayerSaysSo() {
    assertSays("Start with the 3 actions you need most", Story.player().picks("cog.jobs", "3"));
    assertSays(
        "Start with the 3 to 6 actions you need most", Story.player().picks("cog.jobs", "6"));
    assertFalse(PlayerPage.of(Story.player().input(), Glyphs.ASCII).contains("Choose the 3 a"));
  }
}
