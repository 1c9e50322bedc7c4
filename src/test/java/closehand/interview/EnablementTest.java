package closehand.interview;

import static closehand.interview.Forms.exists;
import static closehand.interview.Forms.form;
import static closehand.interview.Forms.is;
import static closehand.interview.Forms.isNot;
import static closehand.interview.Forms.isTrue;
import static closehand.interview.Forms.list;
import static closehand.interview.Forms.one;
import static closehand.interview.Forms.question;
import static closehand.interview.Forms.section;
import static closehand.interview.Forms.several;
import static closehand.interview.Forms.test;
import static closehand.interview.Forms.whole;
import static closehand.interview.Forms.words;
import static closehand.interview.Forms.yesNo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import closehand.bank.Questionnaire;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which fields apply: what the comparison with the reference validator does not reach. */
class EnablementTest {
  private static final Answer UNKNOWN = new Answer.Absent(Answer.Reason.UNKNOWN);

  private static Questionnaire items(Forms.Item... items) {
    return form(section("A", question("A-1", items)));
  }

  private static Answers answers(Object... factsAndAnswers) {
    Answers answers = Answers.NONE;
    for (int i = 0; i < factsAndAnswers.length; i += 2) {
      Answer answer =
          factsAndAnswers[i + 1] instanceof Value value
              ? new Answer.Given(value)
              : (Answer) factsAndAnswers[i + 1];
      answers =
          answers.with(
              (String) factsAndAnswers[i], new Answers.Recorded(answer, Provenance.PLAYER_TOLD));
    }
    return answers;
  }

  private static boolean applies(Questionnaire form, String fact, Answers answers) {
    return Enablement.of(form, answers).applies(fact);
  }

  @Test
  void aChainFallsWithItsFirstLink() {
    Questionnaire chain =
        items(
            yesNo("a"),
            yesNo("b").when(isTrue("a")),
            yesNo("c").when(isTrue("b")),
            yesNo("d").when(exists("c", false)));
    Value yes = new Value.Flag(true);
    Answers all = answers("a", yes, "b", yes, "c", yes);
    assertTrue(applies(chain, "c", all));
    assertFalse(applies(chain, "d", all));
    Answers changed =
        all.with(
            "a",
            new Answers.Recorded(new Answer.Given(new Value.Flag(false)), Provenance.PLAYER_TOLD));
    assertFalse(applies(chain, "c", changed));
    assertTrue(applies(chain, "d", changed), "c does not apply, so it has no answer");
    Enablement enablement = Enablement.of(chain, changed);
    assertEquals(Set.of("a"), enablement.effective().byFact().keySet());
    assertEquals(Set.of("b", "c"), enablement.setAside().byFact().keySet());
  }

  @Test
  void conditionsOfAllGroupsAroundMustHold() {
    Questionnaire form =
        items(
            yesNo("a"),
            one("b", "x", "y"),
            yesNo("c").when(isTrue("a")).whenAny(is("b", "x"), is("b", "y")));
    assertTrue(applies(form, "c", answers("a", new Value.Flag(true), "b", new Value.Code("y"))));
    assertFalse(applies(form, "c", answers("a", new Value.Flag(true))));
    assertFalse(applies(form, "c", answers("a", new Value.Flag(false), "b", new Value.Code("y"))));
  }

  @Test
  void dontKnowExistsButComparesWithNothing() {
    Questionnaire form =
        items(
            one("a", "x", "y"),
            yesNo("there").when(exists("a", true)),
            yesNo("gone").when(exists("a", false)),
            yesNo("same").when(is("a", "x")),
            yesNo("other").when(isNot("a", "x")));
    assertEquals(Set.of("a", "there"), applying(form, answers("a", UNKNOWN)));
    assertEquals(Set.of("a", "gone"), applying(form, Answers.NONE));
    assertEquals(Set.of("a", "there", "other"), applying(form, answers("a", new Value.Code("y"))));
  }

