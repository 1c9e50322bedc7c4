package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Effectors;
import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.ControlPlan.Mode;
import closehand.plan.Planned;
import closehand.strain.DayLoad;
import closehand.strain.PlanLoad;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** The sheet for whoever sets the controls up: what to assign, set, place, measure and check. */
public final class SetupSheet {
  private static final List<Integer> WIDTHS = List.of(20, 17, 11, 7, 9);
  private static final int FEWEST = 3;
  private static final int MOST = 6;
  private static final String BLANK = "________";

  private final PageInput input;
  private final Glyphs glyphs;
  private final List<Piece> pieces = new ArrayList<>();

  private SetupSheet(PageInput input, Glyphs glyphs) {
    this.input = input;
    this.glyphs = glyphs;
  }

  /** The sheet as text; while suggestions are withheld it holds what stands in the way alone. */
  public static String of(PageInput input, List<Planned> plans, Glyphs glyphs) {
    if (!input.ending().isEmpty() || input.together().withheld()) {
      return PlanText.withheld(input, glyphs);
    }
    SetupSheet sheet = new SetupSheet(input, glyphs);
    sheet.all(plans);
    return Sheet.text(sheet.pieces, glyphs);
  }

  private void all(List<Planned> plans) {
    pieces.addAll(TitleLines.of("Set-up sheet", input));
    pieces.addAll(TitleLines.provisionalLine(input));
    if (input.together().forReview()) {
      pieces.add(Paragraph.of("A draft for a clinician to review. Set nothing up before that."));
    }
    pieces.addAll(CautionLines.of(input));
    checks();
    order();
    DayLoad day = LoadText.day(input, plans, LoadText.Rated.NOTHING);
    for (int i = 0; i < plans.size(); i++) {
      PlanLoad load = day.games().get(i);
      List<Piece> blocked = LoadLines.blocked(load, List.of());
      if (blocked.isEmpty()) {
        game(plans.get(i));
      } else {
        pieces.add(new Heading(load.title()));
        pieces.addAll(blocked);
      }
      pieces.addAll(LoadLines.of(input.bank(), load));
    }
    if (plans.isEmpty()) {
      pieces.add(new Gap());
      pieces.add(Paragraph.of("No plan yet: no game has been named."));
    }
    pieces.addAll(LoadText.under(input, day));
    pieces.addAll(PlanLines.standing());
    pieces.addAll(FooterLines.of(input));
  }

  private void checks() {
    pieces.add(new Heading("Check before the first use"));
    List<String> checks = new ArrayList<>();
    checks.add("Your stop signal is agreed, and whoever helps knows it.");
    checks.add("You reach your phone, alarm or call button with everything in place.");
    checks.add("Nothing presses on sore or numb skin, and no cable lies where you move.");
    checks.addAll(input.together().advice("mount"));
    checks.add("Everything is put away or stays where it is without help, as you decided.");
    checks.forEach(c -> pieces.add(new Tick(c)));
  }

  private void order() {
    pieces.add(new Heading("In this order"));
    int place = 0;
    for (String step :
        List.of(
            "Change the settings of the game, one at a time. Write down each old value.",
            "Put the kit in place and measure where it sits.",
            "Assign the keys and buttons of the first actions only.",
            "Try them for ten minutes in a calm part of the game.",
            more())) {
      pieces.add(Paragraph.numbered(++place, step));
    }
  }

  private String more() {
    return input.warns("C-PEM")
        ? "Add an action only when you feel ready and the last days were good."
        : "When they feel easy, add about two actions a week.";
  }

  private void game(Planned planned) {
    ControlPlan plan = planned.plan();
    pieces.add(new Heading(plan.title()));
    pieces.add(Paragraph.of(PlanLines.uses(input.bank(), plan)));
    pieces.add(Paragraph.of(PlanLines.sureness(plan)));
    pieces.add(Paragraph.headed("Start with.", String.join("; ", first(plan)) + "."));
    settings(plan);
    table(plan, planned.demand().takes(List.of("keyboard")));
    drawing(planned);
    positions(plan);
    left(plan);
  }

