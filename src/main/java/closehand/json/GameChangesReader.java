package closehand.json;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.GameProfile;
import closehand.bank.GameProfile.Action;
import closehand.bank.Hint;
import closehand.bank.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * Reads the actions that a flat answers file changes, adds or takes away in its games: the member
 * {@code actions} of a game, in the form of the game profiles. What an entry leaves out stays as it
 * is; {@code "drop": true} takes the action away.
 */
public final class GameChangesReader {
  /** The most actions a game may have after all changes. */
  public static final int MOST_ACTIONS = 60;

  private static final String GAMES = "games";
  private static final String ACTIONS = "actions";
  private static final int MOST_TIMES_A_MINUTE = 600;
  private static final int LONGEST_HOLD_SECONDS = 60;
  private static final Approach.Span PRESS = new Approach.Span(0.1, 0.1, "");

  private final Bank bank;
  private final List<Problem> problems;

  private GameChangesReader(Bank bank, List<Problem> problems) {
    this.bank = bank;
    this.problems = problems;
  }

  /**
   * Games with actions of their own, not yet matched with a bank.
   *
   * @param rest the document without the actions, for the flat reader
   * @param games the games that had some, whole, by slot from 1
   */
  public record Written(JsonValue rest, Map<Integer, JsonValue.Obj> games) {
    public Written {
      games = java.util.Collections.unmodifiableMap(new TreeMap<>(games));
    }
  }

  /** Takes the actions out of a document of flat answers. */
  public static Written split(JsonValue document) {
    Map<Integer, JsonValue.Obj> found = new TreeMap<>();
    if (!(document instanceof JsonValue.Obj object)
        || !(object.member(GAMES).orElse(null) instanceof JsonValue.Arr games)) {
      return new Written(document, found);
    }
    List<JsonValue> rest = new ArrayList<>();
    for (JsonValue game : games.items()) {
      if (game instanceof JsonValue.Obj one && one.member(ACTIONS).isPresent()) {
        found.put(rest.size() + 1, one);
        rest.add(one.without(ACTIONS));
      } else {
        rest.add(game);
      }
    }
    return new Written(replaced(object, new JsonValue.Arr(rest, games.where())), found);
  }

  /** The changed profile of each game, by its slot from 1. */
  public static Map<Integer, GameProfile> profiles(
      Bank bank, Written written, List<Problem> problems) {
    GameChangesReader reader = new GameChangesReader(bank, problems);
    Map<Integer, GameProfile> profiles = new TreeMap<>();
    written
        .games()
        .forEach((slot, game) -> reader.game(game).ifPresent(p -> profiles.put(slot, p)));
    return profiles;
  }

  private static JsonValue.Obj replaced(JsonValue.Obj object, JsonValue.Arr games) {
    List<JsonValue.Member> members = new ArrayList<>();
    for (JsonValue.Member member : object.members()) {
      members.add(
          member.name().equals(GAMES)
              ? new JsonValue.Member(member.name(), member.nameWhere(), games)
              : member);
    }
    return new JsonValue.Obj(members, object.where());
  }

  private Optional<GameProfile> game(JsonValue.Obj game) {
    if (!(game.member("genre").orElse(null) instanceof JsonValue.Str genre)) {
      return Optional.empty();
    }
    Optional<GameProfile> base = bank.game(genre.value());
    return base.map(
        b -> changed(b, ObjectReading.items(game.member(ACTIONS).orElseThrow(), problems)));
  }

  private GameProfile changed(GameProfile base, List<JsonValue> entries) {
    Map<String, Action> actions = new LinkedHashMap<>();
    base.actions().forEach(a -> actions.put(a.id(), a));
    Set<String> seen = new HashSet<>();
    for (JsonValue entry : entries) {
      ObjectReading.of(entry, problems).ifPresent(in -> change(in, actions, seen));
    }
    if (actions.size() > MOST_ACTIONS && !entries.isEmpty()) {
      problems.add(
          Problem.error(
              entries.get(0).where(),
              "out-of-range",
              "This game has " + actions.size() + " actions; a plan can have " + MOST_ACTIONS + ".",
              "Keep the ones that matter most."));
    }
    partners(actions);
    return new GameProfile(
        base.genre(),
        base.title(),
        base.note(),
        base.settings(),
        List.copyOf(actions.values()),
        base.basis(),
        base.where());
  }

