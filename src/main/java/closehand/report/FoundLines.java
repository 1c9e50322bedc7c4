package closehand.report;

import closehand.bank.Field;
import closehand.bank.Question;
import closehand.bank.Section;
import closehand.interview.Answers;
import java.util.ArrayList;
import java.util.List;

/** What was found, part by part, for the clinician. */
final class FoundLines {
  private FoundLines() {}

  /** Every part with at least one answer. */
  static List<Piece> of(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("What was found"));
    pieces.add(
        Paragraph.of(
            "Told by the player, unless brackets say who else said it or how it is known: told,"
                + " seen or measured."));
    for (Section section : input.bank().questionnaire().sections()) {
      List<Piece> entries = new ArrayList<>();
      section.questions().forEach(q -> entries.addAll(question(q, input.answers())));
      if (!entries.isEmpty()) {
        pieces.add(new Heading(section.title()));
        pieces.addAll(entries);
      }
    }
    return pieces;
  }

  /** The answers to one question in one entry, then its notes; nothing if it has none. */
  static List<Piece> question(Question question, Answers answers) {
    List<Grid.Cell> cells = new ArrayList<>();
    List<Piece> notes = new ArrayList<>();
    for (Field field : question.fields()) {
      Answers.Recorded recorded = answers.byFact().get(field.fact());
      if (recorded != null) {
        cells.add(new Grid.Cell(field.label(), AnswerWords.of(field, recorded)));
        if (!recorded.provenance().note().isBlank()) {
          notes.add(new Note(question, field, recorded.provenance().note()));
        }
      }
    }
    if (cells.isEmpty()) {
      return List.of();
    }
    String name = Labels.of(question);
    String entry =
        onlyFirst(question, cells)
            ? name + (name.endsWith("?") ? " " : ": ") + cells.get(0).words()
            : lead(name, cells) + Phrases.upper(Grid.sentence(cells));
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Paragraph.item(Phrases.sentence(entry)));
    pieces.addAll(notes);
    return pieces;
  }

  /** The question's name, unless its first label says the same. */
  private static String lead(String name, List<Grid.Cell> cells) {
    return name.equalsIgnoreCase(cells.get(0).label()) ? "" : Phrases.sentence(name) + " ";
  }

  /** Whether the leading field alone has an answer, so that the question's name says it all. */
  private static boolean onlyFirst(Question question, List<Grid.Cell> cells) {
    return cells.size() == 1 && cells.get(0).label().equals(question.fields().get(0).label());
  }

  /** A note beside an answer. */
  private record Note(Question question, Field field, String words) implements Piece {
    @Override
    public List<String> lines(Glyphs glyphs) {
      String lead =
          question.fields().size() == 1 ? "Note: " : "Note on " + Phrases.lower(field.label());
      String gap = question.fields().size() == 1 ? "" : ": ";
      return Paragraph.under(2, lead + gap + glyphs.quoted(words)).lines(glyphs);
    }
  }
}
