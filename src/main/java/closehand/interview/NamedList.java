package closehand.interview;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What somebody typed, read as entries of a list in which every entry has a number, a name and a
 * code, such as the actions of a game.
 *
 * <p>An entry can be named by its number as shown (from 1), by its code, by its name, by the
 * beginning of its name where only one name begins so, or by the beginning of a word in it where
 * only one name has such a word. Several stand in a row, with commas or spaces between them.
 */
public final class NamedList {
  private final List<String> codes;
  private final List<String> names;

  /** A list of these entries: code and name of each, in the order shown. */
  public NamedList(Map<String, String> entries) {
    this.codes = List.copyOf(entries.keySet());
    this.names = List.copyOf(entries.values());
  }

  /** What came of reading. */
  public sealed interface Outcome {
    /** The codes of the entries named, each once, in the order typed. */
    record Read(List<String> codes) implements Outcome {
      public Read {
        codes = List.copyOf(codes);
      }
    }

    /** Something names no entry, or more than one; a plain sentence says what. */
    record Refused(String sentence) implements Outcome {}
  }

  /** Reads a line; nothing of it counts where a part of it names no entry. */
  public Outcome read(String typed) {
    Set<String> found = new LinkedHashSet<>();
    for (String part : PlainText.of(typed).split("[,;]", -1)) {
      List<String> words = List.of(part.strip().split("\\s+"));
      for (int from = 0; from < words.size() && !words.get(from).isEmpty(); ) {
        int to = words.size();
        while (to > from && named(words.subList(from, to)).size() != 1) {
          to--;
        }
        if (to > from) {
          found.add(codes.get(named(words.subList(from, to)).get(0)));
          from = to;
        } else if (words.get(from).equalsIgnoreCase("and")) {
          from++;
        } else {
          return new Outcome.Refused(refusal(words, from));
        }
      }
    }
    return found.isEmpty()
        ? new Outcome.Refused("Nothing was typed.")
        : new Outcome.Read(List.copyOf(found));
  }

  private String refusal(List<String> words, int from) {
    String word = words.get(from);
    List<Integer> several = named(List.of(word));
    if (several.isEmpty()) {
      return "\""
          + word
          + "\" is not in the list. Give a number from 1 to "
          + codes.size()
          + ", a name or a code, such as 1 or "
          + names.get(0)
          + ".";
    }
    List<String> all = several.stream().map(i -> (i + 1) + " " + names.get(i)).toList();
    return "\"" + word + "\" fits more than one: " + String.join(", ", all) + ". Which number?";
  }

  /** The places in the list that these words fit, by the strictest way in which any fits. */
  private List<Integer> named(List<String> words) {
    String text = String.join(" ", words).toLowerCase(Locale.ROOT);
    if (text.matches("[0-9]{1,3}")) {
      int number = Integer.parseInt(text);
      return number >= 1 && number <= codes.size() ? List.of(number - 1) : List.of();
    }
    List<Integer> same = new ArrayList<>();
    List<Integer> beginning = new ArrayList<>();
    List<Integer> within = new ArrayList<>();
    for (int i = 0; i < codes.size(); i++) {
      String name = names.get(i).toLowerCase(Locale.ROOT);
      if (codes.get(i).equalsIgnoreCase(text) || name.equals(text)) {
        same.add(i);
      } else if (name.startsWith(text)) {
        beginning.add(i);
      } else if (name.contains(" " + text)) {
        within.add(i);
      }
    }
    return !same.isEmpty() ? same : !beginning.isEmpty() ? beginning : within;
  }

  /** An answer of this list in words: the name of each entry with its code. */
  public String words(Value value) {
    if (!(value instanceof Value.Texts texts)) {
      return "";
    }
    List<String> words = new ArrayList<>();
    for (String code : texts.words()) {
      int at = codes.indexOf(code);
      words.add(at < 0 ? code : names.get(at) + " (" + code + ")");
    }
    return String.join(", ", words);
  }
}
