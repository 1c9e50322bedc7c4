package closehand.bank;

import closehand.bank.Condition.Operand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Checks one condition against what its facts can be: does the fact exist, does the comparison fit,
 * is the value one of its answers.
 */
final class ConditionCheck {
  private static final List<String> ORDER = List.of("<", "<=", ">", ">=");
  private static final List<String> KNOWLEDGE =
      List.of("notAsked", "declined", "notKnown", "later", "given");

  private final FactKinds kinds;
  private final List<Problem> problems;
  private boolean inGame;

  ConditionCheck(FactKinds kinds, List<Problem> problems) {
    this.kinds = kinds;
    this.problems = problems;
  }

  void check(Condition condition) {
    if (condition instanceof Condition.Test test) {
      test(test);
    } else if (condition instanceof Condition.Not not) {
      check(not.part());
    } else if (condition instanceof Condition.AnyGame any) {
      game(any.part());
    } else if (condition instanceof Condition.EveryGame every) {
      game(every.part());
    } else {
      parts(condition).forEach(this::check);
    }
  }

  /** Whether the condition or any part of it asks how something is known. */
  static boolean asksHow(Condition condition) {
    if (condition instanceof Condition.Test test) {
      return test.operator().equals("how");
    }
    return parts(condition).stream().anyMatch(ConditionCheck::asksHow);
  }

  /** Every comparison in the condition. */
  static List<Condition.Test> tests(Condition condition) {
    List<Condition.Test> tests = new ArrayList<>();
    if (condition instanceof Condition.Test test) {
      tests.add(test);
    }
    parts(condition).forEach(part -> tests.addAll(tests(part)));
    return tests;
  }

  private static List<Condition> parts(Condition condition) {
    if (condition instanceof Condition.All all) {
      return all.parts();
    }
    if (condition instanceof Condition.Any any) {
      return any.parts();
    }
    if (condition instanceof Condition.AtLeast some) {
      return some.parts();
    }
    if (condition instanceof Condition.Not not) {
      return List.of(not.part());
    }
    if (condition instanceof Condition.AnyGame any) {
      return List.of(any.part());
    }
    return condition instanceof Condition.EveryGame every ? List.of(every.part()) : List.of();
  }

  private void game(Condition part) {
    boolean before = inGame;
    inGame = true;
    check(part);
    inGame = before;
  }

  private void test(Condition.Test test) {
    if (!kinds.known(test.fact())) {
      report(
          test.factWhere(),
          "unknown-fact",
          "\"" + test.fact() + "\" is neither asked nor worked out in this bank.",
          Hint.didYouMean(test.fact(), kinds.names()));
      return;
    }
    if (test.fact().startsWith("game.") && !inGame) {
      report(
          test.factWhere(),
          "condition-shape",
          "\"" + test.fact() + "\" needs anyGame or everyGame around it.",
          "");
    }
    if (test.operator().equals("how")) {
      codes(test.value(), KNOWLEDGE, "how something is known");
    } else if (test.fact().equals(FactKinds.CLEARED)) {
      needs(test, List.of("has"));
      codes(test.value(), kinds.cautions(), "a caution");
    } else if (kinds.term(test.fact()).orElse(null) instanceof Term.Derived) {
      needs(test, List.of("is"));
      flag(test.value());
    } else if (kinds.range(test.fact()).isPresent() && ORDER.contains(test.operator())) {
      threshold(test);
    } else {
      kinds.fact(test.fact()).ifPresentOrElse(type -> asked(test, type), () -> needs(test, ORDER));
    }
  }

  private void asked(Condition.Test test, FactType type) {
    if (type instanceof FactType.YesNo) {
      needs(test, List.of("is"));
      flag(test.value());
    } else if (type instanceof FactType.Amount) {
      needs(test, ORDER);
    } else if (type instanceof FactType.OneOf one) {
      needs(test, one.isScale() ? List.of("<", "<=", ">", ">=", "is", "in") : List.of("is", "in"));
      codes(test.value(), codesOf(type), "an answer of \"" + test.fact() + "\"");
    } else if (type instanceof FactType.SeveralOf) {
      needs(test, List.of("has"));
      codes(test.value(), codesOf(type), "an answer of \"" + test.fact() + "\"");
    } else {
      report(
          test.factWhere(),
          "wrong-op",
          "Free words cannot be compared.",
          "Ask a question with answers to pick from.");
    }
  }

  private static List<String> codesOf(FactType type) {
    return type.choices().stream().map(Option::code).toList();
  }

  private void needs(Condition.Test test, List<String> operators) {
    if (!operators.contains(test.operator())) {
      report(
          test.operatorWhere(),
          "wrong-op",
          "\"" + test.operator() + "\" does not fit \"" + test.fact() + "\".",
          "Use " + String.join(" or ", operators) + ".");
    }
  }

  private void threshold(Condition.Test test) {
    if (!(test.value() instanceof Operand.Number number)) {
      report(test.value().where(), "wrong-type", "A number is needed here.", "");
      return;
    }
    Optional<double[]> range = kinds.range(test.fact());
    if (range.isPresent() && (number.value() < range.get()[0] || number.value() > range.get()[1])) {
      report(
          number.where(),
          "out-of-range",
          "\""
              + test.fact()
              + "\" goes from "
              + plain(range.get()[0])
              + " to "
              + plain(range.get()[1])
              + ".",
          "");
    }
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private void flag(Operand value) {
    if (!(value instanceof Operand.Flag)) {
      report(value.where(), "wrong-type", "true or false is needed here.", "");
    }
  }

  private void codes(Operand value, List<String> known, String what) {
    if (value instanceof Operand.Codes several) {
      several.values().forEach(code -> code(code.value(), code.where(), known, what));
    } else if (value instanceof Operand.Code one) {
      code(one.value(), one.where(), known, what);
    } else if (value instanceof Operand.Number number) {
      code(plain(number.value()), number.where(), known, what);
    } else {
      report(value.where(), "wrong-type", "A code is needed here.", "");
    }
  }

  private void code(String code, Where where, List<String> known, String what) {
    if (!known.contains(code)) {
      report(
          where,
          "unknown-value",
          "\"" + code + "\" is not " + what + " (" + String.join(", ", known) + ").",
          Hint.didYouMean(code, known));
    }
  }

  private void report(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
