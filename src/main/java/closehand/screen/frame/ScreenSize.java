package closehand.screen.frame;

/**
 * How large the screen is, in character cells.
 *
 * @param columns cells in a row, at least 1
 * @param rows rows, at least 1
 */
public record ScreenSize(int columns, int rows) {
  /** The size taken where none can be learnt: 80 columns, 24 rows. */
  public static final ScreenSize USUAL = new ScreenSize(80, 24);

  /** Checks the bounds; a smaller number is a caller's bug. */
  public ScreenSize {
    if (columns < 1 || rows < 1) {
      throw new IllegalArgumentException("no screen has " + columns + " by " + rows + " cells");
    }
  }

  /** Whether a cell lies on this screen; rows and columns count from 0. */
  public boolean holds(int row, int column) {
    return row >= 0 && row < rows && column >= 0 && column < columns;
  }

  /** Every frame compares sizes, and what Java makes up for records is slow to be made up. */
  @Override
  public boolean equals(Object other) {
    return other instanceof ScreenSize size && size.columns == columns && size.rows == rows;
  }

  @Override
  public int hashCode() {
    return 31 * columns + rows;
  }

  @Override
  public String toString() {
    return columns + "x" + rows;
  }
}
