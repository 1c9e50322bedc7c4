package closehand.measure.statistics;

/**
 * One selection of a target: from where the pointer came, where the target's middle was, what was
 * selected and how long it took. All lengths in one unit.
 *
 * @param seconds from the earlier selection to this one, above 0
 */
public record Selection(Point from, Point to, Point at, double seconds) {
  /**
   * A spot.
   *
   * @param x to the right
   * @param y downwards
   */
  public record Point(double x, double y) {
    double to(Point other) {
      return Math.hypot(x - other.x, y - other.y);
    }
  }

  /** Refuses a time that is not above 0 and a way of no length. */
  public Selection {
    if (!(seconds > 0) || !(from.to(to) > 0)) {
      throw new IllegalArgumentException("a selection takes time and goes somewhere");
    }
  }

  /** A selection along one line, such as a row of cells. */
  public static Selection onLine(double from, double to, double at, double seconds) {
    return new Selection(new Point(from, 0), new Point(to, 0), new Point(at, 0), seconds);
  }

  /** How far the target was. */
  public double distance() {
    return from.to(to);
  }

  /** How far the selection was from the target's middle, in any direction. */
  public double off() {
    return at.to(to);
  }

  /** How far the pointer went. */
  public double moved() {
    return at.to(from);
  }

  /**
   * How far behind (above 0) or before (below 0) the target's middle it fell along the way there:
   * (C^2 - B^2 - A^2) / 2A, with A the way to the middle, B from there to the selection, C from the
   * start to the selection (Soukoreff and MacKenzie 2004).
   */
  public double along() {
    double a = distance();
    return (moved() * moved() - off() * off() - a * a) / (2 * a);
  }
}
