package closehand.screen.view;

import java.util.List;

/**
 * What a screen says, before anybody knows how large it is.
 *
 * @param heading where this is, in words; stays at the top where there is room
 * @param blocks the body, from top to bottom
 * @param aside what may stand beside the body where the screen is wide, or nothing
 * @param status sentences at the foot, the most important first
 * @param keys keys that work here, the most important first; help is always the first
 * @param roomy whether lines are set wide apart, for reading along on a call
 */
public record Content(
    String heading,
    List<Block> blocks,
    List<Block> aside,
    List<String> status,
    List<Hint> keys,
    boolean roomy) {
  /** Copies the lists. */
  public Content {
    blocks = List.copyOf(blocks);
    aside = List.copyOf(aside);
    status = List.copyOf(status);
    keys = List.copyOf(keys);
  }

  /**
   * A key and what it does here, in a word or two.
   *
   * @param always whether it is named however little room there is
   */
  public record Hint(String key, String does, boolean always) {
    /** A key that is named where there is room. */
    public Hint(String key, String does) {
      this(key, does, false);
    }
  }

  /** How many things one can stand on. */
  public int stops() {
    return (int) blocks.stream().filter(Block::isStop).count();
  }
}
