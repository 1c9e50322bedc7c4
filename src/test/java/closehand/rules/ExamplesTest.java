package closehand.rules;

import static closehand.rules.Say.HERE;
import static closehand.rules.Say.is;
import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.FlatValue;
import closehand.bank.Problem;
import closehand.bank.Rule.Example;
import closehand.bank.Rule.Expect;
import closehand.bank.Rule.Given;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A rule whose example comes out otherwise is reported with both outcomes. */
class ExamplesTest {
  private static List<Problem> check(Map<String, FlatValue> given, Expect expect, String... waits) {
    TestBank bank = new TestBank().yesNo("a").yesNo("b").yesNo("hand.left");
    bank.rule("R001", Say.all(is("a", true), is("b", true)))
        .example(new Example(new Given(given), expect, List.of(waits), HERE));
    return Examples.check(bank.build());
  }

  private static FlatValue flag(boolean value) {
    return new FlatValue.Flag(value, HERE);
  }

  @Test
  void rightExamplesPass() {
    assertEquals(List.of(), check(Map.of("a", flag(true), "b", flag(true)), Expect.FIRES));
    assertEquals(List.of(), check(Map.of("a", flag(false)), Expect.NOT));
    assertEquals(List.of(), check(Map.of("a", flag(true)), Expect.WAITS, "b"));
    assertEquals(List.of(), check(Map.of(), Expect.WAITS, "b", "a"));
  }

  @Test
  void aWrongOutcomeNamesExpectedAndFound() {
    List<Problem> problems = check(Map.of("a", flag(true)), Expect.FIRES);
    assertEquals(
        "invented bank [failing-example] Example 1 of rule R001 expects \"fires\" but comes out as"
            + " \"waits for b\". Correct the example or the rule.",
        problems.get(0).toString());
  }

  @Test
  void aWrongWaitSetIsWrong() {
    assertEquals(
        "Example 1 of rule R001 expects \"waits for a, b\" but comes out as \"waits for b\".",
        check(Map.of("a", flag(true)), Expect.WAITS, "a", "b").get(0).what());
  }

  @Test
  void anExampleThatCannotBeReadIsWrong() {
    Problem problem = check(Map.of("hand.lefd", flag(true)), Expect.FIRES).get(0);
    assertEquals("failing-example", problem.code());
    assertEquals(
        "Example 1 of rule R001 cannot be read: There is no question \"hand.lefd\".",
        problem.what());
    assertEquals("Did you mean \"hand.left\"?", problem.mend());
  }
}
