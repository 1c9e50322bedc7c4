package closehand.rules;

import closehand.bank.Condition.Operand;
import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import closehand.interview.Value;
import java.util.List;

/**
 * Words, which no rule reads; only "enable when" may compare them with one of these texts.
 *
 * @param compared the texts, each a cell, before the cell for all other words
 */
record WordsShape(List<String> compared) implements Shape {
  @Override
  public long all() {
    return (1L << (compared.size() + 1)) - 1;
  }

  @Override
  public boolean put(Value value, long[] state, int slot) {
    if (value instanceof Value.Text text) {
      int found = compared.indexOf(text.words());
      state[slot] = 1L << (found < 0 ? compared.size() : found);
      return true;
    }
    state[slot] = 1L << compared.size();
    return value instanceof Value.Texts;
  }

  @Override
  public Node test(int slot, String operator, Operand operand) {
    throw Shape.unsuited(operator);
  }

  @Override
  public Node enable(int slot, Operator operator, Expected expected) {
    if (expected instanceof Expected.Text text) {
      return Shape.either(this, slot, operator, 1L << compared.indexOf(text.value()));
    }
    throw Shape.unsuited(operator.code());
  }
}
