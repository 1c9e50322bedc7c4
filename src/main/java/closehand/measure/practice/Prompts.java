package closehand.measure.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which prompts come in which round: every action at least once a round, the rest in the
 * proportions of the game; pairs as one then the other; what has a second meaning from the third
 * week on.
 *
 * <p>Numbers of rounds and prompts are starting points of practice, without a source.
 */
public final class Prompts {
  /** Rounds of one run; the first is for warming up and is not counted. */
  public static final int ROUNDS = 5;

  /** The week from which second meanings are practised. */
  public static final int SECOND_MEANINGS_FROM_WEEK = 3;

  private static final int LEAST = 12;
  private static final int MOST = 30;
  private static final int HALF_MORE = 2;
  private static final int ONE_PAIR_IN = 6;
  private static final double URGENT_TIMES = 3;

  private final Sheet sheet;
  private final Chance chance;

  private Prompts(Sheet sheet, long seed) {
    this.sheet = sheet;
    this.chance = new Chance(seed);
  }

  /**
   * The rounds; the same for the same seed.
   *
   * @param week weeks with this plan, from 1
   */
  public static List<List<Cue>> of(Sheet sheet, int week, long seed) {
    Prompts prompts = new Prompts(sheet, seed);
    List<Sheet.Job> jobs =
        sheet.jobs().stream()
            .filter(j -> j.held().isEmpty() || week >= SECOND_MEANINGS_FROM_WEEK)
            .toList();
    List<List<Cue>> rounds = new ArrayList<>();
    for (int i = 0; i < ROUNDS && !jobs.isEmpty(); i++) {
      rounds.add(prompts.round(jobs));
    }
    return rounds;
  }

  private List<Cue> round(List<Sheet.Job> jobs) {
    int size = Math.max(jobs.size(), Math.min(MOST, Math.max(LEAST, jobs.size() * 3 / HALF_MORE)));
    List<Cue> cues = new ArrayList<>();
    jobs.forEach(j -> cues.add(Cue.of(j.action())));
    List<Cue> pairs = pairs(jobs, Math.min(size / ONE_PAIR_IN, size - cues.size()));
    cues.addAll(pairs);
    cues.addAll(proportional(jobs, size - cues.size()));
    return mixed(cues);
  }

  private List<Cue> pairs(List<Sheet.Job> jobs, int most) {
    List<String> known = jobs.stream().map(Sheet.Job::action).toList();
    List<Sheet.Pair> pairs =
        new ArrayList<>(
            sheet.pairs().stream()
                .filter(p -> known.contains(p.first()) && known.contains(p.second()))
                .filter(p -> !signal(p.first()).equals(signal(p.second())))
                .toList());
    List<Cue> cues = new ArrayList<>();
    while (cues.size() < most && !pairs.isEmpty()) {
      Sheet.Pair pair = pairs.remove(chance.below(pairs.size()));
      cues.add(new Cue(List.of(pair.first(), pair.second())));
    }
    return cues;
  }

  private Signal signal(String action) {
    return sheet.target(action).signal();
  }

  /** Shares by largest remainder; what a game asks at once counts up to twice. */
  private List<Cue> proportional(List<Sheet.Job> jobs, int count) {
    double all = jobs.stream().mapToDouble(Prompts::weight).sum();
    List<Cue> cues = new ArrayList<>();
    List<Sheet.Job> byRemainder = new ArrayList<>(jobs);
    for (Sheet.Job job : jobs) {
      int whole = (int) Math.floor(count * weight(job) / all);
      for (int i = 0; i < whole; i++) {
        cues.add(Cue.of(job.action()));
      }
    }
    byRemainder.sort(
        Comparator.comparingDouble((Sheet.Job j) -> -(count * weight(j) / all % 1))
            .thenComparing(Sheet.Job::action));
    for (int i = 0; cues.size() < count; i++) {
      cues.add(Cue.of(byRemainder.get(i % byRemainder.size()).action()));
    }
    return cues;
  }

  private static double weight(Sheet.Job job) {
    return Math.max(0.1, job.perMinute()) * (1 + job.urgency() / URGENT_TIMES);
  }

  /** In mixed order, and where it can be helped never the same input twice in a row. */
  private List<Cue> mixed(List<Cue> cues) {
    List<Cue> left = new ArrayList<>(cues);
    List<Cue> order = new ArrayList<>();
    while (!left.isEmpty()) {
      int pick = chance.below(left.size());
      for (int i = 0; i < left.size(); i++) {
        Cue next = left.get((pick + i) % left.size());
        if (order.isEmpty() || !meets(order.get(order.size() - 1), next)) {
          pick = (pick + i) % left.size();
          break;
        }
      }
      order.add(left.remove(pick));
    }
    return order;
  }

  private boolean meets(Cue before, Cue next) {
    String last = before.actions().get(before.actions().size() - 1);
    return signal(last).equals(signal(next.actions().get(0)));
  }
}
