package closehand.rules;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds the facts that a condition rests on or waits for, in one state. */
final class Trace {
  private final Owners owners;
  private final long[] base;
  private final long[] state;
  private final int facts;
  private final @Nullable FactSet[] derivedSupport;
  private final @Nullable FactSet[] derivedWaits;

  /**
   * Begins in one state; keeps what it finds about derived terms, since many rules share them.
   *
   * @param base what the answers alone say
   * @param state what follows from them
   * @param facts how many facts are asked
   */
  Trace(Owners owners, long[] base, long[] state, int facts) {
    this.owners = owners;
    this.base = base;
    this.state = state;
    this.facts = facts;
    this.derivedSupport = new FactSet[state.length];
    this.derivedWaits = new FactSet[state.length];
  }

  /** The cells still possible in a slot. */
  long cells(int slot) {
    return state[slot];
  }

  /** How far apart the least and the greatest value still possible of a number are. */
  double spread(Difference.Input input) {
    return input.greatest(state) - input.least(state);
  }

  /**
   * Adds the answered facts that settle a condition: of "all" the first part that does not hold or
   * every part that does, of "any" the mirror image. For an open condition those known so far.
   */
  void support(Node node, FactSet into) {
    if (node instanceof Node.Leaf leaf) {
      support(leaf.slot(), leaf.cells(), into);
    } else if (node instanceof Node.Not not) {
      support(not.part(), into);
    } else if (node instanceof Node.All all) {
      support(all.parts(), all.in(state), Outcome.FALSE, into);
    } else if (node instanceof Node.Any any) {
      support(any.parts(), any.in(state), Outcome.TRUE, into);
    } else if (node instanceof Node.AtLeast atLeast) {
      supportCount(atLeast, into);
    }
  }

  /** Adds the facts behind a derived term. */
  void support(TermStep.Derived derived, FactSet into) {
    FactSet known = derivedSupport[derived.slot()];
    if (known == null) {
      known = new FactSet(facts);
      support(derived.when(), known);
      derivedSupport[derived.slot()] = known;
    }
    into.addAll(known);
  }

  /** Adds the facts that an open derived term waits for. */
  void waits(TermStep.Derived derived, FactSet into) {
    FactSet known = derivedWaits[derived.slot()];
    if (known == null) {
      known = new FactSet(facts);
      waits(derived.when(), known);
      derivedWaits[derived.slot()] = known;
    }
    into.addAll(known);
  }

  /** One part with the absorbing outcome settles the whole; otherwise all parts matter. */
  private void support(List<Node> parts, Outcome whole, Outcome absorbing, FactSet into) {
    for (Node part : parts) {
      if (whole != absorbing) {
        support(part, into);
      } else if (part.in(state) == absorbing) {
        support(part, into);
        return;
      }
    }
  }

  private void supportCount(Node.AtLeast atLeast, FactSet into) {
    Outcome whole = atLeast.in(state);
    int left = whole == Outcome.TRUE ? atLeast.count() : atLeast.parts().size();
    for (Node part : atLeast.parts()) {
      if (left > 0 && (whole == Outcome.OPEN || part.in(state) == whole)) {
        support(part, into);
        left--;
      }
    }
  }

  /** Adds the answered facts behind a slot that settle whether it is in these cells. */
  void support(int slot, long cells, FactSet into) {
    TermStep term = owners.term(slot);
    Asked fact = owners.fact(slot);
    if (term != null) {
      term.support(cells, this, into);
    } else if (fact != null) {
      support(fact, slot == fact.howSlot(), into);
    }
  }

  private void support(Asked fact, boolean how, FactSet into) {
    Node gate = owners.gate(fact);
    boolean notApplicable = state[fact.howSlot()] == Node.NOT_APPLICABLE;
    if (gate != null && gate.in(state) == Outcome.FALSE) {
      support(gate, into);
    } else if (!owners.leftOut(fact, base) && (how || notApplicable || fact.valued(state))) {
      into.add(fact.order());
    }
  }

  /** Adds the facts that an open condition waits for, through its open parts only. */
  void waits(Node node, FactSet into) {
    if (node.in(state) != Outcome.OPEN) {
      return;
    }
    if (node instanceof Node.Leaf leaf) {
      waits(leaf.slot(), leaf.cells(), into);
    } else if (node instanceof Node.Not not) {
      waits(not.part(), into);
    } else {
      parts(node).forEach(part -> waits(part, into));
    }
  }

  private static List<Node> parts(Node node) {
    if (node instanceof Node.All all) {
      return all.parts();
    }
    if (node instanceof Node.Any any) {
      return any.parts();
    }
    return node instanceof Node.AtLeast atLeast ? atLeast.parts() : List.of();
  }

  /** Adds the facts that an open slot waits for, when it is open whether it is in these cells. */
  void waits(int slot, long cells, FactSet into) {
    TermStep term = owners.term(slot);
    Asked fact = owners.fact(slot);
    if (term != null) {
      term.waits(cells, this, into);
    } else if (fact != null) {
      into.add(fact.order());
    }
  }
}
