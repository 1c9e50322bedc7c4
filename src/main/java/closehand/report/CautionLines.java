package closehand.report;

import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.interview.Answers;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The cautions on the player's page, before everything else. */
final class CautionLines {
  private static final int FEW = 2;
  private static final int MOST_IN_FULL = 6;
  private static final int MOST_OPEN = 6;

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
    open(input).ifPresent(pieces::add);
    input
        .facts()
        .text("safe.advice.words")
        .ifPresent(limit -> pieces.add(new OwnWords("The limit your health team set:", limit)));
    pieces.addAll(cautions(withClass(input, CautionClass.CARE)));
    for (Answers.Lowered lowered : input.answers().lowered()) {
      pieces.add(Paragraph.item(lowered(input, lowered)));
    }
    List<String> notes =
        withClass(input, CautionClass.NOTE).stream()
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
  private static List<Piece> cautions(List<Warning> care) {
    List<Piece> pieces = new ArrayList<>();
    Set<String> said = new HashSet<>();
    for (Warning warning : care) {
      String text =
          care.size() > MOST_IN_FULL
              ? CautionText.brief(warning, said)
              : CautionText.full(warning, care.size() > FEW ? 2 : 3, said);
      pieces.add(Paragraph.item(text));
    }
    return pieces;
  }

  private static Optional<Piece> open(PageInput input) {
    List<String> names =
        input.together().notCleared().stream()
            .flatMap(w -> w.waitsFor().stream())
            .map(f -> Phrases.bare(Labels.ofQuestion(input.bank().questionnaire(), f)))
            .distinct()
            .toList();
    if (names.isEmpty()) {
      return Optional.empty();
    }
    int named = Math.min(MOST_OPEN, names.size());
    String more = names.size() > named ? "; and " + (names.size() - named) + " more" : "";
    return Optional.of(
        Paragraph.item(
            "Before you try anything, answer the open safety questions: "
                + Phrases.lower(Phrases.listed(names.subList(0, named)))
                + more
                + "."));
  }

  private static String lowered(PageInput input, Answers.Lowered lowered) {
    String title = input.bank().caution(lowered.code()).map(Caution::title).orElse(lowered.code());
    boolean signed = !lowered.by().isBlank() && !lowered.date().isBlank();
    return Phrases.bare(title)
        + ": a clinician has looked at this"
        + (signed ? " (" + lowered.by() + ", " + PlainDate.of(lowered.date()) + ")." : ".");
  }
}
