package closehand.report;

import closehand.bank.Bank;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What changed from one bank to another, in the words of the paper. */
public final class BankDifference {
  private BankDifference() {}

  /**
   * New, gone and changed questions, terms, rules, cautions, approaches and tasks, then their
   * number.
   */
  public static String of(Bank old, Bank now, Glyphs glyphs) {
    BankWords before = new BankWords(old, glyphs);
    BankWords after = new BankWords(now, glyphs);
    List<Piece> pieces = new ArrayList<>();
    int changes = 0;
    changes += compare("Questions", before.questions(), after.questions(), pieces);
    changes += compare("What is worked out", before.terms(), after.terms(), pieces);
    changes += compare("Rules", before.rules(), after.rules(), pieces);
    changes += compare("Cautions", before.cautions(), after.cautions(), pieces);
    changes += compare("Approaches", before.approaches(), after.approaches(), pieces);
    Map<String, String> tasksBefore = new TaskPaperWords(old, glyphs).tasks();
    Map<String, String> tasksNow = new TaskPaperWords(now, glyphs).tasks();
    changes += compare("Measured tasks", tasksBefore, tasksNow, pieces);
    pieces.add(new Gap());
    pieces.add(
        Paragraph.of(
            changes == 0
                ? "The two banks say the same in questions, rules, cautions, approaches and"
                    + " measured tasks."
                : Phrases.count(changes, "difference") + "."));
    return Sheet.text(pieces, glyphs);
  }

  private static int compare(
      String title, Map<String, String> before, Map<String, String> after, List<Piece> pieces) {
    List<Piece> found = new ArrayList<>();
    before.forEach(
        (name, words) -> {
          String now = after.getOrDefault(name, "");
          if (!after.containsKey(name)) {
            found.add(Paragraph.item("Gone: " + name + ". " + words));
          } else if (!now.equals(words)) {
            found.add(Paragraph.item("Changed: " + name + ". Was: " + words));
            found.add(Paragraph.under(2, "Is now: " + now));
          }
        });
    after.forEach(
        (name, words) -> {
          if (!before.containsKey(name)) {
            found.add(Paragraph.item("New: " + name + ". " + words));
          }
        });
    if (!found.isEmpty()) {
      pieces.add(new Heading(title));
      pieces.addAll(found);
    }
    return (int) found.stream().filter(p -> !isSecondLine(p)).count();
  }

  private static boolean isSecondLine(Piece piece) {
    return piece instanceof Paragraph paragraph && paragraph.text().startsWith("Is now: ");
  }
}
