package closehand.bank;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A family of controls, such as the side-button mouse, with what it offers and asks of a body.
 *
 * @param id such as {@code MOUSE_SIDE_L}
 * @param words its texts
 * @param inputs the single inputs it offers
 * @param forceNewtons force to work it
 * @param travelMillimetres how far its parts move
 * @param steadinessMillimetres the largest sway it bears, where one is known
 * @param latencyMilliseconds from press to effect
 * @param setupMinutes time to set up
 * @param costClasses classes of cost, cheapest first
 * @param needsMount whether something must be fixed in place
 * @param clinicianFirst whether it is tried with a clinician's yes and help only
 * @param sides {@code L}, {@code R}, {@code both} or {@code none}
 * @param family the wider family
 * @param basis where the figures come from
 * @param where where it stands in the bank
 */
public record Approach(
    String id,
    Words words,
    List<Input> inputs,
    Span forceNewtons,
    Span travelMillimetres,
    OptionalDouble steadinessMillimetres,
    Span latencyMilliseconds,
    Span setupMinutes,
    List<String> costClasses,
    boolean needsMount,
    boolean clinicianFirst,
    String sides,
    String family,
    List<String> basis,
    Where where) {
  public Approach {
    inputs = List.copyOf(inputs);
    costClasses = List.copyOf(costClasses);
    basis = List.copyOf(basis);
  }

  /** The texts of an approach. */
  public record Words(
      String name,
      String brief,
      String summary,
      String offers,
      String effectors,
      String reach,
      String steadiness,
      String goodAt,
      String badAt,
      String strain,
      String contraIndications,
      String mounting,
      String borrow,
      String firstTry) {}

  /**
   * A range of a quantity.
   *
   * @param minimum smallest, 0 where none applies
   * @param maximum largest
   * @param text the range in words, or empty
   */
  public record Span(double minimum, double maximum, String text) {}

  /**
   * One thing that can be pressed, moved or said.
   *
   * @param id unique inside its approach
   * @param kind what it is: button, cell, wheel, key, switch, phrase ...
   * @param name plain words
   * @param effectors body parts that can work it
   * @param does what it can carry: tap, hold, repeat, axis1, axis2
   * @param effort factor on effort, 1 for neutral
   * @param usage USB HID usage as page:usage in hexadecimal, or empty
   */
  public record Input(
      String id,
      String kind,
      String name,
      List<String> effectors,
      List<String> does,
      double effort,
      String usage,
      Where where) {
    public Input {
      effectors = List.copyOf(effectors);
      does = List.copyOf(does);
    }
  }

  /** A class of cost and its words. */
  public record CostClass(String code, String text) {}

  /** Approaches that often work together. */
  public record Mix(List<String> approaches, String text) {
    public Mix {
      approaches = List.copyOf(approaches);
    }
  }
}
