package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.CaseRecord;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan changed by hand at the line face holds for every later plan of the case. */
class ByHandTest {
  private static final String NAME = "calm-fern";

  @TempDir Path folder;

  @BeforeEach
  void aCaseIsKept() throws IOException {
    TriedCase.keep(folder, "silver-birch", NAME, CaseRecord.NONE);
  }

  /** Past two notices and the consent, then the plan changed by hand with these lines. */
  private String at(String... lines) {
    World world =
        World.typed(
            "1\n\n\n1\ng change\n" + String.join("\n", lines) + "\nq\n",
            "interview",
            NAME,
            "--line",
            "--home",
            folder.toString());
    return world.output().replaceAll("\\s+", " ");
  }

  private String plan() {
    return World.run("", "plan", NAME, "--home", folder.toString(), "--game", "0").output();
  }

  @Test
  void aMoveIsPricedKeptAsAWishAndHoldsInTheNextPlan() {
    String text = at("1", "2", "1", "1", "1", "1", "0", "0");
    assertTrue(text.contains("The next places, with everything else arranged anew"), text);
    assertTrue(text.contains("It breaks nothing."), text);
    assertTrue(text.contains("points a minute more than before"), text);
    assertTrue(text.contains("press (wished)"), text);
    assertTrue(plan().contains("the press: wheel down, right index finger"), plan());
  }

  @Test
  void anAddedActionHasAPlaceInTheNextPlanAndWhatIsTakenBackHasNot() {
    String text = at("2", "1", "Deal again", "0", "0", "0");
    assertTrue(text.contains("Now: Deal again: "), text);
    assertTrue(plan().contains("Deal again: "), plan());
    at("2", "1", "Deal at last", "0", "0", "7", "0");
    assertFalse(plan().contains("Deal at last"), plan());
    assertTrue(plan().contains("Deal again: "), plan());
  }

  @Test
  void enterAloneGoesBackAndChangesNothing() {
    String before = plan();
    String text = at("1", "1", "", "", "nine", "");
    assertTrue(text.contains("Type one of the numbers; 0 goes back."), text);
    assertEquals(before, plan());
  }

  @Test
  void aWishOfTheCommandLineIsKeptWithItsPlan() {
    String home = folder.toString();
    String[] wish = {"--game", "0", "--set", "Confirm=second"};
    assertTrue(plan().contains("Confirm: wheel up, right index finger"), plan());
    World.run("", "plan", NAME, "--home", home, wish[0], wish[1], wish[2], wish[3]);
    assertFalse(plan().contains("Confirm: second button"), "only looked at");
    World kept =
        World.run("", "plan", NAME, "--home", home, wish[0], wish[1], wish[2], wish[3], "--keep");
    assertTrue(kept.error().contains("The plan is kept"), kept.error());
    assertTrue(plan().contains("Confirm: second button"), plan());
  }
}
