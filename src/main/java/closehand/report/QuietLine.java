package closehand.report;

import closehand.bank.CautionClass;
import closehand.rules.Advice;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.List;

/** One or two quiet lines after an answer: where the answers point, and what is still open. */
public final class QuietLine {
  private static final int MOST_LINES = 2;
  private static final int MOST_NAMES = 3;

  private QuietLine() {}

  /** At most two lines, each ended by a line feed. */
  public static String of(Advice advice, int openQuestions, Glyphs glyphs) {
    if (advice.strongestStop().filter(s -> s == CautionClass.STOP_ALL).isPresent()) {
      return fitting("STOP: ", stops(advice), " Please read the notice.", glyphs);
    }
    String open =
        openQuestions == 0
            ? " Nothing is open."
            : " Still open: " + Phrases.count(openQuestions, "question") + ".";
    if (advice.withheld()) {
      return fitting("Suggestions wait for a medical review: ", stops(advice), open, glyphs);
    }
    if (advice.forReview()) {
      return fitting("So far, for a clinician to review: ", ideas(advice), open, glyphs);
    }
    return fitting("So far: ", ideas(advice), open, glyphs);
  }

  /** As many of the names as fit; at least one, or "nothing yet". */
  private static String fitting(String start, List<String> names, String end, Glyphs glyphs) {
    for (int shown = Math.min(MOST_NAMES, names.size()); shown > 0; shown--) {
      String text = start + Phrases.lower(Phrases.listed(names.subList(0, shown))) + "." + end;
      if (lines(text, glyphs).size() <= MOST_LINES) {
        return text(text, glyphs);
      }
    }
    return text(start + "nothing yet." + end, glyphs);
  }

  /** Titles of the stops that hold everything up. */
  private static List<String> stops(Advice advice) {
    return advice.stops().stream()
        .filter(s -> s.cautionClass().withholds())
        .map(s -> Phrases.bare(s.caution().title()))
        .toList();
  }

  /** The leading ideas by their short names; settings only where there is nothing else. */
  private static List<String> ideas(Advice advice) {
    List<Standing> ideas = new ArrayList<>(advice.suggestions());
    if (ideas.size() > 1) {
      ideas.removeIf(s -> s.approach().family().equals(TryLines.SETTINGS));
    }
    return ideas.stream().map(s -> s.approach().words().brief()).toList();
  }

  private static List<String> lines(String text, Glyphs glyphs) {
    return Wrap.lines("", "", Clean.of(text, glyphs));
  }

  private static String text(String text, Glyphs glyphs) {
    return Sheet.text(List.of(Paragraph.of(text)), glyphs);
  }
}
