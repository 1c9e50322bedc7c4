package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.CaseRecord;
import closehand.interview.Suggested;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of what is due over all cases. All players are invented. */
class DueCommandTest {
  @TempDir private Path folder = Path.of(".");

  private static CaseRecord suggestedOn(String day) {
    return CaseRecord.NONE
        .suggesting(
            new Suggested(
                day + "T10:00:00Z", "1.0.0", "abc", false, List.of(), List.of(), List.of()))
        .on(Optional.of("2027-11-01"), Optional.of("2027-05-01"));
  }

  private World due(String... more) {
    String[] words = new String[3 + more.length];
    words[0] = "due";
    words[1] = "--home";
    words[2] = folder.toString();
    System.arraycopy(more, 0, words, 3, more.length);
    return World.run("", words);
  }

  @Test
  void everyCaseIsListedByDayWithItsNameAndNothingOfItsHealth() throws IOException {
    TriedCase.keep(folder, "quiet-heron", "quiet-heron", suggestedOn("2026-11-09"));
    TriedCase.keep(folder, "amber-otter", "amber-otter", suggestedOn("2026-10-01"));
    Files.writeString(folder.resolve("wet-stone.sealed"), "sealed");
    World world = due();
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertEquals(
        """
        Due by 25 November 2026:
        \u2022 amber-otter, since 15 October 2026: ask again after 2 weeks.
        \u2022 amber-otter, since 12 November 2026: ask again after 6 weeks.
        \u2022 quiet-heron, since 23 November 2026: ask again after 2 weeks.
        closehand interview CASE --review asks what has to be asked again.
        Nothing happens by itself.
        Sealed, so not looked into: wet-stone. Open one to see its days.
        """,
        world.output());
    World json = due("--json", "--by", "2026-11-22");
    assertTrue(json.output().contains("\"what\" : \"six-weeks\""), json.output());
    assertFalse(json.output().contains("quiet-heron"), json.output());
  }

  @Test
  void nothingDueIsSaidAndAWrongDateRefused() {
    assertEquals("Nothing is due by 25 November 2026.\n", due().output());
    assertEquals(ExitCode.USAGE, due("--by", "tomorrow").code());
  }

  @Test
  void aDamagedCaseIsNamedAndTheOthersAreListed() throws IOException {
    TriedCase.keep(folder, "quiet-heron", "quiet-heron", suggestedOn("2026-11-09"));
    Files.writeString(folder.resolve("dry-leaf.json"), "{");
    World world = due();
    assertEquals(ExitCode.BAD_DATA, world.code());
    assertTrue(world.output().contains("quiet-heron"), world.output());
    assertEquals("The case dry-leaf could not be read.\n", world.error());
  }

  @Test
  void aReviewReopensItsQuestionsAndTakesTheDayOffTheList() throws IOException {
    TriedCase.keep(folder, "quiet-heron", "quiet-heron", suggestedOn("2026-11-09"));
    World review =
        World.run("1\n1\n1\n", "interview", "quiet-heron", "--review", "--home", folder.toString());
    String said = review.output().replace('\n', ' ');
    assertTrue(said.contains("Has anything changed"), said);
    assertTrue(said.contains("The next day: was there any pain"), said);
    assertFalse(due("--by", "2026-11-30").output().contains("two"), due().output());
  }
}
