package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.bank.Rule;
import closehand.bank.Rule.Example;
import closehand.bank.Rule.Expect;
import closehand.interview.FlatAnswers;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** Tries every rule of a bank on its own examples. */
public final class Examples {
  private Examples() {}

  /**
   * One problem, {@code failing-example}, for every example that comes out otherwise than it says.
   *
   * @throws IllegalArgumentException for a bank whose rules cannot be made out
   */
  public static List<Problem> check(Bank bank) {
    RuleBook book = RuleBook.of(bank);
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < bank.rules().size(); i++) {
      Rule rule = bank.rules().get(i);
      int number = 0;
      for (Example example : rule.examples()) {
        number++;
        String name = "Example " + number + " of rule " + rule.key();
        failure(book, i, example, name).ifPresent(problems::add);
      }
    }
    return problems;
  }

  private static Optional<Problem> failure(RuleBook book, int rule, Example example, String name) {
    FlatAnswers flat = FlatAnswers.of(book.bank(), example.given().values());
    if (!flat.problems().isEmpty()) {
      Problem first = flat.problems().get(0);
      return Optional.of(
          Problem.error(
              first.where(),
              "failing-example",
              name + " cannot be read: " + first.what(),
              first.mend()));
    }
    Finding finding = book.find(rule, flat.answers());
    if (matches(example, finding)) {
      return Optional.empty();
    }
    return Optional.of(
        Problem.error(
            example.where(),
            "failing-example",
            name
                + " expects \""
                + said(example.expect(), example.waitsFor())
                + "\" but comes out as \""
                + said(came(finding), finding.waitsFor())
                + "\".",
            "Correct the example or the rule."));
  }

  private static boolean matches(Example example, Finding finding) {
    return came(finding) == example.expect()
        && (example.expect() != Expect.WAITS
            || new HashSet<>(example.waitsFor()).equals(new HashSet<>(finding.waitsFor())));
  }

  private static Expect came(Finding finding) {
    return switch (finding.outcome()) {
      case TRUE -> Expect.FIRES;
      case FALSE -> Expect.NOT;
      case OPEN -> Expect.WAITS;
    };
  }

  private static String said(Expect expect, List<String> waitsFor) {
    return switch (expect) {
      case FIRES -> "fires";
      case NOT -> "not";
      case WAITS -> "waits for " + String.join(", ", waitsFor);
    };
  }
}
