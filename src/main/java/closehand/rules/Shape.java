package closehand.rules;

import closehand.bank.Condition.Operand;
import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import closehand.interview.Value;

/**
 * How the answers to one fact, or the values of one term, lie in cells. A fact takes one slot of
 * the state, a fact with several answers one slot an option.
 */
sealed interface Shape permits YesNoShape, AmountShape, ChoiceShape, SeveralShape, WordsShape {
  /** The cell "no". */
  long NO = 1;

  /** The cell "yes". */
  long YES = 2;

  /** How many slots it takes. */
  default int width() {
    return 1;
  }

  /** Every cell of one slot. */
  long all();

  /** Sets the slots to just this value; false when the value is of another kind. */
  boolean put(Value value, long[] state, int slot);

  /**
   * One comparison of a rule or term.
   *
   * @throws IllegalArgumentException when it does not suit this kind of fact
   */
  Node test(int slot, String operator, Operand operand);

  /**
   * One comparison of {@code enableWhen} other than "exists" (HL7 FHIR R4: "=" when some answer
   * equals, "!=" when some answer differs; of several answers both can hold at once).
   *
   * @throws IllegalArgumentException when it does not suit this kind of fact
   */
  Node enable(int slot, Operator operator, Expected expected);

  /** The exception for a comparison that does not suit. */
  static IllegalArgumentException unsuited(String operator) {
    return new IllegalArgumentException("\"" + operator + "\" does not suit this kind of fact");
  }

  /** Equal to these cells, or not. */
  static Node either(Shape shape, int slot, Operator operator, long cells) {
    return switch (operator) {
      case EQUAL -> new Node.Leaf(slot, cells);
      case NOT_EQUAL -> new Node.Leaf(slot, shape.all() & ~cells);
      default -> throw unsuited(operator.code());
    };
  }

  /** The cells whose numbers are all equal to this one. */
  static long equal(NumberLine line, double number) {
    return line.cells("<=", number) & line.cells(">=", number);
  }
}
