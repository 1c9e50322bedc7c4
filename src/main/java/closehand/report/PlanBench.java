package closehand.report;

import closehand.bank.GameProfile;
import closehand.bank.GameProfile.Action;
import closehand.interview.Value;
import closehand.plan.PlanAsk;
import closehand.plan.PlanChanges;
import closehand.plan.Planned;
import closehand.plan.Planning;
import closehand.plan.solve.Budget;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The plans of one player while they are changed by hand, with what they are made from.
 *
 * @param input what pages are made from
 * @param planning what plans are made with, before any change by hand
 * @param changes what is changed by hand
 * @param plans the plans with these changes, by slot from 1
 * @param budget how hard plans are looked for
 * @param glyphs which characters can be shown
 */
record PlanBench(
    PageInput input,
    Planning planning,
    PlanChanges changes,
    Map<Integer, Planned> plans,
    Budget budget,
    Glyphs glyphs) {
  PlanBench {
    plans = Collections.unmodifiableMap(new TreeMap<>(plans));
  }

  /** With the plans worked out, which takes its moment. */
  static PlanBench of(
      PageInput input, Planning planning, PlanChanges changes, Budget budget, Glyphs glyphs) {
    Map<Integer, Planned> plans = planning.changing(changes).session(PlanAsk.USUAL, () -> budget);
    return new PlanBench(input, planning, changes, plans, budget, glyphs);
  }

  /** The same with other changes, its plans worked out anew. */
  PlanBench changed(PlanChanges next) {
    return next.equals(changes) ? this : of(input, planning, next, budget, glyphs);
  }

  Planned plan(int slot) {
    Planned planned = plans.get(slot);
    if (planned == null) {
      throw new IllegalArgumentException("no plan in slot " + slot);
    }
    return planned;
  }

  /** The game as it was before any change by hand. */
  GameProfile told(int slot) {
    return planning.told(slot).orElseThrow(() -> new IllegalArgumentException("no game " + slot));
  }

  /** The actions of the game as the player has them, also by what the answers say must work. */
  List<Action> actions(int slot) {
    GameProfile told = told(slot);
    PlanChanges.OfGame changed = changes.of(slot, told.genre());
    return changed.in(told).actions().stream()
        .map(
            a ->
                changed.action(a.id()).isEmpty() && isNamed(slot, "must", a.id())
                    ? AskedAction.mustHave(a)
                    : a)
        .toList();
  }

  /** Whether the answers name an action in a list of the game: {@code must} or {@code drop}. */
  boolean isNamed(int slot, String list, String action) {
    return input
        .answers()
        .value("games." + slot + "." + list)
        .filter(v -> v instanceof Value.Texts t && t.words().contains(action))
        .isPresent();
  }

  PlanChanges.OfGame changes(int slot) {
    return changes.of(slot, told(slot).genre());
  }
}
