package closehand.rules;

import closehand.bank.FactType;
import closehand.interview.Answers;
import closehand.interview.Provenance;
import closehand.interview.Value;

/**
 * How far an answer may be off, by the way it is known. The widths are estimates from practice
 * without a published source: a number told may be off by a quarter, one seen by an eighth, one
 * measured by a twentieth, and never by less than the least step; a place on a scale that was only
 * told may be off by one. Yes or no, and answers without an order, are taken as given.
 */
final class Uncertainty {
  private static final double TOLD = 0.25;
  private static final double SEEN = 0.125;
  private static final double MEASURED = 0.05;

  private Uncertainty() {}

  /** Whether another answer lies within what is uncertain about the one given. */
  static boolean covers(Answers.Recorded recorded, FactType type, Alternative other) {
    Provenance.How how = recorded.provenance().how();
    if (type instanceof FactType.Amount amount
        && other.to() instanceof Change.To.Between to
        && recorded.answer().given().orElse(null) instanceof Value.Number given) {
      double step = 1 / Math.pow(10, amount.decimals());
      double width = Math.max(step, Math.abs(given.value()) * share(how));
      return gap(to, given.value()) <= width + 1e-9;
    }
    boolean ordered = type instanceof FactType.OneOf one && FactTable.isScale(one);
    return ordered && how == Provenance.How.TOLD && Math.abs(other.offset()) == 1;
  }

  private static double share(Provenance.How how) {
    return switch (how) {
      case TOLD -> TOLD;
      case SEEN -> SEEN;
      case MEASURED -> MEASURED;
    };
  }

  /** How far a number is from a range; 0 inside it. */
  static double gap(Change.To.Between range, double number) {
    return Math.max(0, Math.max(range.least() - number, number - range.greatest()));
  }
}