  /** The actions to begin with: what matters most, the busiest first, no more than feels easy. */
  private List<String> first(ControlPlan plan) {
    OptionalDouble comfortable = comfortable();
    int most = (int) Math.max(FEWEST, Math.min(MOST, comfortable.orElse(FEWEST)));
    Map<String, Double> often = new LinkedHashMap<>();
    Map<String, Integer> matters = new LinkedHashMap<>();
    Map<String, String> names = new LinkedHashMap<>();
    for (Assignment one : plan.assignments()) {
      often.merge(one.action(), one.perMinute(), Double::sum);
      matters.merge(one.action(), one.importance(), Math::max);
      String name = one.name();
      boolean part = !one.id().equals(one.action()) && name.contains(": ");
      names.putIfAbsent(one.action(), part ? name.substring(0, name.lastIndexOf(": ")) : name);
    }
    return names.keySet().stream()
        .sorted(
            java.util.Comparator.<String>comparingInt(a -> -matters.getOrDefault(a, 0))
                .thenComparingDouble(a -> -often.getOrDefault(a, 0.0)))
        .limit(most)
        .map(a -> names.getOrDefault(a, a))
        .toList();
  }

  private OptionalDouble comfortable() {
    for (String number : List.of("3", "6", "12", "more")) {
      if (input.facts().is("cog.jobs", number)) {
        return OptionalDouble.of(number.equals("3") ? FEWEST : MOST);
      }
    }
    return OptionalDouble.empty();
  }

  private void settings(ControlPlan plan) {
    if (plan.settings().isEmpty()) {
      return;
    }
    pieces.add(new Gap());
    pieces.add(Paragraph.of("Settings of the game, old to new:"));
    for (String setting : plan.settings()) {
      pieces.add(Paragraph.item(setting + ". Old: " + BLANK + " New: " + BLANK));
    }
  }

  private void table(ControlPlan plan, boolean keyboard) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("ACTION", "INPUT", "PART OF YOU", "HOW", "ASSIGN"));
    KeyChoice keys = new KeyChoice(plan, keyboard);
    for (Assignment one : plan.assignments()) {
      String held = one.held().map(h -> "hold " + h + ", then ").orElse("");
      rows.add(
          List.of(
              one.name(),
              held + one.inputName(),
              Effectors.words(one.effector()),
              how(one.mode()),
              keys.of(one)));
    }
    pieces.add(new Gap());
    pieces.add(new Table(WIDTHS, rows));
    pieces.add(new Gap());
    pieces.add(
        Paragraph.of(
            "ASSIGN names the key or button with its USB HID usage in brackets."
                + (keyboard ? " F keys stand for any key that the game does not use yet." : "")));
  }

  private static String how(Mode mode) {
    return switch (mode) {
      case TAP -> "press";
      case HOLD -> "hold";
      case TOGGLE -> "on, off";
      case AXIS -> "move";
    };
  }

  private void drawing(Planned planned) {
    List<String> drawn = PlanDrawing.of(planned, Wrap.WIDTH, glyphs);
    if (!drawn.isEmpty()) {
      pieces.add(new Gap());
      pieces.add(new Drawn(drawn));
    }
  }

  private void positions(ControlPlan plan) {
    pieces.add(new Gap());
    pieces.add(Paragraph.of("Where it sits; measure and write down:"));
    Set<String> said = new HashSet<>();
    for (String id : plan.approaches()) {
      input
          .bank()
          .approach(id)
          .map(Approach::words)
          .filter(w -> said.add(w.mounting()))
          .ifPresent(
              w ->
                  pieces.add(
                      Paragraph.item(
                          w.brief()
                              + ": "
                              + Phrases.sentence(w.mounting())
                              + " From the table's edge: ____ cm. From the middle of you: ____"
                              + " cm.")));
    }
  }

  private void left(ControlPlan plan) {
    Set<String> names = new LinkedHashSet<>();
    plan.leftOut().forEach(l -> names.add(Phrases.lower(l.name())));
    if (!names.isEmpty()) {
      pieces.add(new Gap());
      pieces.add(
          Paragraph.of(
              "Left out for now: " + Phrases.and(List.copyOf(names)) + ". The plan says why."));
    }
  }

  /** Something to tick with a pen. */
  private record Tick(String text) implements Piece {
    @Override
    public List<String> lines(Glyphs glyphs) {
      return Wrap.lines("[ ] ", "    ", Clean.of(text, glyphs));
    }
  }

  /** Lines that are ready to print. */
  private record Drawn(List<String> text) implements Piece {
    Drawn {
      text = List.copyOf(text);
    }

    @Override
    public List<String> lines(Glyphs glyphs) {
      return text;
    }
  }
}