  private void change(ObjectReading in, Map<String, Action> actions, Set<String> seen) {
    String id = in.text("id");
    Optional<Action> old = Optional.ofNullable(actions.get(id));
    if (!id.isEmpty() && !seen.add(id)) {
      problems.add(
          Problem.error(
              in.where("id"),
              "duplicate-id",
              "The action \"" + id + "\" stands here for the second time.",
              "Keep one."));
    }
    if (!id.isEmpty() && !id.matches("[A-Za-z0-9_-]{1,20}")) {
      problems.add(
          Problem.error(
              in.where("id"),
              "wrong-name",
              "An action's id is made of letters, digits, - and _.",
              "Shorten it."));
    }
    Action action = action(in, id, old);
    boolean drop = in.flag("drop", false);
    in.finish();
    if (drop) {
      actions.remove(id);
    } else if (!id.isEmpty()) {
      actions.put(id, action);
    }
  }

  private Action action(ObjectReading in, String id, Optional<Action> old) {
    OptionalDouble often = in.optionalNumber("perMinute", 0, MOST_TIMES_A_MINUTE);
    Optional<JsonValue> hold = in.optional("holdSeconds");
    boolean continuous =
        hold.isPresent()
            ? hold.get() instanceof JsonValue.Str word && word.value().equals("continuous")
            : old.map(Action::continuous).orElse(false);
    return new Action(
        id,
        in.optionalText("name").or(() -> old.map(Action::name)).orElse(id),
        often.isPresent() ? often : old.map(Action::perMinute).orElse(OptionalDouble.of(1)),
        texts(in, "style", old.map(Action::style).orElse(List.of("tap"))),
        hold.map(this::span).orElse(old.map(Action::holdSeconds).orElse(PRESS)),
        continuous,
        level(in, "urgency", old.map(Action::urgency).orElse(1)),
        level(in, "importance", old.map(Action::importance).orElse(2)),
        texts(in, "coPress", old.map(Action::pressedWith).orElse(List.of())),
        texts(in, "options", old.map(Action::options).orElse(List.of())),
        in.where());
  }

  private static List<String> texts(ObjectReading in, String name, List<String> otherwise) {
    List<String> found = in.optionalTexts(name);
    return in.optional(name).isPresent() ? found : otherwise;
  }

  private static int level(ObjectReading in, String name, int otherwise) {
    return in.optional(name).isPresent() ? in.whole(name, 0, 3) : otherwise;
  }

  private Approach.Span span(JsonValue value) {
    if (value instanceof JsonValue.Num number
        && number.value() >= 0
        && number.value() <= LONGEST_HOLD_SECONDS) {
      return new Approach.Span(number.value(), number.value(), "");
    }
    if (value instanceof JsonValue.Obj object) {
      return ApproachesReader.span(new ObjectReading(object, problems));
    }
    if (!(value instanceof JsonValue.Str word && word.value().equals("continuous"))) {
      ObjectReading.wrongType(
          value, "seconds from 0 to 60, an object with min and max, or \"continuous\"", problems);
    }
    return new Approach.Span(0, 0, "");
  }

  private void partners(Map<String, Action> actions) {
    for (Action action : actions.values()) {
      for (String other : action.pressedWith()) {
        if (other.equals(action.id())) {
          problems.add(
              Problem.error(
                  action.where(),
                  "unknown-value",
                  "\"" + action.id() + "\" cannot be pressed together with itself.",
                  "Remove it from \"coPress\"."));
        } else if (!actions.containsKey(other) && isWritten(action)) {
          problems.add(
              Problem.error(
                  action.where(),
                  "unknown-value",
                  "\"" + other + "\" is no action of this game.",
                  Hint.didYouMean(other, actions.keySet())));
        }
      }
    }
  }

  /** Whether the action stands in the answers file, not only in the bank. */
  private boolean isWritten(Action action) {
    return bank.games().stream()
        .flatMap(g -> g.actions().stream())
        .noneMatch(a -> a.where().equals(action.where()));
  }
}
