package closehand.screen.view;

import closehand.report.Clean;
import closehand.report.Glyphs;
import closehand.report.Wrap;
import closehand.screen.frame.CellText;
import closehand.screen.frame.Role;
import java.util.ArrayList;
import java.util.List;

/** Breaks blocks into lines of one width. */
final class Body {
  /** Columns kept for the mark before the chosen item. */
  static final int MARK = 2;

  /** From this width on there is room for items to stand apart from their keys. */
  private static final int EASY = 30;

  private static final int LEAST_TEXT = 8;

  private final int columns;
  private final Glyphs glyphs;
  private final boolean roomy;
  private final List<Line> lines = new ArrayList<>();
  private int stop;

  private Body(int columns, Glyphs glyphs, boolean roomy) {
    this.columns = Math.max(1, columns);
    this.glyphs = glyphs;
    this.roomy = roomy;
  }

  /**
   * The lines of all blocks.
   *
   * @param columns the width of the body, mark included
   */
  static List<Line> lines(List<Block> blocks, int columns, Glyphs glyphs, boolean roomy) {
    Body body = new Body(columns, glyphs, roomy);
    for (int i = 0; i < blocks.size(); i++) {
      body.add(i, blocks.get(i));
    }
    return body.lines;
  }

  private void add(int index, Block block) {
    if (block instanceof Block.Gap) {
      gap(index);
    } else if (block instanceof Block.Prose prose) {
      put(index, wrapped("", "", prose.text()), Line.NO_STOP, prose.role(), "");
    } else if (block instanceof Block.Laid laid) {
      laid(index, laid);
    } else if (block instanceof Block.Item item) {
      item(index, item);
    } else if (block instanceof Block.Field field) {
      field(index, field);
    }
    if (roomy && !(block instanceof Block.Laid)) {
      gap(index);
    }
  }

  private void gap(int index) {
    if (!lines.isEmpty() && !isEmpty(lines.get(lines.size() - 1))) {
      lines.add(Line.empty(index));
    }
  }

  private static boolean isEmpty(Line line) {
    return line.text().isEmpty() && line.lead().isEmpty() && line.stop() == Line.NO_STOP;
  }

  private void laid(int index, Block.Laid laid) {
    String text = laid.line().stripLeading();
    if (text.isEmpty()) {
      gap(index);
      return;
    }
    if (CellText.width(Clean.of(laid.line(), glyphs)) <= columns) {
      // Columns of a table stand where they stood.
      put(index, List.of(Clean.of(laid.line(), glyphs)), Line.NO_STOP, laid.role(), "");
      return;
    }
    String lead = leadOf(laid);
    if (!lead.isEmpty() && lead.length() <= columns / 2 && columns - lead.length() >= LEAST_TEXT) {
      String rest = Clean.of(laid.line().substring(lead.length()), glyphs);
      String under = " ".repeat(lead.length());
      put(
          index,
          Wrap.lines(columns, Clean.of(lead, glyphs), under, rest, CellText::width),
          Line.NO_STOP,
          laid.role(),
          "");
      return;
    }
    int most = columns / 4;
    String first = " ".repeat(Math.min(laid.line().length() - text.length(), most));
    // The last column of a table has no place of its own where there is no room for it.
    String hang = " ".repeat(lead.isEmpty() ? Math.min(laid.hang(), most) : 2);
    put(index, wrapped(first, hang, text), Line.NO_STOP, laid.role(), "");
  }

  /** The first columns of a row of a table, whose further lines stand under the last column. */
  private static String leadOf(Block.Laid laid) {
    int hang = laid.hang();
    boolean table = hang > 0 && hang < laid.line().length() && laid.line().charAt(hang - 1) == ' ';
    String lead = table ? laid.line().substring(0, hang) : "";
    return lead.isBlank() ? "" : lead;
  }

  private void item(int index, Block.Item item) {
    String lead = item.mark().isEmpty() ? "" : item.mark() + (columns >= EASY ? "  " : " ");
    if (item.mark().isEmpty() && columns >= EASY) {
      lead = "   ";
    }
    String words = item.word().isEmpty() ? item.words() : item.words() + " " + item.word();
    int room = columns - MARK - lead.length();
    int part = 0;
    for (String text : wrap(room, words)) {
      String shown = part == 0 ? lead : " ".repeat(lead.length());
      lines.add(new Line(index, part++, stop, shown, text, Role.PLAIN, item.word()));
    }
    stop++;
  }

  private void field(int index, Block.Field field) {
    List<String> wrapped =
        new ArrayList<>(wrap(columns - MARK, field.label() + field.typed() + "_"));
    int part = 0;
    for (String text : wrapped) {
      lines.add(new Line(index, part++, stop, "", text, Role.FIELD, ""));
    }
    stop++;
  }

  private void put(int index, List<String> texts, int of, Role role, String tail) {
    int part = 0;
    for (String text : texts) {
      lines.add(new Line(index, part++, of, "", text, role, tail));
    }
  }

  private List<String> wrapped(String first, String hang, String text) {
    return columns - Math.max(first.length(), hang.length()) >= LEAST_TEXT
        ? Wrap.lines(columns, first, hang, Clean.of(text, glyphs), CellText::width)
        : cut(columns, Clean.of(text, glyphs));
  }

  private List<String> wrap(int room, String text) {
    List<String> some =
        room >= LEAST_TEXT
            ? Wrap.lines(room, "", "", Clean.of(text, glyphs), CellText::width)
            : cut(Math.max(1, room), Clean.of(text, glyphs));
    return some.isEmpty() ? List.of("") : some;
  }

  /** Where not even a short word fits, text is cut where the line ends. */
  private static List<String> cut(int room, String text) {
    List<String> parts = new ArrayList<>();
    StringBuilder part = new StringBuilder();
    for (String cluster : CellText.clusters(text)) {
      if (part.length() > 0 && CellText.width(part + cluster) > room) {
        parts.add(part.toString());
        part.setLength(0);
      }
      part.append(cluster);
    }
    if (part.length() > 0) {
      parts.add(part.toString());
    }
    return parts;
  }
}
