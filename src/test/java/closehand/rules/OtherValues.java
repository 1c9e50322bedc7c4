package closehand.rules;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every other value a question can take, and whether a change speaks of it. */
final class OtherValues {
  private OtherValues() {}

  /** Every other value; of a list of answers every list with one pick more or less. */
  static List<Value> of(RuleBook book, Answers now, String fact) {
    Field field =
        Optional.ofNullable(book.bank().questionnaire().fieldsByFact().get(fact)).orElseThrow();
    List<Value> others = new ArrayList<>();
    if (field.type() instanceof FactType.YesNo) {
      others.add(new Value.Flag(true));
      others.add(new Value.Flag(false));
    } else if (field.type() instanceof FactType.Amount amount) {
      double step = Math.pow(10, -amount.decimals());
      for (double n = amount.minimum(); n <= amount.maximum() + step / 2; n += step) {
        others.add(new Value.Number(Math.round(n / step) * step));
      }
    } else if (field.type() instanceof FactType.SeveralOf) {
      Value.Codes picked = (Value.Codes) now.value(fact).orElseThrow();
      field.type().choices().forEach(o -> others.add(toggled(picked, o, field.type())));
    } else {
      field.type().choices().forEach(o -> others.add(new Value.Code(o.code())));
    }
    others.removeIf(v -> now.value(fact).equals(Optional.of(v)));
    return others;
  }

  private static Value toggled(Value.Codes picked, Option option, FactType type) {
    if (option.exclusive()) {
      return new Value.Codes(List.of(option.code()));
    }
    List<String> codes = new ArrayList<>(picked.codes());
    codes.removeIf(c -> type.option(c).filter(Option::exclusive).isPresent());
    if (!codes.remove(option.code())) {
      codes.add(option.code());
    }
    List<String> none =
        type.choices().stream().filter(Option::exclusive).map(Option::code).toList();
    return new Value.Codes(
        codes.isEmpty() && !none.isEmpty() ? none.subList(0, 1) : List.copyOf(codes));
  }

  /** The same answers with this one instead, known in the same way. */
  static Answers with(Answers now, String fact, Value value) {
    Answers.Recorded before = Optional.ofNullable(now.byFact().get(fact)).orElseThrow();
    return now.with(fact, new Answers.Recorded(new Answer.Given(value), before.provenance()));
  }

  /** Whether a change speaks of this value. */
  static boolean means(Change.To to, Value value, Value now) {
    if (to instanceof Change.To.Between range && value instanceof Value.Number number) {
      return range.least() - 1e-9 <= number.value() && number.value() <= range.greatest() + 1e-9;
    }
    if (to instanceof Change.To.Option option) {
      return value.equals(new Value.Code(option.code()));
    }
    if (to instanceof Change.To.Flag flag) {
      return value.equals(new Value.Flag(flag.value()));
    }
    if (to instanceof Change.To.Counted counted && value instanceof Value.Codes codes) {
      long picked = codes.codes().stream().filter(c -> !c.equals("none")).count();
      return counted.least() <= picked && picked <= counted.greatest();
    }
    if (to instanceof Change.To.Picked pick
        && value instanceof Value.Codes then
        && now instanceof Value.Codes before) {
      boolean others =
          pick.picked() || then.codes().size() >= before.codes().size() - 1 && isLeft(then, before);
      return then.codes().contains(pick.code()) == pick.picked()
          && before.codes().contains(pick.code()) != pick.picked()
          && others;
    }
    return false;
  }

  /** Whether it is what is left after one pick is taken off. */
  private static boolean isLeft(Value.Codes then, Value.Codes before) {
    return before.codes().containsAll(then.codes()) || before.codes().size() == 1;
  }
}
