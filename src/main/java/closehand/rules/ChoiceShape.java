package closehand.rules;

import closehand.bank.Condition.Operand;
import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import closehand.bank.Option;
import closehand.interview.Value;
import java.util.List;
import java.util.Optional;

/**
 * One of several answers.
 *
 * @param options in the order of the question
 * @param cells the cell of each option
 * @param line the line of numbers, when the options are a scale
 * @param all the cells of all options
 */
record ChoiceShape(List<Option> options, List<Integer> cells, Optional<NumberLine> line, long all)
    implements Shape {
  @Override
  public boolean put(Value value, long[] state, int slot) {
    if (value instanceof Value.Code code && cell(code.code()) != 0) {
      state[slot] = cell(code.code());
      return true;
    }
    return false;
  }

  /** The cell of this option as a set of one; empty when there is no such option. */
  long cell(String code) {
    for (int i = 0; i < options.size(); i++) {
      if (options.get(i).code().equals(code)) {
        return 1L << cells.get(i);
      }
    }
    return 0;
  }

  @Override
  public Node test(int slot, String operator, Operand operand) {
    if (operator.equals("is") && operand instanceof Operand.Code code) {
      return new Node.Leaf(slot, known(code.value()));
    }
    if (operator.equals("in") && operand instanceof Operand.Codes codes) {
      long union = 0;
      for (Operand.Code code : codes.values()) {
        union |= known(code.value());
      }
      return new Node.Leaf(slot, union);
    }
    if (operand instanceof Operand.Number number) {
      return new Node.Leaf(slot, numbered(operator, number.value()));
    }
    throw Shape.unsuited(operator);
  }

  @Override
  public Node enable(int slot, Operator operator, Expected expected) {
    if (expected instanceof Expected.Coded coded) {
      return Shape.either(this, slot, operator, known(coded.code()));
    }
    if (expected instanceof Expected.Number number) {
      boolean equality = operator == Operator.EQUAL || operator == Operator.NOT_EQUAL;
      return equality
          ? Shape.either(this, slot, operator, numbered("is", number.value()))
          : new Node.Leaf(slot, numbered(operator.code(), number.value()));
    }
    throw Shape.unsuited(operator.code());
  }

  private long known(String code) {
    long cell = cell(code);
    if (cell == 0) {
      throw new IllegalArgumentException("no such option: " + code);
    }
    return cell;
  }

  private long numbered(String operator, double number) {
    NumberLine numbers = line.orElseThrow(() -> Shape.unsuited(operator));
    return (operator.equals("is") ? Shape.equal(numbers, number) : numbers.cells(operator, number))
        & all;
  }
}
