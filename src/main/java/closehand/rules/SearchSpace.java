package closehand.rules;

import closehand.interview.Answers;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** Which answers are still possible in a search, and how that can be split. */
final class SearchSpace {
  private static final List<Long> WAYS =
      List.of(How.GIVEN, How.NOT_KNOWN, How.DECLINED, How.LATER, How.NOT_ASKED);

  /** A term of which nothing is assumed. */
  private static final long ANYTHING = -1L;

  private final Program program;
  private final Owners owners;
  private final FactTable table;
  private final BitSet askedHow = new BitSet();
  private final long[] root;

  SearchSpace(Program program) {
    this.program = program;
    this.owners = program.owners();
    this.table = program.table();
    program.rules().forEach(r -> r.slots(this::noteHow));
    program.steps().forEach(s -> s.reads(this::noteHow));
    this.root = makeRoot();
  }

  /** Facts of which somewhere is asked how they are known. */
  private void noteHow(int slot) {
    Asked fact = owners.fact(slot);
    if (fact != null && slot == fact.howSlot()) {
      askedHow.set(fact.order());
    }
  }

  private long[] makeRoot() {
    long[] made = new long[table.size()];
    long anyWay = 0;
    for (long way : WAYS) {
      anyWay |= How.state(way);
    }
    for (Asked asked : table.all()) {
      asked.setOpen(made);
      if (askedHow.get(asked.order())) {
        made[asked.howSlot()] = anyWay;
      }
    }
    FactTable.Worked cleared = table.worked(FactTable.CLEARED);
    for (int i = 0; i < cleared.shape().width(); i++) {
      made[cleared.slot() + i] = Shape.NO | Shape.YES;
    }
    for (int game : table.games()) {
      made[table.listedSlot(game)] = Shape.NO | Shape.YES;
    }
    for (Step step : program.steps()) {
      if (step instanceof TermStep term) {
        made[term.slot()] = ANYTHING;
      }
    }
    return made;
  }

  /** Everything possible. */
  long[] root() {
    return root.clone();
  }

  /**
   * What follows from what is possible; as long as it is open whether a fact applies, both do. A
   * term is narrowed to what is assumed of it.
   *
   * @param unrealised receives the terms of which more is assumed than follows
   * @return the state; empty when what is assumed of a term cannot be
   */
  Optional<long[]> settle(long[] base, List<Step> steps, List<TermStep> unrealised) {
    long[] state = base.clone();
    for (Step step : steps) {
      if (step instanceof TermStep term) {
        term.run(base, state);
        long follows = state[term.slot()];
        state[term.slot()] = follows & base[term.slot()];
        if (state[term.slot()] == 0) {
          return Optional.empty();
        }
        if (state[term.slot()] != follows) {
          unrealised.add(term);
        }
      } else if (step instanceof Step.Gate gate) {
        gate(gate, base, state);
      } else if (step instanceof Step.Listed listed) {
        long cells = state[listed.genre().slot()];
        boolean named = cells > 0 && (cells & listed.none()) == 0;
        boolean none = cells == Node.NOT_APPLICABLE || cells == listed.none();
        state[listed.slot()] = named ? Shape.YES : none ? Shape.NO : Shape.NO | Shape.YES;
      }
    }
    return Optional.of(state);
  }

  /** Ways to bring about what is assumed of a term. */
  List<long[]> realise(TermStep term, long[] base, long[] state, boolean assuming) {
    return term instanceof TermStep.Derived derived
        ? split(derived.when(), (base[term.slot()] & Shape.YES) != 0, base, state, assuming)
        : computed(term, base[term.slot()], base, state, assuming);
  }

  private static void gate(Step.Gate gate, long[] base, long[] state) {
    Outcome applies = gate.applies().in(state);
    Asked asked = gate.asked();
    if (applies == Outcome.FALSE) {
      asked.setNotApplicable(state);
      return;
    }
    long maybe = applies == Outcome.OPEN ? Node.NOT_APPLICABLE : 0;
    for (int slot = asked.slot(); slot <= asked.howSlot(); slot++) {
      state[slot] = base[slot] | maybe;
    }
  }

  /**
   * Ways to split the first open comparison of a condition that can be split; none if none can.
   *
   * @param wanted whether the condition is to hold or not to: what brings that about comes first
   * @param assuming whether a term that is yes or no is assumed first and brought about later
   */
  List<long[]> split(Node node, boolean wanted, long[] base, long[] state, boolean assuming) {
    if (node.in(state) != Outcome.OPEN) {
      return List.of();
    }
    if (node instanceof Node.Leaf leaf) {
      return slot(leaf.slot(), leaf.cells(), wanted, base, state, assuming);
    }
    boolean ofParts = (node instanceof Node.Not) != wanted;
    for (Node part : parts(node)) {
      List<long[]> branches = split(part, ofParts, base, state, assuming);
      if (!branches.isEmpty()) {
        return branches;
      }
    }
    return List.of();
  }

  private static List<Node> parts(Node node) {
    if (node instanceof Node.All all) {
      return all.parts();
    }
    if (node instanceof Node.Any any) {
      return any.parts();
    }
    if (node instanceof Node.Not not) {
      return List.of(not.part());
    }
    return node instanceof Node.AtLeast atLeast ? atLeast.parts() : List.of();
  }

