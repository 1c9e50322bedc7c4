package closehand.plan;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.GameProfile;
import closehand.bank.PlanFigures;
import closehand.interview.Answers;
import closehand.interview.Value;
import closehand.plan.demand.Demand;
import closehand.plan.demand.DemandMaker;
import closehand.plan.demand.Form;
import closehand.plan.demand.GameFacts;
import closehand.plan.demand.WantedAction;
import closehand.plan.demand.WantedAction.Purpose;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanCost;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Style;
import closehand.plan.problem.Wishes;
import closehand.plan.solve.Budget;
import closehand.plan.solve.ControlPlanSolver;
import closehand.plan.solve.PlanOutcome;
import closehand.plan.supply.Measured;
import closehand.plan.supply.SuppliedInput;
import closehand.plan.supply.Supply;
import closehand.plan.supply.SupplyMaker;
import closehand.rules.Advice;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Makes the control plans of one player. Where suggestions are withheld there is no plan either.
 *
 * <p>Pure: the caller says when to stop.
 */
public final class Planning {
  private static final String SETTINGS = "settings";
  private static final String PEOPLE = "people";

  private final Bank bank;
  private final PlanFigures figures;
  private final Answers answers;
  private final Advice together;
  private final Map<Integer, Advice> byGame;
  private final Map<Integer, GameProfile> changed;
  private final Optional<ToDoubleFunction<Planned>> tieBreak;
  private final Set<String> lifted;
  private final Map<Integer, Practised> practised;

  private Planning(
      Bank bank,
      PlanFigures figures,
      Answers answers,
      Advice together,
      Map<Integer, Advice> byGame,
      Map<Integer, GameProfile> changed,
      Optional<ToDoubleFunction<Planned>> tieBreak,
      Set<String> lifted,
      Map<Integer, Practised> practised) {
    this.bank = bank;
    this.figures = figures;
    this.answers = answers;
    this.together = together;
    this.byGame = Map.copyOf(byGame);
    this.changed = Map.copyOf(changed);
    this.tieBreak = tieBreak;
    this.lifted = Set.copyOf(lifted);
    this.practised = Map.copyOf(practised);
  }

  /** The same, where a clinician accepts that these parts of the body go above their red lines. */
  public Planning lifting(Set<String> parts) {
    return new Planning(
        bank, figures, answers, together, byGame, changed, tieBreak, parts, practised);
  }

  /** The same with what was practised of each game, by slot. */
  public Planning practised(Map<Integer, Practised> found) {
    return new Planning(bank, figures, answers, together, byGame, changed, tieBreak, lifted, found);
  }

  /** The same, with ties between plans of equal cost broken by what makes this smaller. */
  public Planning breakingTiesBy(ToDoubleFunction<Planned> smaller) {
    return new Planning(
        bank, figures, answers, together, byGame, changed, Optional.of(smaller), lifted, practised);
  }

  /**
   * Planning for a player; empty where the bank has no figures for plans or suggestions wait for a
   * health check.
   *
   * @param answers the answers that apply
   * @param together what the rules make of them
   * @param byGame the same for each game alone, by its slot from 1; may be empty
   * @param changed profiles that the player changed, by slot
   */
  public static Optional<Planning> of(
      Bank bank,
      Answers answers,
      Advice together,
      Map<Integer, Advice> byGame,
      Map<Integer, GameProfile> changed) {
    return together.withheld()
        ? Optional.empty()
        : bank.planFigures()
            .map(
                f ->
                    new Planning(
                        bank,
                        f,
                        answers,
                        together,
                        byGame,
                        changed,
                        Optional.empty(),
                        Set.of(),
                        Map.of()));
  }

  /** The slots, from 1, that hold a game with a profile. */
  public List<Integer> slots() {
    return IntStream.rangeClosed(1, Bank.GAME_SLOTS)
        .filter(s -> profile(s).isPresent())
        .boxed()
        .toList();
  }

  private Optional<GameProfile> profile(int slot) {
    if (changed.containsKey(slot)) {
      return Optional.ofNullable(changed.get(slot));
    }
    return answers.value("games." + slot + ".genre").orElse(null) instanceof Value.Code code
        ? bank.game(code.code())
        : Optional.empty();
  }

  private Advice advice(int slot) {
    return byGame.getOrDefault(slot, together);
  }

