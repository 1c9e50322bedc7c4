package closehand.rules;

import closehand.bank.FactType;
import closehand.bank.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

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
    if (slots.isEmpty()) {
      throw new IllegalArgumentException("nothing to count: " + several.fact());
    }
    return new Count(slot, slots, cells, shape.all());
  }

  private static TermStep difference(
      int slot, AmountShape shape, Term.Computed term, FactTable table) {
    int decimals = 0;
    List<Difference.Input> inputs = new ArrayList<>();
    for (String id : term.of()) {
      inputs.add(input(id, table));
      decimals = Math.max(decimals, decimals(id, table));
    }
    return new Difference(slot, inputs.get(0), inputs.get(1), shape.line(), shape.all(), decimals);
  }

  private static int decimals(String id, FactTable table) {
    return table
        .findAsked(id)
        .map(a -> a.field().type() instanceof FactType.Amount amount ? amount.decimals() : 0)
        .orElse(0);
  }

  private static Difference.Input input(String id, FactTable table) {
    OptionalInt span = table.findAsked(id).map(Asked::spanSlot).orElse(OptionalInt.empty());
    return span.isPresent()
        ? new Difference.Input.Exact(table.slotOf(id), span.getAsInt())
        : new Difference.Input.ByCell(table.slotOf(id), line(id, table));
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
