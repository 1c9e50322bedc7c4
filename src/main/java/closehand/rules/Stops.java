package closehand.rules;

import closehand.bank.CautionClass;
import closehand.bank.Rule;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Whether a stop on a part of the body says which part. The part is told by the fact named {@code
 * <fact>.where} beside the fact that brought the stop about.
 */
final class Stops {
  private static final String WHERE = ".where";

  private final Map<Integer, List<Named>> byRule;

  /** A fact that can bring a stop about and the fact that tells the part of the body. */
  private record Named(Asked fact, Asked where) {}

  /** Notes for every rule that can stop a part of the body where that part is told. */
  Stops(Program program) {
    Map<Integer, List<Named>> found = new HashMap<>();
    for (int i = 0; i < program.rules().size(); i++) {
      if (stopsPart(program.rules().get(i).rule())) {
        found.put(i, named(program, program.rules().get(i)));
      }
    }
    byRule = Map.copyOf(found);
  }

  private static boolean stopsPart(Rule rule) {
    return rule.effects().cautions().stream()
        .map(Rule.Raised::cautionClass)
        .anyMatch(CautionClass.STOP_PART::equals);
  }

  private static List<Named> named(Program program, CompiledRule rule) {
    BitSet mentioned = new BitSet();
    BitSet seen = new BitSet();
    rule.slots(slot -> mention(program.owners(), slot, seen, mentioned));
    List<Named> named = new ArrayList<>();
    for (int i = mentioned.nextSetBit(0); i >= 0; i = mentioned.nextSetBit(i + 1)) {
      Asked fact = program.table().asked(program.facts().get(i));
      program
          .table()
          .findAsked(fact.fact() + WHERE)
          .ifPresent(where -> named.add(new Named(fact, where)));
    }
    return named;
  }

  private static void mention(Owners owners, int slot, BitSet seen, BitSet mentioned) {
    if (seen.get(slot)) {
      return;
    }
    seen.set(slot);
    TermStep term = owners.term(slot);
    Asked fact = owners.fact(slot);
    if (term != null) {
      term.reads(read -> mention(owners, read, seen, mentioned));
    } else if (fact != null) {
      mentioned.set(fact.order());
    }
  }

  /** Whether a stop that stands leaves open which part of the body it means. */
  boolean partIsOpen(Outcome[] outcomes, long[] state) {
    for (Map.Entry<Integer, List<Named>> entry : byRule.entrySet()) {
      if (outcomes[entry.getKey()] == Outcome.TRUE
          && entry.getValue().stream().anyMatch(named -> isOpen(named, state))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isOpen(Named named, long[] state) {
    return named.fact().valued(state)
        && state[named.where().howSlot()] != Node.NOT_APPLICABLE
        && !(named.where().valued(state) && picksSome(named.where(), state));
  }

  /** An answer that names no part tells nothing. */
  private static boolean picksSome(Asked where, long[] state) {
    if (!(where.shape() instanceof SeveralShape options)) {
      return true;
    }
    return IntStream.range(0, options.width())
        .filter(i -> !options.options().get(i).exclusive())
        .anyMatch(i -> state[where.slot() + i] == Shape.YES);
  }
}
