package closehand.rules;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which facts and terms of a bank are read by something that matters, and which answers are told
 * apart. What only a term reads that nothing reads does not count.
 */
public final class Reading {
  private final Program program;
  private final Map<Integer, List<Long>> tests = new LinkedHashMap<>();
  private final BitSet read = new BitSet();
  private final BitSet counted = new BitSet();

  /** Numbers of which each makes a difference. */
  private final BitSet apart = new BitSet();

  private Reading(RuleBook book) {
    this.program = book.program();
    for (CompiledRule rule : program.rules()) {
      note(rule.when());
      note(rule.unless());
    }
    for (Step step : program.steps()) {
      if (step instanceof Step.Gate gate) {
        note(gate.applies());
      } else if (!(step instanceof TermStep)) {
        step.reads(read::set);
      }
    }
    for (int i = program.steps().size() - 1; i >= 0; i--) {
      if (program.steps().get(i) instanceof TermStep term && read.get(term.slot())) {
        noteTerm(term);
      }
    }
  }

  /** What a term that is read reads itself; terms come after all that they are made of. */
  private void noteTerm(TermStep term) {
    term.reads(read::set);
    if (term instanceof TermStep.Derived derived) {
      note(derived.when());
    } else if (term instanceof Count count) {
      count.options().forEach(counted::set);
    } else if (term instanceof Extreme extreme && !apart.get(extreme.slot())) {
      List<Long> asked = tests.getOrDefault(extreme.slot(), List.of());
      extreme
          .inputs()
          .forEach(in -> tests.computeIfAbsent(in, s -> new ArrayList<>()).addAll(asked));
    } else {
      term.reads(apart::set);
    }
  }

  /** Reads a bank through. */
  public static Reading of(RuleBook book) {
    return new Reading(book);
  }

  private void note(Node node) {
    if (node instanceof Node.Leaf leaf) {
      tests.computeIfAbsent(leaf.slot(), s -> new ArrayList<>()).add(leaf.cells());
      read.set(leaf.slot());
    } else if (node instanceof Node.Not not) {
      note(not.part());
    } else if (node instanceof Node.All all) {
      all.parts().forEach(this::note);
    } else if (node instanceof Node.Any any) {
      any.parts().forEach(this::note);
    } else if (node instanceof Node.AtLeast atLeast) {
      atLeast.parts().forEach(this::note);
    }
  }

  /**
   * Whether any rule or condition of a question reads this fact or term, itself or through terms.
   */
  public boolean isRead(String factOrTerm) {
    int slot = program.table().slotOf(factOrTerm);
    int width = program.table().shapeOf(factOrTerm).width();
    int how = program.table().findAsked(factOrTerm).map(Asked::howSlot).orElse(slot);
    for (int i = slot; i < slot + width; i++) {
      if (read.get(i)) {
        return true;
      }
    }
    return read.get(how);
  }

  /**
   * Groups of options that nothing tells apart, two or more each, in the order of the question; of
   * a list the options that nothing reads. Empty for facts that nothing reads.
   */
  public List<List<String>> alike(String fact) {
    Asked asked = program.table().asked(fact);
    if (!isRead(fact) || apart.get(asked.slot())) {
      return List.of();
    }
    if (asked.shape() instanceof SeveralShape several) {
      List<String> unread = new ArrayList<>();
      for (int i = 0; i < several.width(); i++) {
        int slot = asked.slot() + i;
        boolean lone = several.options().get(i).exclusive();
        if (!lone && !tests.containsKey(slot) && !counted.get(slot)) {
          unread.add(several.options().get(i).code());
        }
      }
      return unread.isEmpty() ? List.of() : List.of(unread);
    }
    return asked.shape() instanceof ChoiceShape choice ? alike(asked, choice) : List.of();
  }

  private List<List<String>> alike(Asked asked, ChoiceShape choice) {
    Set<Long> used = new LinkedHashSet<>(tests.getOrDefault(asked.slot(), List.of()));
    if (used.isEmpty()) {
      return List.of();
    }
    Map<List<Boolean>, List<String>> groups = new LinkedHashMap<>();
    for (int i = 0; i < choice.options().size(); i++) {
      long cell = 1L << choice.cells().get(i);
      List<Boolean> signature = used.stream().map(t -> (t & cell) != 0).toList();
      groups.computeIfAbsent(signature, s -> new ArrayList<>()).add(choice.options().get(i).code());
    }
    return groups.values().stream().filter(g -> g.size() > 1).toList();
  }

  /**
   * The numbers and scales that a rule compares, each with the cells of its own line; terms and
   * facts by their names.
   */
  public Map<String, Long> numbersOf(int rule) {
    Set<Integer> slots = new LinkedHashSet<>();
    program.rules().get(rule).slots(slots::add);
    Map<String, Long> numbers = new LinkedHashMap<>();
    for (Asked asked : program.table().all()) {
      boolean scale = asked.shape() instanceof ChoiceShape c && c.line().isPresent();
      if (slots.contains(asked.slot()) && (scale || asked.shape() instanceof AmountShape)) {
        numbers.put(asked.fact(), asked.shape().all());
      }
    }
    for (closehand.bank.Term term : program.bank().terms()) {
      Shape shape = program.table().shapeOf(term.id());
      if (shape instanceof AmountShape && slots.contains(program.table().slotOf(term.id()))) {
        numbers.put(term.id(), shape.all());
      }
    }
    return numbers;
  }

  /**
   * Whether "don't know" on this question has a way of its own: it counts as an answer "unsure"
   * that something reads, or something asks how the fact is known.
   */
  public boolean hearsDoubt(String fact) {
    Asked asked = program.table().asked(fact);
    boolean unsureRead =
        asked.unknownIsUnsure()
            && asked.shape() instanceof ChoiceShape choice
            && tests.getOrDefault(asked.slot(), List.of()).stream()
                .anyMatch(t -> (t & choice.cell(Asked.UNSURE)) != 0);
    boolean unsurePicked =
        asked.unknownIsUnsure()
            && asked.shape() instanceof SeveralShape several
            && tests.containsKey(asked.slot() + several.index(Asked.UNSURE));
    return unsureRead || unsurePicked || tests.containsKey(asked.howSlot());
  }

  /** The facts a rule can reach back to, through terms and through whether questions apply. */
  public Set<String> factsBehind(int rule) {
    BitSet seen = new BitSet();
    Set<String> facts = new LinkedHashSet<>();
    program.rules().get(rule).slots(slot -> back(slot, seen, facts));
    return facts;
  }

  private void back(int slot, BitSet seen, Set<String> facts) {
    if (seen.get(slot)) {
      return;
    }
    seen.set(slot);
    TermStep term = program.owners().term(slot);
    Asked fact = program.owners().fact(slot);
    if (term != null) {
      term.reads(read -> back(read, seen, facts));
    } else if (fact != null && facts.add(fact.fact())) {
      Node gate = program.owners().gate(fact);
      if (gate != null) {
        gate.slots(read -> back(read, seen, facts));
      }
    }
  }
}
