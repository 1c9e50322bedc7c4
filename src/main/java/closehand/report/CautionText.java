package closehand.report;

import closehand.bank.Caution;
import closehand.rules.Finding;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** One caution in a few lines of the player's page. */
final class CautionText {
  private static final int SHORTEST_WORD_THAT_COUNTS = 4;
  private static final int STEM = 5;

  private CautionText() {}

  /**
   * The caution with its message, its key actions, and more actions while they fit.
   *
   * @param lines how many lines to fill; key actions are kept even where they take more
   * @param said what to do at once that the page has said already; it grows
   */
  static String full(Warning warning, int lines, Set<String> said) {
    Caution caution = warning.caution();
    List<String> key = KeyActions.of(caution, said);
    StringBuilder text = new StringBuilder(start(warning));
    key.forEach(action -> text.append(' ').append(action));
    for (String action : caution.actions()) {
      if (!key.contains(action) && KeyActions.protects(action)) {
        continue; // Another caution on the page has given this order.
      }
      boolean more = !key.contains(action) && lines(text + " " + action) <= lines;
      if (!more && !key.contains(action)) {
        break;
      }
      text.append(more ? " " + action : "");
    }
    return text.toString();
  }

  /** The caution in as few lines as it takes, unless it is about an emergency. */
  static String brief(Warning warning, Set<String> said) {
    Caution caution = warning.caution();
    if (KeyActions.hasUrgent(caution) || caution.actions().isEmpty()) {
      return full(warning, 1, said);
    }
    String action = caution.actions().get(0);
    String telling = start(warning) + " " + action;
    String brief = titled(warning) + action;
    return lines(telling) <= lines(brief) ? telling : brief;
  }

  /**
   * The caution in the few words that the bank has for it, and what to do at once that they leave
   * out; without such words, the caution as far as it fits.
   *
   * @param lines how many lines to fill then; 0 for as few as it takes
   */
  static String fewest(Warning warning, int lines, Set<String> said) {
    String few = warning.caution().brief();
    if (few.isEmpty()) {
      return lines == 0 ? brief(warning, said) : full(warning, lines, said);
    }
    String where = where(warning);
    StringBuilder text = new StringBuilder(where.isEmpty() ? few : where + ": " + few);
    KeyActions.atOnce(warning.caution(), few, said).forEach(a -> text.append(' ').append(a));
    return text.toString();
  }

  private static String start(Warning warning) {
    Caution caution = warning.caution();
    String where = where(warning);
    if (!saysTheSame(caution)) {
      return titled(warning) + caution.message();
    }
    return (where.isEmpty() ? "" : where + ": ") + caution.message();
  }

  private static String titled(Warning warning) {
    String where = where(warning);
    return Phrases.bare(warning.caution().title())
        + (where.isEmpty() ? "" : " (" + Phrases.lower(where) + ")")
        + ": ";
  }

  /** "Left side" where every rule that raises it speaks of one side or finger. */
  static String where(Warning warning) {
    List<String> sides = new ArrayList<>();
    for (Finding finding : warning.because()) {
      String instance = finding.rule().instance();
      if (instance.isEmpty()) {
        return "";
      }
      String side = instance.startsWith("L") ? "Left side" : "Right side";
      if (!sides.contains(side)) {
        sides.add(side);
      }
    }
    return sides.size() == 2 ? "Both sides" : String.join("", sides);
  }

  /** Whether at least half of the title's words come up in the message again. */
  static boolean saysTheSame(Caution caution) {
    String message = caution.message().toLowerCase(Locale.ROOT);
    int words = 0;
    int again = 0;
    for (String word : Phrases.bare(caution.title()).toLowerCase(Locale.ROOT).split(" ")) {
      if (word.length() >= SHORTEST_WORD_THAT_COUNTS) {
        words++;
        again += message.contains(word.substring(0, Math.min(STEM, word.length()))) ? 1 : 0;
      }
    }
    return 2 * again >= words;
  }

  private static int lines(String text) {
    return Wrap.lines("  ", "  ", text).size();
  }
}
