package closehand.interview;

import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import java.util.Optional;

/**
 * How one value compares with what a condition of the questionnaire expects.
 *
 * <p>Only numbers have an order. Values of different kinds compare as neither equal nor different:
 * such a condition never holds.
 */
final class Comparison {
  private Comparison() {}

  /** Whether the operator of a test holds between one value and what the test expects. */
  static boolean holds(Value value, EnableWhen.Test test, FactType type) {
    if (value instanceof Value.Number number
        && test.expected() instanceof EnableWhen.Expected.Number wanted) {
      return ordered(test.operator(), Double.compare(number.value(), wanted.value()));
    }
    Optional<Boolean> same = same(value, test.expected(), type);
    return switch (test.operator()) {
      case EQUAL -> same.orElse(false);
      case NOT_EQUAL -> !same.orElse(true);
      default -> false;
    };
  }

  private static boolean ordered(EnableWhen.Operator operator, int order) {
    return switch (operator) {
      case EQUAL -> order == 0;
      case NOT_EQUAL -> order != 0;
      case MORE -> order > 0;
      case LESS -> order < 0;
      case AT_LEAST -> order >= 0;
      case AT_MOST -> order <= 0;
      case EXISTS -> false;
    };
  }

  /** Whether two values are the same; nothing when their kinds cannot be compared. */
  private static Optional<Boolean> same(Value value, EnableWhen.Expected expected, FactType type) {
    if (value instanceof Value.Flag flag && expected instanceof EnableWhen.Expected.Flag wanted) {
      return Optional.of(flag.value() == wanted.value());
    }
    if (value instanceof Value.Text text && expected instanceof EnableWhen.Expected.Text wanted) {
      return Optional.of(text.words().equals(wanted.value()));
    }
    if (value instanceof Value.Code code && expected instanceof EnableWhen.Expected.Coded wanted) {
      return Optional.of(
          code.code().equals(wanted.code())
              && (wanted.system().isEmpty() || isFrom(wanted.system(), code, type)));
    }
    return Optional.empty();
  }

  private static boolean isFrom(String system, Value.Code code, FactType type) {
    return type.option(code.code()).filter(o -> o.system().equals(system)).isPresent();
  }
}
