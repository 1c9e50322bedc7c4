package closehand.plan.supply;

import closehand.bank.Approach;
import closehand.bank.PlanFigures;
import closehand.plan.KnownFacts;
import java.util.List;

/** What setting an approach up and paying for it costs this player, in points. */
final class Burden {
  private static final List<String> CLASSES = List.of("0", "B", "C", "D", "E");

  private final PlanFigures.Parts figures;
  private final KnownFacts facts;

  Burden(PlanFigures.Parts figures, KnownFacts facts) {
    this.figures = figures;
    this.facts = facts;
  }

  /**
   * The points for using it at all.
   *
   * @param behind points of the rules between it and the leading approach
   */
  int of(Approach approach, int behind) {
    return own(approach) + Math.max(0, behind) * figures.pointsPerRulePoint();
  }

  private int own(Approach approach) {
    Approach.Span minutes = approach.setupMinutes();
    double points = figures.pointsPerSetupMinute() * (minutes.minimum() + minutes.maximum()) / 2;
    String cheapest = approach.costClasses().isEmpty() ? "0" : approach.costClasses().get(0);
    if (owned(approach.id())) {
      return (int) Math.round(figures.ownedTimes() * points);
    }
    points += figures.costPoints().getOrDefault(cheapest, 0);
    boolean loan = facts.flag("loan").orElse(false);
    double budget = facts.number("budget").orElse(CLASSES.size());
    if (!loan && CLASSES.indexOf(cheapest) > budget) {
      points += figures.overBudgetPoints();
    }
    double most = facts.number("setup.maxMin").orElse(minutes.minimum());
    if (minutes.minimum() > most) {
      points += figures.overTimePoints();
    }
    return (int) Math.round(points);
  }

  private boolean owned(String approach) {
    return facts.codes("equip.now").orElse(List.of()).stream()
        .anyMatch(kit -> figures.owned().getOrDefault(kit, List.of()).contains(approach));
  }
}
