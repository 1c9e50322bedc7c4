package closehand.report;

import java.util.List;
import java.util.Locale;

/**
 * Some sentences, broken into lines, with what stands before them.
 *
 * @param indent columns before the first line
 * @param mark what stands before the text on its first line
 * @param hang columns before every other line
 * @param text the sentences; cleaned when they are printed
 */
record Paragraph(int indent, Mark mark, int hang, String text) implements Piece {

  /** What stands before the first line. */
  sealed interface Mark {
    /** Nothing. */
    record None() implements Mark {}

    /** The mark of a list without order. */
    record Bullet() implements Mark {}

    /** A place in an order, from 1. */
    record Number(int place) implements Mark {}

    /** A heading on the same line, in capitals. */
    record RunIn(String heading) implements Mark {}
  }

  private static final int BULLET_WIDTH = 2;
  private static final int NUMBER_WIDTH = 3;

  /** Sentences from the left edge. */
  static Paragraph of(String text) {
    return new Paragraph(0, new Mark.None(), 0, text);
  }

  /** Sentences after a heading with its full stop, on the same line; goes after a {@link Gap}. */
  static Paragraph headed(String heading, String text) {
    return new Paragraph(0, new Mark.RunIn(heading), 0, text);
  }

  /** An entry of a list without order. */
  static Paragraph item(String text) {
    return item(0, text);
  }

  /** An entry of a list without order, further in. */
  static Paragraph item(int indent, String text) {
    return new Paragraph(indent, new Mark.Bullet(), indent + BULLET_WIDTH, text);
  }

  /** An entry of an ordered list. */
  static Paragraph numbered(int place, String text) {
    return new Paragraph(0, new Mark.Number(place), NUMBER_WIDTH, text);
  }

  /** Sentences that belong to the entry above, with every line but the first further in. */
  static Paragraph under(int indent, String text) {
    return new Paragraph(indent, new Mark.None(), indent + BULLET_WIDTH, text);
  }

  /** Sentences further in, with all lines even. */
  static Paragraph indented(int indent, String text) {
    return new Paragraph(indent, new Mark.None(), indent, text);
  }

  @Override
  public List<String> lines(Glyphs glyphs) {
    return Wrap.lines(
        " ".repeat(indent) + written(glyphs), " ".repeat(hang), Clean.of(text, glyphs));
  }

  private String written(Glyphs glyphs) {
    if (mark instanceof Mark.Bullet) {
      return glyphs.bullet();
    }
    if (mark instanceof Mark.RunIn heading) {
      return Clean.of(heading.heading(), glyphs).toUpperCase(Locale.ROOT) + " ";
    }
    return mark instanceof Mark.Number number ? number.place() + ". " : "";
  }
}
