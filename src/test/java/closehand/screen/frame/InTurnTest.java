package closehand.screen.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.report.Glyphs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Two things on one screen, one after the other. */
class InTurnTest {
  private final List<String> heard = new ArrayList<>();

  /** Is over after one key. */
  private final class Once implements Showing {
    private final String name;
    private boolean over;

    Once(String name) {
      this.name = name;
    }

    @Override
    public Frame frame(ScreenSize size) {
      Canvas canvas = new Canvas(size, Glyphs.ASCII);
      canvas.put(0, 0, name, Role.PLAIN);
      return canvas.frame();
    }

    @Override
    public void press(Key key) {
      heard.add(name);
      over = true;
    }

    @Override
    public Set<Report> reports() {
      return name.equals("second") ? Set.of(Report.FOCUS) : Set.of();
    }

    @Override
    public boolean over() {
      return over;
    }
  }

  private static String seen(Showing showing) {
    return showing.frame(new ScreenSize(20, 2)).text().get(0).strip();
  }

  @Test
  void theSecondFollowsTheFirstAndTheScreenEndsWithIt() {
    InTurn both = new InTurn(new Once("first"), () -> Optional.of(new Once("second")));
    assertEquals("first", seen(both));
    both.press(Key.of('a'));
    assertFalse(both.over(), "the first alone does not end it");
    assertEquals("second", seen(both));
    assertEquals(Set.of(Showing.Report.FOCUS), both.reports());
    both.press(Key.of('b'));
    assertTrue(both.over());
    assertEquals(List.of("first", "second"), heard);
  }

  @Test
  void whereNothingFollowsItEndsWithTheFirst() {
    InTurn one = new InTurn(new Once("first"), Optional::empty);
    one.press(Key.of('a'));
    assertTrue(one.over());
  }
}
