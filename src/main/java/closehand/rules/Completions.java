package closehand.rules;

import closehand.interview.Answers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The ways in which open questions could be answered, and how much each question tells about which
 * suggestion leads: the mutual information, in bits, between its answer and the leading suggestion
 * (Shannon 1948). With at most 4,096 ways all of them are gone through, and more where few
 * questions are open; else so many are drawn, evenly spread over the answers of each question.
 */
public final class Completions {
  /** So many ways are gone through or drawn at least, where there are so many. */
  static final int LEAST_WAYS = 4_096;

  /** No more than so many, however few questions are open. */
  private static final int MOST_WAYS = 65_536;

  /** Answers looked at in all: what bounds the time. */
  private static final int MOST_ANSWERS = 600_000;

  private static final int FINENESS = 1_024;

  private final Program program;
  private final long[] base;
  private final long[] state;
  private final List<Domain> domains = new ArrayList<>();
  private final int[] openRules;
  private final List<Step> steps = new ArrayList<>();
  private final Leads leads;
  private final long seed;

  private Completions(RuleBook book, Answers answers, long seed) {
    this.program = book.program();
    this.base = book.base(answers);
    this.seed = seed;
    this.state = program.settle(base);
    openRules =
        program.rulesWhere(
            r ->
                r.in(state) == Outcome.OPEN && !(r.supports().isEmpty() && r.excludes().isEmpty()));
    Influence influence = book.influence();
    for (String fact : mattering()) {
      domains.add(Domain.of(program.table().asked(fact), influence));
    }
    touched(influence);
    leads = new Leads(program, book.judge(), state, openRules);
  }

  /**
   * Begins with these answers.
   *
   * @param seed what the drawing depends on; the same gives the same
   */
  public static Completions of(RuleBook book, Answers answers, long seed) {
    return new Completions(book, answers, seed);
  }

  /** The steps to take again once open facts are filled in, cut down to what is open in them. */
  private void touched(Influence influence) {
    Set<Step> again = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Domain domain : domains) {
      again.addAll(influence.of(domain.asked()).steps());
    }
    for (Step step : program.steps()) {
      if (step instanceof Step.Gate gate && (again.contains(step) || isFilled(gate.asked()))) {
        steps.add(new Step.Gate(gate.asked(), Pruning.of(gate.applies(), state)));
      } else if (step instanceof TermStep.Derived derived && again.contains(step)) {
        steps.add(new TermStep.Derived(derived.slot(), Pruning.of(derived.when(), state)));
      } else if (again.contains(step)) {
        steps.add(step);
      }
    }
  }

  private boolean isFilled(Asked asked) {
    return domains.stream().anyMatch(d -> d.asked().order() == asked.order());
  }

  /** The open facts that can make a difference to points or exclusions. */
  private List<String> mattering() {
    Trace trace = new Trace(program.owners(), base, state, program.facts().size());
    FactSet facts = new FactSet(program.facts().size());
    for (int rule : openRules) {
      trace.waits(program.rules().get(rule).when(), facts);
      trace.waits(program.rules().get(rule).unless(), facts);
    }
    List<String> before = List.of();
    List<String> names = facts.names(program.facts());
    while (names.size() > before.size()) {
      before = names;
      for (String name : names) {
        Node gate = program.owners().gate(program.table().asked(name));
        if (gate != null) {
          trace.waits(gate, facts);
        }
      }
      names = facts.names(program.facts());
    }
    return names;
  }

  /** The open facts that can make a difference, in bank order. */
  public List<String> facts() {
    return domains.stream().map(d -> d.asked().fact()).toList();
  }

  /**
   * How many ways are gone through or drawn; a multiple of 64. Few open questions leave time for
   * more.
   */
  int ways() {
    int each = MOST_ANSWERS / Math.max(1, domains.size());
    return Math.max(LEAST_WAYS, Math.min(MOST_WAYS, each)) / Block.SETS * Block.SETS;
  }

  /** Whether every way is gone through, so that the figures are exact. */
  public boolean exact() {
    int most = ways();
    long ways = 1;
    for (Domain domain : domains) {
      ways *= domain.size();
      if (ways > most) {
        return false;
      }
    }
    return true;
  }

  /** How many bits the answer to each open fact tells about which suggestion leads. */
  public Map<String, Double> bits() {
    Counts counts = new Counts(domains, program.bank().approaches().size() + 1);
    boolean exact = exact();
    if (exact) {
      goThrough(counts);
    } else {
      draw(counts);
    }
    Map<String, Double> bits = new LinkedHashMap<>();
    for (int i = 0; i < domains.size(); i++) {
      bits.put(domains.get(i).asked().fact(), counts.bits(i, exact ? 0 : ways()));
    }
    return bits;
  }

  private void goThrough(Counts counts) {
    int ways = 1;
    for (Domain domain : domains) {
      ways *= domain.size();
    }
    int[][] picks = new int[domains.size()][Block.SETS];
    double[] weights = new double[Block.SETS];
    for (int first = 0; first < ways; first += Block.SETS) {
      int sets = Math.min(Block.SETS, ways - first);
      for (int set = 0; set < sets; set++) {
        int rest = first + set;
        weights[set] = 1;
        for (int i = 0; i < picks.length; i++) {
          picks[i][set] = rest % domains.get(i).size();
          weights[set] *= domains.get(i).weights()[picks[i][set]];
          rest /= domains.get(i).size();
        }
      }
      judge(picks, weights, sets, counts);
    }
  }

  /**
   * Sixty-four at a time, each question's answers spread evenly over them in an order by chance.
   */
  private void draw(Counts counts) {
    int[][] tables = new int[domains.size()][];
    for (int i = 0; i < tables.length; i++) {
      tables[i] = domains.get(i).spread(FINENESS);
    }
    Mixing mixing = new Mixing(seed);
    int[][] picks = new int[domains.size()][Block.SETS];
    double[] weights = new double[Block.SETS];
    int ways = ways();
    java.util.Arrays.fill(weights, 1.0 / ways);
    int stride = FINENESS / Block.SETS;
    for (int first = 0; first < ways; first += Block.SETS) {
      for (int i = 0; i < picks.length; i++) {
        int[] order = mixing.shuffled(Block.SETS);
        int jitter = mixing.below(stride);
        for (int set = 0; set < Block.SETS; set++) {
          picks[i][set] = tables[i][order[set] * stride + jitter];
        }
      }
      judge(picks, weights, Block.SETS, counts);
    }
  }

  private void judge(int[][] picks, double[] weights, int sets, Counts counts) {
    Block block = new Block(state);
    for (int i = 0; i < picks.length; i++) {
      domains.get(i).fill(block, picks[i], sets);
    }
    steps.forEach(block::run);
    int[] leaders = leads.of(block, sets);
    for (int i = 0; i < picks.length; i++) {
      Domain domain = domains.get(i);
      long applies = block.applies(domain.asked().howSlot());
      for (int set = 0; set < sets; set++) {
        int answer = (applies & 1L << set) != 0 ? picks[i][set] : domain.size();
        counts.add(i, answer, leaders[set] + 1, weights[set]);
      }
    }
  }
}
