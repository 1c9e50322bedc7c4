package closehand.report;

import closehand.bank.Bank;
import java.util.ArrayList;
import java.util.List;

/** A whole bank as a paper that somebody of the trade can review and sign. */
public final class BankPaper {
  private BankPaper() {}

  /** The paper; every line ends with a line feed. */
  public static String of(Bank bank, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(
        new Heading(bank.questionnaire().title() + ", version " + bank.questionnaire().version()));
    pieces.add(
        Paragraph.of(
            "Everything this question bank asks and concludes, for review. It suggests and never"
                + " diagnoses; none of its rules has been tested on people. A rule without a"
                + " published source says so in its basis. What stands in square brackets are"
                + " names that files use."));
    new BankWords(bank, glyphs).parts().forEach(p -> pieces.addAll(p.pieces()));
    pieces.add(new Heading("Reviewed by"));
    pieces.add(
        Paragraph.of(
            "Name, profession, date and signature: ______________________________ What has to change"
                + " first: ______________________________"));
    return Sheet.text(pieces, glyphs);
  }
}
