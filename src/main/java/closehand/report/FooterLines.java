package closehand.report;

import java.util.List;

/** The last lines of every page. */
final class FooterLines {
  private static final String NOT_ADVICE =
      "This is a list of ideas to try, not medical advice. Your health team's advice comes first.";

  private FooterLines() {}

  /** What the page is not, and what it was made with. */
  static List<Piece> of(PageInput input) {
    return List.of(
        new Gap(),
        Paragraph.of(NOT_ADVICE),
        Paragraph.of(
            input.bank().questionnaire().title()
                + ", version "
                + input.bank().questionnaire().version()
                + ". "
                + PlainDate.of(input.isoDate())
                + "."));
  }
}
