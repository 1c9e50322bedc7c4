package closehand.report;

import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.interview.Answers;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.List;

/** The cautions on the player's page, before everything else. */
final class CautionLines {
  private CautionLines() {}

  /** Stops in full, then what to take care of, then what is good to know. */
  static List<Piece> of(PageInput input, Room room) {
    List<Piece> pieces = new ArrayList<>();
    input.together().stops().forEach(stop -> pieces.addAll(StopNotice.pieces(stop)));
    List<Piece> care = care(input, room);
    if (!care.isEmpty()) {
      pieces.add(new Heading("Take care"));
      pieces.addAll(care);
    }
    return pieces;
  }

  private static List<Piece> care(PageInput input, Room room) {
    List<Piece> pieces = new ArrayList<>();
    open(input.together().notCleared()).ifPresent(pieces::add);
    input
        .facts()
        .text("safe.advice.words")
        .ifPresent(limit -> pieces.add(new OwnWords("The limit your health team set:", limit)));
    List<String> notes = new ArrayList<>();
    for (Warning warning : input.together().cautions()) {
      if (warning.cautionClass() == CautionClass.NOTE) {
        notes.add(Phrases.sentence(warning.caution().message()));
      } else {
        pieces.add(Paragraph.item(inLines(warning.caution(), room.cautionLines())));
      }
    }
    for (Answers.Lowered lowered : input.answers().lowered()) {
      pieces.add(Paragraph.item(lowered(input, lowered)));
    }
    if (!notes.isEmpty()) {
      pieces.add(Paragraph.item("Good to know: " + String.join(" ", notes)));
    }
    return pieces;
  }

  private static java.util.Optional<Piece> open(List<Warning> notCleared) {
    if (notCleared.isEmpty()) {
      return java.util.Optional.empty();
    }
    List<String> titles =
        notCleared.stream().map(w -> Phrases.bare(w.caution().title())).distinct().toList();
    return java.util.Optional.of(
        Paragraph.item(
            "Before you try anything, answer the open safety questions: "
                + Phrases.listed(titles)
                + "."));
  }

  private static String lowered(PageInput input, Answers.Lowered lowered) {
    String title = input.bank().caution(lowered.code()).map(Caution::title).orElse(lowered.code());
    return Phrases.bare(title)
        + ": looked at by "
        + lowered.by()
        + " on "
        + PlainDate.of(lowered.date())
        + ", who says you may go on.";
  }

  /**
   * The caution in so many lines: its title if there is room, its message, its first action, and
   * more actions while they fit.
   */
  static String inLines(Caution caution, int lines) {
    String short_ = withActions(caution.message(), caution.actions(), lines);
    String full =
        withActions(
            Phrases.bare(caution.title()) + ": " + caution.message(), caution.actions(), lines);
    return fits(full, lines) ? full : short_;
  }

  private static String withActions(String start, List<String> actions, int lines) {
    String text = start;
    for (int i = 0; i < actions.size(); i++) {
      String longer = text + " " + actions.get(i);
      if (i > 0 && !fits(longer, lines)) {
        return text;
      }
      text = longer;
    }
    return text;
  }

  private static boolean fits(String text, int lines) {
    return Wrap.lines("  ", "  ", text).size() <= lines;
  }
}
