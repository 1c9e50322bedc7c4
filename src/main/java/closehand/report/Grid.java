package closehand.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The answers to one question with several fields, in one compact sentence. */
final class Grid {
  private Grid() {}

  /** One field of the question and its answer in words. */
  record Cell(String label, String words) {}

  /**
   * Fields with the same answer together, such as "left thumb, index finger: a trigger; left ring
   * finger: a light key".
   */
  static String sentence(List<Cell> cells) {
    Map<String, List<String>> byWords = new LinkedHashMap<>();
    for (Cell cell : cells) {
      byWords
          .computeIfAbsent(cell.words(), w -> new ArrayList<>())
          .add(Phrases.lower(cell.label()).replace(": ", ", "));
    }
    List<String> groups = new ArrayList<>();
    byWords.forEach((words, labels) -> groups.add(together(labels) + ": " + words));
    return String.join("; ", groups);
  }

  /** The labels in a row; a first word like that of the label before is left out. */
  private static String together(List<String> labels) {
    StringBuilder row = new StringBuilder();
    String last = "";
    for (String label : labels) {
      int space = label.indexOf(' ');
      String first = space < 0 ? "" : label.substring(0, space);
      boolean same = !first.isEmpty() && first.equals(last);
      row.append(row.isEmpty() ? "" : ", ").append(same ? label.substring(space + 1) : label);
      last = first;
    }
    return row.toString();
  }
}
