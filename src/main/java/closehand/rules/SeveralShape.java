package closehand.rules;

import closehand.bank.Condition.Operand;
import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import closehand.bank.Option;
import closehand.interview.Value;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Any number of answers out of a list: one slot an option. Where an option excludes all others,
 * picking nothing means the first such option.
 *
 * @param options in the order of the question
 */
record SeveralShape(List<Option> options) implements Shape {
  @Override
  public int width() {
    return options.size();
  }

  @Override
  public long all() {
    return NO | YES;
  }

  @Override
  public boolean put(Value value, long[] state, int slot) {
    if (!(value instanceof Value.Codes picked)) {
      return false;
    }
    for (int i = 0; i < options.size(); i++) {
      state[slot + i] = NO;
    }
    for (String code : picked.codes()) {
      int index = index(code);
      if (index < 0) {
        return false;
      }
      state[slot + index] = YES;
    }
    for (int i = 0; picked.codes().isEmpty() && i < options.size(); i++) {
      if (options.get(i).exclusive()) {
        state[slot + i] = YES;
        return true;
      }
    }
    return true;
  }

  /** The place of this option; -1 when there is no such option. */
  int index(String code) {
    for (int i = 0; i < options.size(); i++) {
      if (options.get(i).code().equals(code)) {
        return i;
      }
    }
    return -1;
  }

  @Override
  public Node test(int slot, String operator, Operand operand) {
    if (operator.equals("has") && operand instanceof Operand.Code code) {
      return new Node.Leaf(slot + known(code.value()), YES);
    }
    throw Shape.unsuited(operator);
  }

  @Override
  public Node enable(int slot, Operator operator, Expected expected) {
    if (!(expected instanceof Expected.Coded coded)) {
      throw Shape.unsuited(operator.code());
    }
    int index = known(coded.code());
    return operator == Operator.NOT_EQUAL
        ? new Node.Any(picked(slot, i -> i != index))
        : Shape.either(this, slot + index, operator, YES);
  }

  /** That some option is picked, whichever. */
  Node somePicked(int slot) {
    return new Node.Any(picked(slot, i -> true));
  }

  /** For each of these options, that it is picked. */
  private List<Node> picked(int slot, IntPredicate which) {
    return IntStream.range(0, options.size())
        .filter(which)
        .<Node>mapToObj(i -> new Node.Leaf(slot + i, YES))
        .toList();
  }

  private int known(String code) {
    int index = index(code);
    if (index < 0) {
      throw new IllegalArgumentException("no such option: " + code);
    }
    return index;
  }
}
