package closehand.cli;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Hint;
import closehand.json.MixWriter;
import closehand.json.PlanWriter;
import closehand.plan.ControlPlan;
import closehand.plan.KeptWishes;
import closehand.plan.Mixes;
import closehand.plan.PlanAsk;
import closehand.plan.Planned;
import closehand.plan.Planning;
import closehand.plan.solve.Budget;
import closehand.report.BroughtIn;
import closehand.report.ClashLines;
import closehand.report.Glyphs;
import closehand.report.LoadText;
import closehand.report.MixLines;
import closehand.report.PageInput;
import closehand.report.PlanText;
import closehand.strain.OwnLimits;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.TreeMap;

/** Prints control plans, as text or JSON. */
final class PlanCommand {
  private static final long NODES_BY_THE_CLOCK = 2_000_000;

  private final Surroundings surroundings;
  private final BankOption bank;
  private final AnswersOption source;
  private final Wanted wanted;
  private Optional<PlanKeeping> keeping = Optional.empty();

  /** What was asked for on the command line. */
  record Wanted(
      OptionalInt game,
      List<String> approaches,
      OptionalInt parts,
      OptionalLong milliseconds,
      List<String> wishes,
      Optional<String> explain,
      List<String> efforts,
      List<String> accepts,
      Optional<String> relief,
      boolean load,
      boolean compare,
      boolean keep,
      boolean json) {
    Wanted {
      efforts = List.copyOf(efforts);
      accepts = List.copyOf(accepts);
      approaches = approaches.stream().map(String::strip).filter(a -> !a.isEmpty()).toList();
      wishes = List.copyOf(wishes);
    }
  }

  PlanCommand(Surroundings surroundings, BankOption bank, AnswersOption source, Wanted wanted) {
    this.surroundings = surroundings;
    this.bank = bank;
    this.source = source;
    this.wanted = wanted;
  }

  int run() throws IOException {
    CaseLoading loading = new CaseLoading(surroundings, bank.folder(), source);
    Optional<Case> found = loading.load();
    if (found.isEmpty()) {
      return loading.exitCode();
    }
    Pages pages = loading.pages();
    if (wanted.keep()) {
      keeping = PlanKeeping.of(surroundings, source, loading.passphrases());
      if (keeping.isEmpty()) {
        surroundings.error().println("--keep needs a saved case, named by its name.");
        return ExitCode.USAGE;
      }
    }
    Optional<String> wrong = wrongApproach(pages.bank());
    if (wrong.isPresent()) {
      surroundings.error().println(wrong.get());
      return ExitCode.USAGE;
    }
    Optional<OwnLimits> limits =
        SaidAboutLoad.in(found.get().limits(), wanted, surroundings.error());
    if (limits.isEmpty()) {
      return ExitCode.USAGE;
    }
    PageInput input = pages.input(found.get(), surroundings.today()).with(limits.get());
    Optional<Planning> planning = Pages.planning(input, found.get());
    return planning.isPresent() ? plan(planning.get(), input) : withheld(input);
  }

  private Optional<String> wrongApproach(Bank known) {
    List<String> ids = known.approaches().stream().map(Approach::id).toList();
    return wanted.approaches().stream()
        .filter(a -> !ids.contains(a))
        .findFirst()
        .map(a -> "There is no control \"" + Words.clean(a) + "\". " + Hint.didYouMean(a, ids));
  }

  private int withheld(PageInput input) {
    if (wanted.json()) {
      List<String> because =
          new ArrayList<>(input.together().stops().stream().map(w -> w.caution().code()).toList());
      if (because.isEmpty()) {
        because.add("withheld");
      }
      print(PlanWriter.write(List.of(), because));
    } else {
      print(PlanText.withheld(input, glyphs()));
    }
    return ExitCode.DONE;
  }

  private int plan(Planning planning, PageInput input) throws IOException {
    List<Integer> slots = planning.slots();
    if (wanted.game().isPresent() && !slots.contains(wanted.game().getAsInt() + 1)) {
      surroundings
          .error()
          .println("There is no game " + wanted.game().getAsInt() + "; games are counted from 0.");
      return ExitCode.USAGE;
    }
    Optional<PlanAsk> ask = ask(planning);
    if (ask.isEmpty()) {
      return ExitCode.USAGE;
    }
    if (wanted.compare()) {
      List<Mixes.Comparison> games =
          slots(planning).stream()
              .map(s -> Mixes.of(planning, s, ask.get(), () -> PlanWork.COMPARED))
              .toList();
      print(wanted.json() ? MixWriter.write(games) : MixLines.of(input, games, glyphs()));
      return ExitCode.DONE;
    }
    long begun = surroundings.clock().millis();
    Map<Integer, Planned> plans = new TreeMap<>(plans(planning, ask.get()));
    if (wanted.explain().isPresent()) {
      return explain(plans, input);
    }
    Budget tried = tried(begun, plans.size());
    plans.replaceAll((s, p) -> BroughtIn.into(input.bank(), planning, ask.get(), p, tried));
    List<ControlPlan> all = plans.values().stream().map(Planned::plan).toList();
    String json = json(input, plans);
    print(wanted.json() ? json : text(input, plans));
    if (keeping.isPresent()) {
      int code =
          keeping
              .get()
              .keep(
                  input.bank(),
                  json,
                  input.limits(),
                  before -> KeptWishes.with(before, plans, ask.get().wishes()));
      if (code != ExitCode.DONE) {
        return code;
      }
    }
    return all.stream().allMatch(ControlPlan::proven) ? ExitCode.DONE : ExitCode.UNFINISHED;
  }

