package closehand.report;

import closehand.bank.Bank;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What changed from one bank to another, in the words of the paper. */
public final class BankDifference {
  private final List<Piece> pieces = new ArrayList<>();
  private int changes;

  private BankDifference() {}

  /**
   * What is new, gone, changed or in another order in every part of the paper, then how many
   * differences that are.
   */
  public static String of(Bank old, Bank now, Glyphs glyphs) {
    BankDifference difference = new BankDifference();
    difference.parts(byId(new BankWords(old, glyphs)), byId(new BankWords(now, glyphs)));
    difference.pieces.add(new Gap());
    difference.pieces.add(
        Paragraph.of(
            difference.changes > 0
                ? Phrases.count(difference.changes, "difference") + "."
                : "The two banks say the same: they ask, conclude, weigh and print alike."
                    + (old.fingerprint().equals(now.fingerprint())
                        ? ""
                        : " Their files differ all the same, in what is neither used nor printed,"
                            + " such as notes, examples of rules or spacing.")));
    return Sheet.text(difference.pieces, glyphs);
  }

  private static Map<String, PaperPart> byId(BankWords words) {
    Map<String, PaperPart> byId = new LinkedHashMap<>();
    words.parts().forEach(p -> byId.put(p.id(), p));
    return byId;
  }

  private void parts(Map<String, PaperPart> before, Map<String, PaperPart> after) {
    List<String> ids = new ArrayList<>(before.keySet());
    after.keySet().stream().filter(id -> !before.containsKey(id)).forEach(ids::add);
    for (String id : ids) {
      Optional<PaperPart> was = Optional.ofNullable(before.get(id));
      Optional<PaperPart> is = Optional.ofNullable(after.get(id));
      PaperPart empty = new PaperPart(id, was.or(() -> is).map(PaperPart::title).orElse(""), "");
      part(was.orElse(empty), is.orElse(empty));
    }
    Optional<String> order = PaperOrder.moved(ids(before, after), ids(after, before));
    order.ifPresent(
        words -> {
          pieces.add(new Heading("Order of the parts"));
          tell(Paragraph.item("In another order: " + words));
        });
  }

  /** The ids of parts that both have, in the order of the first. */
  private static List<String> ids(Map<String, PaperPart> of, Map<String, PaperPart> other) {
    return of.keySet().stream().filter(other::containsKey).toList();
  }

  private void part(PaperPart before, PaperPart after) {
    int from = pieces.size();
    if (!before.title().equals(after.title())) {
      tell(Paragraph.item("Heading changed. Was: " + before.title()));
      pieces.add(Paragraph.under(2, "Is now: " + after.title()));
    }
    before
        .entries()
        .forEach(
            (name, lines) -> {
              List<String> now = after.entries().get(name);
              if (now == null) {
                tell(Paragraph.item("Gone: " + name + ". " + String.join(" ", lines)));
              } else if (!now.equals(lines)) {
                changed(name, lines, now);
              }
            });
    after
        .entries()
        .forEach(
            (name, lines) -> {
              if (!before.entries().containsKey(name)) {
                tell(Paragraph.item("New: " + name + ". " + String.join(" ", lines)));
              }
            });
    PaperOrder.moved(shared(before, after), shared(after, before))
        .ifPresent(words -> tell(Paragraph.item("In another order: " + words)));
    if (pieces.size() > from) {
      pieces.add(from, new Heading(after.title()));
    }
  }

  private static List<String> shared(PaperPart of, PaperPart other) {
    return of.entries().keySet().stream().filter(other.entries()::containsKey).toList();
  }

  private void tell(Piece piece) {
    pieces.add(piece);
    changes++;
  }

  /** The lines that one has and the other has not; where both have the same, their order. */
  private void changed(String name, List<String> before, List<String> after) {
    List<String> was = without(before, after);
    List<String> is = without(after, before);
    if (was.isEmpty() && is.isEmpty()) {
      String words = PaperOrder.moved(before, after).orElse("a line stands twice.");
      tell(Paragraph.item("Changed: " + name + ". In another order: " + words));
      return;
    }
    String lead = "Changed: " + name + ". ";
    if (was.isEmpty()) {
      tell(Paragraph.item(lead + "New in it: " + String.join(" ", is)));
    } else if (is.isEmpty()) {
      tell(Paragraph.item(lead + "Gone from it: " + String.join(" ", was)));
    } else {
      tell(Paragraph.item(lead + "Was: " + String.join(" ", was)));
      pieces.add(Paragraph.under(2, "Is now: " + String.join(" ", is)));
    }
  }

  private static List<String> without(List<String> lines, List<String> others) {
    List<String> left = new ArrayList<>(lines);
    others.forEach(left::remove);
    return left;
  }
}
