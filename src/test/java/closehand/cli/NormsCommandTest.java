package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** {@code closehand norms}: context for a measurement, never a verdict. */
class NormsCommandTest {
  private static World norms(String... more) {
    String[] all = new String[more.length + 2];
    all[0] = "norms";
    all[1] = "--ascii";
    System.arraycopy(more, 0, all, 2, more.length);
    return World.run("", all);
  }

  private static String flat(World world) {
    return world.output().replaceAll("\\s+", " ");
  }

  @Test
  void aGripStandsBesideThreeTablesWithTheirSources() {
    World world = norms("--sex", "male", "--age", "62", "--grip", "27.2");
    assertEquals(ExitCode.DONE, world.code(), world.error());
    String text = flat(world);
    assertTrue(
        text.contains("Your grip is about 65 % of what is usual at this age (about 41 kg)."), text);
    assertTrue(text.contains("67 % of 40.7 kg; z -1.5; 7 % of the sample below."), text);
    assertTrue(text.contains("Mathiowetz") && text.contains("Steiber"), text);
    assertTrue(text.contains("Tomkinson"), text);
    assertTrue(text.contains("The people in these tables are non-disabled adults."), text);
    for (String line : world.output().split("\n", -1)) {
      assertTrue(line.length() <= 72, line);
    }
  }

  @Test
  void whereNoTableFitsNoneIsBorrowed() {
    String text = flat(norms("--sex", "female", "--age", "14", "--grip", "12"));
    assertTrue(text.contains("For grip there is no norm that fits."), text);
  }

  @Test
  void theLengthOfAHandGivesSomethingToTry() {
    String text = flat(norms("--hand-length", "18.5"));
    assertTrue(text.contains("this is an estimate, so try it"), text);
    assertTrue(text.contains("from memory"), text);
  }

  @Test
  void whatCannotBeIsToldWithWhatIsPossible() {
    assertTrue(norms().error().contains("Give a measurement"));
    assertTrue(norms("--grip", "14").error().contains("--sex and --age"));
    World heavy = norms("--sex", "male", "--age", "30", "--grip", "900");
    assertEquals(ExitCode.USAGE, heavy.code());
    assertTrue(heavy.error().contains("from 0 to 85 kilograms; check the unit"), heavy.error());
    assertEquals(ExitCode.USAGE, norms("--sex", "male", "--age", "300", "--grip", "20").code());
    assertEquals(ExitCode.USAGE, norms("--sex", "male", "--age", "30", "--grip", "NaN").code());
    assertEquals(ExitCode.USAGE, norms("--hand-length", "185").code());
    assertEquals(
        ExitCode.USAGE,
        norms("--hand", "either", "--sex", "male", "--age", "30", "--grip", "20").code());
  }
}
