package closehand.rules;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;

/**
 * Which steps and rules a changed answer can reach. What one fact reaches is worked out when it is
 * first asked for, since most answers of a case are never tried.
 */
final class Influence {
  private final Program program;
  private final Map<Integer, List<Integer>> stepsBySlot = new HashMap<>();
  private final Map<Integer, List<Integer>> rulesBySlot = new HashMap<>();
  private final AtomicReferenceArray<@Nullable Reach> reaches;

  /**
   * What one fact reaches.
   *
   * @param steps the steps to take again, in order
   * @param rules the rules to judge again, in order
   */
  record Reach(List<Step> steps, List<Integer> rules) {}

  Influence(Program program) {
    this.program = program;
    for (int i = 0; i < program.steps().size(); i++) {
      int step = i;
      program.steps().get(i).reads(slot -> note(stepsBySlot, slot, step));
    }
    for (int i = 0; i < program.rules().size(); i++) {
      int rule = i;
      program.rules().get(i).slots(slot -> note(rulesBySlot, slot, rule));
    }
    reaches = new AtomicReferenceArray<>(program.table().all().size());
  }

  private static void note(Map<Integer, List<Integer>> bySlot, int slot, int reader) {
    bySlot.computeIfAbsent(slot, s -> new ArrayList<>()).add(reader);
  }

  /** What a change of this fact's answer reaches; steps only lead onward, never back. */
  Reach of(Asked fact) {
    Reach known = reaches.get(fact.order());
    if (known == null) {
      // Whoever works it out meanwhile comes to the same.
      known = reach(fact);
      reaches.set(fact.order(), known);
    }
    return known;
  }

  /** Whether of a list of answers nothing counts but how many are picked. */
  boolean onlyCounted(Asked fact) {
    boolean counted = false;
    for (int slot = fact.slot(); slot < fact.slot() + fact.shape().width(); slot++) {
      for (int step : stepsBySlot.getOrDefault(slot, List.of())) {
        if (!(program.steps().get(step) instanceof Count)) {
          return false;
        }
        counted = true;
      }
      if (rulesBySlot.containsKey(slot)) {
        return false;
      }
    }
    return counted;
  }

  private Reach reach(Asked fact) {
    BitSet steps = new BitSet();
    BitSet rules = new BitSet();
    for (int i = 0; i <= fact.shape().width(); i++) {
      touch(fact.slot() + i, steps, rules);
    }
    List<Step> ordered = new ArrayList<>();
    for (int i = steps.nextSetBit(0); i >= 0; i = steps.nextSetBit(i + 1)) {
      Step step = program.steps().get(i);
      ordered.add(step);
      step.writes(slot -> touch(slot, steps, rules));
    }
    List<Integer> judged = new ArrayList<>(rules.cardinality());
    for (int i = rules.nextSetBit(0); i >= 0; i = rules.nextSetBit(i + 1)) {
      judged.add(i);
    }
    return new Reach(ordered, judged);
  }

  private void touch(int slot, BitSet steps, BitSet rules) {
    for (int step : stepsBySlot.getOrDefault(slot, List.of())) {
      steps.set(step);
    }
    for (int rule : rulesBySlot.getOrDefault(slot, List.of())) {
      rules.set(rule);
    }
  }
}
