package closehand.rules;

import closehand.bank.Term;
import java.util.ArrayList;
import java.util.List;

/** Makes computed terms out. */
final class TermSteps {
  private TermSteps() {}

  /**
   * How a computed term is worked out.
   *
   * @throws IllegalArgumentException when an input does not exist or does not suit
   */
  static TermStep of(Term.Computed term, FactTable table) {
    int slot = table.slotOf(term.id());
    if (!(table.shapeOf(term.id()) instanceof AmountShape shape)) {
      throw new IllegalArgumentException("no number: " + term.id());
    }
    return switch (term.computation()) {
      case MAXIMUM, MINIMUM ->
          new Extreme(
              slot,
              term.of().stream().map(table::slotOf).toList(),
              term.computation() == Term.Computation.MAXIMUM,
              shape.line().all());
      case COUNT -> count(slot, shape, table.asked(term.of().get(0)));
      case DIFFERENCE -> difference(slot, shape, term, table);
    };
  }

  private static TermStep count(int slot, AmountShape shape, Asked several) {
    if (!(several.shape() instanceof SeveralShape options)) {
      throw new IllegalArgumentException("nothing to count: " + several.fact());
    }
    List<Integer> slots = new ArrayList<>();
    List<Integer> cells = new ArrayList<>(List.of(shape.line().cellOf(0)));
    for (int i = 0; i < options.options().size(); i++) {
      if (!options.options().get(i).exclusive()) {
        slots.add(several.slot() + i);
        cells.add(shape.line().cellOf(slots.size()));
      }
    }
    return new Count(slot, slots, cells, shape.all());
  }

  private static TermStep difference(
      int slot, AmountShape shape, Term.Computed term, FactTable table) {
    String first = term.of().get(0);
    String second = term.of().get(1);
    return new Difference(
        slot,
        table.slotOf(first),
        table.slotOf(second),
        shape.line(),
        line(first, table),
        line(second, table));
  }

  private static NumberLine line(String id, FactTable table) {
    Shape shape = table.shapeOf(id);
    if (shape instanceof AmountShape amount) {
      return amount.line();
    }
    if (shape instanceof ChoiceShape choice && choice.line().isPresent()) {
      return choice.line().get();
    }
    throw new IllegalArgumentException("no number: " + id);
  }
}
