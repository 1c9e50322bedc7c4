package closehand.line;

import closehand.interview.Entry;
import closehand.interview.Prompt;
import java.util.Locale;
import java.util.Map;

/** Reads a typed line against a question whose words must be codes from a list, or any question. */
final class Listed {
  private Listed() {}

  /**
   * What the line gives.
   *
   * @param codes the codes that may be named; empty where any words will do
   */
  static Entry.Line read(Prompt prompt, String text, Map<String, String> codes) {
    if (codes.isEmpty()) {
      return Entry.readLine(prompt.lineOfFields(), text);
    }
    String typed = text.toUpperCase(Locale.ROOT).replace(',', ' ').strip().replaceAll("\\s+", ", ");
    for (String code : typed.split(", ", -1)) {
      if (!codes.containsKey(code)) {
        return new Entry.Line.NotRead(
            "There is no action of that code in the list. Type codes such as "
                + codes.keySet().iterator().next()
                + ".");
      }
    }
    return Entry.readLine(prompt.lineOfFields(), typed);
  }
}