  private static Set<String> applying(Questionnaire form, Answers answers) {
    Enablement enablement = Enablement.of(form, answers);
    return form.fieldsByFact().keySet().stream()
        .filter(enablement::applies)
        .collect(java.util.stream.Collectors.toCollection(java.util.TreeSet::new));
  }

  @Test
  void pickingNothingCountsAsTheOptionThatSaysSoOrAsNoAnswer() {
    Questionnaire form =
        items(
            several("withNone", "none!", "x"),
            several("without", "x", "y"),
            yesNo("a").when(is("withNone", "none")),
            yesNo("b").when(exists("without", true)));
    Value empty = new Value.Codes(List.of());
    assertEquals(
        Set.of("withNone", "without", "a"),
        applying(form, answers("withNone", empty, "without", empty)));
  }

  @Test
  void kindsThatDoNotMatchCompareWithNothing() {
    Questionnaire form =
        items(
            one("a", "1", "2"),
            whole("n", 0, 9, "1"),
            yesNo("b").when(test("a", Operator.EQUAL, new Expected.Number(1, true))),
            yesNo("c").when(test("a", Operator.NOT_EQUAL, new Expected.Number(1, true))),
            yesNo("d").when(test("a", Operator.AT_LEAST, new Expected.Coded("", "1"))),
            yesNo("e").when(is("n", "1")),
            yesNo("f").when(test("n", Operator.EXISTS, new Expected.Number(1, true))));
    assertEquals(
        Set.of("a", "n"),
        applying(form, answers("a", new Value.Code("2"), "n", new Value.Number(1))));
  }

  @Test
  void aConditionThatStatesAnotherCodeSystemDoesNotHold() {
    Questionnaire form =
        items(
            one("a", "x"),
            yesNo("any").when(test("a", Operator.EQUAL, new Expected.Coded("", "x"))),
            yesNo("other").when(test("a", Operator.EQUAL, new Expected.Coded("urn:other", "x"))));
    assertEquals(Set.of("a", "any"), applying(form, answers("a", new Value.Code("x"))));
  }

  @Test
  void wordsCompareAsTheyAre() {
    Questionnaire form =
        items(
            words("w"),
            list("l"),
            yesNo("a").when(test("w", Operator.EQUAL, new Expected.Text("Left"))),
            yesNo("b").when(test("l", Operator.EQUAL, new Expected.Text("B2"))));
    Answers given = answers("w", new Value.Text("left"), "l", new Value.Texts(List.of("A1", "B2")));
    assertEquals(Set.of("w", "l", "b"), applying(form, given));
  }

  @Test
  void circlesAndUnknownFactsNeverApplyAndNeverHang() {
    Questionnaire form =
        items(
            yesNo("self").when(isTrue("self")),
            yesNo("a").when(isTrue("b")),
            yesNo("b").when(isTrue("a")),
            yesNo("lost").when(isTrue("nobody")),
            yesNo("absent").when(exists("nobody", false)));
    Value yes = new Value.Flag(true);
    Answers given = answers("self", yes, "a", yes, "b", yes, "nobody", yes);
    assertEquals(Set.of("absent"), applying(form, given));
    assertEquals(given.byFact().keySet(), Enablement.of(form, given).setAside().byFact().keySet());
  }

  @Test
  void whatMayStillApplyIsKnownBeforeItsQuestionIsAnswered() {
    Questionnaire form =
        items(yesNo("a"), yesNo("b").when(isTrue("a")), yesNo("c").when(isTrue("b")));
    assertTrue(Enablement.of(form, Answers.NONE).mayApply("c"));
    assertFalse(Enablement.of(form, Answers.NONE).applies("b"));
    Answers no = answers("a", new Value.Flag(false));
    assertFalse(Enablement.of(form, no).mayApply("c"));
    assertFalse(Enablement.of(form, no).mayApply("nobody"));
  }
}