  private List<long[]> slot(
      int slot, long cells, boolean wanted, long[] base, long[] state, boolean assuming) {
    TermStep term = owners.term(slot);
    Asked fact = owners.fact(slot);
    if (term instanceof TermStep.Derived derived && !assuming) {
      return split(derived.when(), (cells == Shape.YES) == wanted, base, state, false);
    }
    if (term != null) {
      return first(wanted, assumed(slot, cells, base, state));
    }
    return fact == null
        ? either(slot, Shape.NO, base)
        : fact(fact, slot, cells, wanted, base, state, assuming);
  }

  /** Of two branches the one in which a comparison holds comes first, or the other one. */
  private static List<long[]> first(boolean holding, List<long[]> branches) {
    return holding || branches.size() != 2 ? branches : List.of(branches.get(1), branches.get(0));
  }

  /**
   * A number worked out is first assumed to be in some cells or in the others, and that brought
   * about later.
   */
  private static List<long[]> assumed(int slot, long cells, long[] base, long[] state) {
    List<long[]> branches = new ArrayList<>();
    for (long mask : new long[] {cells, ~cells}) {
      if ((state[slot] & mask) != 0 && (state[slot] & ~mask) != 0) {
        long[] branch = base.clone();
        branch[slot] = base[slot] & mask;
        branches.add(branch);
      }
    }
    return branches;
  }

  /** Splits an input of a computed term: where the test divides it, else anywhere. */
  private List<long[]> computed(
      TermStep term, long cells, long[] base, long[] state, boolean assuming) {
    List<Integer> inputs = new ArrayList<>();
    term.reads(inputs::add);
    List<Long> tests = new ArrayList<>(List.of(cells));
    if (term instanceof Count) {
      tests = List.of(Shape.YES);
    }
    for (int input : inputs) {
      for (long test : tests) {
        if (Node.compare(state[input], test) == Outcome.OPEN) {
          List<long[]> branches = slot(input, test, true, base, state, assuming);
          if (!branches.isEmpty()) {
            return branches;
          }
        }
      }
    }
    for (int input : inputs) {
      Asked spanned = owners.fact(input);
      boolean wide =
          spanned != null && spanned.spanSlot().isPresent() && Spans.isWide(spanned, base);
      if (Long.bitCount(state[input]) > 1 || wide) {
        List<long[]> branches = slot(input, lowerHalf(state[input]), true, base, state, assuming);
        if (!branches.isEmpty()) {
          return branches;
        }
      }
    }
    return List.of();
  }

  private static long lowerHalf(long cells) {
    long rest = cells & ~Node.NOT_APPLICABLE;
    long half = 0;
    for (int left = Math.max(1, Long.bitCount(rest) / 2); left > 0; left--) {
      half |= Long.lowestOneBit(rest);
      rest &= rest - 1;
    }
    return half;
  }

  private List<long[]> fact(
      Asked fact,
      int slot,
      long cells,
      boolean wanted,
      long[] base,
      long[] state,
      boolean assuming) {
    Node gate = owners.gate(fact);
    if (gate != null && gate.in(state) == Outcome.OPEN) {
      return split(gate, wanted, base, state, assuming);
    }
    long how = base[fact.howSlot()];
    if (askedHow.get(fact.order()) && Long.bitCount(how) > 2) {
      return ways(fact, base);
    }
    boolean answerable = (how & (How.GIVEN | How.NOT_ASKED)) != 0 || base[fact.slot()] != all(fact);
    boolean undecided = !askedHow.get(fact.order()) || (how & How.GIVEN) != 0;
    if (slot == fact.howSlot() || !answerable || !undecided) {
      return List.of();
    }
    if (fact.shape() instanceof SeveralShape several) {
      return first(wanted, picks(fact, several, slot, base));
    }
    if (fact.spanSlot().isPresent()) {
      return Spans.split(fact, base);
    }
    boolean listed = slot != fact.slot();
    long test = listed ? none(fact) : cells;
    return first(wanted, given(fact, either(fact.slot(), base[fact.slot()] & test, base)));
  }

  private static long all(Asked fact) {
    return fact.shape().all();
  }

  private static long none(Asked genre) {
    return genre.shape() instanceof ChoiceShape choice ? choice.cell("none") : 0;
  }

  /** One branch for each way a fact can be known; "don't know" may count as "unsure". */
  private static List<long[]> ways(Asked fact, long[] base) {
    List<long[]> branches = new ArrayList<>();
    for (long way : WAYS) {
      long[] branch = base.clone();
      branch[fact.howSlot()] = How.state(way);
      if (way == How.NOT_KNOWN && fact.unknownIsUnsure()) {
        fact.put(BaseStates.unsure(fact), branch);
      }
      branches.add(branch);
    }
    return branches;
  }

  private static List<long[]> either(int slot, long cells, long[] base) {
    long other = base[slot] & ~cells;
    if ((base[slot] & cells) == 0 || other == 0) {
      return List.of();
    }
    long[] in = base.clone();
    in[slot] = base[slot] & cells;
    long[] out = base.clone();
    out[slot] = other;
    return List.of(in, out);
  }

  private static List<long[]> given(Asked fact, List<long[]> branches) {
    branches.forEach(b -> b[fact.howSlot()] = How.state(How.GIVEN));
    return branches;
  }

  /** With an option and without it; an option that excludes all others stands alone. */
  private static List<long[]> picks(Asked fact, SeveralShape several, int slot, long[] base) {
    List<long[]> lawful = new ArrayList<>();
    for (long[] branch : either(slot, Shape.YES, base)) {
      if (Picks.close(fact, several, branch)) {
        lawful.add(branch);
      }
    }
    return given(fact, lawful);
  }

  /** Answers that lie within what is possible, for every fact that was narrowed down. */
  Answers answers(long[] base) {
    return new WitnessAnswers(program, root).of(base);
  }
}
