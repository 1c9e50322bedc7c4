package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.CaseRecord;
import closehand.interview.Measured;
import closehand.interview.Provenance;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tasks of a saved case: which can begin, and why the others cannot. All players are invented. */
class MeasureCommandTest {
  /** Goes on with the case, reads the page, says yes again. */
  private static final String GO_ON = "1\n\n1\n";

  @TempDir private Path folder = Path.of(".");

  private World measure(String typed, String... more) {
    List<String> all =
        new java.util.ArrayList<>(List.of("measure", TriedCase.NAME, "--home", folder.toString()));
    all.addAll(List.of(more));
    return World.typed(typed, all.toArray(new String[0]));
  }

  private static String flowing(World world) {
    return world.output().replaceAll("\\s+", " ");
  }

  private static Measured stopped(String at, String stop) {
    return new Measured(
        at,
        "T1",
        "R.I",
        Provenance.By.VOLUNTEER,
        new Measured.Circumstances("room", "sittingAsInPlay", "armAndFeet", "morning", 5),
        false,
        List.of(),
        20,
        Measured.Ending.STOPPED,
        stop,
        List.of());
  }

  @Test
  void tasksThatCannotBeginAreNamedWithTheReasonAndTheOthersOffered() throws IOException {
    TriedCase.keep(folder, "quiet-heron", TriedCase.NAME, CaseRecord.NONE);
    String said = flowing(measure(GO_ON + "\n"));
    assertTrue(said.contains("Which task? Enter alone ends."), said);
    assertTrue(said.contains("Tap check"), said);
    assertTrue(said.contains("Not now: Sip and puff. Only a clinician may run this."), said);
  }

  @Test
  void afterASignOfTheBodyNoneIsOfferedOnThatDay() throws IOException {
    CaseRecord record =
        CaseRecord.NONE.measuring(List.of(stopped("2026-11-25T09:00:00Z", "spasm")));
    TriedCase.keep(folder, "quiet-heron", TriedCase.NAME, record);
    String said = flowing(measure(GO_ON));
    assertTrue(said.contains("A measured task was stopped today: A spasm or cramp"), said);
    assertTrue(said.contains("No task can begin now."), said);
    assertFalse(said.contains("Which task?"), said);
  }

  @Test
  void theHelpNamesTheTasksAndTheirPlaces() {
    World help = World.run("", "measure", "--help");
    assertEquals(ExitCode.DONE, help.code());
    assertTrue(flowing(help).contains("T1 taps in 10 seconds"), help.output());
    assertTrue(flowing(help).contains("as in T1.L.I"), help.output());
  }
}