  /** Ids of the approaches a plan for this game may use, best first. */
  public List<String> suggested(int slot) {
    return advice(slot).suggestions().stream()
        .map(Standing::approach)
        .filter(a -> !a.family().equals(SETTINGS) && !a.family().equals(PEOPLE))
        .map(Approach::id)
        .toList();
  }

  /** Points of the rules for each suggested approach of this game, by id. */
  public Map<String, Integer> points(int slot) {
    Map<String, Integer> points = new TreeMap<>();
    advice(slot).suggestions().forEach(s -> points.put(s.approach().id(), s.points()));
    return points;
  }

  /** What the player can work in this game with these approaches. */
  public Supply supply(int slot, PlanAsk ask) {
    List<String> wanted = ask.approaches().orElseGet(() -> suggested(slot));
    List<Standing> approaches = new ArrayList<>();
    for (Standing standing : advice(slot).standings()) {
      boolean out = standing.status() == Standing.Status.RULED_OUT;
      if (!out && wanted.contains(standing.approach().id())) {
        approaches.add(standing);
      }
    }
    return RedLines.lifted(
        SupplyMaker.of(
                figures,
                new KnownFacts(bank.questionnaire(), answers),
                approaches,
                advice(slot).findings(),
                leadingPoints(slot),
                ask.mostParts())
            .with(practised(slot).measured()),
        lifted);
  }

  private int leadingPoints(int slot) {
    Map<String, Integer> points = points(slot);
    return suggested(slot).stream().mapToInt(a -> points.getOrDefault(a, 0)).max().orElse(0);
  }

  /** Plans for all games, each keeping to the habits of those before it, by slot. */
  public Map<Integer, Planned> session(PlanAsk ask, Supplier<Budget> budget) {
    Map<Integer, Planned> plans = new TreeMap<>();
    for (int slot : slots()) {
      plans.put(slot, plan(slot, ask, budget.get(), List.copyOf(plans.values())));
    }
    return plans;
  }

  /**
   * Sentences about wishes that no game in these slots can read: an unknown action, an unknown
   * input, or one that could never serve.
   */
  public List<String> unread(PlanAsk ask, List<Integer> slots) {
    List<String> unread = new ArrayList<>();
    for (PlanAsk.Wish wish : ask.wishes()) {
      List<String> why = new ArrayList<>();
      for (int slot : slots) {
        Supply supply = supply(slot, ask);
        List<String> here = new ArrayList<>();
        for (Form form : forms(slot, supply)) {
          Demand demand = demand(slot, form);
          PlanProblem bare = ProblemMaker.of(figures, supply, demand);
          new WishReading(bare, supply, demand).unread(wish).ifPresentOrElse(here::add, () -> {});
          if (here.isEmpty()) {
            break;
          }
        }
        if (here.isEmpty()) {
          why.clear();
          break;
        }
        why.addAll(here);
      }
      why.stream().findFirst().ifPresent(unread::add);
    }
    return unread;
  }

  /** The plan for one game by itself. */
  public Planned plan(int slot, PlanAsk ask, Budget budget) {
    return plan(slot, ask, budget, List.of());
  }

  private Practised practised(int slot) {
    return practised.getOrDefault(slot, Practised.NOTHING);
  }

  private Planned plan(int slot, PlanAsk asked, Budget budget, List<Planned> before) {
    PlanAsk ask = asked.also(practised(slot).taken());
    Supply supply = supply(slot, ask);
    List<Try> tries = new ArrayList<>();
    for (Form form : forms(slot, supply)) {
      tries.add(attempt(demand(slot, form), supply, ask, budget, before));
    }
    Try best = tries.get(0);
    for (Try one : tries) {
      best = one.isBetterThan(best) ? one : best;
    }
    boolean all = tries.stream().allMatch(t -> t.outcome.status() == PlanOutcome.Status.PROVED);
    return lighter(supply, best, all);
  }

  private Planned lighter(Supply supply, Try best, boolean all) {
    if (tieBreak.isEmpty() || best.outcome.plan().list().isEmpty()) {
      return planned(supply, best, best.outcome, all);
    }
    ToDoubleFunction<Planned> smaller = tieBreak.get();
    Placements least =
        EqualCost.least(
            best.problem,
            best.outcome.plan(),
            p -> smaller.applyAsDouble(planned(supply, best, with(best, p), all)));
    return planned(supply, best, with(best, least), all);
  }

  private static PlanOutcome with(Try best, Placements plan) {
    PlanOutcome found = best.outcome;
    return new PlanOutcome(
        plan,
        new PlanPricer(best.problem).price(plan).cost(),
        found.best(),
        found.bound(),
        found.status(),
        found.nodes(),
        found.trace());
  }

