package closehand.plan.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.problem.*;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** What must hold between a problem and a changed one, whatever the best plans are. */
class PropertiesTest {
  private static final int PROBLEMS = 40;

  private static PlanProblem problem(int seed) {
    return RandomProblems.everything(90_000 + seed, 9, 14, seed % 3 == 0);
  }

  private static PlanOutcome solve(PlanProblem problem) {
    PlanOutcome outcome = ControlPlanSolver.solve(problem, Budget.ORDINARY, Optional.empty());
    assertTrue(
        outcome.status() == PlanOutcome.Status.PROVED
            || outcome.status() == PlanOutcome.Status.IMPOSSIBLE,
        outcome.status().toString());
    return outcome;
  }

  /** Points, more than any plan when nothing is possible. */
  private static long cost(PlanProblem problem) {
    PlanOutcome outcome = solve(problem);
    return outcome.status() == PlanOutcome.Status.IMPOSSIBLE ? Long.MAX_VALUE : outcome.best();
  }

  private static void neverDearer(String what, UnaryOperator<PlanProblem> change) {
    int cheaper = 0;
    for (int seed = 0; seed < PROBLEMS; seed++) {
      long before = cost(problem(seed));
      long after = cost(change.apply(problem(seed)));
      assertTrue(after <= before, what + " makes problem " + seed + " dearer");
      cheaper += after < before ? 1 : 0;
    }
    assertTrue(cheaper > 0, what + " never changes anything");
  }

  @Test
  void oneMoreInputNeverMakesThePlanDearer() {
    neverDearer(
        "one more input",
        p -> {
          Equipment e = p.equipment();
          List<Input> more = new ArrayList<>(e.inputs());
          Input like = more.get(4);
          more.add(
              new Input(
                  "another",
                  "another",
                  like.device(),
                  "e1",
                  like.can(),
                  90,
                  0,
                  Effort.points(60, 12),
                  1000,
                  7,
                  7,
                  0));
          return p.with(
              new Equipment(
                  e.devices(), more, e.layers(), e.mostParts(), e.incompatible(), e.exclusive()));
        });
  }

  @Test
  void moreEnduranceNeverMakesThePlanDearer() {
    neverDearer(
        "more endurance",
        p ->
            p.with(
                new Body(
                    p.body().effectors().stream()
                        .map(e -> new Effector(e.id(), e.name(), true, twice(e.limit()), e.amber()))
                        .toList(),
                    p.body().coupled())));
  }

  private static Effector.LoadLimit twice(Effector.LoadLimit limit) {
    return new Effector.LoadLimit(2 * limit.pressesTenths(), 2 * limit.heldMillis());
  }

  @Test
  void fewerPairsToPressTogetherNeverMakeThePlanDearer() {
    neverDearer(
        "fewer pairs",
        p -> {
          Play play = p.play();
          int half = play.coPresses().size() / 2;
          return p.with(
              new Play(play.actions(), play.coPresses().subList(0, half), play.conventions()));
        });
  }

  @Test
  void onePartMoreNeverMakesThePlanDearer() {
    neverDearer(
        "one part more", p -> p.with(p.equipment().withMostParts(p.equipment().mostParts() + 1)));
  }

  @Test
  void higherEffortNeverMakesThePlanCheaper() {
    neverDearer(
        "half the effort",
        p -> {
          Equipment e = p.equipment();
          List<Input> easier = e.inputs().stream().map(PropertiesTest::easier).toList();
          return p.with(
              new Equipment(
                  e.devices(), easier, e.layers(), e.mostParts(), e.incompatible(), e.exclusive()));
        });
  }

  private static Input easier(Input i) {
    Effort half =
        new Effort(i.effort().pressMilliPoints() / 2, i.effort().holdMilliPointsPerSecond() / 2);
    return new Input(
        i.id(),
        i.name(),
        i.device(),
        i.effector(),
        i.can(),
        i.timeMillis(),
        i.latencyMillis(),
        half,
        i.reliabilityPerMille(),
        i.column(),
        i.row(),
        i.rocker());
  }

  @Test
  void theOrderOfActionsAndInputsChangesNothing() {
    for (int seed = 0; seed < PROBLEMS; seed++) {
      PlanProblem p = problem(seed);
      PlanOutcome one = solve(p);
      PlanOutcome other = solve(turned(p));
      assertEquals(one.status(), other.status(), "problem " + seed);
      assertEquals(one.best(), other.best(), "problem " + seed);
    }
  }

