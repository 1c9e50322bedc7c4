package closehand.rules;

import static closehand.bank.CautionClass.CARE;
import static closehand.bank.CautionClass.NOTE;
import static closehand.rules.Say.always;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.in;
import static closehand.rules.Say.is;
import static closehand.rules.Say.test;
import static closehand.rules.Standing.Status.NOT_SUGGESTED;
import static closehand.rules.Standing.Status.RULED_OUT;
import static closehand.rules.Standing.Status.STRONG;
import static closehand.rules.Standing.Status.UNDECIDED;
import static closehand.rules.Standing.Status.WORTH_TRYING;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.TaskKind;
import closehand.interview.Answers;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Points, exclusions and cautions come together as one advice. */
class AdviceTest {
  static Standing standing(Advice advice, String approach) {
    return advice.standings().stream()
        .filter(s -> s.approach().id().equals(approach))
        .findFirst()
        .orElseThrow();
  }

  static List<String> order(Advice advice) {
    return advice.standings().stream().map(s -> s.approach().id()).toList();
  }

  static List<String> codes(List<Warning> warnings) {
    return warnings.stream().map(w -> w.caution().code() + " " + w.cautionClass().code()).toList();
  }

  @Test
  void pointsAddUpAndOpenRulesSpanARange() {
    TestBank bank = new TestBank().approaches("MOUSE").yesNo("a").yesNo("b").yesNo("c");
    bank.rule("plus", is("a", true)).points("MOUSE", 2);
    bank.rule("minus", is("b", true)).points("MOUSE", -3);
    bank.rule("more", is("c", true)).points("MOUSE", 4);
    Standing known = standing(bank.book().advise(answers("a", true)), "MOUSE");
    assertEquals(2, known.points());
    assertEquals(-1, known.lowest());
    assertEquals(6, known.highest());
    assertEquals(STRONG, known.status());
    assertEquals(List.of("b", "c"), known.waitsFor());
    Answers all = answers("a", true, "b", true, "c", false);
    Standing settled = standing(bank.book().advise(all), "MOUSE");
    assertEquals(-1, settled.points());
    assertEquals(NOT_SUGGESTED, settled.status());
    assertEquals("plus", settled.inFavour().get(0).rule().id());
    assertEquals("minus", settled.against().get(0).rule().id());
  }

  @Test
  void whereAnApproachStands() {
    TestBank bank = new TestBank().approaches("A", "B", "C", "D", "E").yesNo("x").yesNo("y");
    bank.rule("two", always()).points("A", 2).points("D", 3);
    bank.rule("one", always()).points("B", 1);
    bank.rule("maybe", is("x", true)).points("C", 1);
    bank.rule("out", is("y", true)).excludes("D");
    Advice advice = bank.book().advise(answers("y", true));
    assertEquals(STRONG, standing(advice, "A").status());
    assertEquals(WORTH_TRYING, standing(advice, "B").status());
    assertEquals(UNDECIDED, standing(advice, "C").status());
    assertEquals(RULED_OUT, standing(advice, "D").status());
    assertEquals("out", standing(advice, "D").ruledOutBy().get(0).rule().id());
    assertEquals(NOT_SUGGESTED, standing(advice, "E").status());
    assertEquals(List.of("A", "B", "C", "E", "D"), order(advice));
    assertEquals(2, advice.suggestions().size());
    Advice open = bank.book().advise(Answers.NONE);
    assertEquals(STRONG, standing(open, "D").status());
    assertEquals("out", standing(open, "D").mayBeRuledOutBy().get(0).rule().id());
  }

  @Test
  void equalPointsGoByCostThenSetUpThenOrder() {
    TestBank bank = new TestBank();
    bank.approach("DEAR", "x", "much", 1).approach("SLOW", "x", "some", 9);
    bank.approach("QUICK", "x", "some", 2).approach("ALSO_QUICK", "x", "some", 2);
    bank.approach("FREE", "x", "none", 30).approach("BEST", "x", "much", 60);
    TestBank.TestRule rule = bank.rule("R", always()).points("BEST", 2);
    List.of("DEAR", "SLOW", "QUICK", "ALSO_QUICK", "FREE").forEach(id -> rule.points(id, 1));
    assertEquals(
        List.of("BEST", "FREE", "QUICK", "ALSO_QUICK", "SLOW", "DEAR"),
        order(bank.book().advise(Answers.NONE)));
  }

