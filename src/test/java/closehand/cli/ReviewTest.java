package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A case looked at again after a while. */
class ReviewTest {
  private static final String FIRST =
      "1\n1\ny\ny\n1\n3\n1\n=hand up\n2 4\nn\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n";

  @TempDir private Path folder = Path.of(".");

  private String begun() throws IOException {
    World world = World.run(FIRST, "interview", "--home", folder.toString());
    assertEquals(ExitCode.UNFINISHED, world.code(), world.output());
    return Cases.at(folder).store().names().get(0);
  }

  private World reviewed(String name, String script) {
    return World.run(script, "interview", name, "--review", "--home", folder.toString());
  }

  private static String flowing(World world) {
    return world.output().replace('\n', ' ');
  }

  @Test
  void onlyConsentChangesWarningSignsAndPainAreAskedAgain() throws IOException {
    World world = reviewed(begun(), "1\n1\n1\n1\ny\ny\n3\n1\n1\n");
    String said = flowing(world);
    assertTrue(said.contains("Next review: 25 May 2027."), said);
    assertTrue(said.contains("Kept until 25 November 2027"), said);
    assertTrue(said.contains("We ask this again after every break."), said);
    int changes = said.indexOf("Has anything changed");
    int neuro = said.indexOf("SAF-01.");
    assertTrue(changes > said.indexOf("CON-01."), said);
    assertTrue(neuro > changes, said);
    assertTrue(said.contains("We ask this again at every review."), said);
    assertFalse(said.contains("CON-04.") || said.contains("CON-05."), said);
  }

  @Test
  void whatChangedStandsOnThePageAndTheEarlierOneNoLongerHolds() throws IOException {
    String name = begun();
    String before = World.run("", "summary", name, "--home", folder.toString()).output();
    assertFalse(before.contains("SINCE LAST TIME"), before);
    // Consent, nothing lasted, the seat is another one, same room and age, then new weakness.
    World world = reviewed(name, "1\n1\n3\n1\ny\ny\n3\n1\n3\n");
    String page = World.run("", "summary", name, "--home", folder.toString()).output();
    String flowing = page.replace('\n', ' ');
    assertTrue(
        flowing.contains(
            "An earlier page no longer holds, because something has changed since (seat) and a warning sign is new. This page replaces it."),
        page + world.output());
    assertTrue(page.contains("SINCE LAST TIME"), page);
    assertTrue(flowing.contains("(before: No)"), page);
    String file = Files.readString(Cases.at(folder).store().path(name));
    assertTrue(file.contains("\"what\" : \"reviewBegun\""), file);
    assertTrue(file.contains("\"what\" : \"planExpired\""), file);
  }

  @Test
  void aPlanKeptInTheCaseStaysAsGivenAndIsMarkedOnceSomethingHasChanged() throws IOException {
    String script = FIRST.substring(0, FIRST.length() - 2) + ":j GAM-01\n=RAC\n";
    World.run(script, "interview", "--home", folder.toString());
    String name = Cases.at(folder).store().names().get(0);
    String home = folder.toString();
    World plan = World.run("", "plan", name, "--keep", "--home", home);
    assertEquals("The plan is kept in the case " + name + ".\n", plan.error());
    Path file = Cases.at(folder).store().path(name);
    assertTrue(Files.readString(file).contains("\"given\""), "kept");
    assertFalse(Files.readString(file).contains("\"expired\""), "not yet");
    reviewed(name, "1\n1\n3\n");
    assertTrue(Files.readString(file).contains("\"expired\""), Files.readString(file));
    assertEquals(
        ExitCode.USAGE,
        World.run("", "plan", "--keep", "--answers", "examples/quiet-heron/answers.json").code());
  }

  @Test
  void aNewWarningSignOrAnotherAgeGroupEndsWhatWasSuggestedBefore() throws IOException {
    String sign = begun();
    // Consent, nothing lasted, nothing changed, same room and age, then new weakness.
    reviewed(sign, "1\n1\n1\n1\ny\ny\n3\n1\n3\n");
    String page = World.run("", "summary", sign, "--home", folder.toString()).output();
    assertTrue(page.replace('\n', ' ').contains("because a warning sign is new."), page);
    Path file = Cases.at(folder).store().path(sign);
    Files.delete(file);
    String age = begun();
    reviewed(age, "1\n1\n1\n1\ny\ny\n2\ny\n");
    String other = World.run("", "summary", age, "--home", folder.toString()).output();
    assertTrue(other.replace('\n', ' ').contains("is in another age group now."), other);
  }

  @Test
  void aReviewInWhichNothingChangedLeavesThePageAsItWas() throws IOException {
    String name = begun();
    reviewed(name, "1\n1\n1\n1\ny\ny\n3\n1\n1\n");
    String page = World.run("", "summary", name, "--home", folder.toString()).output();
    assertFalse(page.contains("no longer holds"), page);
    assertFalse(page.contains("(before:"), page);
  }

  @Test
  void aReviewThatIsOverdueIsSaidOnThePageAndWhenTheCaseIsOpened() throws IOException {
    String name = begun();
    Path file = Cases.at(folder).store().path(name);
    Files.writeString(
        file,
        Files.readString(file)
            .replace("\"reviewOn\" : \"2027-05-25\"", "\"reviewOn\" : \"2026-05-25\"")
            .replace("\"keepUntil\" : \"2027-11-25\"", "\"keepUntil\" : \"2026-11-20\""));
    World opened = World.typed("2\nq\n", "interview", name, "--home", folder.toString());
    assertTrue(flowing(opened).contains("A review was due on 25 May 2026."), opened.output());
    assertTrue(flowing(opened).contains("Is it still needed?"), opened.output());
    assertTrue(Files.exists(file), "nothing is removed by itself");
    String page = World.run("", "summary", name, "--home", folder.toString()).output();
    assertTrue(page.contains("looked at again by 25 May 2026"), page);
  }
}
