package closehand.plan.supply;

import closehand.bank.PlanFigures;
import closehand.bank.Rule;
import closehand.rules.Finding;
import closehand.rules.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * How hard an input is for a body: the product of the factors of all rules that fire for its
 * effector and kinds of use, and the input's own factor.
 */
public final class Factors {
  private record Entry(Rule.Effort effort, String rule) {}

  private final PlanFigures.Effort figures;
  private final List<Entry> entries = new ArrayList<>();

  /** The factors of the rules that fire. */
  public Factors(PlanFigures figures, List<Finding> findings) {
    this.figures = figures.effort();
    for (Finding finding : findings) {
      if (finding.outcome() == Outcome.TRUE) {
        for (Rule.Effort effort : finding.rule().effects().effort()) {
          entries.add(new Entry(effort, finding.rule().key()));
        }
      }
    }
  }

  /**
   * A product of factors.
   *
   * @param value held between the bank's least and most
   * @param rules keys of the rules that made it, in rule order
   */
  public record Factor(double value, List<String> rules) {
    public Factor {
      rules = List.copyOf(rules);
    }
  }

  /**
   * The factor for one effector and these kinds of use.
   *
   * @param own the input's own factor
   * @param firm whether what is known of the effector was seen or measured
   */
  public Factor of(String effector, Set<String> uses, double own, boolean firm) {
    String part = effector.substring(effector.indexOf('.') + 1);
    double product =
        own
            * figures.effectorTimes().getOrDefault(part, 1.0)
            * (firm ? 1 : figures.uncertainTimes());
    List<String> rules = new ArrayList<>();
    for (Entry entry : entries) {
      List<String> inputs = entry.effort().inputs();
      boolean fits =
          inputs.isEmpty() || inputs.contains("any") || inputs.stream().anyMatch(uses::contains);
      if (fits && entry.effort().effectors().contains(effector)) {
        product *= entry.effort().factor();
        rules.add(entry.rule());
      }
    }
    double held = Math.max(figures.leastFactor(), Math.min(figures.mostFactor(), product));
    return new Factor(held, rules);
  }
}
