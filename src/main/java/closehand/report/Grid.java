package closehand.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The answers to one question with several fields, in one compact sentence. */
final class Grid {
  private static final List<String> SIDES = List.of("left ", "right ");

  private Grid() {}

  /** One field of the question and its answer in words. */
  record Cell(String label, String words) {}

  /**
   * Fields with the same answer together, such as "left thumb, index finger: A trigger; left ring
   * finger: A light key".
   */
  static String sentence(List<Cell> cells) {
    Map<String, List<String>> byWords = new LinkedHashMap<>();
    for (Cell cell : cells) {
      byWords.computeIfAbsent(cell.words(), w -> new ArrayList<>()).add(cell.label());
    }
    List<String> groups = new ArrayList<>();
    byWords.forEach((words, labels) -> groups.add(row(labels) + ": " + words));
    return String.join("; ", groups);
  }

  /**
   * Labels or body parts in a row. What several in a row begin with, a side or the words before a
   * colon, is said once.
   */
  static String row(List<String> labels) {
    StringBuilder row = new StringBuilder();
    String last = "";
    String gap = labels.stream().anyMatch(l -> l.contains(", ")) ? " and " : ", ";
    for (String label : labels) {
      String plain = Phrases.lower(withoutQuestionMark(label)).replace(": ", " ");
      String start = start(label);
      boolean same = !start.isEmpty() && start.equals(last);
      row.append(row.isEmpty() ? "" : gap).append(same ? plain.substring(start.length()) : plain);
      last = start;
    }
    return row.toString();
  }

  /** The side, or what stands before a colon with the colon; empty if there is neither. */
  private static String start(String label) {
    int colon = label.indexOf(": ");
    if (colon >= 0) {
      return Phrases.lower(label.substring(0, colon)) + " ";
    }
    String plain = Phrases.lower(label);
    return SIDES.stream().filter(plain::startsWith).findFirst().orElse("");
  }

  private static String withoutQuestionMark(String label) {
    return label.endsWith("?") ? label.substring(0, label.length() - 1) : label;
  }
}
