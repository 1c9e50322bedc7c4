package closehand.report;

import closehand.measure.followup.DueCase;
import java.util.ArrayList;
import java.util.List;

/** The list of what is due, for whoever keeps the cases: names and days alone. */
public final class DueText {
  private DueText() {}

  /**
   * The list.
   *
   * @param by the last day that counts, an ISO date
   * @param due in order
   * @param sealed names of cases that were not looked into
   */
  public static String of(String by, List<DueCase> due, List<String> sealed, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(
        Paragraph.of(
            due.isEmpty()
                ? "Nothing is due by " + PlainDate.of(by) + "."
                : "Due by " + PlainDate.of(by) + ":"));
    for (DueCase one : due) {
      pieces.add(
          Paragraph.item(
              one.name()
                  + ", since "
                  + PlainDate.of(one.due().on().iso())
                  + ": "
                  + one.due().what().words()
                  + "."));
    }
    if (!due.isEmpty()) {
      pieces.add(
          Paragraph.of(
              "closehand interview CASE --review asks what has to be asked again. Nothing happens by itself."));
    }
    if (!sealed.isEmpty()) {
      pieces.add(
          Paragraph.of(
              "Sealed, so not looked into: "
                  + String.join(", ", sealed)
                  + ". Open one to see its days."));
    }
    return Sheet.text(pieces, glyphs);
  }
}
