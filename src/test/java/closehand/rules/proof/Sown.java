package closehand.rules.proof;

import closehand.bank.CautionClass;
import closehand.bank.Condition;
import closehand.bank.Rule;
import closehand.bank.Where;
import java.util.List;

/** Conditions and effects of the rules that are planted. */
final class Sown {
  private static final Where HERE = Where.file("planted");

  private Sown() {}

  static Rule.Effects excludes(List<Rule.Located> out) {
    return new Rule.Effects(out, List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
  }

  static Rule.Effects points(String approach, int points) {
    return new Rule.Effects(
        List.of(),
        List.of(new Rule.Support(approach, points, HERE)),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  static Rule.Effects effort(String use) {
    Rule.Effort effort = new Rule.Effort(List.of("L.T"), List.of(use), 2);
    return new Rule.Effects(
        List.of(), List.of(), List.of(), List.of(), List.of(effort), List.of(), List.of());
  }

  static Rule.Effects raises(String caution) {
    return new Rule.Effects(
        List.of(),
        List.of(),
        List.of(new Rule.Raised(caution, CautionClass.CARE, HERE)),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  static Condition is(String fact, boolean value) {
    return new Condition.Test(
        fact, "is", new Condition.Operand.Flag(value, HERE), HERE, HERE, HERE);
  }

  static Condition at(String fact, String operator, double value) {
    return new Condition.Test(
        fact, operator, new Condition.Operand.Number(value, HERE), HERE, HERE, HERE);
  }

  static Condition all(Condition... parts) {
    return new Condition.All(List.of(parts), HERE);
  }

  static Condition any(Condition... parts) {
    return new Condition.Any(List.of(parts), HERE);
  }
}
