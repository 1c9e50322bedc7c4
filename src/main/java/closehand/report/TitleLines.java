package closehand.report;

import closehand.interview.WellKnown;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

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
    if (!input.finished()) {
      why.add("some questions are still open");
    } else if (!input.together().firm()) {
      why.add("an open answer could still change the first idea");
    }
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
}
