package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.PlanFigures;
import closehand.interview.Wording;
import java.util.List;
import java.util.TreeMap;

/** What inputs and approaches ask of a body in a control plan, and where inputs lie, in words. */
final class InputPaperWords {
  private InputPaperWords() {}

  static PaperPart of(PlanFigures figures, Bank bank) {
    PaperPart part = new PaperPart("inputs", "Inputs in control plans", "");
    new TreeMap<>(figures.kinds()).forEach((name, kind) -> part.add("Kind " + name, kind(kind)));
    new TreeMap<>(figures.families())
        .forEach(
            (name, family) -> {
              String words =
                  bank.approach(name).map(Approach::words).map(Approach.Words::brief).orElse(name);
              part.add("In use, " + name, Phrases.sentence(words) + " " + family(family));
            });
    layout(figures.layout(), part);
    return part;
  }

  private static String kind(PlanFigures.Kind kind) {
    return Wording.number(kind.times())
        + " times as hard as a plain button; "
        + uses(kind.uses())
        + "; a game must accept "
        + either(kind.speaks())
        + (kind.needsCursor() ? " and be played with a pointer." : ".");
  }

  private static String family(PlanFigures.Family family) {
    String busy =
        switch (family.occupies()) {
          case "bothHands" -> "both hands";
          case "digits" -> "the fingers that work it";
          case "nothing" -> "nothing";
          default -> "the " + family.occupies();
        };
    return "It keeps "
        + busy
        + " busy; a finger that works it needs a movement score of at least "
        + family.leastMove()
        + " and a press score of at least "
        + family.leastPress()
        + "; "
        + uses(family.uses())
        + (family.buttonsSpeak().isEmpty()
            ? "."
            : "; for its buttons a game must accept " + either(family.buttonsSpeak()) + ".");
  }

  private static String uses(List<String> uses) {
    return uses.isEmpty() ? "no special kind of use" : "the rules count it as " + Phrases.and(uses);
  }

  private static String either(List<String> what) {
    return what.isEmpty() ? "nothing" : String.join(" or ", what);
  }

  private static void layout(PlanFigures.Layout layout, PaperPart part) {
    part.add("Keys, the easiest to reach first", String.join(", ", layout.keyOrder()) + ".");
    part.add(
        "Where inputs lie",
        "By column and row: "
            + FigurePaperWords.table(
                layout.places(), p -> String.join(", ", p.stream().map(String::valueOf).toList())));
    part.add(
        "Crosses",
        "Up, left, down and right: "
            + String.join("; ", layout.crosses().stream().map(c -> String.join(", ", c)).toList())
            + ".");
    part.add(
        "Spoken commands",
        "Planned with "
            + layout.phrasesFrom90()
            + " where nine of ten are understood, with "
            + layout.phrasesFrom70()
            + " where seven of ten are.");
  }
}
