package closehand.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Questionnaire;
import closehand.bank.TaskKind;
import closehand.json.CoreForm;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Walks by chance through the bank that travels with the program. */
class CoreBankWalkTest {
  private static final Questionnaire CORE = CoreForm.questionnaire();
  private static final Map<String, Field> FIELDS = CORE.fieldsByFact();

  @Test
  void theBankHasTheNamesThatTheProgramKnows() {
    assertTrue(FIELDS.get(WellKnown.CONSENT_STATE) != null);
    Field mode = FIELDS.getOrDefault(WellKnown.SESSION_MODE, Forms.yesNo("none").field());
    assertTrue(mode.type().option(WellKnown.ROOM).isPresent());
    assertTrue(mode.type().option(WellKnown.VIDEO).isPresent());
    Field pain = FIELDS.getOrDefault(WellKnown.PAIN_NOW, Forms.yesNo("none").field());
    assertEquals(new FactType.Amount(0, 10, 0, "{score}"), pain.type());
    assertTrue(pain.askedAgain());
    List<String> sections = CORE.sections().stream().map(s -> s.id()).toList();
    assertEquals(WellKnown.REVIEW_SECTION, sections.get(sections.size() - 1));
    for (Field field : FIELDS.values()) {
      boolean choice = field.askedAgain() && field.type() instanceof FactType.OneOf;
      assertTrue(!choice || field.type().option("no").isPresent(), field.fact());
    }
  }

  @Test
  void everyFieldIsReachedAndEveryWalkEnds() {
    Set<String> reached = new HashSet<>();
    for (int seed = 1; seed <= 60; seed++) {
      Dice dice = new Dice(seed);
      Interview now = Interview.begin(CORE, Interview.Route.FULL, Provenance.By.CLINICIAN);
      int steps = 0;
      while (!now.finished()) {
        String fact = now.at().orElseThrow();
        reached.add(fact);
        Interview next = answer(now, dice);
        if (next.refusal().isPresent()) {
          // Consent needs an answer, and a warning sign cannot fail to apply.
          next = now.after(new Message.NoAnswer(Answer.Reason.UNKNOWN, dice.provenance()));
        }
        if (next.refusal().isPresent()) {
          next = now.after(new Message.Give(new Value.Code("yes"), dice.provenance()));
        }
        now = next;
        assertEquals(Optional.empty(), now.refusal(), fact);
        assertTrue(++steps < 2 * FIELDS.size(), "seed " + seed + " does not end");
      }
      for (StillOpen open : now.open()) {
        assertEquals(StillOpen.Why.LATER, open.why(), open.toString());
      }
    }
    Set<String> missed = new HashSet<>(FIELDS.keySet());
    missed.removeAll(reached);
    assertEquals(Set.of(), missed);
  }

  @Test
  void whateverHappensNothingIsLostAndNothingUnlawfulIsAsked() {
    for (int seed = 1; seed <= 25; seed++) {
      Dice dice = new Dice(500 + seed);
      Interview now =
          Interview.begin(
              CORE, dice.of(List.of(Interview.Route.values())), Provenance.By.VOLUNTEER);
      for (int step = 0; step < 150; step++) {
        Interview next = Interview.update(now, message(now, dice));
        assertTrue(next.answers().byFact().keySet().containsAll(now.answers().byFact().keySet()));
        if (next.refusal().isPresent()) {
          assertEquals(now.answers(), next.answers());
          assertEquals(now.at(), next.at());
          assertEquals(now.sitting(), next.sitting());
        }
        lawful(next);
        now = next;
      }
    }
  }

  /** The current field applies, may be asked by this asker, and no task comes before its check. */
  private static void lawful(Interview now) {
    if (now.at().isEmpty()) {
      return;
    }
    Outline.Place place = now.outline().place(now.at().get()).orElseThrow();
    Walk walk = new Walk(now);
    assertTrue(walk.enablement().applies(place.fact()), place.fact());
    assertTrue(walk.canBeAsked(place), place.fact());
    assertFalse(walk.isForClinician(place), place.fact());
    if (walk.isTaskAhead(place)) {
      assertEquals(Checks.Stage.TASKS, now.sitting().checks().stage(), place.fact());
      assertTrue(now.tasksStopped().isEmpty());
    }
    Prompt prompt = now.current().orElseThrow();
    assertFalse(prompt.position().isBlank());
    assertEquals(place.field(), prompt.lineOfFields().get(0));
    assertFalse(now.progress().words().isBlank());
  }

  private static Message message(Interview now, Dice dice) {
    List<String> facts = List.copyOf(FIELDS.keySet());
    return switch (dice.below(16)) {
      case 0 -> new Message.Back();
      case 1 -> new Message.JumpTo(dice.of(facts));
      case 2 -> new Message.Onward();
      case 3 -> new Message.Note(dice.oneIn(2) ? "a note" : "");
      case 4 -> giveFor(dice, dice.of(facts));
      case 5 -> new Message.Hold(holds(dice));
      case 6 -> dice.oneIn(4) ? new Message.Resume() : new Message.Back();
      case 7 -> new Message.TakeRoute(dice.of(List.of(Interview.Route.values())));
      case 8 -> new Message.Conduct(dice.oneIn(2) ? Provenance.By.PLAYER : Provenance.By.HELPER);
      case 9 -> new Message.NoAnswer(dice.of(List.of(Answer.Reason.values())), dice.provenance());
      default ->
          now.current()
              .<Message>map(p -> new Message.Give(dice.value(p.field().type()), dice.provenance()))
              .orElseGet(() -> giveFor(dice, dice.of(facts)));
    };
  }

  private static Message giveFor(Dice dice, String fact) {
    Field field = FIELDS.getOrDefault(fact, Forms.yesNo(fact).field());
    return new Message.GiveFor(fact, dice.value(field.type()), dice.provenance());
  }

  private static Set<TaskKind> holds(Dice dice) {
    Set<TaskKind> kinds = EnumSet.noneOf(TaskKind.class);
    for (TaskKind kind : TaskKind.values()) {
      if (dice.oneIn(3)) {
        kinds.add(kind);
      }
    }
    return kinds;
  }

  private static Interview answer(Interview now, Dice dice) {
    Field field = now.current().orElseThrow().field();
    Answer answer = dice.answer(field.type());
    if (field.askedAgain()) {
      answer = calm(field);
    } else if (!field.fact().endsWith(".T") && !dice.oneIn(3)) {
      answer = able(field).orElse(answer);
    }
    return now.after(
        answer instanceof Answer.Given given
            ? new Message.Give(given.value(), dice.provenance())
            : new Message.NoAnswer(((Answer.Absent) answer).reason(), dice.provenance()));
  }

  /** Nothing to report, so that tasks go on. */
  private static Answer calm(Field field) {
    return new Answer.Given(
        field.type() instanceof FactType.Amount ? new Value.Number(1) : new Value.Code("no"));
  }

  /**
   * Hands and fingers, but for thumbs, that can do everything, so that the questions about them
   * come up.
   */
  private static Optional<Answer> able(Field field) {
    if (field.type() instanceof FactType.YesNo) {
      return Optional.of(new Answer.Given(new Value.Flag(true)));
    }
    return List.of("full", "ok", "3").stream()
        .filter(code -> field.type().option(code).isPresent())
        .filter(code -> field.type() instanceof FactType.OneOf)
        .findFirst()
        .map(code -> new Answer.Given(new Value.Code(code)));
  }
}
