package closehand.measure.statistics;

import java.util.Optional;

/**
 * What few tries with two set-ups allow to be said about which is better, by one measure.
 *
 * <p>The steps are our own rule over published arithmetic ({@link Wobble}, {@link Permutation}):
 * first enough tries, then more than wobble, then more than chance. It speaks of set-ups and never
 * of the person.
 */
public sealed interface Verdict {
  /** Below four tries each, dealing them out anew can never fall under one in twenty. */
  int FEWEST_TRIES = 4;

  /** Which of the two. */
  enum Side {
    FIRST,
    SECOND
  }

  /** In which direction the measure gets better. */
  enum Good {
    MORE,
    LESS
  }

  /** In which order the two were tried. */
  enum Order {
    /** Turn by turn in some way. */
    MIXED,
    /** All tries with the first came before all with the second. */
    FIRST_BEFORE_SECOND,
    /** All tries with the second came before all with the first. */
    SECOND_BEFORE_FIRST
  }

  /**
   * Too few tries.
   *
   * @param firstMissing how many more are needed with the first
   * @param secondMissing how many more are needed with the second
   */
  record TooFew(int firstMissing, int secondMissing) implements Verdict {}

  /** The difference is within what this person's tries differ by anyway. */
  record WithinWobble(Difference difference) implements Verdict {}

  /** More than wobble, yet chance could have done it. */
  record LooksBetter(Side side, Difference difference, boolean mayBePractice) implements Verdict {}

  /** More than wobble, and chance would seldom do it. */
  record Better(Side side, Difference difference, boolean mayBePractice) implements Verdict {}

  /**
   * The figures behind it.
   *
   * @param first mean of the tries with the first
   * @param second mean of the tries with the second
   * @param wobble how far the means must part to stand out from wobble
   * @param chance how often chance alone parts them so far
   * @param ranks the same by ranks alone, so that one odd try weighs no more than another
   * @param overlap pairs of tries; made so that more is better
   */
  record Difference(
      double first, double second, double wobble, Chance chance, Ranks ranks, Overlap overlap) {
    /** How far the means are apart, 0 or more. */
    public double size() {
      return Math.abs(second - first);
    }
  }

  /** The figures; none where there are too few tries. */
  default Optional<Difference> figures() {
    if (this instanceof WithinWobble within) {
      return Optional.of(within.difference());
    }
    if (this instanceof LooksBetter looks) {
      return Optional.of(looks.difference());
    }
    return this instanceof Better better ? Optional.of(better.difference()) : Optional.empty();
  }

  /** Whether practice could have made the difference. */
  default boolean mayBePractice() {
    return false;
  }

  /** Which set-up did better by more than wobble, if one did. */
  default Optional<Side> ahead() {
    if (this instanceof LooksBetter looks) {
      return Optional.of(looks.side());
    }
    return this instanceof Better better ? Optional.of(better.side()) : Optional.empty();
  }

  /**
   * Weighs two rows of tries, each in the order they were made.
   *
   * @param good whether more or less is better
   * @param order how they were taken in turn
   */
  static Verdict of(Sample first, Sample second, Good good, Order order) {
    if (first.size() < FEWEST_TRIES || second.size() < FEWEST_TRIES) {
      return new TooFew(
          Math.max(0, FEWEST_TRIES - first.size()), Math.max(0, FEWEST_TRIES - second.size()));
    }
    Sample a = good == Good.MORE ? first : first.negated();
    Sample b = good == Good.MORE ? second : second.negated();
    double wobble = Wobble.ofRepeats(a, b).smallestChange(a.size(), b.size());
    Difference difference =
        new Difference(
            first.mean(),
            second.mean(),
            wobble,
            Permutation.means(a, b),
            Ranks.of(a, b),
            Overlap.of(a, b));
    if (difference.size() == 0 || difference.size() < wobble) {
      return new WithinWobble(difference);
    }
    Side side = b.mean() > a.mean() ? Side.SECOND : Side.FIRST;
    boolean practice = mayBePractice(a, b, side, order);
    return difference.chance().isSmall()
        ? new Better(side, difference, practice)
        : new LooksBetter(side, difference, practice);
  }

  /** The one tried later is ahead, and the earlier one was still gaining. */
  private static boolean mayBePractice(Sample a, Sample b, Side ahead, Order order) {
    return switch (order) {
      case MIXED -> false;
      case FIRST_BEFORE_SECOND -> ahead == Side.SECOND && Kendall.trend(a) > 0;
      case SECOND_BEFORE_FIRST -> ahead == Side.FIRST && Kendall.trend(b) > 0;
    };
  }
}
