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

  /** The part on how long to play says it in minutes. */
  private static final String BREAKS = "C-BREAK";

  /** What is likely to change says to borrow before buying. */
  private static final String BUYING = "C-BUY";

  private static final String CHANGING = "C-PROG";
  private static final String LIMITS = "C-LIMITS";
  private static final String SPINAL_INJURY = "safe.sciT6";

  private CautionLines() {}

  /** Stops in full, then what to take care of, then what is good to know. */
  static List<Piece> of(PageInput input) {
    return of(input, Room.ROOMIEST, careful(input).size() > MOST_IN_FULL);
  }

  /** The same in few words, with whom to ask, for the player's page. */
  static List<Piece> of(PageInput input, Room room) {
    return of(input, room, true);
  }

  private static List<Piece> of(PageInput input, Room room, boolean brief) {
    List<Piece> pieces = new ArrayList<>();
    pieces.addAll(StopNotice.all(input, room.tightest()));
    List<Piece> care = care(input, room, brief);
    if (!care.isEmpty()) {
      pieces.add(new Heading("Take care"));
      pieces.addAll(care);
    }
    return pieces;
  }

  private static List<Piece> care(PageInput input, Room room, boolean brief) {
    List<Piece> pieces = new ArrayList<>();
    String resting = RestingDigits.sentence(input);
    if (!resting.isEmpty()) {
      pieces.add(Paragraph.item(resting));
    }
    pieces.addAll(OpenSafety.of(input));
    if (!(brief && input.warns(LIMITS))) {
      pieces.addAll(LimitLines.of(input));
    }
    pieces.addAll(cautions(input, brief));
    for (Answers.Lowered lowered : input.answers().lowered()) {
      pieces.add(Paragraph.item(lowered(input, lowered)));
    }
    List<String> notes =
        withClass(input, CautionClass.NOTE).stream()
            .filter(n -> !protects(n))
            .filter(n -> !(room.tightest() && isSaidElsewhere(input, n.caution().code())))
            .map(n -> Phrases.bare(n.caution().title()))
            .toList();
    if (!notes.isEmpty()) {
      pieces.add(Paragraph.item("Good to know: " + Phrases.lower(Phrases.listed(notes)) + "."));
    }
    return pieces;
  }

  private static boolean isSaidElsewhere(PageInput input, String code) {
    return code.equals(BREAKS) || code.equals(BUYING) && input.warns(CHANGING);
  }

  private static List<Warning> withClass(PageInput input, CautionClass wanted) {
    return input.together().cautions().stream().filter(w -> w.cautionClass() == wanted).toList();
  }

  /** The more there are, the shorter each, so that all of them are read. */
  private static List<Piece> cautions(PageInput input, boolean brief) {
    List<Warning> care = careful(input);
    List<Piece> pieces = new ArrayList<>();
    Set<String> said = new HashSet<>();
    for (Warning warning : care) {
      if (brief && warning.caution().code().equals(LIMITS)) {
        pieces.addAll(LimitLines.first(input, warning));
        continue;
      }
      Warning shown = shown(input, warning);
      int lines = care.size() > MOST_IN_FULL ? 0 : care.size() > FEW ? 2 : 3;
      String text =
          brief ? CautionText.fewest(shown, lines, said) : CautionText.full(shown, lines, said);
      pieces.add(Paragraph.item(text));
    }
    return pieces;
  }

  private static List<Warning> careful(PageInput input) {
    List<Warning> care = new ArrayList<>(withClass(input, CautionClass.CARE));
    withClass(input, CautionClass.NOTE).stream().filter(CautionLines::protects).forEach(care::add);
    return care;
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
