package closehand.screen.frame;

/**
 * What a cell is for; the theme decides how it looks.
 *
 * <p>Nothing may be told by a role alone: whoever sees only the characters must learn the same.
 */
public enum Role {
  /** Running text. */
  PLAIN('.'),
  /** Headings and words that carry a sentence. */
  STRONG('S'),
  /** The item the cursor stands on; it also carries the mark. */
  CHOSEN('C'),
  /** The mark before the chosen item and words such as "(chosen)". */
  MARK('M'),
  /** A warning; it also starts with a word. */
  WARNING('W'),
  /** Text that matters less; never dimmed. */
  QUIET('q'),
  /** The name of a key that works here. */
  KEY('K'),
  /** The line that is being typed. */
  FIELD('F'),
  /** Bars at the edges: title and status. */
  BAR('B');

  private final char letter;

  Role(char letter) {
    this.letter = letter;
  }

  /** One character for the role, unlike all others, for printing a frame's roles as text. */
  public char letter() {
    return letter;
  }
}
