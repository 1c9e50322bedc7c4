package closehand.report;

import closehand.interview.Answer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The safety questions without an answer, without pressing anybody. */
final class OpenSafety {
  private static final int MOST_OPEN = 6;

  private OpenSafety() {}

  /** What the player would rather not say, then what is still open; nothing where all is known. */
  static List<Piece> of(PageInput input) {
    Set<String> declined = new LinkedHashSet<>();
    Set<String> open = new LinkedHashSet<>();
    input
        .together()
        .notCleared()
        .forEach(
            w -> w.waitsFor().forEach(f -> (said(input, f) ? declined : open).add(name(input, f))));
    open.removeAll(declined);
    List<Piece> pieces = new ArrayList<>();
    if (!declined.isEmpty()) {
      boolean one = declined.size() == 1;
      pieces.add(
          Paragraph.item(
              Phrases.listed(List.copyOf(declined))
                  + ": you would rather not say, and that is fine. We treat "
                  + (one ? "it" : "each of them")
                  + " as unsure."));
    }
    if (!open.isEmpty()) {
      List<String> names = List.copyOf(open);
      int named = Math.min(MOST_OPEN, names.size());
      String more = names.size() > named ? "; and " + (names.size() - named) + " more" : "";
      pieces.add(
          Paragraph.item(
              "Still open among the safety questions: "
                  + Phrases.lower(Phrases.listed(names.subList(0, named)))
                  + more
                  + "."));
    }
    return pieces;
  }

  private static boolean said(PageInput input, String fact) {
    return input
        .answers()
        .answer(fact)
        .flatMap(
            a ->
                a instanceof Answer.Absent absent ? Optional.of(absent.reason()) : Optional.empty())
        .filter(r -> r == Answer.Reason.DECLINED)
        .isPresent();
  }

  private static String name(PageInput input, String fact) {
    return Phrases.bare(Labels.ofQuestion(input.bank().questionnaire(), fact));
  }
}
