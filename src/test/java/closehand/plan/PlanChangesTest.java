package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.FlatValue;
import closehand.bank.GameProfile.Action;
import closehand.bank.Where;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import closehand.json.CaseDocument;
import closehand.json.ChangesReader;
import closehand.plan.PlanChanges.OfGame;
import closehand.plan.demand.Demand;
import closehand.plan.demand.Form;
import closehand.plan.solve.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a player changed by hand holds for every plan, and is kept with the case. */
class PlanChangesTest {
  private static final Budget QUICK = Budget.ORDINARY.withNodes(100).withTolerance(50);
  private static final PlanAsk MOUSE = PlanAsk.USUAL.only(List.of("MOUSE_SIDE_L", "SW_FOOT"));

  private static Action jump() {
    return Player.bank().game("STA").orElseThrow().actions().stream()
        .filter(a -> a.id().equals("STA03"))
        .findFirst()
        .orElseThrow();
  }

  private static Action like(Action old, String id, double often, int importance) {
    return new Action(
        id,
        id.equals(old.id()) ? old.name() : "Whistle for the horse",
        java.util.OptionalDouble.of(often),
        old.style(),
        old.holdSeconds(),
        false,
        old.urgency(),
        importance,
        List.of(),
        List.of(),
        Where.file("by hand"));
  }

  private static final PlanChanges CHANGES =
      PlanChanges.NONE.with(
          1,
          OfGame.none("STA")
              .with(like(jump(), "STA03", 9, 1))
              .with(like(jump(), "OWN1", 2, 2))
              .without("STA04")
              .wishing(new PlanAsk.Wish("STA03", "top2")));

  @Test
  void actionsAreChangedAddedAndTakenAway() {
    Planning planning = Player.gold("GC1").planning().changing(CHANGES);
    Demand demand = planning.demand(1, Form.ALL.get(0));
    assertEquals(9, demand.action("STA03").orElseThrow().perMinute());
    assertEquals("Whistle for the horse", demand.action("OWN1").orElseThrow().name());
    assertTrue(demand.action("STA04").isEmpty());
  }

  @Test
  void whatIsRatedByHandOutranksTheListOfTheAnswers() {
    Player told =
        Player.gold(
            "GC1",
            f ->
                f.put(
                    "games.1.must",
                    new FlatValue.Texts(List.of("STA03", "STA04"), Where.file("told"))));
    Demand before = told.planning().demand(1, Form.ALL.get(0));
    assertEquals(3, before.action("STA03").orElseThrow().importance());
    Demand after = told.planning().changing(CHANGES).demand(1, Form.ALL.get(0));
    assertEquals(1, after.action("STA03").orElseThrow().importance());
  }

  @Test
  void aKeptWishHoldsUntilAnotherWishSpeaksOfTheSameAction() {
    Planning planning = Player.gold("GC1").planning().changing(CHANGES);
    assertEquals("top2", place(planning.plan(1, MOUSE, QUICK)));
    PlanAsk other = MOUSE.with(List.of(new PlanAsk.Wish("jump", "B3")));
    assertEquals("B3", place(planning.plan(1, other, QUICK)));
    PlanChanges taken = CHANGES.with(1, CHANGES.of(1, "STA").unwished("STA03"));
    assertTrue(taken.of(1, "STA").wishes().isEmpty());
  }

  private static String place(Planned planned) {
    return planned.plan().assignment("STA03").orElseThrow().input();
  }

  @Test
  void aKeptWishThatCannotBeKeptAnyMoreIsSaid() {
    PlanChanges gone =
        PlanChanges.NONE.with(1, OfGame.none("STA").wishing(new PlanAsk.Wish("STA03", "Z9")));
    Planned plan = Player.gold("GC1").planning().changing(gone).plan(1, MOUSE, QUICK);
    assertTrue(
        plan.plan().unkept().get(0).contains("within reach"), plan.plan().unkept().toString());
    assertFalse(plan.plan().assignments().isEmpty());
  }

  @Test
  void changesOfOneKindOfGameDoNotReachAnother() {
    PlanChanges other =
        PlanChanges.NONE.with(1, OfGame.none("FPA").without("STA03").without("FPA01"));
    assertEquals(
        Player.gold("GC1").planning().demand(1, Form.ALL.get(0)),
        Player.gold("GC1").planning().changing(other).demand(1, Form.ALL.get(0)));
  }

  @Test
  void theyAreKeptWithTheCaseAndOutliveItsPlans() {
    Interview interview =
        Interview.reopen(
            Player.bank().questionnaire(),
            closehand.interview.Answers.NONE,
            Interview.Route.CORE,
            Provenance.By.VOLUNTEER,
            Optional.empty());
    CaseDocument document =
        CaseDocument.of(
            SavedCase.of(
                "heron-oak",
                SavedCase.BankStamp.of(Player.bank().questionnaire(), "abc"),
                interview,
                "2026-11-24T10:00:00Z",
                "2026-11-24T10:00:00Z"));
    CaseDocument changed = document.planned("2026-11-24T10:00:00Z", "1", "{\"plans\":[]}");
    changed = changed.changing(CHANGES).expired("2026-11-25T10:00:00Z", "a review");
    assertEquals(2, changed.plans().size());
    assertTrue(changed.plans().get(0).member("expired").isPresent());
    assertTrue(changed.plans().get(1).member("expired").isEmpty());
    assertSame(CHANGES, ChangesReader.read(changed.plans(), new ArrayList<>()));
    assertEquals(1, changed.changing(PlanChanges.NONE).plans().size());
  }

  /** The same but for where each action stands in its file. */
  private static void assertSame(PlanChanges wanted, PlanChanges read) {
    OfGame one = wanted.of(1, "STA");
    OfGame other = read.of(1, "STA");
    assertEquals(one.removed(), other.removed());
    assertEquals(one.wishes(), other.wishes());
    assertEquals(
        one.actions().stream().map(PlanChangesTest::bare).toList(),
        other.actions().stream().map(PlanChangesTest::bare).toList());
  }

  private static List<Object> bare(Action a) {
    return List.of(
        a.id(),
        a.name(),
        a.perMinute(),
        a.style(),
        a.holdSeconds().minimum(),
        a.holdSeconds().maximum(),
        a.urgency(),
        a.importance(),
        a.pressedWith(),
        a.options());
  }
}
