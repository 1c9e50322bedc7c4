package closehand.screen.view;

import closehand.report.Glyphs;
import closehand.screen.frame.Canvas;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Role;
import closehand.screen.frame.ScreenSize;
import java.util.List;

/** Draws content at one size and place. Nothing is said by a role alone. */
public final class View {
  private static final String MORE = "More below";
  private static final String YOURS = MORE + ": your answer";
  private static final String MARKED = "> ";

  private final Layout layout;
  private final Rooms rooms;
  private final Spot spot;
  private final Canvas canvas;
  private final ScreenSize size;
  private final Glyphs glyphs;

  private View(Content content, Spot spot, ScreenSize size, Glyphs glyphs) {
    this.layout = Layout.of(content, size, glyphs);
    this.rooms = layout.rooms();
    this.spot = layout.settle(spot);
    this.canvas = new Canvas(size, glyphs);
    this.size = size;
    this.glyphs = glyphs;
  }

  /** The frame for this content. */
  public static Frame of(Content content, Spot spot, ScreenSize size, Glyphs glyphs) {
    return new View(content, spot, size, glyphs).frame();
  }

  private Frame frame() {
    if (rooms.heading()) {
      canvas.put(0, rooms.left(), layout.content().heading(), Role.BAR);
      canvas.paint(0, Role.BAR);
    }
    body();
    aside();
    foot();
    return canvas.frame();
  }

  private void body() {
    boolean unread = layout.isUnread(spot);
    int shown = unread ? rooms.rows() - 1 : rooms.rows();
    for (int i = 0; i < shown && spot.top() + i < layout.lines().size(); i++) {
      line(rooms.top() + i, layout.lines().get(spot.top() + i));
    }
    if (unread) {
      int row = rooms.top() + rooms.rows() - 1;
      canvas.put(row, rooms.left(), MARKED, Role.MARK);
      canvas.put(row, rooms.left() + MARKED.length(), more(), Role.CHOSEN);
      canvas.cursor(row, rooms.left());
    }
  }

  /** What is below; where it is the answer that stands, that is said. */
  private String more() {
    boolean answer = !layout.lines().get(layout.firstLine(spot.chosen())).tail().isEmpty();
    return answer && MARKED.length() + YOURS.length() <= rooms.columns() ? YOURS : MORE;
  }

  private void line(int row, Line line) {
    if (line.stop() == Line.NO_STOP) {
      canvas.put(row, rooms.left(), line.text(), line.role());
      return;
    }
    // While the rest of it is still below, the mark stands on the way there and nowhere else.
    boolean chosen = line.stop() == spot.chosen() && !layout.isUnread(spot);
    int column = rooms.left();
    if (chosen && line.part() == 0) {
      canvas.put(row, column, MARKED, Role.MARK);
      canvas.cursor(row, column);
    }
    column = canvas.put(row, column + Body.MARK, line.lead(), Role.KEY);
    Role role = chosen && line.role() == Role.PLAIN ? Role.CHOSEN : line.role();
    if (line.role() == Role.FIELD) {
      field(row, column, line, chosen);
    } else if (!line.tail().isEmpty() && line.text().endsWith(line.tail())) {
      int cut = line.text().length() - line.tail().length();
      String words = line.text().substring(0, cut).stripTrailing();
      column = canvas.put(row, column, words, role) + (words.length() < cut ? 1 : 0);
      canvas.put(row, column, line.tail(), Role.MARK);
    } else {
      canvas.put(row, column, line.text(), role);
    }
  }

  /** The cursor of a line being typed stands behind what was typed. */
  private void field(int row, int column, Line line, boolean chosen) {
    int end = canvas.put(row, column, line.text(), Role.FIELD);
    if (chosen) {
      canvas.cursor(row, Math.max(column, end - 1));
    }
  }

  private void aside() {
    if (rooms.asideLeft() == 0) {
      return;
    }
    List<Line> lines = Body.lines(layout.content().aside(), rooms.asideColumns(), glyphs, false);
    for (int i = 0; i < rooms.rows() && i < lines.size(); i++) {
      canvas.put(rooms.top() + i, rooms.asideLeft(), lines.get(i).text(), lines.get(i).role());
    }
  }

  private void foot() {
    int row = size.rows() - rooms.keys() - rooms.status().size();
    for (String line : rooms.status()) {
      canvas.put(row++, rooms.left(), line, Role.QUIET);
    }
    if (rooms.keys() > 0) {
      keys();
    }
  }

  private void keys() {
    int columns = size.columns() - 2 * rooms.left();
    KeyRows keys =
        KeyRows.of(layout.content().keys(), columns, rooms.keys(), layout.reachesBelow(spot));
    int last = size.rows() - 1;
    int end = keys(last, keys.last());
    if (rooms.keys() > 1) {
      end = keys(last - 1, keys.above());
    }
    canvas.put(last - rooms.keys() + 1, end, keys.more(), Role.BAR);
  }

  private int keys(int row, List<Content.Hint> hints) {
    int column = rooms.left();
    for (Content.Hint hint : hints) {
      column = canvas.put(row, column, hint.key(), Role.KEY);
      column = canvas.put(row, column + 1, hint.does(), Role.BAR) + KeyRows.GAP;
    }
    return column;
  }
}
