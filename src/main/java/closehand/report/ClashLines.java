package closehand.report;

import closehand.bank.Effectors;
import closehand.plan.ControlPlan.LeftOut;
import closehand.plan.Planned;
import closehand.plan.explain.Demand;
import closehand.plan.explain.SmallestClash;
import closehand.plan.problem.PlacementRules;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Wishes;
import closehand.plan.solve.Budget;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The demands that cannot all be kept, as few as can be: of what somebody wished, where no plan
 * keeps it, or of what the game needs, where a plan has no place for some of it.
 */
public final class ClashLines {
  private static final int MUST = 3;

  /** Each demand is left out once; this much work tells nearly always. */
  private static final Budget EACH = Budget.ORDINARY.withNodes(400);

  private ClashLines() {}

  /** One paragraph and a list; nothing where all can be kept or nobody can tell. */
  static List<Piece> of(Planned planned) {
    List<String> demands = demands(planned);
    if (demands.isEmpty()) {
      return List.of();
    }
    List<Piece> pieces = new java.util.ArrayList<>();
    boolean wished = PlanLines.isImpossible(planned);
    pieces.add(
        Paragraph.of(
            demands.size() == 1
                ? "This alone cannot be kept:"
                : wished
                    ? "No plan keeps all that was wished. These cannot be kept together; without"
                        + " any one of them they can:"
                    : "These cannot be kept together; without any one of them they can:"));
    demands.forEach(d -> pieces.add(Paragraph.item(Phrases.sentence(d))));
    return pieces;
  }

  /** The same as clauses, such as for other programs. */
  public static List<String> demands(Planned planned) {
    PlanNames names = new PlanNames(planned);
    return clash(planned).stream().map(d -> words(names, planned, d)).toList();
  }

  private static List<Demand> clash(Planned planned) {
    if (PlanLines.isImpossible(planned)) {
      return SmallestClash.of(planned.problem(), EACH);
    }
    PlacementRules rules = new PlacementRules(planned.problem());
    boolean somewhere =
        planned.plan().leftOut().stream()
            .filter(l -> l.importance() == MUST)
            .filter(l -> planned.demand().action(l.id()).isPresent())
            .map(LeftOut::id)
            .anyMatch(a -> !rules.possible(a).isEmpty());
    return somewhere ? SmallestClash.of(needed(planned, rules), EACH) : List.of();
  }

  /** The problem in which nothing that the game needs may be left out, if it has a place at all. */
  private static PlanProblem needed(Planned planned, PlacementRules rules) {
    Set<String> musts = new HashSet<>();
    planned.demand().actions().stream()
        .filter(a -> a.importance() == MUST && !rules.possible(a.id()).isEmpty())
        .forEach(a -> musts.add(a.id()));
    Wishes w = planned.problem().wishes();
    return planned.problem().with(new Wishes(w.pins(), w.bans(), musts, w.habits()));
  }

  private static String words(PlanNames names, Planned planned, Demand demand) {
    if (demand instanceof Demand.Pinned pinned) {
      return names.action(pinned.action()) + " sits on " + wished(planned, pinned.action());
    } else if (demand instanceof Demand.MustBePlaced must) {
      return names.action(must.action()) + " has a place, since the game needs it";
    } else if (demand instanceof Demand.Together pair) {
      return names.action(pair.first())
          + " and "
          + names.action(pair.second())
          + " work at the same moment";
    } else if (demand instanceof Demand.LoadLimit limit) {
      return "your "
          + Effectors.words(limit.effector())
          + " stays below its red line of presses and holding in a minute, which only a clinician"
          + " may accept to cross";
    }
    return "no more separate parts are used than are allowed";
  }

  private static String wished(Planned planned, String action) {
    return planned.problem().wishes().pins().stream()
        .filter(p -> p.action().equals(action))
        .map(p -> p.slot().input())
        .flatMap(i -> planned.supply().input(i).stream())
        .map(i -> i.name() + " (" + Effectors.words(i.effector()) + "), as it was wished")
        .reduce((first, second) -> first + " and on " + second)
        .orElse("its wished place");
  }
}
