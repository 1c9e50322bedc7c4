package closehand.report;

import closehand.bank.GameProfile;
import closehand.plan.PlanChanges;
import closehand.plan.Planning;
import closehand.plan.solve.Budget;
import java.util.ArrayList;
import java.util.List;

/**
 * Changing a plan by hand, a page and a choice at a time: why an action sits where it does, moving
 * it, keeping that as a wish or undoing it, and what a game asks. Both faces show these pages.
 * Immutable; every choice gives the next one.
 */
public final class ByHand {
  private final PlanBench bench;
  private final ByHandStep at;
  private final List<PlanChanges> past;
  private final ByHandPage page;
  private final boolean left;

  private ByHand(PlanBench bench, ByHandStep at, List<PlanChanges> past, boolean left) {
    this.bench = bench;
    this.at = at;
    this.past = List.copyOf(past);
    this.left = left;
    this.page = ByHandPages.of(bench, at, !past.isEmpty());
  }

  /**
   * Begins at the list of games.
   *
   * @param planning what plans are made with, before any change by hand
   * @param changes what was changed before
   * @param budget how hard plans are looked for
   */
  public static ByHand of(
      PageInput input, Planning planning, PlanChanges changes, Budget budget, Glyphs glyphs) {
    PlanBench bench = PlanBench.of(input, planning, changes, budget, glyphs);
    return new ByHand(bench, new ByHandStep.Start(), List.of(), /* left= */ false);
  }

  /** What is to be read and chosen now. */
  public ByHandPage page() {
    return page;
  }

  /** What is changed by hand now. */
  public PlanChanges changes() {
    return bench.changes();
  }

  /** Whether somebody went back from the first page. */
  public boolean left() {
    return left;
  }

  /** Whether something is worked out after this choice that takes its moment. */
  public boolean takesTime(int digit) {
    return page.choices().stream()
        .filter(c -> c.digit() == digit)
        .map(ByHandPage.Choice::move)
        .anyMatch(
            m ->
                m instanceof ByHandPage.Move.Change
                    || m instanceof ByHandPage.Move.Undo
                    || m instanceof ByHandPage.Move.To to && to.step() instanceof ByHandStep.Why);
  }

  /** After the choice with this digit; the same where there is none. */
  public ByHand take(int digit) {
    return page.choices().stream()
        .filter(c -> c.digit() == digit)
        .findFirst()
        .map(c -> after(c.move()))
        .orElse(this);
  }

  /** After a line was typed where one is asked for: a new action of that name. */
  public ByHand typed(String line) {
    String name = Clean.of(line, bench.glyphs()).strip();
    if (!(at instanceof ByHandStep.Name asked) || name.isEmpty() || name.length() > 40) {
      return this;
    }
    GameProfile.Action fresh = AskedAction.named(bench.actions(asked.slot()), name);
    PlanChanges next = bench.changes().with(asked.slot(), bench.changes(asked.slot()).with(fresh));
    return changed(next, new ByHandStep.Asked(asked.slot(), fresh.id()));
  }

  private ByHand after(ByHandPage.Move move) {
    if (move instanceof ByHandPage.Move.To to) {
      return new ByHand(bench, to.step(), past, /* left= */ false);
    }
    if (move instanceof ByHandPage.Move.Change change) {
      return changed(change.changes(), change.then());
    }
    if (move instanceof ByHandPage.Move.Undo undo) {
      return past.isEmpty()
          ? this
          : new ByHand(
              bench.changed(past.get(past.size() - 1)),
              undo.then(),
              past.subList(0, past.size() - 1),
              /* left= */ false);
    }
    return new ByHand(bench, at, past, /* left= */ true);
  }

  private ByHand changed(PlanChanges next, ByHandStep then) {
    List<PlanChanges> longer = new ArrayList<>(past);
    longer.add(bench.changes());
    return new ByHand(bench.changed(next), then, longer, /* left= */ false);
  }
}
