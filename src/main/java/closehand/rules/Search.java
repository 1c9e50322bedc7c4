package closehand.rules;

import closehand.interview.Answers;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Finds answers under which rules come out as wanted, or proves that there are none. Complete: it
 * splits what is open, one fact at a time, until everything wanted is settled or refuted (the
 * branching of Davis, Logemann and Loveland 1962, over cells in place of truth values). A question
 * is only answered where it applies; "does not apply" is never answered by choice.
 */
public final class Search {
  private final RuleBook book;
  private final Program program;
  private final SearchSpace space;
  private final int budget;

  /** Something that can hold or not. */
  public sealed interface Goal {
    /** At least one of these rules fires, by their places in the bank. */
    record Fires(List<Integer> rules) implements Goal {
      public Fires {
        rules = List.copyOf(rules);
      }

      /** One rule fires. */
      public Fires(int rule) {
        this(List.of(rule));
      }
    }

    /**
     * At least so many of these rules fire, by their places in the bank; a rule that stands there
     * twice counts twice.
     */
    record AtLeast(int count, List<Integer> rules) implements Goal {
      public AtLeast {
        rules = List.copyOf(rules);
      }
    }

    /** A term that is yes or no is yes. */
    record Yes(String term) implements Goal {}

    /** A question applies. */
    record Applies(String fact) implements Goal {}

    /** A number or scale lies in one of these cells. */
    record InCells(String factOrTerm, long cells) implements Goal {}
  }

  /**
   * A goal and whether it is to hold. One that is not to hold may also stay open because a question
   * it waits for is declined, put off or not known.
   */
  public record Wanted(Goal goal, boolean holds) {}

  /** What a search came to. */
  public sealed interface Found {
    /** These answers bring it about, whatever other questions are answered. */
    record Witness(Answers answers) implements Found {}

    /** No answers bring it about. */
    record None() implements Found {}

    /** The search was given up after so many steps; nothing is proven. */
    record GivenUp(int steps) implements Found {}
  }

  private Search(RuleBook book, int budget) {
    this.book = book;
    this.program = book.program();
    this.space = new SearchSpace(program);
    this.budget = budget;
  }

  /**
   * A search over the answers to a bank.
   *
   * @param budget how many steps one search may take
   */
  public static Search of(RuleBook book, int budget) {
    return new Search(book, budget);
  }

  /** Answers under which each goal holds or does not, as wanted. */
  public Found find(List<Wanted> wanted) {
    List<Node> nodes = nodes(wanted);
    return Conjuncts.of(nodes).refute(nodes)
        ? new Found.None()
        : new Run(Conjuncts.cutDown(nodes)).run();
  }

  private List<Node> nodes(List<Wanted> wanted) {
    List<Node> nodes = new ArrayList<>();
    for (Wanted one : wanted) {
      Node node = node(one.goal());
      nodes.add(one.holds() ? node : new Node.Not(node));
    }
    return nodes;
  }

  /**
   * As few of these answers as still show what is wanted: the last ones are tried first to do
   * without.
   *
   * @param answers answers that show it, as {@link #find} gives them
   */
  public Answers fewest(Answers answers, List<Wanted> wanted) {
    List<Node> nodes = nodes(wanted);
    Answers left = answers;
    List<String> facts = new ArrayList<>(answers.byFact().keySet());
    Collections.reverse(facts);
    for (Answers.Lowered lowered : answers.lowered()) {
      List<Answers.Lowered> others = new ArrayList<>(left.lowered());
      others.remove(lowered);
      Answers without = new Answers(left.byFact(), others);
      left = shows(without, nodes) ? without : left;
    }
    for (String fact : facts) {
      Answers without = left.without(fact);
      left = shows(without, nodes) ? without : left;
    }
    return left;
  }

  private boolean shows(Answers answers, List<Node> nodes) {
    long[] state = program.settle(book.base(answers));
    return nodes.stream().allMatch(n -> n.in(state) == Outcome.TRUE)
        && answers.byFact().keySet().stream().allMatch(fact -> surelyApplies(fact, state));
  }

  /** An answer that another could still set aside shows nothing. */
  private boolean surelyApplies(String fact, long[] state) {
    Node gate = program.owners().gate(program.table().asked(fact));
    return gate == null || gate.in(state) == Outcome.TRUE;
  }

  /** The same for one goal. */
  public Found find(Goal goal, boolean holds) {
    return find(List.of(new Wanted(goal, holds)));
  }

