package closehand.report;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Questionnaire;
import closehand.interview.Value;
import closehand.interview.Wording;
import closehand.rules.Change.To;
import closehand.rules.Standing;
import java.util.Optional;

/**
 * An answer that would change how an approach stands.
 *
 * @param fact the fact that would be answered differently
 * @param whatWouldBe that answer in words, such as "Loud"
 * @param becomes how the approach would stand then
 */
public record Change(String fact, String whatWouldBe, Standing.Status becomes) {

  /** The same as the rules put it, in words. */
  public static Change of(Questionnaire questionnaire, closehand.rules.Change change) {
    FactType type =
        Optional.ofNullable(questionnaire.fieldsByFact().get(change.fact()))
            .map(Field::type)
            .orElse(new FactType.YesNo());
    return new Change(change.fact(), words(type, change.to()), change.status());
  }

  private static String words(FactType type, To to) {
    if (to instanceof To.Flag flag) {
      return flag.value() ? "Yes" : "No";
    }
    if (to instanceof To.Between between) {
      return range(type, between);
    }
    if (to instanceof To.Option option) {
      return Wording.of(type, new Value.Code(option.code()));
    }
    if (to instanceof To.Counted counted) {
      return counted(type, counted);
    }
    To.Picked picked = (To.Picked) to;
    String name = Wording.of(type, new Value.Code(picked.code()));
    if (!picked.picked()) {
      return "without " + name;
    }
    return name;
  }

  private static String counted(FactType type, To.Counted counted) {
    long most = type.choices().stream().filter(o -> !o.exclusive()).count();
    if (counted.greatest() >= most) {
      return counted.least() + " of them or more";
    }
    if (counted.least() == 0) {
      return counted.greatest() == 0 ? "none of them" : counted.greatest() + " of them or fewer";
    }
    return counted.least() == counted.greatest()
        ? counted.least() + " of them"
        : "from " + counted.least() + " to " + counted.greatest() + " of them";
  }

  private static String range(FactType type, To.Between between) {
    String least = Wording.of(type, new Value.Number(between.least()));
    String most = Wording.of(type, new Value.Number(between.greatest()));
    if (type instanceof FactType.Amount amount) {
      if (between.greatest() >= amount.maximum()) {
        return least + " or more";
      }
      if (between.least() <= amount.minimum()) {
        return between.greatest() == amount.minimum() ? most : most + " or less";
      }
    }
    return least.equals(most) ? least : "from " + Wording.number(between.least()) + " to " + most;
  }
}
