package closehand.plan.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import closehand.bank.Problem;
import closehand.bank.Where;
import closehand.plan.solve.Budget;
import closehand.plan.solve.ControlPlanSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is wrong with a problem is told with its place; nothing hangs and nothing is thrown. */
class PlanCheckTest {
  private static Action action(String id, int perMinuteTenths) {
    return new Action(id, id, Style.TAP, perMinuteTenths, 0, 500, 3, false);
  }

  private static PlanProblem problem(List<Action> actions) {
    Input input =
        new Input(
            "B1",
            "button",
            "mouse",
            "L.I",
            Set.of(Style.TAP),
            100,
            0,
            Effort.points(100, 30),
            1000,
            1,
            1,
            0);
    Effector finger =
        new Effector(
            "L.I",
            "left index finger",
            true,
            new Effector.LoadLimit(600, 30_000),
            Optional.empty());
    return new PlanProblem(
        new Play(actions, List.of(), List.of()),
        new Equipment(
            List.of(new Device("mouse", "mouse", 100, 1)),
            List.of(input),
            List.of(),
            1,
            List.of(),
            List.of()),
        new Body(List.of(finger), List.of()),
        new Prices(
            List.of(0, 400, 1500, 5000, 15_000, 60_000),
            List.of(0, 2, 5, 12, 30, 60),
            600,
            20,
            2000,
            List.of()),
        Wishes.NONE);
  }

  private static List<String> found(PlanProblem problem) {
    return PlanCheck.check(problem, Where.file("answers.json")).stream()
        .map(p -> p.code() + " " + p.where().pointer())
        .toList();
  }

  @Test
  void aSoundProblemHasNothingWrong() {
    assertEquals(List.of(), found(problem(List.of(action("jump", 100)))));
  }

  @Test
  void aNegativeRateIsToldWithItsPlace() {
    assertEquals(
        List.of("out-of-range /actions/1/perMinuteTenths"),
        found(problem(List.of(action("jump", 100), action("run", -1)))));
  }

  @Test
  void anUnknownInputInAWishIsToldWithTheNearestName() {
    PlanProblem wished =
        problem(List.of(action("jump", 100)))
            .with(
                new Wishes(
                    List.of(new Wishes.Pin("jump", Slot.base("B11"), Optional.empty())),
                    List.of(new Wishes.Ban("jupm", "B1")),
                    Set.of(),
                    List.of()));
    assertEquals(List.of("unknown-id /pins/0/input", "unknown-id /bans/0/action"), found(wished));
    List<Problem> problems = PlanCheck.check(wished, Where.file("answers.json"));
    assertEquals("Did you mean \"B1\"?", problems.get(0).mend());
    assertEquals("Did you mean \"jump\"?", problems.get(1).mend());
  }

  @Test
  void aPairOfOneActionWithItselfIsTold() {
    PlanProblem plain = problem(List.of(action("jump", 100)));
    assertEquals(
        List.of("pair-with-itself /coPresses/0"),
        found(
            plain.with(
                new Play(
                    plain.play().actions(), List.of(new CoPress("jump", "jump")), List.of()))));
  }

  @Test
  void fiveHundredActionsAreTooMany() {
    List<Action> many = new ArrayList<>();
    for (int a = 0; a < 500; a++) {
      many.add(action("action" + a, 10));
    }
    assertEquals(List.of("too-many-actions /actions"), found(problem(many)));
    assertThrows(
        IllegalArgumentException.class,
        () -> ControlPlanSolver.solve(problem(many), Budget.ORDINARY, Optional.empty()));
  }

  @Test
  void moreKindsOfPlaceThanTheProofCanHoldAreTold() {
    PlanProblem plain = problem(List.of(action("jump", 100)));
    Input first = plain.equipment().inputs().get(0);
    List<Input> inputs = new ArrayList<>();
    for (int cross = 0; cross < 65; cross++) {
      inputs.add(
          new Input(
              "B" + cross,
              "button",
              first.device(),
              first.effector(),
              first.can(),
              100,
              0,
              first.effort(),
              1000,
              cross,
              1,
              cross));
    }
    Equipment e = plain.equipment();
    PlanProblem many =
        plain.with(new Equipment(e.devices(), inputs, e.layers(), 1, List.of(), List.of()));
    assertEquals(List.of("too-many-kinds-of-place /inputs"), found(many));
  }

  @Test
  void aProblemWithoutActionsOrInputsHasAnEmptyPlan() {
    assertEquals(
        0, ControlPlanSolver.solve(problem(List.of()), Budget.ORDINARY, Optional.empty()).best());
    PlanProblem plain = problem(List.of(action("jump", 100)));
    PlanProblem bare =
        plain.with(new Equipment(List.of(), List.of(), List.of(), 0, List.of(), List.of()));
    assertEquals(5000, ControlPlanSolver.solve(bare, Budget.ORDINARY, Optional.empty()).best());
  }
}
