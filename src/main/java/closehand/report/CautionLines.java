package closehand.report;

import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.interview.Answers;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The cautions on the player's page, before everything else. */
final class CautionLines {
  private static final int FEW = 2;
  private static final int MOST_IN_FULL = 6;
  private static final String SPINAL_INJURY = "safe.sciT6";

  private CautionLines() {}

  /** Stops in full, then what to take care of, then what is good to know. */
  static List<Piece> of(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    pieces.addAll(StopNotice.all(input));
    List<Piece> care = care(input);
    if (!care.isEmpty()) {
      pieces.add(new Heading("Take care"));
      pieces.addAll(care);
    }
    return pieces;
  }

  private static List<Piece> care(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    String resting = RestingDigits.sentence(input);
    if (!resting.isEmpty()) {
      pieces.add(Paragraph.item(resting));
    }
    pieces.addAll(OpenSafety.of(input));
    pieces.addAll(LimitLines.of(input));
    pieces.addAll(cautions(input));
    for (Answers.Lowered lowered : input.answers().lowered()) {
      pieces.add(Paragraph.item(lowered(input, lowered)));
    }
    List<String> notes =
        withClass(input, CautionClass.NOTE).stream()
            .filter(n -> !protects(n))
            .map(n -> Phrases.bare(n.caution().title()))
            .toList();
    if (!notes.isEmpty()) {
      pieces.add(Paragraph.item("Good to know: " + Phrases.lower(Phrases.listed(notes)) + "."));
    }
    return pieces;
  }

  private static List<Warning> withClass(PageInput input, CautionClass wanted) {
    return input.together().cautions().stream().filter(w -> w.cautionClass() == wanted).toList();
  }

  /** The more there are, the shorter each, so that all of them are read. */
  private static List<Piece> cautions(PageInput input) {
    List<Warning> care = new ArrayList<>(withClass(input, CautionClass.CARE));
    withClass(input, CautionClass.NOTE).stream().filter(CautionLines::protects).forEach(care::add);
    List<Piece> pieces = new ArrayList<>();
    Set<String> said = new HashSet<>();
    for (Warning warning : care) {
      Warning shown = shown(input, warning);
      String text =
          care.size() > MOST_IN_FULL
              ? CautionText.brief(shown, said)
              : CautionText.full(shown, care.size() > FEW ? 2 : 3, said);
      pieces.add(Paragraph.item(text));
    }
    return pieces;
  }

  /** The caution without what does not hold for this player. */
  private static Warning shown(PageInput input, Warning warning) {
    Warning kept = PlayLimit.withoutAnother(input, LimitLines.withoutPromises(input, warning));
    return input.facts().is(SPINAL_INJURY, "no")
        ? Without.actions(kept, a -> a.contains("with a spinal injury"))
        : kept;
  }

  private static boolean protects(Warning warning) {
    return KeyActions.protects(warning.caution());
  }

  private static String lowered(PageInput input, Answers.Lowered lowered) {
    String title = input.bank().caution(lowered.code()).map(Caution::title).orElse(lowered.code());
    boolean signed = !lowered.by().isBlank() && !lowered.date().isBlank();
    return Phrases.bare(title)
        + ": a clinician has looked at this"
        + (signed ? " (" + lowered.by() + ", " + PlainDate.of(lowered.date()) + ")" : "")
        + (lowered.reason().isBlank()
            ? "."
            : ". The reason: " + Phrases.bare(lowered.reason().strip()) + ".");
  }
}
