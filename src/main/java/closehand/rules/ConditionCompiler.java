package closehand.rules;

import closehand.bank.Condition;
import closehand.bank.Condition.All;
import closehand.bank.Condition.Always;
import closehand.bank.Condition.Any;
import closehand.bank.Condition.AtLeast;
import closehand.bank.Condition.Not;
import closehand.bank.Condition.Operand;
import closehand.bank.Condition.Test;
import closehand.bank.EnableWhen;
import closehand.bank.Field;
import java.util.ArrayList;
import java.util.List;

/** Makes conditions out over the cells of a fact table. */
final class ConditionCompiler {
  private final FactTable table;

  ConditionCompiler(FactTable table) {
    this.table = table;
  }

  /**
   * A condition of a rule or term, already spread over the games.
   *
   * @throws IllegalArgumentException for a fact, option or comparison that does not exist
   */
  Node node(Condition condition) {
    if (condition instanceof Test test) {
      return test(test);
    }
    if (condition instanceof All all) {
      return new Node.All(nodes(all.parts()));
    }
    if (condition instanceof Any any) {
      return new Node.Any(nodes(any.parts()));
    }
    if (condition instanceof Not not) {
      return new Node.Not(node(not.part()));
    }
    if (condition instanceof AtLeast atLeast) {
      return new Node.AtLeast(atLeast.count(), nodes(atLeast.parts()));
    }
    if (condition instanceof Always) {
      return new Node.Fixed(Outcome.TRUE);
    }
    throw new IllegalArgumentException("a condition about games inside another");
  }

  private List<Node> nodes(List<Condition> conditions) {
    List<Node> nodes = new ArrayList<>(conditions.size());
    for (Condition condition : conditions) {
      nodes.add(node(condition));
    }
    return List.copyOf(nodes);
  }

  private Node test(Test test) {
    if (test.operator().equals(GameScope.LISTED)) {
      return new Node.Leaf(listedSlot(test.fact()), Shape.YES);
    }
    if (test.operator().equals("how")) {
      return new Node.Leaf(table.asked(test.fact()).howSlot(), How.cells(codes(test.value())));
    }
    String id = test.fact();
    return table.shapeOf(id).test(table.slotOf(id), test.operator(), test.value());
  }

  private int listedSlot(String genre) {
    for (int game : table.games()) {
      if (GameScope.genre(game).equals(genre)) {
        return table.listedSlot(game);
      }
    }
    throw new IllegalArgumentException("no such game slot: " + genre);
  }

  private static List<String> codes(Operand operand) {
    if (operand instanceof Operand.Codes codes) {
      return codes.values().stream().map(Operand.Code::value).toList();
    }
    throw Shape.unsuited("how");
  }

  /** When a field applies: all of its conditions hold. */
  Node gate(Field field) {
    List<Node> parts = new ArrayList<>();
    for (EnableWhen condition : field.conditions()) {
      List<Node> tests = new ArrayList<>();
      for (EnableWhen.Test test : condition.tests()) {
        tests.add(enable(test));
      }
      if (tests.size() == 1) {
        parts.add(tests.get(0));
      } else {
        parts.add(
            condition.all() ? new Node.All(List.copyOf(tests)) : new Node.Any(List.copyOf(tests)));
      }
    }
    return parts.size() == 1 ? parts.get(0) : new Node.All(List.copyOf(parts));
  }

  private Node enable(EnableWhen.Test test) {
    Asked fact = table.asked(test.fact());
    if (test.operator() == EnableWhen.Operator.EXISTS) {
      boolean wanted = test.expected() instanceof EnableWhen.Expected.Flag flag && flag.value();
      // A question that does not apply has no answer: "exists false" holds there.
      return wanted ? exists(fact) : new Node.Not(exists(fact));
    }
    return fact.shape().enable(fact.slot(), test.operator(), test.expected());
  }

  /** That a value is there; picking nothing is one only where an option says so. */
  private static Node exists(Asked fact) {
    Node given = new Node.Leaf(fact.howSlot(), How.EXISTS);
    return fact.shape() instanceof SeveralShape several
        ? new Node.All(List.of(given, several.somePicked(fact.slot())))
        : given;
  }
}
