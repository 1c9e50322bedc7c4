package closehand.rules;

/**
 * One answer that, had it been different and all others the same, would change how an approach
 * stands.
 *
 * @param fact the fact id
 * @param to what the answer would have to be
 * @param status how the approach would stand then
 */
public record Change(String fact, To to, Standing.Status status) {

  /** A different answer. */
  public sealed interface To {
    /** Yes or no. */
    record Flag(boolean value) implements To {}

    /**
     * Any allowed number in this range.
     *
     * @param least smallest, itself allowed, in the unit of the question
     * @param greatest largest, itself allowed
     */
    record Between(double least, double greatest) implements To {}

    /** This option instead. */
    record Option(String code) implements To {}

    /**
     * So many picks, whichever they are.
     *
     * @param least fewest
     * @param greatest most
     */
    record Counted(int least, int greatest) implements To {}

    /** The same picks, but with this option picked as well, or not. */
    record Picked(String code, boolean picked) implements To {}
  }
}
