package closehand.report.practice;

import closehand.measure.practice.Chance;
import closehand.measure.practice.Findings;
import closehand.plan.MeasuredInputs;
import closehand.plan.Replanned;
import closehand.plan.explain.SingleChanges.SingleChange;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanPricer;
import closehand.plan.supply.Measured;
import closehand.plan.supply.Supply;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * A change that practice speaks for, and how sure that is.
 *
 * <p>Everything measured is drawn a hundred times within its error, and the change priced each
 * time. It counts as firm where it saves in every draw (our own line: a plan is not changed for
 * what may be chance).
 *
 * @param change what would move
 * @param saving points a minute it saves, in the middle
 * @param low a tenth of the draws save less
 * @param high a tenth save more
 * @param firm whether what was measured carries it
 */
public record Offered(SingleChange change, long saving, long low, long high, boolean firm) {
  private static final int DRAWS = 100;
  private static final int TENTH = DRAWS / 10;

  /**
   * The changes of a plan looked at again, judged with the same draws, the most saving first.
   * Changes that would cost more than they save by themselves are left out.
   */
  public static List<Offered> of(Replanned replanned, Findings findings, Supply supply, long seed) {
    List<SingleChange> changes = replanned.changes().stream().filter(c -> c.saving() > 0).toList();
    if (changes.isEmpty() || findings.inputs().isEmpty()) {
      return List.of();
    }
    long[][] savings = new long[changes.size()][DRAWS];
    Chance chance = new Chance(seed);
    for (int draw = 0; draw < DRAWS; draw++) {
      Map<String, Measured> measured =
          Measures.drawn(findings, supply, a -> a.value() + a.error() * chance.normal());
      PlanPricer pricer = new PlanPricer(MeasuredInputs.in(replanned.bare(), measured));
      long before = cost(pricer, replanned.before());
      for (int i = 0; i < changes.size(); i++) {
        savings[i][draw] = before - cost(pricer, changes.get(i).plan());
      }
    }
    List<Offered> offers = new ArrayList<>();
    for (int i = 0; i < changes.size(); i++) {
      long[] sorted = savings[i];
      Arrays.sort(sorted);
      offers.add(
          new Offered(
              changes.get(i),
              changes.get(i).saving(),
              sorted[TENTH],
              sorted[DRAWS - 1 - TENTH],
              sorted[0] > 0));
    }
    return offers;
  }

  private static long cost(PlanPricer pricer, Placements plan) {
    return pricer.price(plan).cost().total();
  }
}
