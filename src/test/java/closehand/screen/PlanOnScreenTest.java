package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.plan.PlanChanges;
import closehand.report.Glyphs;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A plan changed by hand on the full screen, with digits alone. */
class PlanOnScreenTest {
  private final CoreDesk desk = new CoreDesk();
  private final ScreenFace face =
      new ScreenFace(new NoBook(), Glyphs.UNICODE, Settings.USUAL)
          .with(new CaseBook.Opened(Optional.of(new CaseBook.Holding(desk, player())), List.of()));

  /** The fifth invented player, whose plans are found at once. */
  private static Interview player() {
    return Interview.reopen(
            CoreDesk.BANK.questionnaire(),
            CoreDesk.goldCase(4),
            Interview.Route.CORE,
            Provenance.By.VOLUNTEER,
            Optional.empty())
        .after(new Message.Resume());
  }

  private void press(String keys) {
    for (char key : keys.toCharArray()) {
      face.press(key == '\n' ? Key.Named.ENTER : Key.of(key));
      while (face.busy()) {
        face.work();
      }
      // A digit shows a line that is out of sight first, and takes it the second time.
      if (seen().contains("The same key again or Enter takes it.")) {
        face.press(Key.Named.ENTER);
        while (face.busy()) {
          face.work();
        }
      }
    }
  }

  private String seen() {
    return String.join(" ", face.frame(new ScreenSize(132, 43)).text()).replaceAll("\\s+", " ");
  }

  /** Past the notices that stand, to the plan changed by hand. */
  private void begin() {
    for (int i = 0; i < 12 && !seen().contains("Question "); i++) {
      press("1");
    }
    press("g2");
    assertTrue(seen().contains("why an action sits where it does"), seen());
  }

  private PlanChanges.OfGame first() {
    return desk.changes().games().values().stream().findFirst().orElseThrow();
  }

  @Test
  void anActionIsMovedAndKeptAsAWishAndUndone() {
    begin();
    press("12");
    assertTrue(seen().contains("The next places, with everything else arranged anew"), seen());
    press("1");
    assertTrue(seen().contains("Where to?"), seen());
    press("1");
    assertTrue(seen().contains("Keep it as a wish"), seen());
    assertEquals(PlanChanges.NONE, desk.changes(), "nothing is kept before it is wished");
    press("1");
    assertTrue(seen().contains("The whole plan asks for"), seen());
    assertEquals(1, first().wishes().size());
    press("2");
    assertEquals(PlanChanges.NONE, desk.changes());
    assertTrue(seen().contains("Move it by hand"), seen());
  }

  @Test
  void anActionOfOnesOwnIsNamedRatedAndRemoved() {
    begin();
    press("21");
    press("Undo a bridge\n");
    assertEquals("Undo a bridge", first().actions().get(0).name());
    press("11");
    assertEquals(3, first().actions().get(0).importance());
    press("26");
    assertEquals(30, first().actions().get(0).perMinute().orElseThrow());
    press("6");
    assertEquals(PlanChanges.NONE, desk.changes());
    assertFalse(seen().contains("Undo a bridge"), seen());
  }

  @Test
  void anActionOfTheGameIsRemovedAndPutBack() {
    begin();
    press("22");
    assertTrue(seen().contains("How much it matters"), seen());
    press("6");
    assertEquals(1, first().removed().size());
    press("0");
    press("7");
    assertEquals(PlanChanges.NONE, desk.changes());
  }
}
