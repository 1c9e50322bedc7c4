package closehand.rules;

import static closehand.rules.Say.answers;
import static closehand.rules.Say.how;
import static closehand.rules.Say.when;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.EnableWhen.Operator;
import closehand.interview.Answers;
import closehand.interview.Enablement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The rules read {@code enableWhen} just as the interview does: whether a question applies may not
 * depend on who asks. {@code EnablementReferenceTest} holds the interview against HL7's validator.
 */
class SameGatesTest {
  private static final List<String> WITH_NONE = List.of("none", "arm", "leg");
  private static final List<String> WITHOUT = List.of("arm", "hand", "leg");

  /** One question for every operator and option, behind a question that can be switched off. */
  private static Bank bank(List<String> options) {
    TestBank bank = new TestBank().yesNo("first");
    bank.several("parts", options, when("first", true));
    List<String> opened = new ArrayList<>();
    for (String option : options) {
      for (Operator operator : List.of(Operator.EQUAL, Operator.NOT_EQUAL)) {
        opened.add(operator.name() + option);
        bank.yesNo(opened.get(opened.size() - 1), when("parts", operator, option));
      }
    }
    for (boolean there : List.of(true, false)) {
      opened.add("exists" + there);
      bank.yesNo("exists" + there, when("parts", Operator.EXISTS, there));
    }
    opened.forEach(fact -> bank.rule(fact, how(fact, "notAsked")));
    return bank.build();
  }

  @Test
  void whateverIsPicked() {
    for (List<String> options : List.of(WITH_NONE, WITHOUT)) {
      Bank bank = bank(options);
      for (int picks = 0; picks < 1 << options.size(); picks++) {
        List<String> picked = new ArrayList<>();
        for (int i = 0; i < options.size(); i++) {
          if ((picks >> i & 1) == 1) {
            picked.add(options.get(i));
          }
        }
        if (!picked.contains("none") || picked.size() == 1) {
          same(bank, answers("first", true, "parts", picked));
          same(bank, answers("first", false, "parts", picked));
        }
      }
    }
  }

  private static void same(Bank bank, Answers answers) {
    RuleBook book = RuleBook.of(bank);
    Enablement interview = Enablement.of(bank.questionnaire(), answers);
    for (int rule = 0; rule < bank.rules().size(); rule++) {
      String fact = bank.rules().get(rule).id();
      Outcome expected = interview.applies(fact) ? Outcome.TRUE : Outcome.FALSE;
      assertEquals(expected, book.find(rule, answers).outcome(), fact + " at " + answers);
    }
  }

  @Test
  void ofSeveralAnswersOneThatDiffersSuffices() {
    Bank bank = bank(WITHOUT);
    Answers both = answers("first", true, "parts", List.of("arm", "leg"));
    Enablement interview = Enablement.of(bank.questionnaire(), both);
    assertTrue(interview.applies("EQUALarm"));
    assertTrue(interview.applies("NOT_EQUALarm"), "the leg differs (HL7 FHIR R4)");
    Answers one = answers("first", true, "parts", List.of("arm"));
    assertFalse(Enablement.of(bank.questionnaire(), one).applies("NOT_EQUALarm"));
    same(bank, both);
    same(bank, one);
  }
}
