package closehand.json;

import java.util.Set;

/**
 * Says in plain words what the usual mistakes in writing JSON are, from the characters around the
 * place where reading stopped. Never quotes them: the file may hold health facts.
 */
final class JsonMistake {
  private static final String ANYTHING = "Look here for a missing comma, quote or bracket.";

  private static final String BARE_WORD =
      "Words stand in double quotes; true, false and null are written in small letters.";

  /**
   * What may stand bare before a closing bracket or a comma; nothing means a number, a text or a
   * bracket.
   */
  private static final Set<String> KNOWN_WORDS = Set.of("", "true", "false", "null");

  private static final char NOTHING = ' ';

  private final String text;
  private final int at;

  private JsonMistake(String text, int at) {
    this.text = text;
    this.at = at;
  }

  /**
   * How to mend it.
   *
   * @param at the index of the first character that does not fit
   */
  static String mend(String text, long at) {
    return at < 0 || at >= text.length() ? ANYTHING : new JsonMistake(text, (int) at).mend();
  }

  private String mend() {
    char here = text.charAt(at);
    char before = before();
    if (before == NOTHING && Character.isLetterOrDigit(here)) {
      return "A JSON file starts with a bracket {; is this the right file?";
    }
    if (here < ' ' && "\t\n\r".indexOf(here) < 0) {
      return "A control character that cannot be seen stands here: take it out.";
    }
    if (here < ' ') {
      return "A line end or tab inside a text is written \\n or \\t.";
    }
    if (at > 0 && text.charAt(at - 1) == '\\') {
      return "A backslash inside a text is written twice.";
    }
    if ("'`\u2018\u2019\u201c\u201d".indexOf(here) >= 0) {
      return "Use straight double quotes.";
    }
    if (here == '/' || here == '#') {
      return "JSON has no comments: remove it.";
    }
    if (here == '}' || here == ']') {
      return bracket(before);
    }
    if (here == ',' && KNOWN_WORDS.contains(wordBefore())) {
      return "There is a comma too many, or a value is missing before it.";
    }
    return token(here, before);
  }

  private String bracket(char before) {
    return switch (before) {
      case ',' -> "Remove the comma before this bracket.";
      case ':' -> "A value is missing before this bracket.";
      default ->
          KNOWN_WORDS.contains(wordBefore())
              ? "This bracket does not close the one that was opened last."
              : BARE_WORD;
    };
  }

  private String token(char here, char before) {
    boolean digit = here >= '0' && here <= '9';
    if (digit && before == '0' && text.charAt(at - 1) == '0') {
      return "A number has no zeros in front.";
    }
    if (here == '+' || before == '+' || here == '.') {
      return "A number has no plus sign, and a digit on both sides of its point.";
    }
    boolean afterValue = "\"}]".indexOf(before) >= 0 || Character.isLetterOrDigit(before);
    if (afterValue && ("\"{[-".indexOf(here) >= 0 || Character.isLetterOrDigit(here))) {
      return "A comma or a colon is missing before this.";
    }
    return Character.isLetter(here) || here == ',' ? BARE_WORD : ANYTHING;
  }

  /** The word without quotes that ends before the place, spaces passed over; empty if none does. */
  private String wordBefore() {
    int end = at;
    while (end > 0 && text.charAt(end - 1) <= ' ') {
      end--;
    }
    int start = end;
    while (start > 0 && Character.isLetter(text.charAt(start - 1))) {
      start--;
    }
    return text.substring(start, end);
  }

  /** The last character before the place that is no space. */
  private char before() {
    for (int i = at - 1; i >= 0; i--) {
      if (text.charAt(i) > ' ') {
        return text.charAt(i);
      }
    }
    return NOTHING;
  }
}
