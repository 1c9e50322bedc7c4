package closehand.screen.frame;

import closehand.report.Clean;
import closehand.report.Glyphs;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A frame in the making: text is put down piece by piece, what does not fit is cut off.
 *
 * <p>All text is cleaned here, so that nothing that steers a terminal can reach a frame.
 */
public final class Canvas {
  private final ScreenSize size;
  private final Glyphs glyphs;
  private final List<List<Cell>> rows;
  private Cursor cursor = new Cursor(0, 0);

  /** A blank screen with the cursor at the top left. */
  public Canvas(ScreenSize size, Glyphs glyphs) {
    this.size = size;
    this.glyphs = glyphs;
    this.rows = new ArrayList<>();
    for (int row = 0; row < size.rows(); row++) {
      rows.add(new ArrayList<>(Collections.nCopies(size.columns(), Cell.BLANK)));
    }
  }

  /**
   * Puts text on a row, over what stood there.
   *
   * @param row counted from 0; a row outside the screen shows nothing
   * @param column counted from 0; what stands left of 0 or right of the edge is cut off
   * @return the column after the text, whether or not it was on the screen
   */
  public int put(int row, int column, String text, Role role) {
    int at = column;
    for (String cluster : CellText.clusters(Clean.of(text, glyphs))) {
      int width = CellText.width(cluster);
      if (size.holds(row, at) && size.holds(row, at + width - 1)) {
        set(row, at, new Cell(cluster, role));
        if (width == 2) {
          rows.get(row).set(at + 1, new Cell("", role));
        }
      }
      at += width;
    }
    return at;
  }

  private void set(int row, int column, Cell cell) {
    List<Cell> cells = rows.get(row);
    boolean splitsWide = cells.get(column).text().isEmpty() && column > 0;
    if (splitsWide) {
      cells.set(column - 1, Cell.BLANK);
    }
    int after = column + CellText.width(cell.text());
    if (after < cells.size() && cells.get(after).text().isEmpty()) {
      cells.set(after, Cell.BLANK);
    }
    cells.set(column, cell);
  }

  /** Gives a whole row one role, keeping its text; a row outside the screen is left alone. */
  public void paint(int row, Role role) {
    if (size.holds(row, 0)) {
      rows.get(row).replaceAll(c -> new Cell(c.text(), role));
    }
  }

  /** Puts the cursor on a cell, or on the nearest one there is. */
  public void cursor(int row, int column) {
    cursor =
        new Cursor(
            Math.max(0, Math.min(size.rows() - 1, row)),
            Math.max(0, Math.min(size.columns() - 1, column)));
  }

  /** The frame as it stands. */
  public Frame frame() {
    return new Frame(size, rows, cursor);
  }
}
