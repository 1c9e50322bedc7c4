package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.ControlPlan.Mode;
import closehand.plan.ControlPlan.Sureness;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A plan drawn in plain characters, wide and narrow; the drawings themselves are golden files. */
class PlanDrawingTest {
  private static final Set<String> WITHIN = Set.of("A1", "B2", "B3");

  @Test
  void drawingsFitSeventyTwoAndFortyColumns() throws IOException {
    for (int width : new int[] {72, 40}) {
      List<String> lines = PlanDrawing.of(plan(), WITHIN, width, Glyphs.ASCII);
      for (String line : lines) {
        assertTrue(line.length() <= width, line);
        assertEquals(line.stripTrailing(), line);
      }
      Golden.check("plan-drawing-" + width, String.join("\n", lines) + "\n");
    }
  }

  @Test
  void everyAssignmentIsDrawn() {
    String wide = String.join(" ", PlanDrawing.of(plan(), WITHIN, 72, Glyphs.ASCII));
    String words = wide.replaceAll("[^A-Za-z]+", " ");
    for (Assignment one : plan().assignments()) {
      String last = one.name().substring(one.name().lastIndexOf(' ') + 1);
      assertTrue(words.contains(last), one.name());
    }
  }

  private static ControlPlan plan() {
    List<Assignment> all = new ArrayList<>();
    all.add(at("Walk: forward", "B2", "side cell B2", "cell", "Side-button mouse", "L.T"));
    all.add(at("Jump over things", "A1", "side cell A1", "cell", "Side-button mouse", "L.T"));
    all.add(at("Look", "pointer", "pointer, by sliding", "pointer", "Side-button mouse", "L.hand"));
    all.add(
        at(
            "Second meaning",
            "B3",
            "side cell B3",
            "cell",
            "Side-button mouse",
            "L.T",
            "left toe switch"));
    all.add(at("Reload", "D02", "key W", "key", "Keypad", "R.I"));
    all.add(at("Open the map", "C03", "key D", "key", "Keypad", "R.M"));
    all.add(at("Dodge", "padUp", "direction pad up", "button", "Controller", "R.T"));
    all.add(at("Heal", "padLeft", "direction pad left", "button", "Controller", "R.T"));
    all.add(at("Drop", "padRight", "direction pad right", "button", "Controller", "R.T"));
    all.add(at("Steer: left", "stick.left", "stick, pushed left", "axis2", "Joystick", "R.hand"));
    all.add(at("Sprint", "Ltoe", "left toe switch", "switch", "Foot switches", "L.foot"));
    all.add(at("Pause", "ph1", "phrase 1", "phrase", "Voice", "voice"));
    return new ControlPlan(
        0,
        "FPA",
        "A game",
        List.of(),
        1,
        1,
        Sureness.PROVED,
        all,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static Assignment at(
      String name, String input, String words, String kind, String device, String effector) {
    return at(name, input, words, kind, device, effector, "");
  }

  private static Assignment at(
      String name,
      String input,
      String words,
      String kind,
      String device,
      String effector,
      String held) {
    return new Assignment(
        name,
        name,
        name,
        "X",
        input,
        words,
        kind,
        device,
        "",
        effector,
        held.isEmpty() ? Optional.empty() : Optional.of(held),
        Mode.TAP,
        1,
        0,
        2,
        1,
        10,
        1,
        List.of(),
        List.of());
  }
}
