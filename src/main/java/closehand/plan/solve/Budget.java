package closehand.plan.solve;

import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/**
 * How hard to look.
 *
 * @param nodes the most parts of the search that are opened; the same number gives the same answer
 *     on every machine
 * @param tolerancePerTenThousand a plan this near to the bound is good enough; 0 asks for the best
 * @param cutoffPoints only plans that cost at most this are of interest, if given
 * @param stop asked often; once it says yes the best plan so far is given back
 */
public record Budget(
    long nodes, int tolerancePerTenThousand, OptionalLong cutoffPoints, BooleanSupplier stop) {

  /** As many nodes as an ordinary plan ever needs; never stopped from outside. */
  public static final Budget ORDINARY = new Budget(20_000, 0, OptionalLong.empty(), () -> false);

  /** The same, stopped when this says so. */
  public Budget stoppedBy(BooleanSupplier other) {
    return new Budget(nodes, tolerancePerTenThousand, cutoffPoints, other);
  }

  /** The same with another number of nodes. */
  public Budget withNodes(long most) {
    return new Budget(most, tolerancePerTenThousand, cutoffPoints, stop);
  }

  /** The same, content with a plan this near to the bound. */
  public Budget withTolerance(int perTenThousand) {
    return new Budget(nodes, perTenThousand, cutoffPoints, stop);
  }

  /** The same, for plans that cost at most this. */
  public Budget withCutoff(long points) {
    return new Budget(nodes, tolerancePerTenThousand, OptionalLong.of(points), stop);
  }
}
