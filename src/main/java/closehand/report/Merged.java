package closehand.report;

import java.util.ArrayList;
import java.util.List;

/** Makes one sentence of several that differ in one place only, such as the name of a finger. */
final class Merged {
  private Merged() {}

  /**
   * "Rest your left thumb." and "Rest your right thumb." become "Rest your left and right thumb.";
   * sentences that differ in more than one place stay apart.
   *
   * @param sentences at least one
   */
  static List<String> sentences(List<String> sentences) {
    List<String> different = sentences.stream().distinct().toList();
    if (different.size() < 2) {
      return different;
    }
    // A full stop stands as a word of its own, so that the word before it can differ.
    List<String[]> words =
        different.stream().map(s -> s.replaceAll("\\.(?= |$)", " .").split(" ")).toList();
    int shortest = words.stream().mapToInt(w -> w.length).min().orElse(0);
    int start = 0;
    while (start < shortest && allSame(words, start, false)) {
      start++;
    }
    int end = 0;
    while (end < shortest - start && allSame(words, end, true)) {
      end++;
    }
    if (start == 0 || end == 0 || start + end >= shortest) {
      return different;
    }
    return List.of(joined(words, start, end));
  }

  private static boolean allSame(List<String[]> words, int place, boolean fromEnd) {
    String first = at(words.get(0), place, fromEnd);
    return words.stream().allMatch(w -> at(w, place, fromEnd).equals(first));
  }

  private static String at(String[] words, int place, boolean fromEnd) {
    return words[fromEnd ? words.length - 1 - place : place];
  }

  private static String joined(List<String[]> words, int start, int end) {
    List<String> middles = new ArrayList<>();
    String last = "";
    for (String[] one : words) {
      boolean sameSide = one.length - end - start > 1 && one[start].equals(last);
      middles.add(part(one, sameSide ? start + 1 : start, one.length - end));
      last = one[start];
    }
    String[] first = words.get(0);
    String text =
        part(first, 0, start)
            + " "
            + Phrases.and(middles)
            + " "
            + part(first, first.length - end, first.length);
    return closed(text);
  }

  private static String part(String[] words, int from, int to) {
    return closed(String.join(" ", List.of(words).subList(from, to)));
  }

  private static String closed(String text) {
    return text.replace(" .", ".");
  }
}
