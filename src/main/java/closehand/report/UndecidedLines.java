package closehand.report;

import closehand.bank.Questionnaire;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is undecided and the questions it waits for, short enough to read between two questions. */
final class UndecidedLines {
  private static final int MOST_APPROACHES = 8;
  private static final int MOST_QUESTIONS = 3;
  private static final int MOST_AWAITED = 5;

  private UndecidedLines() {}

  /** One entry an approach, or where there are many, their names and what most of them wait for. */
  static List<Piece> of(PageInput input) {
    List<Standing> open = input.together().with(Standing.Status.UNDECIDED);
    if (open.isEmpty()) {
      return List.of();
    }
    Questionnaire questionnaire = input.bank().questionnaire();
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Undecided"));
    if (open.size() > MOST_APPROACHES) {
      pieces.add(Paragraph.of(TryLines.briefs(open)));
      List<String> awaited = awaited(questionnaire, open);
      if (!awaited.isEmpty()) {
        pieces.add(Paragraph.of("Most of them wait for: " + Phrases.listed(awaited) + "."));
      }
      return pieces;
    }
    for (Standing standing : open) {
      List<String> names = List.copyOf(names(questionnaire, standing.waitsFor()));
      String brief = standing.approach().words().brief();
      pieces.add(
          Paragraph.item(
              names.isEmpty() ? brief + "." : brief + ", waits for: " + few(names) + "."));
    }
    return pieces;
  }

  /** The first names and how many more there are, without a full stop. */
  static String few(List<String> names) {
    int shown = Math.min(MOST_QUESTIONS, names.size());
    String more = names.size() > shown ? "; and " + (names.size() - shown) + " more" : "";
    return Phrases.listed(names.subList(0, shown)) + more;
  }

  /** The short names of the questions that find out these facts, each once, in order. */
  static Set<String> names(Questionnaire questionnaire, List<String> facts) {
    Set<String> names = new LinkedHashSet<>();
    facts.forEach(f -> names.add(Phrases.bare(Labels.ofQuestion(questionnaire, f))));
    return names;
  }

  private static List<String> awaited(Questionnaire questionnaire, List<Standing> open) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Standing standing : open) {
      names(questionnaire, standing.waitsFor()).forEach(n -> counts.merge(n, 1, Integer::sum));
    }
    List<String> sorted = new ArrayList<>(counts.keySet());
    sorted.sort((a, b) -> counts.getOrDefault(b, 0) - counts.getOrDefault(a, 0));
    return sorted.subList(0, Math.min(MOST_AWAITED, sorted.size()));
  }
}
