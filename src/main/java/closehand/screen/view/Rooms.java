package closehand.screen.view;

import closehand.report.Clean;
import closehand.report.Glyphs;
import closehand.report.Wrap;
import closehand.screen.frame.CellText;
import closehand.screen.frame.ScreenSize;
import java.util.ArrayList;
import java.util.List;

/**
 * How a screen of one size is shared out: heading, body, text beside it, status, keys.
 *
 * @param left the first column of everything
 * @param columns the width of the body
 * @param heading whether the heading keeps a row of its own at the top; otherwise it leads the body
 * @param top the first row of the body
 * @param rows how many rows the body has
 * @param asideLeft the first column of the text beside the body; 0 when there is none
 * @param asideColumns its width
 * @param status the lines of the status, above the keys
 * @param keys how many rows at the foot name keys
 */
record Rooms(
    int left,
    int columns,
    boolean heading,
    int top,
    int rows,
    int asideLeft,
    int asideColumns,
    List<String> status,
    int keys) {
  /** Longest line of text in columns; WCAG 2.2 criterion 1.4.8 allows 80. */
  static final int WIDEST = 76;

  private static final int BESIDE_FROM = 112;
  private static final int BESIDE_WIDEST = 48;
  private static final int BESIDE_GAP = 4;
  private static final int MIDDLE = 8;
  private static final int STATUS_FROM = 10;
  private static final int TALL = 16;
  private static final int NARROW = 24;

  static Rooms of(Content content, ScreenSize size, Glyphs glyphs) {
    int left = size.columns() >= NARROW ? 1 : 0;
    int columns = Math.min(WIDEST, size.columns() - 2 * left);
    boolean tall = size.rows() >= TALL;
    String heading = Clean.of(content.heading(), glyphs);
    boolean bar = size.rows() >= MIDDLE && CellText.width(heading) <= columns;
    int keys = KeyRows.count(content.keys(), size.columns() - 2 * left, size.rows());
    List<String> status = status(content, columns, size.rows(), glyphs);
    int top = (bar ? 1 : 0) + (bar && tall ? 1 : 0);
    int foot = keys + status.size() + (tall ? 1 : 0);
    boolean beside =
        size.columns() >= BESIDE_FROM && tall && !content.aside().isEmpty() && !content.roomy();
    int asideLeft = beside ? left + columns + BESIDE_GAP : 0;
    int asideColumns = beside ? Math.min(BESIDE_WIDEST, size.columns() - asideLeft - 1) : 0;
    return new Rooms(
        left,
        columns,
        bar,
        top,
        Math.max(1, size.rows() - top - foot),
        asideLeft,
        asideColumns,
        status,
        keys);
  }

  /** Whole sentences of the status, as many as there is room for. */
  private static List<String> status(Content content, int columns, int rows, Glyphs glyphs) {
    int most = rows >= TALL ? 4 : rows >= STATUS_FROM ? 2 : 0;
    List<String> lines = new ArrayList<>();
    for (String sentence : most == 0 ? List.<String>of() : content.status()) {
      List<String> wrapped =
          Wrap.lines(Math.max(10, columns), "", "", Clean.of(sentence, glyphs), CellText::width);
      if (lines.size() + wrapped.size() <= most) {
        lines.addAll(wrapped);
      }
    }
    return lines;
  }
}