  @Test
  void onceTiesAreSettledThePlanIsTheSameInAnyOrder() {
    int moved = 0;
    for (String name : List.of("small1", "small5", "medium1", "medium3", "medium4")) {
      PlanProblem p = Instances.read(name);
      PlanOutcome one = solve(p);
      Placements settled = ControlPlanSolver.settleTies(p, one, Budget.ORDINARY).plan();
      PlanOutcome other = solve(turned(p));
      Placements settledToo =
          ControlPlanSolver.settleTies(turned(p), other, Budget.ORDINARY).plan();
      assertEquals(settled, settledToo, name);
      assertEquals(one.best(), new PlanPricer(p).price(settled).cost().total());
      assertEquals(List.of(), new Reference(p).broken(settled));
      moved += settled.equals(one.plan()) && settled.equals(other.plan()) ? 0 : 1;
    }
    assertTrue(moved > 0, "no tie was met");
  }

  private static PlanProblem turned(PlanProblem p) {
    Play play = p.play();
    Equipment e = p.equipment();
    return p.with(
            new Play(turned(play.actions()), turned(play.coPresses()), turned(play.conventions())))
        .with(
            new Equipment(
                turned(e.devices()),
                turned(e.inputs()),
                turned(e.layers()),
                e.mostParts(),
                turned(e.incompatible()),
                turned(e.exclusive())))
        .with(new Body(turned(p.body().effectors()), turned(p.body().coupled())));
  }

  private static <T> List<T> turned(List<T> list) {
    List<T> turned = new ArrayList<>(list);
    Collections.reverse(turned);
    return turned;
  }

  @Test
  void startingFromThePlanBeforeAChangeGivesTheSameCost() {
    for (int seed = 0; seed < PROBLEMS; seed++) {
      PlanProblem p = problem(seed);
      PlanOutcome before = solve(p);
      PlanProblem changed = p.with(p.equipment().withMostParts(p.equipment().mostParts() + 1));
      PlanOutcome warm =
          ControlPlanSolver.solve(changed, Budget.ORDINARY, Optional.of(before.plan()));
      PlanOutcome cold = solve(changed);
      assertEquals(cold.status(), warm.status(), "problem " + seed);
      assertEquals(cold.best(), warm.best(), "problem " + seed);
    }
  }

  @Test
  void theSameProblemGivesTheSamePlanAndTheSameWay() {
    for (String name : List.of("medium2", "medium5", "large6")) {
      assertEquals(solve(Instances.read(name)), solve(Instances.read(name)), name);
    }
  }

  @Test
  void theBoundNeverFallsTheBestNeverRisesAndTheyNeverCross() {
    for (String name : List.of("small5", "medium5", "large2", "large4")) {
      PlanOutcome.Progress last = new PlanOutcome.Progress(0, Long.MAX_VALUE, 0);
      PlanOutcome outcome = solve(Instances.read(name));
      assertTrue(outcome.trace().size() > 1, name);
      for (PlanOutcome.Progress now : outcome.trace()) {
        assertTrue(now.bound() >= last.bound() && now.best() <= last.best(), name + now);
        assertTrue(now.bound() <= now.best() && now.bound() <= outcome.best(), name + now);
        last = now;
      }
    }
  }

  @Test
  void aCutoffBelowTheBestLeavesNothingAndAtTheBestLeavesIt() {
    PlanProblem p = Instances.read("medium2");
    PlanOutcome none =
        ControlPlanSolver.solve(p, Budget.ORDINARY.withCutoff(77_567), Optional.empty());
    assertEquals(PlanOutcome.Status.IMPOSSIBLE, none.status());
    assertEquals(
        77_568,
        ControlPlanSolver.solve(p, Budget.ORDINARY.withCutoff(77_568), Optional.empty()).best());
  }

  @Test
  void withAToleranceThePlanIsThatNear() {
    for (String name : List.of("medium5", "large3", "t7506")) {
      PlanOutcome near =
          ControlPlanSolver.solve(
              Instances.read(name), Budget.ORDINARY.withTolerance(100), Optional.empty());
      assertTrue(near.gapPerTenThousand() <= 101, name + " " + near.gapPerTenThousand());
    }
  }

  @Test
  void aWishIsAlwaysKept() {
    PlanProblem p = Instances.read("medium4");
    PlanOutcome free = solve(p);
    Placement moved = free.plan().list().get(3);
    PlacementRules rules = new PlacementRules(p);
    for (Placement other : rules.possible(moved.action()).subList(0, 6)) {
      PlanProblem wished =
          p.with(
              new Wishes(
                  List.of(new Wishes.Pin(other.action(), other.slot(), Optional.of(other.mode()))),
                  List.of(),
                  java.util.Set.of(),
                  List.of()));
      PlanOutcome outcome = solve(wished);
      assertEquals(Optional.of(other), outcome.plan().of(other.action()));
      assertTrue(outcome.best() >= free.best());
    }
  }
}
