package closehand.rules;

import closehand.interview.Answers;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which single answers, had they been different, would change how an approach stands. Every other
 * cell of every answered question is tried and the rules are judged anew, so nothing is guessed.
 * Only questions that the rules about the approach read, directly or through terms and through
 * whether other questions apply, are tried.
 */
public final class WhatIf {
  private final Program program;
  private final Ranking ranking;
  private final Influence influence;
  private final long[] base;
  private final long[] state;
  private final Outcome[] outcomes;
  private final Tally now;

  private WhatIf(RuleBook book, long[] base) {
    this.program = book.program();
    this.ranking = book.ranking();
    this.influence = book.influence();
    this.base = base;
    this.state = program.settle(base);
    this.outcomes = program.outcomes(state);
    this.now = tally(outcomes);
  }

  /**
   * Begins with these answers, for all wanted games together.
   *
   * @throws IllegalArgumentException when an answer is not of its question's kind
   */
  public static WhatIf of(RuleBook book, Answers answers) {
    return new WhatIf(book, book.base(answers));
  }

  /**
   * Begins with these answers, for one wanted game alone.
   *
   * @param gameSlot 1 to 3
   */
  public static WhatIf of(RuleBook book, Answers answers, int gameSlot) {
    return new WhatIf(book, book.base(answers, gameSlot));
  }

  /**
   * The changes for each suggested approach, by its id, best approach first; nearest change first,
   * then in the order of the questionnaire.
   */
  public Map<String, List<Change>> suggested() {
    List<Integer> wanted = new ArrayList<>();
    for (int approach : ranking.ordered(now)) {
      if (now.status(approach).suggested()) {
        wanted.add(approach);
      }
    }
    return changes(wanted);
  }

  /**
   * The changes for one approach, whatever its standing; nearest change first, then in the order of
   * the questionnaire.
   *
   * @throws IllegalArgumentException for an approach the bank does not have
   */
  public List<Change> changes(String approach) {
    for (int i = 0; i < program.bank().approaches().size(); i++) {
      if (program.bank().approaches().get(i).id().equals(approach)) {
        return changes(List.of(i)).getOrDefault(approach, List.of());
      }
    }
    throw new IllegalArgumentException("no such approach: " + approach);
  }

  private Map<String, List<Change>> changes(List<Integer> approaches) {
    List<List<Found>> found = new ArrayList<>();
    approaches.forEach(a -> found.add(new ArrayList<>()));
    for (Asked asked : program.table().all()) {
      if (asked.valued(base) && state[asked.howSlot()] != Node.NOT_APPLICABLE) {
        tryOthers(asked, approaches, found);
      }
    }
    Map<String, List<Change>> changes = new LinkedHashMap<>();
    for (int i = 0; i < found.size(); i++) {
      found.get(i).sort(Comparator.comparingInt(Found::distance));
      changes.put(
          program.bank().approaches().get(approaches.get(i)).id(),
          found.get(i).stream().map(Found::change).toList());
    }
    return changes;
  }

  /** A change and how many cells away it is. */
  private record Found(Change change, int distance) {}

  private void tryOthers(Asked asked, List<Integer> approaches, List<List<Found>> found) {
    Influence.Reach reach = influence.of(asked);
    BitSet byReach = touched(reach);
    List<Integer> touched = new ArrayList<>();
    for (int approach : approaches) {
      if (byReach.get(approach)) {
        touched.add(approach);
      }
    }
    if (touched.isEmpty()) {
      return;
    }
    List<Alternative> others = Alternative.to(asked, state);
    List<Tally> outcome = new ArrayList<>();
    for (Alternative other : others) {
      outcome.add(tallyWith(asked, other, reach));
    }
    for (int approach : touched) {
      List<Standing.Status> then = outcome.stream().map(t -> t.status(approach)).toList();
      collect(asked, others, then, now.status(approach), found.get(approaches.indexOf(approach)));
    }
  }

  private BitSet touched(Influence.Reach reach) {
    BitSet touched = new BitSet();
    for (int rule : reach.rules()) {
      program.rules().get(rule).touches(touched);
    }
    return touched;
  }

  private Tally tallyWith(Asked asked, Alternative other, Influence.Reach reach) {
    long[] changed = state.clone();
    asked.put(other.value(), changed);
    reach.steps().forEach(step -> step.run(base, changed));
    Outcome[] then = outcomes.clone();
    for (int rule : reach.rules()) {
      then[rule] = program.rules().get(rule).in(changed);
    }
    return tally(then);
  }

  private Tally tally(Outcome[] of) {
    return new Tally(program.bank().approaches().size(), program.rules(), of);
  }

  /** Numbers side by side with the same result become one range, as far away as its near end. */
  private static void collect(
      Asked asked,
      List<Alternative> others,
      List<Standing.Status> then,
      Standing.Status now,
      List<Found> found) {
    int at = 0;
    while (at < others.size()) {
      int end = at + 1;
      int nearest = Math.abs(others.get(at).offset());
      while (end < others.size() && joins(others, then, end)) {
        nearest = Math.min(nearest, Math.abs(others.get(end).offset()));
        end++;
      }
      if (then.get(at) != now) {
        Change.To to = range(others.get(at).to(), others.get(end - 1).to());
        found.add(new Found(new Change(asked.fact(), to, then.get(at)), nearest));
      }
      at = end;
    }
  }

  /** Whether an alternative continues the range before it: same result, and nothing in between. */
  private static boolean joins(List<Alternative> others, List<Standing.Status> then, int index) {
    Alternative before = others.get(index - 1);
    Alternative after = others.get(index);
    return before.to() instanceof Change.To.Between
        && after.to() instanceof Change.To.Between
        && before.offset() < 0 == after.offset() < 0
        && then.get(index) == then.get(index - 1);
  }

  private static Change.To range(Change.To first, Change.To last) {
    return first instanceof Change.To.Between low && last instanceof Change.To.Between high
        ? new Change.To.Between(low.least(), high.greatest())
        : first;
  }
}
