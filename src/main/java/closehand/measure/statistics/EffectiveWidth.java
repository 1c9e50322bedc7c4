package closehand.measure.statistics;

/**
 * The width that a target would have had so that 96 % of these selections hit it (ISO 9241-411;
 * Soukoreff and MacKenzie 2004): what was done, not what was asked.
 */
public final class EffectiveWidth {
  /** sqrt(2 pi e), by which the same authors go from a standard deviation to a width. */
  public static final double PER_DEVIATION = 4.133;

  /**
   * Selections that spread less than this many of the smallest steps a pointer is told in cannot be
   * told from rounding (our own threshold).
   */
  public static final double FINEST_STEPS = 0.3;

  private EffectiveWidth() {}

  /**
   * From where the selections fell along the way to the target.
   *
   * @param along how far each fell before (below 0) or behind (above 0) the middle; at least two
   * @return in the unit of the selections; 0 where all fell on one spot
   */
  public static double of(Sample along) {
    return PER_DEVIATION * along.deviation();
  }

  /**
   * Whether the pointer is told too coarsely for these selections. Rounding to steps adds a twelfth
   * of a step squared to the variance.
   *
   * @param along as above
   * @param step the smallest step in the same unit, such as 1 cell
   */
  public static boolean isTooFine(Sample along, double step) {
    return along.deviation() < FINEST_STEPS * step;
  }
}
