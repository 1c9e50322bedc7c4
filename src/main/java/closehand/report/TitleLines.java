package closehand.report;

import closehand.interview.WellKnown;
import closehand.rules.Finding;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The top of a page: whose it is, from when, and whether it may still change. */
final class TitleLines {
  /** Pain from this many points of 10 on makes what was found provisional (practice estimate). */
  private static final double PAIN_THAT_BLURS = 5;

  private TitleLines() {}

  /** The title with the case and the date. */
  static List<Piece> of(String title, PageInput input) {
    String whose = input.caseName().isBlank() ? "" : input.caseName().strip() + ", ";
    return List.of(Paragraph.headed(title + ":", whose + PlainDate.of(input.isoDate())));
  }

  /** Why the page is provisional, as clauses to the player; empty when it is not. */
  static List<String> provisional(PageInput input) {
    Facts facts = input.facts();
    List<String> why = new ArrayList<>();
    open(input).ifPresent(why::add);
    OptionalDouble pain = facts.number(WellKnown.PAIN_NOW);
    if (pain.isPresent() && pain.getAsDouble() >= PAIN_THAT_BLURS) {
      why.add("you were in pain that day");
    }
    if (facts.is(WellKnown.SESSION_MODE, WellKnown.VIDEO)) {
      why.add("we met over a video call");
    }
    if (facts.is("seat.trunk", "leans")) {
      why.add("your seat does not hold you steady yet");
    }
    return why;
  }

  /** The line that says so; nothing when the page is not provisional. */
  static List<Piece> provisionalLine(PageInput input) {
    List<String> why = provisional(input);
    return why.isEmpty()
        ? List.of()
        : List.of(Paragraph.of("Provisional: this may change, because " + Phrases.and(why) + "."));
  }

  /** Open questions count only where a rule waits for them or a stop is not cleared. */
  private static Optional<String> open(PageInput input) {
    boolean settled = input.together().firm() && input.together().notCleared().isEmpty();
    Set<String> awaited = new HashSet<>();
    for (Finding finding : input.together().findings()) {
      awaited.addAll(UndecidedLines.names(input.bank().questionnaire(), finding.waitsFor()));
    }
    Set<String> open = UndecidedLines.names(input.bank().questionnaire(), input.openQuestions());
    List<String> named = open.stream().filter(awaited::contains).toList();
    if (!named.isEmpty()) {
      return Optional.of(
          "some questions are still open (" + Phrases.lower(UndecidedLines.few(named)) + ")");
    }
    if (settled) {
      return Optional.empty();
    }
    return Optional.of(
        input.finished()
            ? "an open answer could still change the first idea"
            : "some questions are still open");
  }
}
