package closehand.report;

import closehand.bank.CautionClass;
import closehand.rules.Advice;
import closehand.rules.Standing;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.List;

/** One or two quiet lines after an answer: where the answers point, and what is still open. */
public final class QuietLine {
  private static final int MOST_LINES = 2;
  private static final int MOST_NAMES = 3;

  private QuietLine() {}

  /** At most two lines, each ended by a line feed. */
  public static String of(Advice advice, int openQuestions, Glyphs glyphs) {
    String open =
        openQuestions == 0
            ? " Nothing is open."
            : " Still open: " + Phrases.count(openQuestions, "question") + ".";
    List<String> names = names(advice);
    for (int shown = Math.min(MOST_NAMES, names.size()); shown > 0; shown--) {
      String text = start(advice) + Phrases.listed(names.subList(0, shown)) + "." + open;
      if (lines(text, glyphs).size() <= MOST_LINES) {
        return text(text, glyphs);
      }
    }
    return text(nothing(advice) + open, glyphs);
  }

  private static String start(Advice advice) {
    if (advice.strongestStop().filter(s -> s == CautionClass.STOP_ALL).isPresent()) {
      return "STOP: ";
    }
    if (advice.withheld()) {
      return "Suggestions wait for a medical review: ";
    }
    return advice.forReview() ? "So far, for a clinician to review: " : "So far: ";
  }

  private static String nothing(Advice advice) {
    return advice.withheld() ? "Suggestions wait for a medical review." : "So far: nothing yet.";
  }

  /** Titles of the stops while suggestions wait, otherwise the leading ideas. */
  private static List<String> names(Advice advice) {
    List<String> names = new ArrayList<>();
    if (advice.withheld()) {
      for (Warning stop : advice.stops()) {
        if (stop.cautionClass().withholds()) {
          names.add(Phrases.bare(stop.caution().title()));
        }
      }
      return names;
    }
    List<Standing> ideas = new ArrayList<>(advice.suggestions());
    if (ideas.size() > 1) {
      ideas.removeIf(s -> s.approach().family().equals(TryLines.SETTINGS));
    }
    ideas.forEach(s -> names.add(s.approach().words().brief()));
    if (!names.isEmpty()) {
      names.set(0, Phrases.lower(names.get(0)));
    }
    return names;
  }

  private static List<String> lines(String text, Glyphs glyphs) {
    return Wrap.lines("", "", Clean.of(text, glyphs));
  }

  private static String text(String text, Glyphs glyphs) {
    return Sheet.text(List.of(Paragraph.of(text)), glyphs);
  }
}
