package closehand.rules;

import java.util.ArrayList;
import java.util.List;

/** Cuts a condition down to what is open in a state. */
final class Pruning {
  private Pruning() {}

  /** The same condition in every state that follows from this one by knowing more. */
  static Node of(Node node, long[] state) {
    Outcome outcome = node.in(state);
    if (outcome != Outcome.OPEN) {
      return new Node.Fixed(outcome);
    }
    if (node instanceof Node.Not not) {
      return new Node.Not(of(not.part(), state));
    }
    if (node instanceof Node.All all) {
      return new Node.All(open(all.parts(), state));
    }
    if (node instanceof Node.Any any) {
      return new Node.Any(open(any.parts(), state));
    }
    if (node instanceof Node.AtLeast atLeast) {
      List<Node> parts = atLeast.parts().stream().map(p -> of(p, state)).toList();
      return new Node.AtLeast(atLeast.count(), parts);
    }
    return node;
  }

  /**
   * An open "all" has no part that fails, an open "any" none that holds: those settled are done.
   */
  private static List<Node> open(List<Node> parts, long[] state) {
    List<Node> open = new ArrayList<>();
    for (Node part : parts) {
      if (part.in(state) == Outcome.OPEN) {
        open.add(of(part, state));
      }
    }
    return List.copyOf(open);
  }
}
