package closehand.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One part of a bank in words: what the paper prints under a heading, and what two banks are
 * compared by.
 */
final class PaperPart {
  private final String id;
  private final String title;
  private final String lead;
  private final Map<String, List<String>> entries = new LinkedHashMap<>();

  /**
   * A part without entries yet.
   *
   * @param id what it is known by in both banks
   * @param title its heading
   * @param lead what is said first, or empty
   */
  PaperPart(String id, String title, String lead) {
    this.id = id;
    this.title = title;
    this.lead = lead;
  }

  String id() {
    return id;
  }

  String title() {
    return title;
  }

  String lead() {
    return lead;
  }

  /** An entry of one sentence or a few; a second one of the same name gets a number. */
  void add(String name, String words) {
    add(name, List.of(words));
  }

  /** An entry with lines below its first. */
  void add(String name, List<String> lines) {
    String free = name;
    for (int i = 2; entries.containsKey(free); i++) {
      free = name + " (" + i + ")";
    }
    entries.put(free, List.copyOf(lines));
  }

  /** Every entry by its name, in the order of the bank. */
  Map<String, List<String>> entries() {
    return Collections.unmodifiableMap(entries);
  }

  /** The part as the paper prints it; nothing where it holds nothing. */
  List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    if (entries.isEmpty()) {
      return pieces;
    }
    pieces.add(new Heading(title));
    if (!lead.isEmpty()) {
      pieces.add(Paragraph.of(lead));
    }
    entries.forEach(
        (name, lines) -> {
          pieces.add(Paragraph.item(name + ": " + lines.get(0)));
          lines.subList(1, lines.size()).forEach(l -> pieces.add(Paragraph.item(2, l)));
        });
    return pieces;
  }
}
