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
  private final Terms terms;

  private Planning(
      Bank bank,
      PlanFigures figures,
      Answers answers,
      Advice together,
      Map<Integer, Advice> byGame,
      Terms terms) {
    this.bank = bank;
    this.figures = figures;
    this.answers = answers;
    this.together = together;
    this.byGame = Map.copyOf(byGame);
    this.terms = terms;
  }

  private Planning under(Terms other) {
    return new Planning(bank, figures, answers, together, byGame, other);
  }

  /** The same, where a clinician accepts that these parts of the body go above their red lines. */
  public Planning lifting(Set<String> parts) {
    return under(terms.lifting(parts));
  }

  /** The same with what was practised of each game, by slot. */
  public Planning practised(Map<Integer, Practised> found) {
    return under(terms.practised(found));
  }

  /**
   * The same, with ties between plans of equal cost broken by what makes this smaller. It is asked
   * about plans that hold their places alone, not yet what explains them.
   */
  public Planning breakingTiesBy(ToDoubleFunction<Planned> smaller) {
    return under(terms.breakingTiesBy(smaller));
  }

  /** The same with what the player changed by hand, instead of what was changed before. */
  public Planning changing(PlanChanges changes) {
    return under(terms.changing(changes));
  }

  /**
   * Planning for a player; empty where the bank has no figures for plans or suggestions wait for a
   * health check.
   *
   * @param answers the answers that apply
   * @param together what the rules make of them
   * @param byGame the same for each game alone, by its slot from 1; may be empty
   * @param changed profiles that a file of answers changed, by slot
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
            .map(f -> new Planning(bank, f, answers, together, byGame, Terms.of(changed)));
  }

  /** The slots, from 1, that hold a game with a profile. */
  public List<Integer> slots() {
    return IntStream.rangeClosed(1, Bank.GAME_SLOTS)
        .filter(s -> profile(s).isPresent())
        .boxed()
        .toList();
  }

  /** The profile of the game in this slot as the player has it. */
  public Optional<GameProfile> profile(int slot) {
    return told(slot).map(p -> changes(p, slot).in(p));
  }

  /** The same before the player changed anything by hand. */
  public Optional<GameProfile> told(int slot) {
    if (terms.profiles().containsKey(slot)) {
      return Optional.ofNullable(terms.profiles().get(slot));
    }
    return answers.value("games." + slot + ".genre").orElse(null) instanceof Value.Code code
        ? bank.game(code.code())
        : Optional.empty();
  }

  private PlanChanges.OfGame changes(GameProfile profile, int slot) {
    return terms.changes().of(slot, profile.genre());
  }

  private List<PlanAsk.Wish> wishes(int slot) {
    return told(slot).map(p -> changes(p, slot).wishes()).orElse(List.of());
  }

  private Advice advice(int slot) {
    return byGame.getOrDefault(slot, together);
  }

  /** Whether plans are made with an approach; settings and other people are not planned. */
  static boolean isPlanned(Approach approach) {
    return !approach.family().equals(SETTINGS) && !approach.family().equals(PEOPLE);
  }

  /** Ids of the approaches a plan for this game may use, best first. */
  public List<String> suggested(int slot) {
    return advice(slot).suggestions().stream()
        .map(Standing::approach)
        .filter(Planning::isPlanned)
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
            .with(terms.practised(slot).measured()),
        terms.lifted());
  }

  private int leadingPoints(int slot) {
    Map<String, Integer> points = points(slot);
    return suggested(slot).stream().mapToInt(a -> points.getOrDefault(a, 0)).max().orElse(0);
  }

  /** Sentences about kept wishes that cannot be kept as things stand. */
  public List<String> unread(int slot, PlanAsk ask) {
    return unread(ask.with(wishes(slot)), List.of(slot));
  }

  /**
   * Ids of the approaches that are neither suggested for this game nor ruled out, the nearest to a
   * suggestion first.
   */
  public List<String> notSuggested(int slot) {
    return advice(slot).standings().stream()
        .filter(s -> !s.status().suggested() && s.status() != Standing.Status.RULED_OUT)
        .map(Standing::approach)
        .filter(Planning::isPlanned)
        .map(Approach::id)
        .toList();
  }

  /** Plans for all games, each keeping to the habits of those before it, by slot. */
  public Map<Integer, Planned> session(PlanAsk ask, Supplier<Budget> budget) {
    Map<Integer, Planned> plans = new TreeMap<>();
    for (int slot : slots()) {
      plans.put(slot, plan(slot, ask, budget.get(), List.copyOf(plans.values())));
    }
    return plans;
  }

  /** The plan for one game, keeping to the habits of those before it as in a {@link #session}. */
  public Planned inSession(int slot, PlanAsk ask, Supplier<Budget> budget) {
    List<Planned> before = new ArrayList<>();
    for (int one : slots()) {
      if (one < slot) {
        before.add(plan(one, ask, budget.get(), List.copyOf(before)));
      }
    }
    return plan(slot, ask, budget.get(), before);
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
    if (unread.isEmpty() && ask.wishes().size() > 1) {
      slots.stream().flatMap(s -> twice(s, ask).stream()).limit(1).forEach(unread::add);
    }
    return unread;
  }

  private Optional<String> twice(int slot, PlanAsk ask) {
    Supply supply = supply(slot, ask);
    Demand demand = demand(slot, forms(slot, supply).get(0));
    return new WishReading(ProblemMaker.of(figures, supply, demand), supply, demand)
        .wishedTwice(ask.wishes())
        .map(n -> "\"" + n + "\" is wished in two places; one of them can be kept.");
  }

  /** The plan for one game by itself. */
  public Planned plan(int slot, PlanAsk ask, Budget budget) {
    return plan(slot, ask, budget, List.of());
  }

  private Planned plan(int slot, PlanAsk ask, Budget budget, List<Planned> before) {
    Supply supply = supply(slot, ask);
    List<List<PlanAsk.Wish>> wishes =
        List.of(ask.wishes(), wishes(slot), terms.practised(slot).taken());
    List<Attempt> tries = new ArrayList<>();
    for (Form form : forms(slot, supply)) {
      tries.add(attempt(demand(slot, form), supply, wishes, budget, before));
    }
    Attempt best = tries.get(0);
    for (Attempt one : tries) {
      best = one.isBetterThan(best) ? one : best;
    }
    boolean all = tries.stream().allMatch(t -> t.outcome().status() == PlanOutcome.Status.PROVED);
    Planned found = lighter(supply, best, all);
    return found.told(found.plan().notKeeping(unread(slot, ask)));
  }

  private Planned lighter(Supply supply, Attempt best, boolean all) {
    if (terms.tieBreak().isEmpty() || best.outcome().plan().list().isEmpty()) {
      return planned(supply, best, best.outcome(), all);
    }
    ToDoubleFunction<Planned> smaller = terms.tieBreak().get();
    Placements least =
        EqualCost.least(
            best.problem(),
            best.outcome().plan(),
            p -> smaller.applyAsDouble(words(supply, best, best.at(p)).places()));
    return planned(supply, best, best.at(least), all);
  }

  private Planned planned(Supply supply, Attempt best, PlanOutcome outcome, boolean all) {
    return words(supply, best, outcome).planned(all);
  }

  private PlanWords words(Supply supply, Attempt best, PlanOutcome outcome) {
    return new PlanWords(bank, figures, supply, best.demand(), best.problem(), outcome);
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
    GameFacts game =
        GameFacts.of(bank.questionnaire(), answers, slot).without(changes(profile, slot).rated());
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

  private Attempt attempt(
      Demand demand,
      Supply supply,
      List<List<PlanAsk.Wish>> wishes,
      Budget budget,
      List<Planned> before) {
    PlanProblem bare = ProblemMaker.of(figures, supply, demand);
    WishReading reading = new WishReading(bare, supply, demand);
    Wishes pinned = reading.of(wishes);
    PlanProblem problem = bare.with(SameJobs.habits(figures, demand, bare, pinned, before));
    PlanOutcome outcome = ControlPlanSolver.solve(problem, budget, Optional.<Placements>empty());
    return new Attempt(demand, problem, outcome, pinned.pins().size());
  }
}
