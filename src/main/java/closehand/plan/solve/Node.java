package closehand.plan.solve;

/**
 * A part of the search that is still open: what its parent allowed, and one choice more.
 *
 * @param space what the parent allowed; not changed any more
 * @param prices the prices of the parent; not changed any more
 * @param action the action decided on, or -1 at the beginning of a regime
 * @param choice what was decided
 * @param bound no plan in this part costs less, in 1/1024 point
 * @param depth how many choices deep
 * @param visits how often the beginning of a regime was worked on already
 * @param number the order in which nodes came about
 */
record Node(
    Space space,
    Multipliers prices,
    int action,
    Choice choice,
    long bound,
    int depth,
    int visits,
    long number)
    implements Comparable<Node> {

  /** Lowest bound first, of equal ones the deepest, then the oldest. */
  @Override
  public int compareTo(Node other) {
    int byBound = Long.compare(bound, other.bound);
    int byDepth = byBound != 0 ? byBound : Integer.compare(other.depth, depth);
    return byDepth != 0 ? byDepth : Long.compare(number, other.number);
  }

  /** What this node allows, to be changed freely. */
  Space open() {
    Space own = space.copy();
    if (action >= 0) {
      own.keep(action, choice);
    }
    return own;
  }
}
