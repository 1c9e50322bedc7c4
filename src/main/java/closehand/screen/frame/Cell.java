package closehand.screen.frame;

/**
 * One cell of a frame.
 *
 * @param text what stands in it: one character with its marks, or nothing where the wide character
 *     to the left reaches in
 * @param role what it is for
 */
public record Cell(String text, Role role) {
  /** A cell with nothing in it. */
  public static final Cell BLANK = new Cell(" ", Role.PLAIN);

  /** Whether it looks the same; quicker than what Java makes up for records. */
  public boolean looksLike(Cell other) {
    return this == other || (role == other.role && text.equals(other.text));
  }
}
