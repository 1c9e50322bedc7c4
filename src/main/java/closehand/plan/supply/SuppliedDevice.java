package closehand.plan.supply;

import java.util.Set;

/**
 * Something that is set up as one.
 *
 * @param id the approach, and a side after {@code @} where both sides are possible
 * @param approach the approach
 * @param name plain words
 * @param setUpPoints what setting it up and paying for it costs
 * @param halfParts how many halves of a part it counts for: switches share one box, software is
 *     none
 * @param handsBusy hands that can hold nothing else: {@code L}, {@code R}
 * @param digitsBusy hands whose fingers rest on it, so that they hold nothing else but light
 *     switches
 */
public record SuppliedDevice(
    String id,
    String approach,
    String name,
    int setUpPoints,
    int halfParts,
    Set<String> handsBusy,
    Set<String> digitsBusy) {
  private static final int WHOLE = 2;

  public SuppliedDevice {
    handsBusy = Set.copyOf(handsBusy);
    digitsBusy = Set.copyOf(digitsBusy);
  }

  /**
   * Whether both cannot be used together: they need the same hand, or they are the same thing for
   * either hand.
   */
  public boolean clashes(SuppliedDevice other) {
    boolean twice = approach.equals(other.approach) && !handsBusy.isEmpty() && halfParts == WHOLE;
    return twice
        || meet(handsBusy, other.handsBusy)
        || meet(handsBusy, other.digitsBusy)
        || meet(digitsBusy, other.handsBusy);
  }

  private static boolean meet(Set<String> one, Set<String> other) {
    return one.stream().anyMatch(other::contains);
  }
}