  @Test
  void oneWarningACautionWithItsStrongestClass() {
    TestBank bank = new TestBank().cautions("C-NECK", "C-WRIST", "C-BREAK");
    bank.rule("first", always()).raises("C-BREAK", NOTE);
    bank.rule("second", always()).raises("C-WRIST", NOTE).raises("C-NECK", CARE);
    bank.rule("third", always()).raises("C-WRIST", CARE);
    Advice advice = bank.book().advise(Answers.NONE);
    assertEquals(List.of("C-WRIST CARE", "C-NECK CARE", "C-BREAK NOTE"), codes(advice.cautions()));
    assertEquals(2, advice.cautions().get(0).because().size());
    assertEquals(List.of(), advice.stops());
  }

  @Test
  void tasksWaitWhereARuleHoldsThem() {
    TestBank bank = new TestBank().number("pain", 0, 10);
    bank.rule("R", test("pain", ">=", 4)).holds(TaskKind.STRENGTH).holds(TaskKind.TIMED);
    assertEquals(
        Set.of(TaskKind.TIMED, TaskKind.STRENGTH), bank.book().advise(answers("pain", 5)).holds());
    assertEquals(Set.of(), bank.book().advise(Answers.NONE).holds());
  }

  @Test
  void firmOnceNoOpenAnswerCanOvertakeTheLeader() {
    TestBank bank = new TestBank().approaches("A", "B").yesNo("x").one("k", List.of("p", "q", "r"));
    bank.rule("lead", always()).points("A", 2);
    bank.rule("b", is("x", true)).points("B", 3);
    bank.rule("shared", in("k", "p")).points("A", 2).points("B", 2);
    assertFalse(bank.book().advise(Answers.NONE).firm());
    assertFalse(bank.book().advise(answers("k", "p")).firm());
    assertTrue(bank.book().advise(answers("x", false)).firm(), "shared points cancel out");
    assertTrue(bank.book().advise(answers("x", true, "k", "q")).firm());
  }

  @Test
  void notFirmWhileTheLeaderMayBeRuledOutOrFallOut() {
    TestBank bank = new TestBank().approaches("A").yesNo("x").yesNo("y");
    bank.rule("lead", always()).points("A", 2);
    bank.rule("out", is("x", true)).excludes("A");
    bank.rule("less", is("y", true)).points("A", -2);
    assertFalse(bank.book().advise(answers("y", false)).firm());
    assertFalse(bank.book().advise(answers("x", false)).firm());
    assertTrue(bank.book().advise(answers("x", false, "y", false)).firm());
  }

  @Test
  void anEqualRivalDoesNotShakeALeaderThatWinsTies() {
    TestBank bank = new TestBank().approaches("A", "B").yesNo("x");
    bank.rule("lead", always()).points("A", 2);
    bank.rule("even", is("x", true)).points("B", 2);
    assertTrue(bank.book().advise(Answers.NONE).firm());
    TestBank turned = new TestBank().approaches("B", "A").yesNo("x");
    turned.rule("lead", always()).points("A", 2);
    turned.rule("even", is("x", true)).points("B", 2);
    assertFalse(turned.book().advise(Answers.NONE).firm());
  }

  @Test
  void settingsNeverLead() {
    TestBank bank = new TestBank().approach("SET", "settings", "none", 0).approaches("A");
    bank.yesNo("x");
    bank.rule("settings", always()).points("SET", 5);
    bank.rule("a", is("x", true)).points("A", 1);
    assertFalse(bank.book().advise(Answers.NONE).firm(), "A is undecided");
    assertTrue(bank.book().advise(answers("x", false)).firm(), "nothing is undecided");
    assertTrue(bank.book().advise(answers("x", true)).firm(), "A leads");
  }
}
