package closehand.rules;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What must hold for several conditions to hold, as far as it can be read off their words: rules
 * with the same condition, or with one condition more, are seen through without any search.
 */
final class Conjuncts {
  private final Set<Node> held;

  private Conjuncts(Set<Node> held) {
    this.held = held;
  }

  /** What must hold for all of these to hold. */
  static Conjuncts of(List<Node> nodes) {
    Set<Node> held = new LinkedHashSet<>();
    nodes.forEach(n -> gather(n, held));
    return new Conjuncts(held);
  }

  private static void gather(Node node, Set<Node> into) {
    if (node instanceof Node.All all) {
      all.parts().forEach(p -> gather(p, into));
    } else if (node instanceof Node.Not not && not.part() instanceof Node.Any any) {
      any.parts().forEach(p -> gather(new Node.Not(p), into));
    } else if (node instanceof Node.Not not && not.part() instanceof Node.Not twice) {
      gather(twice.part(), into);
    } else if (!isTrue(node)) {
      into.add(node);
    }
  }

  private static boolean isTrue(Node node) {
    return node.equals(new Node.Fixed(Outcome.TRUE))
        || node.equals(new Node.Not(new Node.Fixed(Outcome.FALSE)));
  }

  /** The same conditions, but what is denied is cut down to what is not held anyway. */
  static List<Node> cutDown(List<Node> nodes) {
    Conjuncts wanted = of(nodes.stream().filter(n -> !(n instanceof Node.Not)).toList());
    return nodes.stream()
        .map(n -> n instanceof Node.Not not ? new Node.Not(wanted.rest(not.part())) : n)
        .toList();
  }

  private Node rest(Node node) {
    if (node instanceof Node.Any any) {
      return new Node.Any(any.parts().stream().map(this::rest).toList());
    }
    if (node instanceof Node.AtLeast some) {
      return new Node.AtLeast(some.count(), some.parts().stream().map(this::rest).toList());
    }
    Set<Node> needed = new LinkedHashSet<>();
    gather(node, needed);
    needed.removeAll(held);
    List<Node> left = new ArrayList<>(needed);
    return left.size() == 1 ? left.get(0) : new Node.All(left);
  }

  /** Whether one of these cannot hold beside what is held: it denies what follows from it. */
  boolean refute(List<Node> nodes) {
    return nodes.stream().anyMatch(n -> n instanceof Node.Not not && follows(not.part()));
  }

  private boolean follows(Node node) {
    if (node instanceof Node.Any any) {
      return any.parts().stream().anyMatch(this::follows);
    }
    if (node instanceof Node.AtLeast some) {
      return some.parts().stream().filter(this::follows).count() >= some.count();
    }
    Set<Node> needed = new LinkedHashSet<>();
    gather(node, needed);
    return held.containsAll(needed);
  }
}
