package closehand.report;

import closehand.bank.CautionClass;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.List;

/** Whom to turn to. */
final class ContactLines {
  private ContactLines() {}

  private static final String WHOM =
      "About your health: your own doctor, nurse or clinic. In an emergency: the emergency number."
          + " About kit, loans and this page: the person who went through the questions with you.";
  private static final String SHORTLY =
      "Health: your own doctor, nurse or clinic; in an emergency, the emergency number. This page:"
          + " whoever asked you the questions.";

  /** Whom to ask what, the urgent things first. */
  static List<Piece> of(PageInput input, Room room) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Gap());
    pieces.add(Paragraph.headed("Whom to ask.", room.tightest() ? SHORTLY : WHOM));
    for (Warning warning : input.together().cautions()) {
      String contact = warning.caution().contact();
      if (warning.cautionClass() == CautionClass.CARE && KeyActions.isUrgent(contact)) {
        pieces.add(Paragraph.item(Phrases.bare(warning.caution().title()) + ": " + contact));
      }
    }
    return pieces;
  }
}
