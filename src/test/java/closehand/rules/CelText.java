package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.Condition.Operand;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import java.util.ArrayList;
import java.util.List;

/** Rules in the Common Expression Language; every number is a double. */
final class CelText extends OracleText {
  CelText(Bank bank) {
    super(bank);
  }

  @Override
  String and(List<String> parts) {
    return join(parts, " && ");
  }

  @Override
  String or(List<String> parts) {
    return join(parts, " || ");
  }

  @Override
  String not(String part) {
    return "(!" + part + ")";
  }

  @Override
  String leaf(Field field, String operator, Operand value) {
    if (field.type() instanceof FactType.SeveralOf) {
      return variable(field.fact(), ((Operand.Code) value).value());
    }
    if (value instanceof Operand.Flag flag) {
      return flag.value() ? field.fact() : "(!" + field.fact() + ")";
    }
    if (value instanceof Operand.Codes codes) {
      List<String> quoted = codes.values().stream().map(c -> "'" + c.value() + "'").toList();
      return "(" + field.fact() + " in [" + String.join(", ", quoted) + "])";
    }
    if (value instanceof Operand.Code code) {
      return "(" + field.fact() + " == '" + code.value() + "')";
    }
    return "(" + field.fact() + " " + operator + " " + ((Operand.Number) value).value() + ")";
  }

  @Override
  String count(Field field, String operator, double number) {
    List<String> picked = new ArrayList<>();
    for (Option option : field.type().choices()) {
      if (!option.exclusive()) {
        picked.add("(" + variable(field.fact(), option.code()) + " ? 1.0 : 0.0)");
      }
    }
    return "(" + join(picked, " + ") + " " + operator + " " + number + ")";
  }

  /** The variable of one option of a list of answers. */
  static String variable(String fact, String option) {
    return fact + "_" + option;
  }
}
