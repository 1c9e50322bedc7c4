package closehand.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows of columns, each cell broken into lines inside its column.
 *
 * @param widths columns of text in each column of the table, without the gap between
 * @param rows the rows, each with as many cells as there are widths
 */
record Table(List<Integer> widths, List<List<String>> rows) implements Piece {
  private static final String GAP = "  ";

  Table {
    widths = List.copyOf(widths);
    rows = List.copyOf(rows);
  }

  @Override
  public List<String> lines(Glyphs glyphs) {
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      List<List<String>> cells = new ArrayList<>();
      int height = 1;
      for (int i = 0; i < widths.size(); i++) {
        List<String> cell = Wrapped.lines(widths.get(i), Clean.of(row.get(i), glyphs));
        cells.add(cell);
        height = Math.max(height, cell.size());
      }
      for (int line = 0; line < height; line++) {
        lines.add(line(cells, line));
      }
    }
    return lines;
  }

  private String line(List<List<String>> cells, int line) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      String cell = line < cells.get(i).size() ? cells.get(i).get(line) : "";
      text.append(i == 0 ? "" : GAP).append(Wrapped.padded(cell, widths.get(i)));
    }
    return text.toString().stripTrailing();
  }
}
