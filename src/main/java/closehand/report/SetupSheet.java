package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Effectors;
import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.ControlPlan.Mode;
import closehand.plan.Planned;
import closehand.strain.Accepted;
import closehand.strain.DayLoad;
import closehand.strain.PlanLoad;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
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
    checks(plans);
    if (!plans.isEmpty()) {
      advice(plans);
      order();
    }
    DayLoad day = LoadText.day(input, plans);
    List<Accepted> accepted = input.limits().accepted();
    for (int i = 0; i < plans.size(); i++) {
      PlanLoad load = day.games().get(i);
      List<Piece> blocked = LoadLines.blocked(load, accepted);
      if (blocked.isEmpty()) {
        game(plans.get(i));
      } else {
        pieces.add(new Heading(load.title()));
        pieces.addAll(blocked);
      }
      pieces.addAll(LoadLines.of(input.bank(), load));
      pieces.addAll(LoadLines.accepted(load, accepted));
    }
    if (plans.isEmpty()) {
      pieces.add(new Gap());
      pieces.add(Paragraph.of("No plan yet: no game has been named."));
    }
    pieces.addAll(LoadText.under(input, day));
    pieces.addAll(PlanLines.standing());
    pieces.addAll(FooterLines.of(input));
  }

  private static Set<String> used(List<Planned> plans) {
    Set<String> used = new LinkedHashSet<>();
    plans.forEach(p -> used.addAll(p.plan().approaches()));
    return used;
  }

  private void checks(List<Planned> plans) {
    pieces.add(new Heading("Check before the first use"));
    List<String> checks = new ArrayList<>();
    checks.add("Your stop signal is agreed, and whoever helps knows it.");
    checks.add("You reach your phone, alarm or call button with everything in place.");
    checks.add("Nothing presses on sore or numb skin, and no cable lies where you move.");
    if (input.warns("C-CHAIR")) {
      checks.add("The drive of your chair is off, and you have checked together that it is.");
    }
    if (input.warns("C-AAC")) {
      checks.add("Your communication device works, in reach, with nothing of this in its way.");
    }
    checks.addAll(Sayings.setUp(input.together(), "mount", used(plans)));
    checks.add("You have decided what is put away after play and what stays set up.");
    checks.forEach(c -> pieces.add(new Tick(c)));
  }

  /** What the answers say about setting these controls up, and about settings of the machine. */
  private void advice(List<Planned> plans) {
    Set<String> used = used(plans);
    Set<String> sentences = new LinkedHashSet<>();
    sentences.addAll(Sayings.setUp(input.together(), "setup", used));
    sentences.addAll(Sayings.setUp(input.together(), "settings", used));
    if (!sentences.isEmpty()) {
      pieces.add(new Heading("For your body"));
      sentences.forEach(s -> pieces.add(Paragraph.item(s)));
    }
  }

  private void order() {
    pieces.add(new Heading("In this order"));
    int place = 0;
    for (String step :
        List.of(
            "Change the settings of the game, one at a time. Write down each old value.",
            "Put the kit in place and measure where it sits.",
            "Assign the keys and buttons of the first actions only.",
            "Try them in a calm part of the game. " + PlayLimit.of(input).firstTry(),
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
    pieces.addAll(PlanLines.unkept(plan));
    if (PlanLines.isImpossible(planned)) {
      pieces.addAll(ClashLines.of(planned));
      return;
    }
    pieces.add(Paragraph.of(PlanLines.uses(input.bank(), plan)));
    pieces.addAll(EffortToSetUp.of(input, plan));
    pieces.add(Paragraph.of(PlanLines.sureness(plan)));
    pieces.addAll(NeededLines.of(plan));
    pieces.addAll(ClashLines.of(planned));
    List<String> first = FirstActions.of(plan, input.bank(), most());
    pieces.add(Paragraph.headed("Start with.", String.join("; ", first) + "."));
    settings(plan);
    table(plan, planned.demand().takes(List.of("keyboard")));
    drawing(planned);
    positions(plan);
    left(plan);
  }

  /** No more to begin with than feels easy. */
  private int most() {
    return (int) Math.max(FEWEST, Math.min(MOST, comfortable().orElse(FEWEST)));
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
    boolean inTheGame = rows.stream().anyMatch(r -> r.contains(KeyChoice.IN_THE_GAME));
    pieces.add(
        Paragraph.of(
            "ASSIGN names the key or button with its USB HID usage in brackets."
                + (keyboard ? " F keys stand for any key that the game does not use yet." : "")
                + (inTheGame
                    ? " \"In the game\" means: press this input where the game's menu asks for the"
                        + " action's button."
                    : "")));
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
