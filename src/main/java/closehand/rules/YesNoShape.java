package closehand.rules;

import closehand.bank.Condition.Operand;
import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import closehand.interview.Value;

/** Yes or no: an answer or a derived term. */
record YesNoShape() implements Shape {
  @Override
  public long all() {
    return NO | YES;
  }

  @Override
  public boolean put(Value value, long[] state, int slot) {
    if (value instanceof Value.Flag flag) {
      state[slot] = flag.value() ? YES : NO;
      return true;
    }
    return false;
  }

  @Override
  public Node test(int slot, String operator, Operand operand) {
    if (operator.equals("is") && operand instanceof Operand.Flag flag) {
      return new Node.Leaf(slot, flag.value() ? YES : NO);
    }
    if (operator.equals("in") && operand instanceof Operand.Codes codes) {
      long cells = 0;
      for (Operand.Code code : codes.values()) {
        cells |= Boolean.parseBoolean(code.value()) ? YES : NO;
      }
      return new Node.Leaf(slot, cells);
    }
    throw Shape.unsuited(operator);
  }

  @Override
  public Node enable(int slot, Operator operator, Expected expected) {
    if (expected instanceof Expected.Flag flag) {
      return Shape.either(this, slot, operator, flag.value() ? YES : NO);
    }
    throw Shape.unsuited(operator.code());
  }
}
