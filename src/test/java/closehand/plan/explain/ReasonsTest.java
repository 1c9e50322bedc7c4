package closehand.plan.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.problem.Breach;
import closehand.plan.problem.Input;
import closehand.plan.problem.Mode;
import closehand.plan.problem.Placement;
import closehand.plan.problem.PlacementRules;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Slot;
import closehand.plan.problem.Wishes;
import closehand.plan.solve.Budget;
import closehand.plan.solve.ControlPlanSolver;
import closehand.plan.solve.Instances;
import closehand.plan.solve.PlanOutcome;
import closehand.plan.solve.Reference;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Reasons are true: every one of them is found again another way. */
class ReasonsTest {
  private static PlanOutcome solve(PlanProblem problem) {
    return ControlPlanSolver.solve(problem, Budget.ORDINARY, Optional.empty());
  }

  /** The least extra cost of an action on any input other than those named, by pinning each. */
  private static long leastElsewhere(PlanProblem p, long best, String action, Set<String> not) {
    long least = Long.MAX_VALUE;
    for (Placement there : new PlacementRules(p).possible(action)) {
      if (!not.contains(there.slot().input())) {
        PlanProblem pinned = HandChange.asWish(p, action, there.slot(), there.mode());
        PlanOutcome outcome = solve(pinned);
        if (outcome.status() == PlanOutcome.Status.PROVED) {
          least = Math.min(least, outcome.best() - best);
        }
      }
    }
    return least;
  }

  @Test
  void theNextPlacesAreTheNextBestOfAll() {
    PlanProblem problem = Instances.read("small4");
    PlanOutcome outcome = solve(problem);
    PlanReasons reasons = new PlanReasons(problem, outcome, Budget.ORDINARY);
    for (Placement placement : outcome.plan().list()) {
      WhyHere why = reasons.whyHere(placement.action(), 2).orElseThrow();
      assertEquals(placement, why.placement());
      assertEquals(new PlacementRules(problem).cost(placement), why.cost());
      Set<String> seen = new HashSet<>(Set.of(placement.slot().input()));
      for (Elsewhere other : why.next()) {
        assertTrue(other.isExact());
        assertEquals(
            leastElsewhere(problem, outcome.best(), placement.action(), seen),
            other.extraAtMost(),
            placement.toString());
        seen.add(other.placement().slot().input());
      }
      assertTrue(
          why.next().size() == 2
              || leastElsewhere(problem, outcome.best(), placement.action(), seen)
                  == Long.MAX_VALUE);
    }
  }

  @Test
  void whatStandsAgainstACheaperPlaceIsReal() {
    PlanProblem problem = Instances.read("medium4");
    PlanOutcome outcome = solve(problem);
    PlanReasons reasons = new PlanReasons(problem, outcome, Budget.ORDINARY);
    int obstacles = 0;
    for (Placement placement : outcome.plan().list()) {
      for (Obstacle obstacle : reasons.whyHere(placement.action(), 0).orElseThrow().obstacles()) {
        assertTrue(obstacle.saving() > 0);
        obstacles += obstacle.against().isEmpty() ? 0 : 1;
      }
    }
    assertTrue(obstacles > 10, obstacles + " obstacles");
  }

  @Test
  void aLeftOutActionIsBroughtInByTheChangesNamed() {
    PlanProblem problem = Instances.read("medium2");
    PlanOutcome outcome = solve(problem);
    String left =
        problem.play().actions().stream()
            .filter(a -> outcome.plan().of(a.id()).isEmpty())
            .max(java.util.Comparator.comparingInt(a -> a.importance()))
            .orElseThrow()
            .id();
    BringIn bringIn = new BringIn(problem, outcome, Budget.ORDINARY.withTolerance(30));
    List<Helps> helps = bringIn.changes(left, 3);
    assertFalse(helps.isEmpty());
    for (Helps help : helps) {
      assertTrue(help.outcome().plan().of(left).isPresent());
      PlanProblem changed = bringIn.apply(left, help.change());
      assertEquals(List.of(), new Reference(changed).broken(help.outcome().plan()));
      assertEquals(help.outcome().best(), new Reference(changed).cost(help.outcome().plan()));
    }
  }

