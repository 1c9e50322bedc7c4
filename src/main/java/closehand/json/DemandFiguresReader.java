package closehand.json;

import closehand.bank.DemandFigures;
import closehand.bank.DemandFigures.Directions;
import closehand.bank.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads how the styles of actions are understood, a part of {@code control-plan.json}. */
final class DemandFiguresReader {
  private static final Map<String, DemandFigures.Effect> EFFECTS =
      Map.of(
          "toggle", DemandFigures.Effect.TOGGLE,
          "instead", DemandFigures.Effect.INSTEAD,
          "helps", DemandFigures.Effect.HELPS);
  private static final List<String> KEYS = List.of("up", "left", "down", "right");

  private final List<Problem> problems;

  DemandFiguresReader(List<Problem> problems) {
    this.problems = problems;
  }

  DemandFigures read(FigureReading in) {
    Map<String, Directions> byStyle = new LinkedHashMap<>();
    in.each("directions", one -> byStyle.put(one.in().text("style"), directions(one)));
    return new DemandFigures(
        in.number("movingShare", 0, 1),
        in.number("movementCountsAs", 0.1, 1),
        in.number("longestHeldShare", 0, 1),
        in.number("rapidPressesPerSecond", 0, 20),
        byStyle,
        own(in, byStyle),
        in.each("settings", this::setting),
        in.in().texts("irreversible"),
        in.each(
            "jobs", one -> new DemandFigures.Job(one.in().text("job"), one.in().texts("actions"))));
  }

  private Map<String, Directions> own(FigureReading in, Map<String, Directions> byStyle) {
    Map<String, Directions> own = new LinkedHashMap<>();
    in.each(
        "ownDirections",
        one -> {
          String action = one.in().text("action");
          Optional<String> like = one.in().optionalText("like");
          own.put(action, like.isPresent() ? like(one, like.get(), byStyle) : directions(one));
          return action;
        });
    return own;
  }

  private Directions like(FigureReading one, String style, Map<String, Directions> byStyle) {
    Directions found = byStyle.get(style);
    if (found == null) {
      problems.add(
          Problem.error(
              one.in().where("like"),
              "unknown-value",
              "\"" + style + "\" has no directions here.",
              "Name a style that stands under \"directions\"."));
      return new Directions(List.of(), List.of(), List.of());
    }
    return found;
  }

  private Directions directions(FigureReading one) {
    List<String> names = one.in().texts("names");
    List<String> keys = one.in().texts("keys");
    List<Double> shares = one.numbers("shares", names.size(), 0, 1);
    double whole = shares.stream().mapToDouble(Double::doubleValue).sum();
    if (keys.size() != names.size() || !KEYS.containsAll(keys) || Math.abs(whole - 1) > 1e-9) {
      problems.add(
          Problem.error(
              one.in().where(),
              "out-of-range",
              "These directions do not fit together.",
              "Give each a name, a key ("
                  + String.join(", ", KEYS)
                  + ") and a share; shares add"
                  + " up to 1."));
      return new Directions(List.of(), List.of(), List.of());
    }
    return new Directions(names, keys, shares);
  }

  private DemandFigures.Setting setting(FigureReading one) {
    String does = one.in().text("does");
    if (!does.isEmpty() && !EFFECTS.containsKey(does)) {
      problems.add(
          Problem.error(
              one.in().where("does"),
              "unknown-value",
              "\"does\" is toggle, instead or helps.",
              ""));
    }
    return new DemandFigures.Setting(
        one.in().text("option"),
        one.in().texts("words"),
        EFFECTS.getOrDefault(does, DemandFigures.Effect.HELPS));
  }
}
