package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import java.util.ArrayList;
import java.util.List;

/** What an approach asks in time and money, in words. */
final class KitWords {
  private KitWords() {}

  /** "Set-up: 10 to 20 minutes. Cost: about 50 to 200 currency units." */
  static String effortAndCost(Bank bank, Approach approach) {
    return "Set-up: "
        + Phrases.sentence(setup(approach.setupMinutes()))
        + " Cost: "
        + cost(bank, approach)
        + ".";
  }

  private static String setup(Approach.Span minutes) {
    if (!minutes.text().isEmpty()) {
      return Phrases.lower(minutes.text());
    }
    String from = whole(minutes.minimum());
    String to = whole(minutes.maximum());
    return (from.equals(to) ? from : from + " to " + to) + " minutes";
  }

  private static String cost(Bank bank, Approach approach) {
    List<String> words = new ArrayList<>();
    for (String code : approach.costClasses()) {
      bank.costClasses().stream()
          .filter(c -> c.code().equals(code))
          .map(Approach.CostClass::text)
          .findFirst()
          .ifPresent(words::add);
    }
    return words.isEmpty() ? "not known" : String.join(", or ", words);
  }

  private static String whole(double number) {
    return closehand.interview.Wording.number(number);
  }
}
