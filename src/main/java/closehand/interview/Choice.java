package closehand.interview;

import closehand.bank.FactType;
import closehand.bank.Option;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Options named by number, words, the beginning of their words, or code. */
final class Choice {
  private Choice() {}

  /** Yes or no in a word, a letter, or as the first or second of two. */
  static Optional<Boolean> yesOrNo(String typed) {
    return switch (typed.toLowerCase(Locale.ROOT)) {
      case "y", "yes", "1", "true" -> Optional.of(true);
      case "n", "no", "2", "false" -> Optional.of(false);
      default -> Optional.empty();
    };
  }

  /** The one option meant, if it is clear. */
  static Optional<Option> one(FactType type, String typed) {
    List<Option> options = type.choices();
    Optional<Integer> number = number(typed);
    if (number.isPresent() && number.get() >= 1 && number.get() <= options.size()) {
      return Optional.of(options.get(number.get() - 1));
    }
    List<Option> named = named(options, spelledOut(typed));
    return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
  }

  /** A single y or n is meant as the whole word, where an option is just that word. */
  private static String spelledOut(String typed) {
    return switch (typed) {
      case "y", "Y" -> "yes";
      case "n", "N" -> "no";
      default -> typed;
    };
  }

  /** Whether what was typed fits more than one option. */
  static boolean ambiguous(FactType type, String typed) {
    return named(type.choices(), typed).size() > 1;
  }

  /**
   * The options meant, with repeats as typed; "none" is the option that says so, or no option at
   * all. Nothing when any part is not clear.
   */
  static Optional<List<String>> several(FactType type, String typed) {
    Optional<Option> whole = one(type, typed);
    if (whole.isPresent()) {
      return Optional.of(List.of(whole.get().code()));
    }
    if (typed.equalsIgnoreCase("none")) {
      return Optional.of(
          type.choices().stream().filter(Option::exclusive).map(Option::code).limit(1).toList());
    }
    Optional<List<String>> byComma = parts(type, typed.split(",", -1));
    return byComma.isPresent() ? byComma : parts(type, typed.split("[\\s,]+", -1));
  }

  private static Optional<List<String>> parts(FactType type, String[] parts) {
    List<String> codes = new ArrayList<>();
    for (String part : parts) {
      if (!part.isBlank()) {
        Optional<Option> option = one(type, part.strip());
        if (option.isEmpty()) {
          return Optional.empty();
        }
        codes.add(option.get().code());
      }
    }
    return codes.isEmpty() ? Optional.empty() : Optional.of(codes);
  }

  /** The options that these words name: the whole words or the code first, then beginnings. */
  private static List<Option> named(List<Option> options, String typed) {
    String lower = typed.toLowerCase(Locale.ROOT);
    List<Option> whole = new ArrayList<>();
    List<Option> beginning = new ArrayList<>();
    for (Option option : options) {
      String display = option.display().toLowerCase(Locale.ROOT);
      String code = option.code().toLowerCase(Locale.ROOT);
      if (display.equals(lower) || code.equals(lower)) {
        whole.add(option);
      } else if (display.startsWith(lower) || code.startsWith(lower)) {
        beginning.add(option);
      }
    }
    return whole.isEmpty() ? beginning : whole;
  }

  private static Optional<Integer> number(String typed) {
    if (typed.length() > 3 || !typed.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return Optional.empty();
    }
    return typed.isEmpty() ? Optional.empty() : Optional.of(Integer.parseInt(typed));
  }
}
