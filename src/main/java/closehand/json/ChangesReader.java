package closehand.json;

import closehand.bank.Approach;
import closehand.bank.GameProfile.Action;
import closehand.bank.Problem;
import closehand.plan.PlanAsk;
import closehand.plan.PlanChanges;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads what a player changed by hand out of the room of plans; anything else in it is passed over.
 */
public final class ChangesReader {
  private static final int MOST_GAMES = 20;
  private static final int MOST_TIMES_A_MINUTE = 600;
  private static final int RANKS = 3;
  private static final Approach.Span NO_HOLD = new Approach.Span(0, 0, "");

  private final List<Problem> problems;

  private ChangesReader(List<Problem> problems) {
    this.problems = problems;
  }

  /**
   * The changes as they were kept last; none where there are none, or where they cannot be read.
   *
   * @param problems receives whatever is wrong
   */
  public static PlanChanges read(List<JsonValue.Obj> plans, List<Problem> problems) {
    PlanChanges changes = PlanChanges.NONE;
    for (JsonValue.Obj plan : plans) {
      if (isChanges(plan)) {
        List<Problem> found = new ArrayList<>();
        PlanChanges read = new ChangesReader(found).changes(new ObjectReading(plan, found));
        changes = Problem.anyError(found) ? changes : read;
        problems.addAll(found);
      }
    }
    return changes;
  }

  /** Whether an object in the room of plans holds changes and no plan. */
  static boolean isChanges(JsonValue.Obj plan) {
    return plan.member("kind").orElse(null) instanceof JsonValue.Str kind
        && kind.value().equals(ChangesWriter.KIND);
  }

  private PlanChanges changes(ObjectReading in) {
    PlanChanges changes = PlanChanges.NONE;
    for (JsonValue value : in.list("games")) {
      Optional<ObjectReading> game = ObjectReading.of(value, problems);
      if (game.isPresent()) {
        int slot = game.get().whole("game", 0, MOST_GAMES) + 1;
        changes = changes.with(slot, game(game.get()));
      }
    }
    return changes;
  }

  private PlanChanges.OfGame game(ObjectReading in) {
    List<Action> actions = new ArrayList<>();
    Set<String> removed = new HashSet<>();
    for (JsonValue value : in.list("actions")) {
      ObjectReading.of(value, problems)
          .ifPresent(
              a -> {
                if (a.flag("drop", false)) {
                  removed.add(a.text("id"));
                } else {
                  actions.add(action(a));
                }
              });
    }
    List<PlanAsk.Wish> wishes = new ArrayList<>();
    for (JsonValue value : in.list("wishes")) {
      ObjectReading.of(value, problems)
          .ifPresent(w -> wishes.add(new PlanAsk.Wish(w.text("action"), w.text("input"))));
    }
    return new PlanChanges.OfGame(in.text("genre"), actions, removed, wishes);
  }

  private Action action(ObjectReading in) {
    OptionalDouble often = in.optionalNumber("perMinute", 0, MOST_TIMES_A_MINUTE);
    Optional<JsonValue> hold = in.optional("holdSeconds");
    return new Action(
        in.text("id"),
        in.text("name"),
        often,
        in.texts("style"),
        hold.orElse(null) instanceof JsonValue.Obj span
            ? ApproachesReader.span(new ObjectReading(span, problems))
            : NO_HOLD,
        hold.orElse(null) instanceof JsonValue.Str,
        in.whole("urgency", 0, RANKS),
        in.whole("importance", 0, RANKS),
        in.optionalTexts("coPress"),
        in.optionalTexts("options"),
        in.where());
  }
}
