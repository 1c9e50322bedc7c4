package closehand.interview;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Answers in plain words. */
public final class Wording {
  /** Units that read better as words: what one is called, and what several are called. */
  private static final Map<String, List<String>> UNITS =
      Map.ofEntries(
          Map.entry("s", List.of("second", "seconds")),
          Map.entry("min", List.of("minute", "minutes")),
          Map.entry("h", List.of("hour", "hours")),
          Map.entry("d", List.of("day", "days")),
          Map.entry("wk", List.of("week", "weeks")),
          Map.entry("a", List.of("year", "years")),
          Map.entry("min/d", List.of("minute a day", "minutes a day")),
          Map.entry("h/d", List.of("hour a day", "hours a day")),
          Map.entry("/wk", List.of("time a week", "times a week")),
          Map.entry("/min", List.of("time a minute", "times a minute")),
          Map.entry("/(10.s)", List.of("in 10 seconds", "in 10 seconds")),
          Map.entry("{press}", List.of("tap", "taps")),
          Map.entry("{score}", List.of("", "")),
          Map.entry("1", List.of("", "")),
          Map.entry("deg", List.of("degree", "degrees")),
          Map.entry("%", List.of("%", "%")));

  private Wording() {}

  /** An answer as a person would say it: "Moves alone, but small or slow", "12 cm". */
  public static String of(Field field, Answer answer) {
    return answer instanceof Answer.Given given
        ? of(field.type(), given.value())
        : of(((Answer.Absent) answer).reason());
  }

  /** A value as a person would say it; an unknown code stands as it is. */
  public static String of(FactType type, Value value) {
    if (value instanceof Value.Flag flag) {
      return flag.value() ? "Yes" : "No";
    }
    if (value instanceof Value.Number number) {
      String unit = type instanceof FactType.Amount amount ? amount.unit() : "";
      return withUnit(number.value(), unit);
    }
    if (value instanceof Value.Code code) {
      return display(type, code.code());
    }
    if (value instanceof Value.Codes codes) {
      return codes.codes().isEmpty()
          ? "None of these"
          : String.join(", ", codes.codes().stream().map(c -> display(type, c)).toList());
    }
    return value instanceof Value.Text text
        ? text.words()
        : String.join(", ", ((Value.Texts) value).words());
  }

  /** The honest ways of giving no value, in words. */
  public static String of(Answer.Reason reason) {
    return switch (reason) {
      case UNKNOWN -> "don't know";
      case DECLINED -> "rather not say";
      case NOT_APPLICABLE -> "does not apply";
      case LATER -> "ask me later";
    };
  }

  /** A number without needless zeros and with a point. */
  public static String number(double value) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
        : Double.toString(value);
  }

  /** What a field takes, as one or two sentences. */
  public static String accepted(FactType type) {
    if (type instanceof FactType.YesNo) {
      return "Please answer yes or no.";
    }
    if (type instanceof FactType.Amount amount) {
      return accepted(amount);
    }
    if (type instanceof FactType.OneOf) {
      return "Please pick one: " + numbered(type) + ".";
    }
    if (type instanceof FactType.SeveralOf) {
      return "Please pick any of these, or none: " + numbered(type) + ".";
    }
    return type instanceof FactType.Words words
        ? "Please write at most " + words.maximumLength() + " characters."
        : "Please write a list with commas, each entry once, at most "
            + Validity.LONGEST_WORD
            + " characters each.";
  }

  private static String accepted(FactType.Amount amount) {
    return "Please give a "
        + (amount.decimals() == 0 ? "whole number" : "number")
        + " from "
        + number(amount.minimum())
        + " to "
        + withUnit(amount.maximum(), amount.unit())
        + (amount.decimals() == 0
            ? "."
            : ", with at most " + amount.decimals() + plural(amount.decimals(), " decimal") + ".");
  }

  private static String plural(int count, String word) {
    return count == 1 ? word : word + "s";
  }

  private static String numbered(FactType type) {
    List<String> shown = new ArrayList<>();
    for (Option option : type.choices()) {
      shown.add((shown.size() + 1) + " " + option.display());
    }
    return String.join(", ", shown);
  }

  private static String withUnit(double value, String unit) {
    String word = unit(unit, value == 1);
    String gap = word.isEmpty() || word.equals("%") ? "" : " ";
    return number(value) + gap + word;
  }

  /** A unit in words; units without words of their own stand as they are, such as {@code cm}. */
  static String unit(String code, boolean one) {
    List<String> words = UNITS.get(code);
    if (words != null) {
      return one ? words.get(0) : words.get(1);
    }
    return code.startsWith("{") && code.endsWith("}") ? code.substring(1, code.length() - 1) : code;
  }

  private static String display(FactType type, String code) {
    return type.option(code).map(Option::display).orElse(code);
  }
}
