package closehand.report;

import closehand.bank.Caution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The actions of a caution that no short page may leave out. */
final class KeyActions {
  private static final String EMERGENCY = "emergency number";

  /** Opposite things to do at once, for signs that are easily mixed up. */
  private static final List<String> AT_ONCE = List.of("lean back", "sit up");

  /** What protects somebody from kit and from waiting too long. */
  private static final List<String> PROTECTING =
      List.of(
          "no strap",
          "neck strap",
          "clamp",
          "tight",
          EMERGENCY,
          "provider",
          "weights",
          "its own switch",
          "never take its place");

  private KeyActions() {}

  /**
   * The first action, then what to do at once where there is something, then what protects the
   * player from kit, from a provider's chair being changed, or from waiting too long for help.
   *
   * @param said what to do at once that the page has said already; what this caution adds is added
   */
  static List<String> of(Caution caution, Set<String> said) {
    List<String> key = new ArrayList<>();
    caution.actions().stream().findFirst().ifPresent(key::add);
    for (String phrase : AT_ONCE) {
      if (has(caution, phrase) && said.add(phrase)) {
        add(key, caution, phrase);
      }
    }
    String before = "";
    for (String action : caution.actions()) {
      if (caution.keep().contains(action) || protects(action)) {
        // "Those are the signs of ..." says something wrong without the sentence before it.
        String first = action.startsWith("Those are ") && !before.isEmpty() ? before : action;
        List.of(first, action).stream().filter(a -> !key.contains(a)).distinct().forEach(key::add);
      }
      before = action;
    }
    // The same order is given once on a page, whichever cautions it stands in.
    key.removeIf(action -> protects(action) && !said.add(action));
    key.sort(Comparator.comparingInt(caution.actions()::indexOf));
    return key;
  }

  /** What to do at once that neither these words nor the page have said; what is said grows. */
  static List<String> atOnce(Caution caution, String words, Set<String> said) {
    List<String> missing = new ArrayList<>();
    for (String phrase : AT_ONCE) {
      boolean there = words.toLowerCase(Locale.ROOT).contains(phrase);
      if ((there || has(caution, phrase)) && said.add(phrase) && !there) {
        add(missing, caution, phrase);
      }
    }
    return missing;
  }

  /** Whether leaving this action out could hurt somebody. */
  static boolean protects(String action) {
    String words = action.toLowerCase(Locale.ROOT);
    return PROTECTING.stream().anyMatch(words::contains);
  }

  /** Whether a caution has an action that no page may leave out. */
  static boolean protects(Caution caution) {
    return !caution.keep().isEmpty() || caution.actions().stream().anyMatch(KeyActions::protects);
  }

  /** Whether a caution has more to say than what a short line holds. */
  static boolean hasUrgent(Caution caution) {
    return isUrgent(caution.contact()) || of(caution, new HashSet<>()).size() > 1;
  }

  /** Whether these words send somebody to emergency help. */
  static boolean isUrgent(String words) {
    return words.contains(EMERGENCY);
  }

  private static boolean has(Caution caution, String phrase) {
    return caution.actions().stream().anyMatch(a -> a.toLowerCase(Locale.ROOT).contains(phrase));
  }

  private static void add(List<String> key, Caution caution, String phrase) {
    caution.actions().stream()
        .filter(a -> a.toLowerCase(Locale.ROOT).contains(phrase))
        .findFirst()
        .filter(a -> !key.contains(a))
        .ifPresent(key::add);
  }
}
