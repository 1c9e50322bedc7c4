package closehand.plan.demand;

import closehand.bank.DemandFigures;
import closehand.bank.DemandFigures.Directions;
import closehand.bank.GameProfile;
import closehand.bank.GameProfile.Action;
import closehand.plan.demand.Settled.How;
import closehand.plan.demand.WantedAction.Purpose;
import closehand.plan.problem.Style;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes out what a game asks: its profile, what the player said about it, and a form. */
public final class DemandMaker {
  private static final double MINUTE = 60;
  private static final double SHORT_HOLD = 0.3;
  private static final Set<String> MADE_OF_OTHERS = Set.of("sequence", "chord", "pattern");

  private final GameProfile profile;
  private final GameFacts game;
  private final DemandFigures figures;
  private final Form form;
  private final List<WantedAction> wanted = new ArrayList<>();
  private final List<Settled> settled = new ArrayList<>();
  private final Map<String, List<String>> parts = new LinkedHashMap<>();
  private String mover = "";
  private String pointer = "";

  private DemandMaker(GameProfile profile, GameFacts game, DemandFigures figures, Form form) {
    this.profile = profile;
    this.game = game;
    this.figures = figures;
    this.form = form;
  }

  /** The demand of one game in one form. */
  public static Demand of(GameProfile profile, GameFacts game, DemandFigures figures, Form form) {
    DemandMaker maker = new DemandMaker(profile, game, figures, form);
    profile.actions().forEach(maker::action);
    return maker.demand();
  }

  private Demand demand() {
    return new Demand(
        game.slot() - 1,
        profile.genre(),
        game.name().isEmpty() ? profile.title() : game.name(),
        partnered(),
        settled,
        game.accepts(),
        game.cursor(),
        game.automation(),
        game.waitsFor());
  }

  private void action(Action action) {
    if (game.drop().contains(action.id())) {
      settle(action, How.DROPPED, "you said you can do without it", "");
      return;
    }
    Optional<String> instead = setting(action, DemandFigures.Effect.INSTEAD);
    if (instead.isPresent()) {
      settle(action, How.SETTING, instead.get(), "");
      return;
    }
    List<String> style = action.style();
    if (style.contains("menu") || style.contains("mode") || action.perMinute().isEmpty()) {
      settle(action, How.ONCE, "set it once in the menus", "");
    } else if (style.contains("text")) {
      settle(action, How.TEXT, "text", "");
    } else if (style.contains("motion")) {
      settle(action, How.NO_WAY, "it needs the device itself to be moved", "");
    } else if (figures.ownDirections().containsKey(action.id())) {
      directions(action, figures.ownDirections().get(action.id()), style(action));
    } else {
      movement(action);
    }
  }

  private void movement(Action action) {
    List<String> style = action.style();
    if (style.contains("analog2")) {
      walk(action);
    } else if (style.contains("aim2")) {
      aim(action);
    } else if (style.contains("analog1") && !style.contains("hold")) {
      steer(action);
    } else if (style.contains("wheel")) {
      directions(action, figures.directions().get("wheel"), Style.TAP);
    } else if (style.contains("edge")) {
      pan(action);
    } else {
      press(action);
    }
  }

  private void walk(Action action) {
    if (!mover.isEmpty()) {
      settle(action, How.WITH, "with the input that moves you", mover);
      return;
    }
    if (form.moveByStick()) {
      axis(action, Style.TWO_AXES, Purpose.MOVE, figures.movingShare());
    } else {
      directions(action, figures.directions().get("analog2"), Style.HOLD);
    }
    mover = first(action);
  }

  private void steer(Action action) {
    if (form.moveByStick()) {
      axis(action, Style.ONE_AXIS, Purpose.STEER, figures.movingShare());
    } else {
      directions(action, figures.directions().get("analog1"), Style.HOLD);
    }
    mover = mover.isEmpty() ? first(action) : mover;
  }

  private void aim(Action action) {
    boolean points = action.style().contains("tap");
    if (action.style().contains("drag")) {
      settle(action, How.WITH, "with the input that moves or points", host());
    } else if (points && !pointer.isEmpty()) {
      add(action, action.id(), action.name(), Style.TAP, perMinute(action), 0);
    } else if (points) {
      axis(action, Style.TWO_AXES, Purpose.POINT, 0);
      pointer = action.id();
      String press = action.id() + ".press";
      add(action, press, action.name() + ", the press", Style.TAP, perMinute(action), 0);
      parts.put(action.id(), List.of(action.id(), press));
    } else if (form.aimByAxis()) {
      axis(action, Style.TWO_AXES, Purpose.AIM, figures.movingShare());
    } else {
      directions(action, figures.directions().get("aim2"), Style.HOLD);
    }
  }

  private void pan(Action action) {
    if (pointer.isEmpty()) {
      directions(action, figures.directions().get("analog2"), Style.HOLD);
    } else {
      settle(action, How.WITH, "with the pointer at the edge of the screen", pointer);
    }
  }

  private void press(Action action) {
    List<String> style = action.style();
    if (style.contains("hover") && !pointer.isEmpty()) {
      settle(action, How.WITH, "with the pointer, by waiting on a thing", pointer);
    } else if (style.contains("doubleTap")) {
      settle(action, How.WITH, "with two quick presses of the input that moves you", mover);
    } else if (!game.automation() && style.stream().anyMatch(MADE_OF_OTHERS::contains)) {
      settle(action, How.WITH, "with the inputs of the actions it is made of", host());
    } else if (style.equals(List.of("drag")) && !pointer.isEmpty()) {
      drag(action);
    } else {
      Style how = style(action);
      double hold = how == Style.HOLD ? hold(action) : 0;
      double often = how == Style.REPEAT ? rapid(action) : perMinute(action);
      add(action, action.id(), action.name(), how, often, hold);
    }
  }

