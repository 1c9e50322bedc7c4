package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Effectors;
import closehand.strain.LoadWords;
import org.junit.jupiter.api.Test;

/** What {@code closehand plan} says about the load of its plans. */
class PlanLoadCommandTest {
  private static final String HERON = "examples/quiet-heron/answers.json";

  private static World plan(String... more) {
    String[] all = new String[more.length + 6];
    String[] first = {"plan", "--answers", HERON, "--ascii", "--game", "0"};
    System.arraycopy(first, 0, all, 0, first.length);
    System.arraycopy(more, 0, all, first.length, more.length);
    return World.run("", all);
  }

  private static String flat(World world) {
    return world.output().replaceAll("\\s+", " ");
  }

  @Test
  void everyPlanEndsWithWhatItAsksOfTheBodyAndOneSession() {
    World world = plan();
    String text = flat(world);
    assertTrue(text.contains("What this plan asks of your body"), world.output());
    assertTrue(world.output().contains("Right hand          [#"), world.output());
    assertTrue(text.contains(" has the most to do"), world.output());
    assertTrue(text.contains("One session: "), world.output());
    assertTrue(text.contains(LoadWords.MADE_FOR_WORK), world.output());
    for (String line : world.output().split("\n", -1)) {
      assertTrue(line.length() <= 72 && line.chars().allMatch(c -> c >= ' ' && c <= '~'), line);
    }
  }

  @Test
  void theClinicianSeesMethodsAndSources() {
    String text = flat(plan("--load"));
    assertTrue(text.contains("Garg, Moore, Kapellusch"), text);
    assertTrue(
        text.contains(
            "One session, and the reason for every number".toUpperCase(java.util.Locale.ROOT)),
        text);
    assertFalse(text.contains("CONTROL PLAN"), text);
  }

  @Test
  void aRatedEffortChangesTheFigures() {
    String all = String.join("=8,", Effectors.all()) + "=8";
    String rated = flat(plan("--effort", all));
    assertFalse(rated.contains("Effort has not been rated"), rated);
    assertTrue(flat(plan()).contains("Effort has not been rated"));
    assertTrue(rated.contains("the effort of each press of your "), rated);
  }

  /** Two busy jobs on one finger are above its red line: no plan, until a clinician accepts it. */
  @Test
  void aRedPartBlocksUntilAClinicianAcceptsIt() {
    String[] wishes = {
      "--approaches", "MOUSE_SIDE_R", "--set", "RTS01.press=second", "--set", "RTS03=wheelClick"
    };
    World blocked = plan(wishes);
    assertTrue(
        flat(blocked).contains("your right middle finger stays below its red line"),
        blocked.output());
    assertFalse(flat(blocked).contains("wheel click, right middle finger"), blocked.output());
    String[] accepting = new String[wishes.length + 2];
    System.arraycopy(wishes, 0, accepting, 0, wishes.length);
    accepting[wishes.length] = "--accept";
    accepting[wishes.length + 1] = "R.M=A. Clinician: short bursts, seen in the room";
    String accepted = flat(plan(accepting));
    assertTrue(accepted.contains("wheel click, right middle finger"), accepted);
    assertTrue(accepted.contains("red: very busy"), accepted);
    assertTrue(
        accepted.contains(
            "Your right middle finger is above the red line; accepted by A. Clinician: \"short"
                + " bursts, seen in the room\""),
        accepted);
  }

  @Test
  void otherProgramsGetTheLoadToo() {
    String json = flat(plan("--json"));
    assertTrue(json.contains("\"load\" : { \"hands\" : [ { \"id\" : \"right\""), json);
    assertTrue(json.contains("\"method\" : \"Composite Strain Index\""), json);
    assertTrue(json.contains("\"blockedBy\" : [ ]"), json);
  }

  @Test
  void whatCannotBeIsToldWithWhatIsPossible() {
    World effort = plan("--effort", "R.T=11");
    assertEquals(ExitCode.USAGE, effort.code());
    assertTrue(effort.error().contains("Effort is a number from 0 to 10."), effort.error());
    World word = plan("--effort", "R.T=much");
    assertEquals(ExitCode.USAGE, word.code());
    World nobody = plan("--accept", "R.T=short bursts");
    assertEquals(ExitCode.USAGE, nobody.code());
    assertTrue(nobody.error().contains("a clinician's name and a reason"), nobody.error());
    assertEquals(ExitCode.USAGE, plan("--accept", "thumb=A. Clinician: bursts").code());
    assertFalse(plan("--accept", "R.T=A. Clinician: short bursts").code() == ExitCode.USAGE);
  }
}
