package closehand.interview;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.FlatValue;
import closehand.bank.Hint;
import closehand.bank.Option;
import closehand.bank.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Matches one flat value with the kind of its question. */
final class FlatMatcher {
  private final List<Problem> problems;

  FlatMatcher(List<Problem> problems) {
    this.problems = problems;
  }

  /** The answer; empty when nothing was written or a problem was noted. */
  Optional<Answer> answer(Field field, FlatValue value) {
    if (value instanceof FlatValue.Absent absent) {
      return absent(field, absent);
    }
    return value(field, value).map(Answer.Given::new);
  }

  private Optional<Answer> absent(Field field, FlatValue.Absent absent) {
    Optional<Answer.Reason> reason = Answer.Reason.of(absent.reason());
    if (reason.isEmpty()) {
      String known =
          Arrays.stream(Answer.Reason.values())
              .map(Answer.Reason::code)
              .collect(Collectors.joining(", "));
      note(
          field,
          absent,
          "unknown-value",
          " cannot be absent for that reason.",
          "Say one of " + known + ".");
    }
    return reason.map(Answer.Absent::new);
  }

  private Optional<Value> value(Field field, FlatValue value) {
    FactType type = field.type();
    if (type instanceof FactType.YesNo) {
      if (value instanceof FlatValue.Flag flag) {
        return Optional.of(new Value.Flag(flag.value()));
      }
      return wrongType(field, value, "true or false");
    }
    if (type instanceof FactType.Amount amount) {
      if (value instanceof FlatValue.Number number) {
        return number(field, amount, number);
      }
      return wrongType(field, value, "a number");
    }
    if (type instanceof FactType.OneOf one) {
      return one(field, one, value);
    }
    if (type instanceof FactType.SeveralOf several) {
      if (value instanceof FlatValue.Texts picks) {
        return several(field, several, picks);
      }
      return wrongType(field, value, "a list of answers");
    }
    return words(field, type, value);
  }

  private Optional<Value> number(Field field, FactType.Amount amount, FlatValue.Number number) {
    if (!(number.value() >= amount.minimum() && number.value() <= amount.maximum())) {
      String range = text(amount.minimum()) + " to " + text(amount.maximum());
      note(field, number, "out-of-range", " goes from " + range + ".", "");
      return Optional.empty();
    }
    int decimals = BigDecimal.valueOf(number.value()).stripTrailingZeros().scale();
    if (decimals > amount.decimals()) {
      String most =
          amount.decimals() == 0
              ? " is a whole number."
              : " has at most " + amount.decimals() + " digits after the point.";
      note(field, number, "too-many-decimals", most, "");
      return Optional.empty();
    }
    return Optional.of(new Value.Number(number.value()));
  }

  private Optional<Value> one(Field field, FactType.OneOf type, FlatValue value) {
    if (value instanceof FlatValue.Text code) {
      if (type.option(code.value()).isPresent()) {
        return Optional.of(new Value.Code(code.value()));
      }
      return unknownOption(field, value, code.value());
    }
    if (value instanceof FlatValue.Number number) {
      Optional<Option> option =
          type.option(text(number.value()))
              .or(
                  () ->
                      type.options().stream()
                          .filter(o -> o.ordinal().orElse(Double.NaN) == number.value())
                          .findFirst());
      if (option.isPresent()) {
        return Optional.of(new Value.Code(option.get().code()));
      }
      return unknownOption(field, value, text(number.value()));
    }
    return wrongType(field, value, "one answer");
  }

  private Optional<Value> several(Field field, FactType.SeveralOf type, FlatValue.Texts picks) {
    for (String code : picks.values()) {
      if (type.option(code).isEmpty()) {
        return unknownOption(field, picks, code);
      }
    }
    if (new HashSet<>(picks.values()).size() < picks.values().size()) {
      note(field, picks, "duplicate-pick", " names an answer twice.", "Keep it once.");
      return Optional.empty();
    }
    List<Option> picked = new ArrayList<>();
    for (Option option : type.options()) {
      if (picks.values().contains(option.code())) {
        picked.add(option);
      }
    }
    Optional<Option> alone = picked.stream().filter(Option::exclusive).findFirst();
    if (alone.isPresent() && picked.size() > 1) {
      note(
          field,
          picks,
          "exclusive-option",
          " has \"" + alone.get().code() + "\" beside other answers.",
          "Keep \"" + alone.get().code() + "\" or the others.");
      return Optional.empty();
    }
    return Optional.of(new Value.Codes(picked.stream().map(Option::code).toList()));
  }

  private Optional<Value> words(Field field, FactType type, FlatValue value) {
    if ((value instanceof FlatValue.Texts texts && texts.values().isEmpty())
        || (value instanceof FlatValue.Text text && text.value().isEmpty())) {
      return Optional.empty();
    }
    if (type instanceof FactType.Words limit) {
      if (!(value instanceof FlatValue.Text text)) {
        return wrongType(field, value, "text");
      }
      if (text.value().codePointCount(0, text.value().length()) > limit.maximumLength()) {
        String most = " has at most " + limit.maximumLength() + " characters.";
        note(field, value, "too-long", most, "Shorten it.");
        return Optional.empty();
      }
      return Optional.of(new Value.Text(text.value()));
    }
    if (value instanceof FlatValue.Texts texts) {
      return Optional.of(new Value.Texts(texts.values()));
    }
    return wrongType(field, value, "a list of words");
  }

  private Optional<Value> unknownOption(Field field, FlatValue value, String code) {
    List<String> known = field.type().choices().stream().map(Option::code).toList();
    problems.add(
        Problem.error(
            value.where(),
            "unknown-value",
            "This is not an answer of "
                + FactWords.of(field.fact())
                + ". The answers are "
                + String.join(
                    ", ", field.type().choices().stream().map(FlatMatcher::named).toList())
                + ".",
            Hint.didYouMean(code, known)));
    return Optional.empty();
  }

  /** A code with its name beside it, where the name says more. */
  private static String named(Option option) {
    return option.code().equalsIgnoreCase(option.display())
        ? option.code()
        : option.code() + " (" + option.display() + ")";
  }

  private Optional<Value> wrongType(Field field, FlatValue value, String needed) {
    note(field, value, "wrong-type", " needs " + needed + ".", "");
    return Optional.empty();
  }

  private void note(Field field, FlatValue value, String code, String rest, String mend) {
    problems.add(Problem.error(value.where(), code, FactWords.of(field.fact()) + rest, mend));
  }

  /** A number without a point where it is whole. */
  private static String text(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
