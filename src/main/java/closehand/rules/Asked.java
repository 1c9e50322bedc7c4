package closehand.rules;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.interview.Value;
import java.util.OptionalInt;

/**
 * A fact that is asked, with its place in the state.
 *
 * @param order its place in the questionnaire, from 0
 * @param field what is asked
 * @param shape how its answers lie in cells
 * @param slot where its cells start
 * @param howSlot where it is kept how the fact is known
 * @param spanSlot where its least and greatest possible value are kept, when a difference needs
 *     them
 * @param unknownIsUnsure whether "don't know" counts as the answer "unsure"
 * @param gate whether its question is one of those that can stop something
 */
record Asked(
    int order,
    Field field,
    Shape shape,
    int slot,
    int howSlot,
    OptionalInt spanSlot,
    boolean unknownIsUnsure,
    boolean gate) {

  /** The answer that "don't know" counts as on a question that may stop the session. */
  static final String UNSURE = "unsure";

  String fact() {
    return field.fact();
  }

  /** Whether a value is known, wherever it may count. */
  boolean valued(long[] base) {
    long how = base[howSlot];
    return (how & How.GIVEN) != 0 || (unknownIsUnsure && (how & How.NOT_KNOWN) != 0);
  }

  /** Marks that it does not apply. */
  void setNotApplicable(long[] state) {
    fill(state, Node.NOT_APPLICABLE);
    state[howSlot] = Node.NOT_APPLICABLE;
  }

  /** Marks that nothing is known of it. */
  void setOpen(long[] state) {
    fill(state, shape.all());
    state[howSlot] = How.state(How.NOT_ASKED);
    if (field.type() instanceof FactType.Amount amount) {
      setSpan(state, amount.minimum(), amount.maximum());
    }
  }

  /** Sets it to just this value; false when the value is of another kind. */
  boolean put(Value value, long[] state) {
    if (value instanceof Value.Number number) {
      setSpan(state, number.value(), number.value());
    }
    return shape.put(value, state, slot);
  }

  private void setSpan(long[] state, double least, double greatest) {
    if (spanSlot.isPresent()) {
      state[spanSlot.getAsInt()] = Double.doubleToRawLongBits(least);
      state[spanSlot.getAsInt() + 1] = Double.doubleToRawLongBits(greatest);
    }
  }

  private void fill(long[] state, long cells) {
    for (int i = 0; i < shape.width(); i++) {
      state[slot + i] = cells;
    }
  }
}