  private Planned planned(Supply supply, Try best, PlanOutcome outcome, boolean all) {
    return new PlanWords(bank, figures, supply, best.demand, best.problem, outcome).planned(all);
  }

  /**
   * A plan looked at again with what was measured of its inputs, starting from what it was.
   *
   * @param measured by the id of the input; takes the place of anything measured before
   */
  public Replanned again(Planned before, Map<String, Measured> measured, Budget budget) {
    Supply bare = before.supply().with(Map.of());
    PlanProblem problem =
        ProblemMaker.of(figures, bare, before.demand()).with(before.problem().wishes());
    return Replanned.of(
        problem, before.outcome().plan(), measured, figures.prices().habitPoints(), budget);
  }

  /** A plan with the changes that were taken, as it stands; nothing is proved of it. */
  public Planned with(Planned before, Replanned now) {
    Supply supply = before.supply();
    PlanCost cost = new PlanPricer(now.measured()).price(now.before()).cost();
    PlanOutcome outcome =
        new PlanOutcome(
            now.before(), cost, cost.total(), 0, PlanOutcome.Status.OUT_OF_NODES, 0, List.of());
    return new PlanWords(bank, figures, supply, before.demand(), now.measured(), outcome)
        .planned(false);
  }

  /** What the game asks in this form. */
  public Demand demand(int slot, Form form) {
    GameProfile profile =
        profile(slot).orElseThrow(() -> new IllegalArgumentException("no game in slot " + slot));
    GameFacts game = GameFacts.of(bank.questionnaire(), answers, slot);
    return DemandMaker.of(profile, game, figures.demand(), form);
  }

  /** The forms that could serve: sticks only where there is one, directions always. */
  private List<Form> forms(int slot, Supply supply) {
    Demand usual = demand(slot, Form.ALL.get(0));
    List<SuppliedInput> axes =
        supply.inputs().stream()
            .filter(i -> ProblemMaker.fits(i, usual) && i.can().contains(Style.TWO_AXES))
            .toList();
    boolean moves = has(usual, Purpose.MOVE, Purpose.STEER);
    boolean aims = has(usual, Purpose.AIM);
    boolean stick = axes.stream().anyMatch(i -> i.kind().equals("axis2"));
    long turning = axes.stream().filter(i -> !i.uses().contains("pointOnly")).count();
    boolean scarce = turning == 0 || (turning == 1 && stick && moves);
    return Form.ALL.stream()
        .filter(f -> f.moveByStick() ? !moves || stick : moves)
        .filter(f -> f.aimByAxis() ? !aims || turning > 0 : aims && scarce)
        .toList();
  }

  private static boolean has(Demand demand, Purpose... purposes) {
    return demand.actions().stream()
        .map(WantedAction::purpose)
        .anyMatch(p -> List.of(purposes).contains(p));
  }

  private Try attempt(
      Demand demand, Supply supply, PlanAsk ask, Budget budget, List<Planned> before) {
    PlanProblem bare = ProblemMaker.of(figures, supply, demand);
    WishReading reading = new WishReading(bare, supply, demand);
    Wishes wishes = reading.of(ask.wishes());
    PlanProblem problem = bare.with(SameJobs.habits(figures, demand, bare, wishes, before));
    PlanOutcome outcome = ControlPlanSolver.solve(problem, budget, Optional.<Placements>empty());
    return new Try(demand, problem, outcome, reading.kept(ask.wishes()));
  }

  /** One form tried. */
  private record Try(Demand demand, PlanProblem problem, PlanOutcome outcome, long kept) {
    private static final int MUST = 3;

    private long mustsLeftOut() {
      return demand.actions().stream()
          .filter(a -> a.importance() == MUST && outcome.plan().of(a.id()).isEmpty())
          .map(WantedAction::of)
          .distinct()
          .count();
    }

    boolean isBetterThan(Try other) {
      boolean possible = outcome.status() != PlanOutcome.Status.IMPOSSIBLE;
      boolean otherPossible = other.outcome.status() != PlanOutcome.Status.IMPOSSIBLE;
      if (possible != otherPossible) {
        return possible;
      }
      if (kept != other.kept) {
        return kept > other.kept;
      }
      long mine = mustsLeftOut();
      long theirs = other.mustsLeftOut();
      return mine != theirs ? mine < theirs : outcome.best() < other.outcome.best();
    }
  }
}
