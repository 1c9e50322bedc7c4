package closehand.screen.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * One whole picture of the screen: cells with roles, and the cursor.
 *
 * @param size how large it is
 * @param rows its rows from the top, each exactly as wide as the size says
 * @param cursor on the chosen item or where text is being typed; always on the screen
 */
public record Frame(ScreenSize size, List<List<Cell>> rows, Cursor cursor) {
  /** Copies the rows; a row too many or too short, or a cursor outside, is a caller's bug. */
  public Frame {
    List<List<Cell>> copies = new ArrayList<>(rows.size());
    boolean fills = rows.size() == size.rows();
    for (List<Cell> row : rows) {
      fills &= row.size() == size.columns();
      copies.add(List.copyOf(row));
    }
    if (!fills) {
      throw new IllegalArgumentException("the rows do not fill a screen of " + size);
    }
    rows = List.copyOf(copies);
    if (!size.holds(cursor.row(), cursor.column())) {
      throw new IllegalArgumentException("the cursor stands outside a screen of " + size);
    }
  }

  /** One cell; rows and columns count from 0. */
  public Cell cell(int row, int column) {
    return rows.get(row).get(column);
  }

  /** The rows as text, without the blanks at their ends. */
  public List<String> text() {
    return rows.stream().map(Frame::text).toList();
  }

  private static String text(List<Cell> row) {
    StringBuilder text = new StringBuilder();
    row.forEach(c -> text.append(c.text()));
    return text.toString().stripTrailing();
  }

  /** The roles as text: a letter a cell, a blank where a plain cell is empty. */
  public List<String> roles() {
    return rows.stream().map(Frame::roles).toList();
  }

  private static String roles(List<Cell> row) {
    StringBuilder letters = new StringBuilder();
    row.forEach(c -> letters.append(c.equals(Cell.BLANK) ? ' ' : c.role().letter()));
    return letters.toString().stripTrailing();
  }
}
