package closehand.report;

import java.util.List;

/** Small changes to words, so that they fit into a sentence. */
final class Phrases {
  private Phrases() {}

  /** The words with a small first letter, unless they begin with a name or with "I". */
  static String lower(String words) {
    boolean sentence =
        words.length() > 1
            && Character.isUpperCase(words.charAt(0))
            && (Character.isLowerCase(words.charAt(1)) || words.startsWith("A "));
    return sentence ? Character.toLowerCase(words.charAt(0)) + words.substring(1) : words;
  }

  /** The words with a capital first letter. */
  static String upper(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** The words without a full stop at the end. */
  static String bare(String words) {
    String text = words.strip();
    return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
  }

  /** The words with a full stop at the end, unless they end a sentence already. */
  static String sentence(String words) {
    String text = words.strip();
    return text.endsWith(".") || text.endsWith("?") || text.endsWith("!") ? text : text + ".";
  }

  /** Words that end in a quotation, with a full stop unless the quotation ends a sentence. */
  static String afterQuote(String words) {
    String text = words.strip();
    int last = text.length() - 1;
    boolean quoted = last > 0 && (text.charAt(last) == '"' || text.charAt(last) == '\u201d');
    boolean ends = quoted && ".?!".indexOf(text.charAt(last - 1)) >= 0;
    return ends ? text : sentence(text);
  }

  /** The words joined by semicolons, each but the first with a small first letter. */
  static String listed(List<String> words) {
    StringBuilder list = new StringBuilder();
    for (String word : words) {
      list.append(list.isEmpty() ? word : "; " + lower(word));
    }
    return list.toString();
  }

  /** "one", "one and two", "one, two and three". */
  static String and(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** Sentences one after another, empty ones left out. */
  static String joined(String... sentences) {
    return String.join(" ", List.of(sentences).stream().filter(s -> !s.isEmpty()).toList());
  }

  /** "1 question", "2 questions". */
  static String count(int number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }
}