  @Test
  void twoActionsWishedOnOnePlaceClashAndNothingElseIsNamed() {
    PlanProblem problem = Instances.read("small4");
    Slot place = solve(problem).plan().list().get(0).slot();
    PlanProblem wished = problem;
    for (String action : List.of("a0", "a2")) {
      wished = HandChange.asWish(wished, action, place, Mode.AS_IS);
    }
    assertEquals(PlanOutcome.Status.IMPOSSIBLE, solve(wished).status());
    assertEquals(
        List.of(new Demand.Pinned("a0"), new Demand.Pinned("a2")),
        SmallestClash.of(wished, Budget.ORDINARY));
  }

  @Test
  void noDemandOfAClashCanBeSpared() {
    PlanProblem problem = Instances.read("medium1");
    Set<String> all = new HashSet<>();
    problem.play().actions().stream()
        .filter(a -> a.importance() >= 4)
        .forEach(a -> all.add(a.id()));
    Wishes must = new Wishes(List.of(), List.of(), all, List.of());
    List<Demand> clash = SmallestClash.of(problem.with(must), Budget.ORDINARY);
    assertFalse(clash.isEmpty());
    for (Demand spared : clash) {
      List<Demand> rest = new java.util.ArrayList<>(clash);
      rest.remove(spared);
      assertTrue(SmallestClash.canBeKept(problem.with(must), rest, Budget.ORDINARY), spared + "");
    }
  }

  @Test
  void whatCanBeKeptHasNoClash() {
    assertEquals(List.of(), SmallestClash.of(Instances.read("small4"), Budget.ORDINARY));
  }

  @Test
  void aChangeByHandCostsWhatItCosts() {
    PlanProblem problem = Instances.read("medium4");
    PlanOutcome outcome = solve(problem);
    Placement moved = outcome.plan().list().get(2);
    HandChange nothing =
        HandChange.move(problem, outcome.plan(), moved.action(), moved.slot(), moved.mode());
    assertEquals(0, nothing.extra());
    assertEquals(outcome.plan(), nothing.plan());
    int swapped = 0;
    Reference reference = new Reference(problem);
    for (Placement other : outcome.plan().list()) {
      HandChange swap =
          HandChange.move(problem, outcome.plan(), moved.action(), other.slot(), Mode.AS_IS);
      boolean exists =
          swap.pricing().breaches().stream().noneMatch(b -> b.kind() == Breach.Kind.IMPOSSIBLE);
      if (!other.equals(moved) && exists) {
        swapped++;
        assertEquals(Optional.of(other.action()), swap.displaced());
        assertEquals(outcome.best() + swap.extra(), reference.cost(swap.plan()));
        assertEquals(swap.pricing().isAllowed(), reference.broken(swap.plan()).isEmpty());
        assertTrue(!swap.pricing().isAllowed() || swap.extra() >= 0);
      }
    }
    assertTrue(swapped > 3, swapped + " swaps");
    HandChange without = HandChange.leaveOut(problem, outcome.plan(), moved.action());
    assertTrue(without.plan().of(moved.action()).isEmpty());
    assertTrue(without.extra() > 0);
  }

  @Test
  void theBestOfAllSetsOfDevicesIsTheBestOfAll() {
    PlanProblem problem = Instances.read("small2");
    List<DeviceSets.SetPlan> ranked = DeviceSets.rank(problem, Budget.ORDINARY);
    assertTrue(ranked.size() > 1);
    assertEquals(solve(problem).best(), ranked.get(0).outcome().best());
    for (DeviceSets.SetPlan set : ranked) {
      PlanPricer pricer = new PlanPricer(problem);
      assertEquals(set.devices(), pricer.price(set.outcome().plan()).devices());
      for (Placement p : set.outcome().plan().list()) {
        Input input =
            problem.equipment().inputs().stream()
                .filter(i -> i.id().equals(p.slot().input()))
                .findFirst()
                .orElseThrow();
        assertTrue(set.devices().contains(input.device()));
      }
    }
  }
}
