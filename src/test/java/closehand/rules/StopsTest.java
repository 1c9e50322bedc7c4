package closehand.rules;

import static closehand.bank.CautionClass.CARE;
import static closehand.bank.CautionClass.STOP_ALL;
import static closehand.bank.CautionClass.STOP_PART;
import static closehand.bank.CautionClass.STOP_TASKS;
import static closehand.rules.AdviceTest.codes;
import static closehand.rules.AdviceTest.standing;
import static closehand.rules.Say.all;
import static closehand.rules.Say.always;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.has;
import static closehand.rules.Say.in;
import static closehand.rules.Say.is;
import static closehand.rules.Say.lowering;
import static closehand.rules.Say.when;
import static closehand.rules.Standing.Status.STRONG;
import static closehand.rules.Standing.Status.UNDECIDED;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.CautionClass;
import closehand.bank.TaskKind;
import closehand.interview.Answer.Reason;
import closehand.interview.Answers;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A stop is never passed over in silence: it stands, it is open, or a clinician lowered it. */
class StopsTest {
  private static RuleBook chest() {
    TestBank bank = new TestBank().approaches("MOUSE").cautions("C-CHEST");
    bank.gate("chest", "no", "now", "checked");
    bank.rule("good", always()).points("MOUSE", 2);
    bank.rule("stop", is("chest", "now"))
        .unless(has("cleared", "C-CHEST"))
        .raises("C-CHEST", STOP_TASKS);
    bank.rule("care", in("chest", "now", "checked")).raises("C-CHEST", CARE);
    return bank.book();
  }

  @Test
  void aStopWithholdsSuggestionsAndHoldsEveryTask() {
    Advice advice = chest().advise(answers("chest", "now"));
    assertEquals(List.of("C-CHEST STOP-TASKS"), codes(advice.stops()));
    assertEquals(List.of(), advice.cautions(), "shown as a stop only");
    assertTrue(advice.withheld());
    assertEquals(List.of(), advice.suggestions());
    assertEquals(STRONG, standing(advice, "MOUSE").status());
    assertEquals(Set.of(TaskKind.values()), advice.holds());
    assertEquals(Optional.of(STOP_TASKS), advice.strongestStop());
  }

  @Test
  void anOpenStopIsNotCleared() {
    for (Answers open : List.of(Answers.NONE, answers("chest", Reason.DECLINED))) {
      Advice advice = chest().advise(open);
      assertEquals(List.of("C-CHEST STOP-TASKS"), codes(advice.notCleared()));
      assertEquals(List.of("chest"), advice.notCleared().get(0).waitsFor());
      assertFalse(advice.firm());
      assertFalse(advice.withheld());
    }
    Advice clear = chest().advise(answers("chest", "no"));
    assertEquals(List.of(), clear.notCleared());
    assertTrue(clear.firm());
  }

  @Test
  void aLoweredStopIsListedAndOnlyItsCautionStays() {
    Advice advice = chest().advise(lowering(answers("chest", "now"), "C-CHEST"));
    assertEquals(List.of("C-CHEST STOP-TASKS"), codes(advice.lowered()));
    assertEquals(List.of("C-CHEST CARE"), codes(advice.cautions()));
    assertEquals(List.of(), advice.stops());
    assertEquals(1, advice.suggestions().size());
    assertEquals(Set.of(), advice.holds());
    Advice nothing = chest().advise(lowering(answers("chest", "no"), "C-CHEST"));
    assertEquals(List.of(), nothing.lowered(), "nothing was there to lower");
    Advice other = chest().advise(lowering(answers("chest", "now"), "C-OTHER"));
    assertEquals(List.of("C-CHEST STOP-TASKS"), codes(other.stops()));
  }

  @Test
  void heldBackForAnotherReasonIsNotLowered() {
    TestBank bank = new TestBank().cautions("C-CHEST").yesNo("now").yesNo("checked");
    bank.rule("stop", is("now", true))
        .unless(Say.any(is("checked", true), has("cleared", "C-CHEST")))
        .raises("C-CHEST", STOP_ALL);
    Answers checked = answers("now", true, "checked", true);
    assertEquals(List.of(), bank.book().advise(lowering(checked, "C-CHEST")).lowered());
  }

  private static RuleBook skin() {
    TestBank bank = new TestBank().approaches("MOUSE", "VOICE").cautions("C-SKIN");
    bank.gate("skin", "none", "broken");
    bank.several("skin.where", List.of("armL", "armR"), when("skin", "broken"));
    bank.rule("good", always()).points("MOUSE", 2).points("VOICE", 2);
    bank.rule("stop", is("skin", "broken")).raises("C-SKIN", STOP_PART);
    bank.rule("arm", all(is("skin", "broken"), has("skin.where", "armL"))).excludes("MOUSE");
    return bank.book();
  }

  @Test
  void aStopOnAPartWithholdsUntilThePartIsKnown() {
    Advice unknown = skin().advise(answers("skin", "broken"));
    assertTrue(unknown.withheld());
    assertFalse(unknown.forReview());
    assertEquals(List.of(), unknown.suggestions());
    Advice refused = skin().advise(answers("skin", "broken", "skin.where", Reason.DECLINED));
    assertTrue(refused.withheld());
    Advice empty = skin().advise(answers("skin", "broken", "skin.where", List.of()));
    assertTrue(empty.withheld(), "an answer that names no part tells nothing");
  }

  @Test
  void aStopOnAKnownPartLeavesTheRestForReview() {
    Advice known = skin().advise(answers("skin", "broken", "skin.where", List.of("armL")));
    assertFalse(known.withheld());
    assertTrue(known.forReview());
    assertEquals(1, known.suggestions().size());
    assertEquals("VOICE", known.suggestions().get(0).approach().id());
    assertEquals(Set.of(), known.holds());
  }

  @Test
  void whileAPartIsStoppedAnOpenExclusionHoldsASuggestionBack() {
    TestBank bank = new TestBank().approaches("MOUSE").cautions("C-SKIN").yesNo("skin").yesNo("x");
    bank.rule("good", always()).points("MOUSE", 2);
    bank.rule("stop", is("skin", true)).raises("C-SKIN", STOP_PART);
    bank.rule("out", is("x", true)).excludes("MOUSE");
    RuleBook book = bank.book();
    assertEquals(STRONG, standing(book.advise(answers("skin", false)), "MOUSE").status());
    assertEquals(UNDECIDED, standing(book.advise(answers("skin", true)), "MOUSE").status());
    Answers settled = answers("skin", true, "x", false);
    assertEquals(STRONG, standing(book.advise(settled), "MOUSE").status());
  }

  @Test
  void theStrongestStopComesFirst() {
    TestBank bank = new TestBank().cautions("C-ONE", "C-TWO", "C-THREE");
    bank.rule("one", always()).raises("C-ONE", STOP_PART);
    bank.rule("two", always()).raises("C-TWO", STOP_ALL);
    bank.rule("three", always()).raises("C-THREE", CautionClass.NOTE);
    Advice advice = bank.book().advise(Answers.NONE);
    assertEquals(List.of("C-TWO STOP-ALL", "C-ONE STOP-PART"), codes(advice.stops()));
    assertEquals(List.of("C-THREE NOTE"), codes(advice.cautions()));
    assertTrue(advice.withheld());
  }
}
