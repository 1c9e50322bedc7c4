package closehand.screen.frame;

/**
 * Where the terminal's own cursor stands, which screen readers and magnifiers follow.
 *
 * @param row counted from 0 at the top
 * @param column counted from 0 at the left
 */
public record Cursor(int row, int column) {}
