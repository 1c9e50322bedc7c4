package closehand.rules;

import closehand.bank.Condition.Operand;
import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import closehand.interview.Value;

/**
 * A number: an answer or a computed term.
 *
 * @param line the cells
 * @param all those of them it can reach
 */
record AmountShape(NumberLine line, long all) implements Shape {
  @Override
  public boolean put(Value value, long[] state, int slot) {
    if (value instanceof Value.Number number) {
      state[slot] = 1L << line.cellOf(number.value());
      return true;
    }
    return false;
  }

  @Override
  public Node test(int slot, String operator, Operand operand) {
    if (operand instanceof Operand.Number number) {
      return new Node.Leaf(slot, line.cells(operator, number.value()));
    }
    throw Shape.unsuited(operator);
  }

  @Override
  public Node enable(int slot, Operator operator, Expected expected) {
    if (!(expected instanceof Expected.Number number)) {
      throw Shape.unsuited(operator.code());
    }
    return switch (operator) {
      case EQUAL, NOT_EQUAL ->
          Shape.either(this, slot, operator, Shape.equal(line, number.value()) & all);
      default -> new Node.Leaf(slot, line.cells(operator.code(), number.value()));
    };
  }
}
