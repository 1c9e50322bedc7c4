package closehand.rules;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Whose each slot of the state is. */
final class Owners {
  private final @Nullable Asked[] facts;
  private final @Nullable TermStep[] terms;
  private final Map<Integer, Node> gates;
  private final Map<Integer, Integer> listedSlots = new HashMap<>();

  /**
   * Notes the owner of every slot.
   *
   * @param gates when each fact with conditions applies, by its place in the questionnaire
   */
  Owners(FactTable table, List<Step> steps, Map<Integer, Node> gates) {
    facts = new Asked[table.size()];
    terms = new TermStep[table.size()];
    this.gates = Map.copyOf(gates);
    for (Asked asked : table.all()) {
      for (int i = 0; i <= asked.shape().width(); i++) {
        facts[asked.slot() + i] = asked;
      }
    }
    for (Step step : steps) {
      if (step instanceof TermStep term) {
        terms[term.slot()] = term;
      } else if (step instanceof Step.Listed listed) {
        facts[listed.slot()] = listed.genre();
        listedSlots.put(listed.genre().order(), listed.slot());
      }
    }
  }

  /** The asked fact that this slot speaks of, if any. */
  @Nullable Asked fact(int slot) {
    return facts[slot];
  }

  /** The term kept in this slot, if any. */
  @Nullable TermStep term(int slot) {
    return terms[slot];
  }

  /** Whether a fact names a game that is left out of account, whatever was answered. */
  boolean leftOut(Asked asked, long[] base) {
    Integer listed = listedSlots.get(asked.order());
    return listed != null && base[listed] == Shape.NO;
  }

  /** When a fact applies, if that depends on anything. */
  @Nullable Node gate(Asked asked) {
    return gates.get(asked.order());
  }
}
