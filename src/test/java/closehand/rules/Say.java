package closehand.rules;

import closehand.bank.Condition;
import closehand.bank.Condition.Operand;
import closehand.bank.EnableWhen;
import closehand.bank.Where;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Provenance;
import closehand.interview.Value;
import java.util.Arrays;
import java.util.List;

/** Conditions and answers in as few words as a story needs. */
final class Say {
  static final Where HERE = Where.file("invented bank");

  private Say() {}

  /** One comparison; the value is a Boolean, a Number, a String or a list of Strings. */
  static Condition test(String fact, String operator, Object value) {
    return new Condition.Test(fact, operator, operand(value), HERE, HERE, HERE);
  }

  static Condition is(String fact, Object value) {
    return test(fact, "is", value);
  }

  static Condition in(String fact, String... codes) {
    return test(fact, "in", List.of(codes));
  }

  static Condition has(String fact, String code) {
    return test(fact, "has", code);
  }

  static Condition how(String fact, String... ways) {
    return test(fact, "how", List.of(ways));
  }

  static Condition all(Condition... parts) {
    return new Condition.All(List.of(parts), HERE);
  }

  static Condition any(Condition... parts) {
    return new Condition.Any(List.of(parts), HERE);
  }

  static Condition not(Condition part) {
    return new Condition.Not(part, HERE);
  }

  static Condition atLeast(int count, Condition... parts) {
    return new Condition.AtLeast(count, List.of(parts), HERE);
  }

  static Condition always() {
    return new Condition.Always(HERE);
  }

  static Condition anyGame(Condition part) {
    return new Condition.AnyGame(part, HERE);
  }

  static Condition everyGame(Condition part) {
    return new Condition.EveryGame(part, HERE);
  }

  private static Operand operand(Object value) {
    if (value instanceof Boolean flag) {
      return new Operand.Flag(flag, HERE);
    }
    if (value instanceof Number number) {
      return new Operand.Number(number.doubleValue(), HERE);
    }
    if (value instanceof String code) {
      return new Operand.Code(code, HERE);
    }
    return new Operand.Codes(
        ((List<?>) value).stream().map(c -> new Operand.Code((String) c, HERE)).toList(), HERE);
  }

  /** Applies when the fact equals the value. */
  static EnableWhen when(String fact, Object value) {
    return when(fact, EnableWhen.Operator.EQUAL, value);
  }

  static EnableWhen when(String fact, EnableWhen.Operator operator, Object value) {
    return new EnableWhen(List.of(enableTest(fact, operator, value)), true);
  }

  static EnableWhen whenAny(EnableWhen... parts) {
    return new EnableWhen(Arrays.stream(parts).flatMap(p -> p.tests().stream()).toList(), false);
  }

  private static EnableWhen.Test enableTest(
      String fact, EnableWhen.Operator operator, Object value) {
    EnableWhen.Expected expected;
    if (value instanceof Boolean flag) {
      expected = new EnableWhen.Expected.Flag(flag);
    } else if (value instanceof Number number) {
      expected = new EnableWhen.Expected.Number(number.doubleValue(), number instanceof Integer);
    } else if (value instanceof Text text) {
      expected = new EnableWhen.Expected.Text(text.words());
    } else {
      expected = new EnableWhen.Expected.Coded("", (String) value);
    }
    return new EnableWhen.Test(fact, operator, expected, HERE);
  }

  /** Free words, where a plain String would be a code. */
  record Text(String words) {}

  /** Answers as pairs of fact id and value: Boolean, Number, String code, list of codes, reason. */
  static Answers answers(Object... pairs) {
    Answers answers = Answers.NONE;
    for (int i = 0; i < pairs.length; i += 2) {
      answers = with(answers, (String) pairs[i], pairs[i + 1]);
    }
    return answers;
  }

  static Answers with(Answers answers, String fact, Object value) {
    return answers.with(fact, new Answers.Recorded(answer(value), Provenance.PLAYER_TOLD));
  }

  static Answers lowering(Answers answers, String code) {
    return answers.lowering(
        new Answers.Lowered(code, "Invented Clinician", "2026-01-01", "invented"));
  }

  private static Answer answer(Object value) {
    if (value instanceof Answer.Reason reason) {
      return new Answer.Absent(reason);
    }
    if (value instanceof Boolean flag) {
      return new Answer.Given(new Value.Flag(flag));
    }
    if (value instanceof Number number) {
      return new Answer.Given(new Value.Number(number.doubleValue()));
    }
    if (value instanceof Text text) {
      return new Answer.Given(new Value.Text(text.words()));
    }
    if (value instanceof String code) {
      return new Answer.Given(new Value.Code(code));
    }
    return new Answer.Given(
        new Value.Codes(((List<?>) value).stream().map(c -> (String) c).toList()));
  }
}
