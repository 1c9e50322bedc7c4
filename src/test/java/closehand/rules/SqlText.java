package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.Condition.Operand;
import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.interview.Answers;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rules as SQL over one row of answers, NULL where there is none. */
final class SqlText extends OracleText {
  SqlText(Bank bank) {
    super(bank);
  }

  @Override
  String and(List<String> parts) {
    return join(parts, " AND ");
  }

  @Override
  String or(List<String> parts) {
    return join(parts, " OR ");
  }

  @Override
  String not(String part) {
    return "(NOT " + part + ")";
  }

  @Override
  String leaf(Field field, String operator, Operand value) {
    return unlessInapplicable(field, "FALSE", bare(field, operator, value));
  }

  @Override
  String inputOfAll(Field field, String operator, Operand value) {
    return unlessInapplicable(field, "TRUE", bare(field, operator, value));
  }

  /** One applies surely when it has an answer that counts; unanswered, as far as its gate says. */
  @Override
  Optional<String> someApply(List<Field> of) {
    return Optional.of(
        or(
            of.stream()
                .map(
                    f ->
                        unlessInapplicable(
                            f,
                            "FALSE",
                            "(" + column(f.fact()) + " IS NOT NULL OR " + gate(f) + ")"))
                .toList()));
  }

  @Override
  String count(Field field, String operator, double number) {
    List<String> picked = new ArrayList<>();
    for (Option option : field.type().choices()) {
      if (!option.exclusive()) {
        String slot = column(field.fact(), option.code());
        picked.add("CASE WHEN " + slot + " THEN 1 WHEN NOT " + slot + " THEN 0 END");
      }
    }
    return unlessInapplicable(
        field, "FALSE", "(" + join(picked, " + ") + " " + operator + " " + number + ")");
  }

  private static String bare(Field field, String operator, Operand value) {
    if (field.type() instanceof FactType.SeveralOf) {
      return column(field.fact(), ((Operand.Code) value).value());
    }
    String column = column(field.fact());
    if (value instanceof Operand.Flag flag) {
      return flag.value() ? column : "(NOT " + column + ")";
    }
    if (value instanceof Operand.Codes codes) {
      return column
          + " IN "
          + join(codes.values().stream().map(c -> "'" + c.value() + "'").toList(), ", ");
    }
    if (value instanceof Operand.Code code) {
      return "(" + column + " = '" + code.value() + "')";
    }
    return "(" + column + " " + operator + " " + ((Operand.Number) value).value() + ")";
  }

  private String unlessInapplicable(Field field, String then, String text) {
    return field.conditions().isEmpty()
        ? text
        : "(CASE WHEN " + gate(field) + " IS FALSE THEN " + then + " ELSE " + text + " END)";
  }

  private String gate(Field field) {
    List<String> parts = new ArrayList<>();
    for (EnableWhen condition : field.conditions()) {
      List<String> tests = condition.tests().stream().map(this::enable).toList();
      parts.add(condition.all() ? and(tests) : or(tests));
    }
    return parts.isEmpty() ? "TRUE" : and(parts);
  }

  private String enable(EnableWhen.Test test) {
    Field field = field(test.fact());
    String text;
    if (test.operator() == EnableWhen.Operator.EXISTS) {
      text = "(CASE WHEN " + column(field.fact()) + " IS NOT NULL THEN TRUE ELSE NULL END)";
    } else if (test.expected() instanceof EnableWhen.Expected.Coded coded) {
      String operator = test.operator().code();
      text =
          field.type() instanceof FactType.SeveralOf
              ? picked(field, coded.code(), test.operator())
              : "(" + column(field.fact()) + " " + operator + " '" + coded.code() + "')";
    } else if (test.expected() instanceof EnableWhen.Expected.Flag flag) {
      text = "(" + column(field.fact()) + " " + test.operator().code() + " " + flag.value() + ")";
    } else {
      double number = ((EnableWhen.Expected.Number) test.expected()).value();
      text = "(" + column(field.fact()) + " " + test.operator().code() + " " + number + ")";
    }
    return unlessInapplicable(field, "FALSE", text);
  }

  /** "=" is that the option is picked, "!=" that some other one is. */
  private String picked(Field field, String code, EnableWhen.Operator operator) {
    boolean same = operator == EnableWhen.Operator.EQUAL;
    return or(
        field.type().choices().stream()
            .map(Option::code)
            .filter(c -> c.equals(code) == same)
            .map(c -> column(field.fact(), c))
            .toList());
  }

  static String column(String fact) {
    return "f_" + fact;
  }

  static String column(String fact, String option) {
    return column(fact) + "_" + option;
  }

  /** The columns with their types; a list of answers has one for itself and one an option. */
  static Map<String, String> columns(Bank bank) {
    Map<String, String> columns = new LinkedHashMap<>();
    for (Field field : bank.questionnaire().fieldsByFact().values()) {
      if (field.type() instanceof FactType.SeveralOf several) {
        several.options().forEach(o -> columns.put(column(field.fact(), o.code()), "BOOLEAN"));
        columns.put(column(field.fact()), "BOOLEAN");
      } else if (field.type() instanceof FactType.YesNo) {
        columns.put(column(field.fact()), "BOOLEAN");
      } else {
        columns.put(column(field.fact()), numeric(field) ? "DOUBLE PRECISION" : "VARCHAR(9)");
      }
    }
    return columns;
  }

  /** What stands in each column that is not NULL. */
  static Map<String, Object> row(Bank bank, Answers answers) {
    Map<String, Object> row = new LinkedHashMap<>();
    for (Field field : bank.questionnaire().fieldsByFact().values()) {
      answers.value(field.fact()).ifPresent(value -> put(row, field, value));
    }
    return row;
  }

  private static void put(Map<String, Object> row, Field field, Value value) {
    String column = column(field.fact());
    if (value instanceof Value.Codes codes) {
      row.put(column, true);
      for (Option option : field.type().choices()) {
        row.put(column(field.fact(), option.code()), codes.codes().contains(option.code()));
      }
    } else if (value instanceof Value.Flag flag) {
      row.put(column, flag.value());
    } else if (value instanceof Value.Number number) {
      row.put(column, number.value());
    } else if (value instanceof Value.Code code) {
      row.put(column, numeric(field) ? Double.valueOf(code.code()) : code.code());
    }
  }
}