  private static String json(PageInput input, Map<Integer, Planned> plans) {
    List<Planned> all = List.copyOf(plans.values());
    return PlanWriter.write(
        all.stream().map(Planned::plan).toList(),
        all.stream().map(ClashLines::demands).toList(),
        Optional.of(LoadText.day(input, all)),
        input.limits().accepted(),
        List.of());
  }

  private String text(PageInput input, Map<Integer, Planned> plans) {
    List<Planned> all = List.copyOf(plans.values());
    return wanted.load()
        ? LoadText.details(input, all, glyphs())
        : PlanText.of(input, all, glyphs());
  }

  private Optional<PlanAsk> ask(Planning planning) {
    List<PlanAsk.Wish> wishes = new ArrayList<>();
    for (String wish : wanted.wishes()) {
      int equals = wish.indexOf('=');
      if (equals <= 0 || equals == wish.length() - 1) {
        surroundings.error().println("--set is an action and an input, such as jump=B3.");
        return Optional.empty();
      }
      PlanAsk.Wish one = new PlanAsk.Wish(wish.substring(0, equals), wish.substring(equals + 1));
      wishes.add(one);
    }
    Optional<List<String>> only =
        wanted.approaches().isEmpty() ? Optional.empty() : Optional.of(wanted.approaches());
    PlanAsk ask = new PlanAsk(only, wanted.parts(), wishes);
    List<String> unread = planning.unread(ask, slots(planning));
    unread.forEach(u -> surroundings.error().println(Words.clean(u)));
    return unread.isEmpty() ? Optional.of(ask) : Optional.empty();
  }

  private List<Integer> slots(Planning planning) {
    return wanted.game().isPresent() ? List.of(wanted.game().getAsInt() + 1) : planning.slots();
  }

  private Map<Integer, Planned> plans(Planning planning, PlanAsk ask) {
    if (wanted.game().isEmpty()) {
      return planning.session(ask, this::budget);
    }
    int slot = wanted.game().getAsInt() + 1;
    Map<Integer, Planned> one = new TreeMap<>();
    one.put(
        slot,
        wanted.milliseconds().isPresent()
            ? planning.plan(slot, ask, budget())
            : planning.inSession(slot, ask, this::budget));
    return one;
  }

  /**
   * For each change tried: where the time is limited, what is left of the time of all games.
   *
   * @param begun when planning began, in milliseconds of the clock
   */
  private Budget tried(long begun, int games) {
    if (wanted.milliseconds().isEmpty()) {
      return PlanWork.TRIED;
    }
    long end = begun + games * wanted.milliseconds().getAsLong();
    return PlanWork.TRIED.stoppedBy(() -> surroundings.clock().millis() >= end);
  }

  /** A fresh budget for one game: its clock starts now. */
  private Budget budget() {
    if (wanted.milliseconds().isEmpty()) {
      return PlanWork.PLAN;
    }
    long end = surroundings.clock().millis() + wanted.milliseconds().getAsLong();
    return Budget.ORDINARY
        .withNodes(NODES_BY_THE_CLOCK)
        .stoppedBy(() -> surroundings.clock().millis() >= end);
  }

  private int explain(Map<Integer, Planned> plans, PageInput input) {
    String action = wanted.explain().orElseThrow();
    List<Planned> having = plans.values().stream().filter(p -> PlanText.names(p, action)).toList();
    if (having.isEmpty()) {
      surroundings.error().println("No game here has an action \"" + Words.clean(action) + "\".");
      return ExitCode.USAGE;
    }
    print(PlanText.explained(input, having.get(0), action, glyphs()));
    return ExitCode.DONE;
  }

  private Glyphs glyphs() {
    return bank.glyphs(surroundings);
  }

  private void print(String text) {
    surroundings.output().print(text);
    surroundings.output().flush();
  }
}
