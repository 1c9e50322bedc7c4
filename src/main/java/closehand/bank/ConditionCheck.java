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
    } else if (condition instanceof Condition.AnyGame any) {
      game(any.part(), any.where());
    } else if (condition instanceof Condition.EveryGame every) {
      game(every.part(), every.where());
    } else {
      parts(condition).forEach(this::check);
    }
  }

  /** Whether the condition or any part of it asks how something is known. */
  static boolean asksHow(Condition condition) {
    return tests(condition).stream().anyMatch(t -> t.operator().equals("how"));
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

  private void game(Condition part, Where where) {
    if (inGame) {
      report(
          where,
          "condition-shape",
          "A condition about games stands inside another one.",
          "Put the two side by side.");
      return;
    }
    inGame = true;
    check(part);
    inGame = false;
  }

  private void test(Condition.Test test) {
    if (!kinds.known(test.fact())) {
      if (kinds.complete()) {
        report(
            test.factWhere(),
            "unknown-fact",
            "\"" + test.fact() + "\" is neither asked nor worked out in this bank.",
            Hint.didYouMean(test.fact(), kinds.names()));
      }
      return;
    }
    if (test.fact().startsWith(FactKinds.GAME) && !inGame) {
      report(
          test.factWhere(),
          "condition-shape",
          "\"" + test.fact() + "\" needs anyGame or everyGame around it.",
          "Or name one game, such as games.1.genre.");
      return;
    }
    if (test.operator().equals("how")) {
      how(test);
    } else if (kinds.judged(test.fact())) {
      compared(test);
    }
  }

  private void how(Condition.Test test) {
    if (kinds.fact(test.fact()).isEmpty()) {
      report(
          test.operatorWhere(),
          "wrong-op",
          "\"" + test.fact() + "\" is not asked, so nobody can say how it is known.",
          "Name the question behind it.");
    } else {
      list(test, KNOWLEDGE, "a way of knowing something");
    }
  }

  private void compared(Condition.Test test) {
    if (test.fact().equals(FactKinds.CLEARED)) {
      if (fits(test, List.of("has")) && kinds.cautions().isPresent()) {
        one(test, kinds.cautions().get(), "a caution");
      }
    } else if (kinds.term(test.fact()).orElse(null) instanceof Term.Derived) {
      yesNo(test);
    } else if (kinds.span(test.fact()).isPresent() && ORDER.contains(test.operator())) {
      threshold(test, kinds.span(test.fact()).get());
    } else {
      kinds.fact(test.fact()).ifPresentOrElse(type -> asked(test, type), () -> fits(test, ORDER));
    }
  }

  private void asked(Condition.Test test, FactType type) {
    if (type instanceof FactType.YesNo) {
      yesNo(test);
    } else if (type instanceof FactType.Amount) {
      fits(test, ORDER);
    } else if (type instanceof FactType.OneOf one) {
      choice(test, one);
    } else if (type instanceof FactType.SeveralOf) {
      if (fits(test, List.of("has"))) {
        one(test, codesOf(type), answerOf(test));
      }
    } else {
      report(
          test.factWhere(),
          "wrong-op",
          "\"" + test.fact() + "\" is answered in free words, which cannot be compared.",
          "Ask a question with answers to pick from.");
    }
    otherGames(test, type);
  }

  /** A condition about "any game" reads the same answers of every game. */
  private void otherGames(Condition.Test test, FactType type) {
    if (!test.fact().startsWith(FactKinds.GAME)) {
      return;
    }
    for (int slot : kinds.slots()) {
      String name = "games." + slot + "." + test.fact().substring(FactKinds.GAME.length());
      Optional<FactType> other = kinds.fact(name);
      if (other.isEmpty() || !codesOf(other.get()).containsAll(used(test.value(), type))) {
        report(
            test.factWhere(),
            "unknown-fact",
            "\"" + name + "\" is not asked with the same answers as games.1.",
            "Ask the same about every game.");
        return;
      }
    }
  }

  private static List<String> used(Operand value, FactType type) {
    List<String> known = codesOf(type);
    if (value instanceof Operand.Codes codes) {
      return codes.values().stream().map(Operand.Code::value).filter(known::contains).toList();
    }
    return value instanceof Operand.Code code && known.contains(code.value())
        ? List.of(code.value())
        : List.of();
  }

  private void choice(Condition.Test test, FactType.OneOf type) {
    List<String> operators =
        type.isScale() ? List.of("<", "<=", ">", ">=", "is", "in") : List.of("is", "in");
    if (!fits(test, operators)) {
      return;
    }
    if (test.operator().equals("in")) {
      list(test, codesOf(type), answerOf(test));
    } else if (test.value() instanceof Operand.Number number && type.isScale()) {
      if (type.options().stream().noneMatch(o -> o.ordinal().orElse(0) == number.value())) {
        code(plain(number.value()), number.where(), codesOf(type), answerOf(test));
      }
    } else {
      one(test, codesOf(type), answerOf(test));
    }
  }

  private static String answerOf(Condition.Test test) {
    return "an answer of \"" + test.fact() + "\"";
  }

  private static List<String> codesOf(FactType type) {
    return type.choices().stream().map(Option::code).toList();
  }

  private boolean fits(Condition.Test test, List<String> operators) {
    if (operators.contains(test.operator())) {
      return true;
    }
    report(
        test.operatorWhere(),
        "wrong-op",
        "\"" + test.operator() + "\" does not fit \"" + test.fact() + "\".",
        operators.equals(ORDER)
            ? "Use <, <=, > or >=; for one number use both <= and >=."
            : "Use \"" + String.join("\" or \"", operators) + "\".");
    return false;
  }

  private void threshold(Condition.Test test, FactKinds.Span span) {
    if (!(test.value() instanceof Operand.Number number)) {
      report(test.value().where(), "wrong-type", "A number is needed here.", "");
      return;
    }
    boolean outside = number.value() < span.low() || number.value() > span.high();
    boolean whole =
        kinds.fact(test.fact()).orElse(null) instanceof FactType.Amount amount
            && amount.decimals() == 0;
    String range = "\"" + test.fact() + "\" goes from " + plain(span.low()) + " to ";
    if (outside) {
      report(number.where(), "out-of-range", range + plain(span.high()) + ".", "");
    } else if (whole && number.value() != Math.rint(number.value())) {
      report(number.where(), "wrong-type", "\"" + test.fact() + "\" takes whole numbers only.", "");
    } else if (never(test.operator(), number.value(), span)) {
      report(
          number.where(),
          "out-of-range",
          range + plain(span.high()) + ", so this comparison never holds.",
          "Check the number and the comparison.");
    }
  }

  private static boolean never(String operator, double value, FactKinds.Span span) {
    return (operator.equals("<") && value == span.low())
        || (operator.equals(">") && value == span.high());
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private void yesNo(Condition.Test test) {
    if (fits(test, List.of("is")) && !(test.value() instanceof Operand.Flag)) {
      report(
          test.value().where(), "wrong-type", "true or false is needed here, without quotes.", "");
    }
  }

  private void one(Condition.Test test, List<String> known, String what) {
    if (test.value() instanceof Operand.Code code) {
      code(code.value(), code.where(), known, what);
    } else if (test.value() instanceof Operand.Codes codes) {
      report(
          codes.where(),
          "wrong-type",
          "\"" + test.operator() + "\" takes one code, not a list.",
          test.operator().equals("is")
              ? "For several write \"in\"."
              : "For several write one comparison each, under \"any\" or \"all\".");
    } else {
      report(test.value().where(), "wrong-type", "A code in quotes is needed here.", "");
    }
  }

  private void list(Condition.Test test, List<String> known, String what) {
    if (test.value() instanceof Operand.Codes codes) {
      codes.values().forEach(code -> code(code.value(), code.where(), known, what));
    } else {
      report(
          test.value().where(),
          "wrong-type",
          "\"" + test.operator() + "\" takes a list.",
          "Put brackets around it.");
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