  /** Drags are done with the button that presses at the pointer, which is then held. */
  private void drag(Action action) {
    String words =
        action.options().stream()
            .filter(o -> o.contains("instead of drag"))
            .findFirst()
            .map(o -> "with the press at the pointer; try the setting: " + o)
            .orElse("with the press at the pointer, held while you move");
    settle(action, How.WITH, words, pointer + ".press");
  }

  private static Style style(Action action) {
    List<String> style = action.style();
    if (style.contains("mash")) {
      return Style.REPEAT;
    }
    boolean held = style.contains("hold") || style.contains("modifier") || style.contains("drag");
    return held && !(style.contains("tap") && !style.contains("keys")) ? Style.HOLD : Style.TAP;
  }

  private double rapid(Action action) {
    double seconds = (action.holdSeconds().minimum() + action.holdSeconds().maximum()) / 2;
    return Math.min(600, perMinute(action) * seconds * figures.rapidPressesPerSecond());
  }

  private static double perMinute(Action action) {
    return action.perMinute().orElse(0);
  }

  private static double typicalHold(Action action) {
    return (action.holdSeconds().minimum() + action.holdSeconds().maximum()) / 2;
  }

  private double hold(Action action) {
    double often = Math.max(0.1, perMinute(action));
    return Math.min(typicalHold(action), figures.longestHeldShare() * MINUTE / often);
  }

  private void axis(Action action, Style style, Purpose purpose, double share) {
    double counted = perMinute(action) * figures.movementCountsAs();
    double often = Math.max(0.1, counted);
    wanted.add(
        new WantedAction(
            action.id(),
            action.id(),
            action.name(),
            style,
            purpose,
            counted,
            0,
            0,
            share * MINUTE / often,
            action.urgency(),
            importance(action),
            false,
            false,
            action.pressedWith()));
    parts.put(action.id(), List.of(action.id()));
  }

  private void directions(
      Action action, @org.jspecify.annotations.Nullable Directions ways, Style style) {
    if (ways == null || ways.names().isEmpty()) {
      settle(action, How.NO_WAY, "there are no directions for it", "");
      return;
    }
    List<String> ids = new ArrayList<>();
    boolean moves = action.style().stream().anyMatch(s -> s.startsWith("a"));
    double held =
        moves
            ? figures.movingShare() * MINUTE / Math.max(0.1, perMinute(action))
            : action.style().contains("edge") ? SHORT_HOLD : hold(action);
    for (int i = 0; i < ways.names().size(); i++) {
      String way = ways.names().get(i).replace(' ', '-');
      String id = ways.names().size() == 1 ? action.id() : action.id() + "." + way;
      String name =
          ways.names().size() == 1 ? action.name() : action.name() + ": " + ways.names().get(i);
      add(
          action,
          id,
          name,
          style,
          perMinute(action) * ways.shares().get(i),
          style == Style.HOLD ? held : 0);
      ids.add(id);
    }
    parts.put(action.id(), List.copyOf(ids));
  }

  private void add(Action action, String id, String name, Style style, double often, double hold) {
    boolean lets = action.style().contains("release");
    wanted.add(
        new WantedAction(
            id,
            action.id(),
            name,
            style,
            Purpose.PRESS,
            often,
            hold,
            style == Style.HOLD ? Math.max(hold, typicalHold(action)) : 0,
            0,
            action.urgency(),
            importance(action),
            style == Style.HOLD && !lets && canToggle(action, id),
            action.style().contains("drag"),
            action.pressedWith()));
    parts.putIfAbsent(action.id(), List.of(id));
  }

  private boolean canToggle(Action action, String id) {
    boolean forward = id.equals(action.id()) || id.endsWith(".forward");
    return action.style().contains("modifier")
        || (forward && setting(action, DemandFigures.Effect.TOGGLE).isPresent());
  }

  /** The action's own option that a setting of this game stands for. */
  private Optional<String> setting(Action action, DemandFigures.Effect effect) {
    for (DemandFigures.Setting setting : figures.settings()) {
      if (setting.does() == effect && game.options().contains(setting.option())) {
        for (String option : action.options()) {
          if (setting.fits(option)) {
            return Optional.of(option);
          }
        }
      }
    }
    return Optional.empty();
  }

  private int importance(Action action) {
    return game.must().contains(action.id()) ? 3 : action.importance();
  }

  private void settle(Action action, How how, String words, String with) {
    settled.add(new Settled(action.id(), action.name(), how, words, with));
  }

  private String first(Action action) {
    return parts.getOrDefault(action.id(), List.of(action.id())).get(0);
  }

  private String host() {
    return mover.isEmpty() ? pointer : mover;
  }

  /** Partners by the ids of their parts, each pair once on both sides. */
  private List<WantedAction> partnered() {
    Map<String, Set<String>> pairs = new LinkedHashMap<>();
    for (WantedAction action : wanted) {
      for (String other : action.pressedWith()) {
        for (String part : parts.getOrDefault(other, List.of())) {
          if (!part.equals(action.id()) && wanted.stream().anyMatch(w -> w.id().equals(part))) {
            pairs.computeIfAbsent(action.id(), k -> new LinkedHashSet<>()).add(part);
            pairs.computeIfAbsent(part, k -> new LinkedHashSet<>()).add(action.id());
          }
        }
      }
    }
    return wanted.stream()
        .map(w -> w.with(List.copyOf(pairs.getOrDefault(w.id(), Set.of()))))
        .toList();
  }
}