  private Node fires(int rule) {
    CompiledRule compiled = program.rules().get(rule);
    return new Node.All(List.of(compiled.when(), new Node.Not(compiled.unless())));
  }

  private Node node(Goal goal) {
    if (goal instanceof Goal.Fires fires) {
      List<Node> rules = fires.rules().stream().map(this::fires).toList();
      return rules.size() == 1 ? rules.get(0) : new Node.Any(rules);
    }
    if (goal instanceof Goal.AtLeast some) {
      return new Node.AtLeast(some.count(), some.rules().stream().map(this::fires).toList());
    }
    if (goal instanceof Goal.Yes yes) {
      return new Node.Leaf(program.table().slotOf(yes.term()), Shape.YES);
    }
    if (goal instanceof Goal.InCells in) {
      return new Node.Leaf(program.table().slotOf(in.factOrTerm()), in.cells());
    }
    Node gate = program.owners().gate(program.table().asked(((Goal.Applies) goal).fact()));
    return gate == null ? new Node.Fixed(Outcome.TRUE) : gate;
  }

  /** One search. */
  private final class Run {
    private List<Node> nodes;
    private final List<Step> steps = new ArrayList<>();
    private boolean assuming;
    private int most;
    private int taken;

    Run(List<Node> nodes) {
      this.nodes = nodes;
      BitSet slots = new BitSet();
      nodes.forEach(n -> n.slots(slot -> need(slot, slots)));
      for (Step step : program.steps()) {
        boolean[] needed = new boolean[1];
        step.writes(slot -> needed[0] |= slots.get(slot));
        if (needed[0]) {
          steps.add(step);
        }
      }
    }

    /** Notes a slot and everything it is worked out from. */
    private void need(int slot, BitSet slots) {
      if (slots.get(slot)) {
        return;
      }
      slots.set(slot);
      TermStep term = program.owners().term(slot);
      Asked fact = program.owners().fact(slot);
      if (term != null) {
        term.reads(read -> need(read, slots));
      } else if (fact != null) {
        need(fact.slot(), slots);
        need(fact.howSlot(), slots);
        Node gate = program.owners().gate(fact);
        if (gate != null) {
          gate.slots(read -> need(read, slots));
        }
      }
    }

    /**
     * First with assumptions about terms, which refutes most in no time, what is wanted taken from
     * either end; then without.
     */
    Found run() {
      assuming = true;
      most = budget / 100;
      Found found = go(space.root());
      if (found instanceof Found.GivenUp) {
        List<Node> turned = new ArrayList<>(nodes);
        Collections.reverse(turned);
        nodes = turned;
        most += budget / 100;
        found = go(space.root());
      }
      if (found instanceof Found.GivenUp) {
        assuming = false;
        most = budget;
        found = go(space.root());
      }
      return found;
    }

    private Found go(long[] base) {
      if (++taken > most) {
        return new Found.GivenUp(most);
      }
      List<TermStep> unrealised = new ArrayList<>();
      Optional<long[]> settled = space.settle(base, steps, unrealised);
      if (settled.isEmpty()) {
        return new Found.None();
      }
      long[] state = settled.get();
      boolean open = !unrealised.isEmpty();
      for (Node node : nodes) {
        Outcome outcome = node.in(state);
        if (outcome == Outcome.FALSE) {
          return new Found.None();
        }
        open |= outcome == Outcome.OPEN;
      }
      return open ? split(base, state, unrealised) : new Found.Witness(space.answers(base));
    }

    /** Where nothing open can be answered any more, what is not wanted does not hold either. */
    private boolean isMet(long[] state, List<TermStep> unrealised) {
      return unrealised.isEmpty()
          && nodes.stream().allMatch(n -> n instanceof Node.Not || n.in(state) == Outcome.TRUE);
    }

    private Found split(long[] base, long[] state, List<TermStep> unrealised) {
      List<long[]> branches = List.of();
      for (Node node : nodes) {
        if (branches.isEmpty()) {
          branches = space.split(node, true, base, state, assuming);
        }
      }
      for (TermStep term : unrealised) {
        if (branches.isEmpty()) {
          branches = space.realise(term, base, state, assuming);
        }
      }
      if (branches.isEmpty() && isMet(state, unrealised)) {
        return new Found.Witness(space.answers(base));
      }
      for (long[] branch : branches) {
        Found found = go(branch);
        if (!(found instanceof Found.None)) {
          return found;
        }
      }
      return new Found.None();
    }
  }
}
