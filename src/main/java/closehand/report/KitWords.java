package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.List;

/** What an approach asks in time and money, in words. */
final class KitWords {
  private KitWords() {}

  /** "Set-up: 10 to 20 minutes. Cost: about 50 to 200 in your currency." */
  static String effortAndCost(Bank bank, Approach approach) {
    return "Set-up: "
        + Phrases.sentence(setup(approach.setupMinutes()))
        + " Cost: "
        + cost(bank, approach)
        + ".";
  }

  /** The same in fewer words: cost classes that follow each other as one. */
  static String inFewWords(Bank bank, Approach approach) {
    return effortAndCost(bank, approach)
        .replaceFirst("up to about [\\d,]+, or about [\\d,]+ to", "up to about");
  }

  private static String setup(Approach.Span minutes) {
    if (!minutes.text().isEmpty()) {
      return Phrases.lower(minutes.text());
    }
    String from = Wording.number(minutes.minimum());
    String to = Wording.number(minutes.maximum());
    return (from.equals(to) ? from : from + " to " + to) + " minutes";
  }

  private static String cost(Bank bank, Approach approach) {
    List<String> words = new ArrayList<>();
    for (String code : approach.costClasses()) {
      bank.costClasses().stream()
          .filter(c -> c.code().equals(code))
          .map(c -> c.text().replace("currency units", "in your currency"))
          .findFirst()
          .ifPresent(words::add);
    }
    if (words.isEmpty()) {
      return "not known";
    }
    String last = words.get(words.size() - 1);
    return words.size() == 1 ? last : withoutEnding(words.get(0), last) + ", or " + last;
  }

  /** The words without an ending that the other words have too: it is said there. */
  private static String withoutEnding(String words, String other) {
    int space = words.lastIndexOf(' ');
    while (space > 0
        && other.endsWith(words.substring(words.lastIndexOf(' ', space - 1) + 1))
        && !Character.isDigit(words.charAt(space - 1))) {
      space = words.lastIndexOf(' ', space - 1);
    }
    boolean shared = space > 0 && other.endsWith(words.substring(space));
    return shared ? words.substring(0, space) : words;
  }
}
