package closehand.report;

import closehand.bank.Bank;
import closehand.bank.Field;
import closehand.bank.Question;
import closehand.bank.Rule;
import closehand.bank.Section;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
                + " published source says so in its basis."));
    pieces.add(new Heading("Questions"));
    bank.questionnaire().sections().forEach(s -> pieces.addAll(section(s)));
    pieces.add(new Heading("What is worked out"));
    entries(new BankWords(bank, glyphs).terms(), pieces);
    themes(bank, glyphs, pieces);
    pieces.add(new Heading("Cautions"));
    entries(new BankWords(bank, glyphs).cautions(), pieces);
    Map<String, String> tasks = new TaskPaperWords(bank, glyphs).tasks();
    if (!tasks.isEmpty()) {
      pieces.add(new Heading("Measured tasks"));
      entries(tasks, pieces);
    }
    pieces.add(new Heading("Sources"));
    bank.sources()
        .forEach(
            s ->
                pieces.add(
                    Paragraph.item(
                        s.id()
                            + ": "
                            + s.reference()
                            + " ("
                            + s.usedFor()
                            + "; "
                            + s.status()
                            + ")")));
    pieces.add(new Heading("Reviewed by"));
    pieces.add(
        Paragraph.of(
            "Name, profession, date and signature: ______________________________ What has to change"
                + " first: ______________________________"));
    return Sheet.text(pieces, glyphs);
  }

  private static List<Piece> section(Section section) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading(section.id() + ". " + section.title()));
    for (Question question : section.questions()) {
      pieces.add(Paragraph.item(BankWords.question(question)));
      for (Field field : question.fields()) {
        pieces.add(Paragraph.item(2, BankWords.field(question, field)));
      }
    }
    return pieces;
  }

  private static void entries(Map<String, String> entries, List<Piece> pieces) {
    entries.forEach((name, words) -> pieces.add(Paragraph.item(name + ": " + words)));
  }

  private static void themes(Bank bank, Glyphs glyphs, List<Piece> pieces) {
    RuleWords words = new RuleWords(bank, glyphs);
    Map<String, List<Rule>> byTheme = new LinkedHashMap<>();
    for (Rule rule : bank.rules()) {
      byTheme.computeIfAbsent(rule.theme(), t -> new ArrayList<>()).add(rule);
    }
    byTheme.forEach(
        (theme, rules) -> {
          pieces.add(new Heading("Rules: " + bank.themes().getOrDefault(theme, theme)));
          rules.forEach(
              r -> pieces.add(Paragraph.item(r.key() + ", " + r.title() + ". " + words.of(r))));
        });
  }
}
