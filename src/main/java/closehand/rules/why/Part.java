package closehand.rules.why;

import closehand.bank.Condition;
import closehand.rules.Outcome;
import closehand.rules.Workings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A condition with what came of it, and the same for its parts.
 *
 * @param condition the condition, spread over the wanted games
 * @param outcome whether it holds
 * @param parts its parts; of a comparison with a yes-or-no term, the condition behind the term
 * @param facts the facts that settle it; for an open one those known so far
 * @param waitsFor the facts it waits for; empty when it is settled
 */
public record Part(
    Condition condition,
    Outcome outcome,
    List<Part> parts,
    List<String> facts,
    List<String> waitsFor) {
  public Part {
    parts = List.copyOf(parts);
    facts = List.copyOf(facts);
    waitsFor = List.copyOf(waitsFor);
  }

  /** Takes a condition apart. */
  static Part of(Condition condition, Workings workings) {
    List<Part> parts = new ArrayList<>();
    for (Condition inner : inside(condition, workings)) {
      parts.add(of(inner, workings));
    }
    return new Part(
        condition,
        workings.outcome(condition),
        parts,
        workings.supportedBy(condition),
        workings.waitsFor(condition));
  }

  private static List<Condition> inside(Condition condition, Workings workings) {
    if (condition instanceof Condition.All all) {
      return all.parts();
    }
    if (condition instanceof Condition.Any any) {
      return any.parts();
    }
    if (condition instanceof Condition.AtLeast atLeast) {
      return atLeast.parts();
    }
    if (condition instanceof Condition.Not not) {
      return List.of(not.part());
    }
    return condition instanceof Condition.Test test
        ? workings.behind(test.fact()).map(List::of).orElse(List.of())
        : List.of();
  }

  /** Whether it is a comparison with something worked out, whose grounds can be unfolded. */
  public boolean folded() {
    return condition instanceof Condition.Test && !parts.isEmpty();
  }

  /**
   * The first part that keeps it from holding: of "all" the first that does not hold, of everything
   * else the whole; terms stay folded. Empty when it holds.
   */
  public Optional<Part> firstFailing() {
    if (outcome == Outcome.TRUE) {
      return Optional.empty();
    }
    if (condition instanceof Condition.All) {
      for (Part part : parts) {
        if (part.outcome() == outcome) {
          return part.firstFailing();
        }
      }
    }
    return Optional.of(this);
  }
}
