package closehand.report;

import closehand.bank.Caution;
import closehand.interview.Answers;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.List;

/** Stops and cautions for the clinician: with rules, reasons and sources. */
final class WarningLines {
  private WarningLines() {}

  /** What stands, what was lowered, what is not cleared. */
  static List<Piece> of(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Stops and cautions"));
    List<Warning> standing = new ArrayList<>(input.together().stops());
    standing.addAll(input.together().cautions());
    if (standing.isEmpty()) {
      pieces.add(Paragraph.of("No warning signs in the answers given."));
    }
    standing.forEach(w -> pieces.addAll(warning(w)));
    pieces.addAll(lowered(input));
    pieces.addAll(notCleared(input));
    return pieces;
  }

  /** The stops that stand and those that were lowered, for a session that had to end. */
  static List<Piece> stopsAlone(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Stops"));
    input.together().stops().forEach(w -> pieces.addAll(warning(w)));
    pieces.addAll(lowered(input));
    return pieces;
  }

  private static List<Piece> warning(Warning warning) {
    List<Piece> pieces = new ArrayList<>();
    Caution caution = warning.caution();
    String code = warning.cautionClass().code() + " " + caution.code() + ": ";
    pieces.add(Paragraph.item(code + words(warning)));
    pieces.addAll(BasisWords.items(2, warning.because()));
    if (warning.cautionClass().stops()) {
      pieces.add(Paragraph.under(2, "The player reads: " + String.join(" ", caution.actions())));
    }
    return pieces;
  }

  private static String words(Warning warning) {
    Caution caution = warning.caution();
    String where = CautionText.where(warning);
    return (where.isEmpty() ? "" : where + ": ") + unplaced(warning, caution);
  }

  private static String unplaced(Warning warning, Caution caution) {
    String title = Phrases.sentence(caution.title()) + " ";
    if (!caution.clinician().isEmpty()) {
      return title + caution.clinician();
    }
    boolean again = !warning.cautionClass().stops() && CautionText.saysTheSame(caution);
    return (again ? "" : title) + caution.message();
  }

  private static List<Piece> lowered(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    for (Answers.Lowered lowered : input.answers().lowered()) {
      String title = input.bank().caution(lowered.code()).map(Caution::title).orElse("");
      pieces.add(
          new OwnWords(
              "Lowered: "
                  + lowered.code()
                  + " "
                  + Phrases.bare(title)
                  + ", by "
                  + lowered.by()
                  + " on "
                  + PlainDate.of(lowered.date())
                  + ":",
              lowered.reason()));
    }
    input.together().lowered().forEach(w -> pieces.addAll(BasisWords.items(2, w.because())));
    return pieces;
  }

  private static List<Piece> notCleared(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    for (Warning open : input.together().notCleared()) {
      pieces.add(
          Paragraph.item(
              "Not cleared ("
                  + open.caution().code()
                  + "), since this is not answered: "
                  + Labels.sentence(input.bank().questionnaire(), open.waitsFor())));
    }
    return pieces;
  }
}
