package closehand.plan.problem;

/** How far two places are from what a convention wishes. */
final class Steps {
  private static final int MOST = 4;

  private Steps() {}

  /**
   * Steps from 0 to 4. Another device or layer is 4 steps from any wish, except from the wish to be
   * apart.
   *
   * @param right how far the second place lies to the right of the first
   * @param down how far the second place lies below the first
   */
  static int between(Convention.Kind kind, boolean together, int right, int down) {
    int distance = Math.max(Math.abs(right), Math.abs(down));
    if (kind == Convention.Kind.APART) {
      return together && distance <= 1 ? MOST : 0;
    }
    if (!together) {
      return MOST;
    }
    return Math.min(
        MOST,
        switch (kind) {
          case NEAR, APART -> Math.max(0, distance - 1);
          case ABOVE -> Math.max(0, distance - 2) + 2 * wrong(down) + off(right);
          case LEFT -> Math.max(0, distance - 2) + 2 * wrong(right) + off(down);
        });
  }

  private static int wrong(int forward) {
    return forward > 0 ? 0 : 1;
  }

  private static int off(int aside) {
    return Math.abs(aside) > 1 ? 1 : 0;
  }
}
