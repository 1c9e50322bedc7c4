package closehand.rules;

import closehand.bank.FactType;
import closehand.interview.Answers;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What would lead had answers been different. Every other answer that rules can tell apart, of
 * every answered question that applies, is tried and the rules are judged anew, so nothing is
 * guessed. Options of a list whose number alone counts are changed by number, all others one by
 * one.
 */
public final class Variations {
  private final Program program;
  private final Judge judge;
  private final Answers answers;
  private final long[] base;
  private final long[] state;
  private final Outcome[] outcomes;
  private final Verdict now;
  private final int leaderNow;
  private final List<Subject> subjects = new ArrayList<>();

  /** An answered fact with its other answers and what they reach. */
  private record Subject(Asked asked, List<Alternative> others, Influence.Reach reach) {}

  /** One other answer of one fact. */
  private record Single(Subject subject, Alternative other) {}

  /** What came of a change, kept for comparing. */
  private record Came(int leader, boolean withheld, Verdict verdict) {}

  /** The pairs found, and whether every pair was tried. */
  public record Pairs(List<Variation> found, boolean everyPairTried) {
    public Pairs {
      found = List.copyOf(found);
    }
  }

  private Variations(RuleBook book, Answers answers) {
    this.program = book.program();
    this.judge = book.judge();
    this.answers = answers;
    this.base = book.base(answers);
    this.state = program.settle(base);
    this.outcomes = program.outcomes(state);
    Tally tally = judge.tally(outcomes);
    this.now = judge.verdict(tally, outcomes, state);
    this.leaderNow = now.withheld() ? Judge.NOBODY : judge.leader(tally);
    Influence influence = book.influence();
    for (Asked asked : program.table().all()) {
      if (asked.valued(base) && state[asked.howSlot()] != Node.NOT_APPLICABLE) {
        Influence.Reach reach = influence.of(asked);
        if (!reach.rules().isEmpty()) {
          subjects.add(new Subject(asked, Alternatives.of(asked, state, influence), reach));
        }
      }
    }
  }

  /**
   * Begins with these answers, for all wanted games together.
   *
   * @throws IllegalArgumentException when an answer is not of its question's kind
   */
  public static Variations of(RuleBook book, Answers answers) {
    return new Variations(book, answers);
  }

  /** What leads now. */
  public Verdict now() {
    return now;
  }

  /**
   * Every single change after which something else leads: those inside what is uncertain first,
   * then the nearest, then in the order of the questionnaire. Numbers side by side with the same
   * result are one range.
   */
  public List<Variation> singles() {
    List<Variation> found = new ArrayList<>();
    for (Subject subject : subjects) {
      List<Came> came = new ArrayList<>();
      for (Alternative other : subject.others()) {
        came.add(came(List.of(new Single(subject, other))));
      }
      collect(subject, came, found);
    }
    return sorted(found);
  }

  /** Nearest first, those inside what is uncertain before all others. */
  private static List<Variation> sorted(List<Variation> found) {
    List<Variation> sorted = new ArrayList<>(found);
    sorted.sort(
        Comparator.comparing((Variation v) -> !v.uncertain())
            .thenComparing(v -> v.then().withheld())
            .thenComparingInt(Variation::cellsAway)
            .thenComparingDouble(Variation::shareOfRange));
    return sorted;
  }

  private void collect(Subject subject, List<Came> came, List<Variation> found) {
    List<Alternative> others = subject.others();
    int at = 0;
    while (at < others.size()) {
      int end = at + 1;
      while (end < others.size() && joins(others, came, end)) {
        end++;
      }
      if (changes(came.get(at))) {
        Alternative joined = joined(others.subList(at, end));
        found.add(new Variation(List.of(step(subject, joined)), came.get(at).verdict()));
      }
      at = end;
    }
  }

  private boolean changes(Came came) {
    return came.leader() != leaderNow || came.withheld() != now.withheld();
  }

  private static boolean joins(List<Alternative> others, List<Came> came, int index) {
    Alternative before = others.get(index - 1);
    Alternative after = others.get(index);
    boolean ranges =
        (before.to() instanceof Change.To.Between && after.to() instanceof Change.To.Between)
            || (before.to() instanceof Change.To.Counted
                && after.to() instanceof Change.To.Counted);
    return ranges
        && before.offset() < 0 == after.offset() < 0
        && came.get(index - 1).verdict().equals(came.get(index).verdict());
  }

  private static Alternative joined(List<Alternative> some) {
    Alternative first = some.get(0);
    Alternative last = some.get(some.size() - 1);
    Alternative nearest = first.offset() < 0 ? last : first;
    Change.To to = first.to();
    if (to instanceof Change.To.Between low && last.to() instanceof Change.To.Between high) {
      to = new Change.To.Between(low.least(), high.greatest());
    } else if (to instanceof Change.To.Counted low && last.to() instanceof Change.To.Counted high) {
      to = new Change.To.Counted(low.least(), high.greatest());
    }
    return new Alternative(nearest.value(), to, nearest.offset());
  }

  private Variation.Step step(Subject subject, Alternative other) {
    String fact = subject.asked().fact();
    Answers.Recorded recorded = answers.byFact().get(fact);
    boolean uncertain =
        recorded != null && Uncertainty.covers(recorded, subject.asked().field().type(), other);
    return new Variation.Step(
        fact, other.to(), Math.abs(other.offset()), share(subject, other), uncertain);
  }

  private double share(Subject subject, Alternative other) {
    Optional<Value> given = answers.value(subject.asked().fact());
    return other.to() instanceof Change.To.Between to
            && given.orElse(null) instanceof Value.Number number
            && subject.asked().field().type() instanceof FactType.Amount amount
        ? Uncertainty.gap(to, number.value()) / (amount.maximum() - amount.minimum())
        : 0;
  }

  /**
   * Pairs of changes after which something else leads although neither alone does that, sorted as
   * singles are. Pairs that reach no rule in common add up and are all looked at.
   *
   * @param most how many of the other pairs to judge; where there are more, those that bring
   *     another approach closest go first
   */
  public Pairs pairs(int most) {
    Additions additions = new Additions(program, judge, outcomes, now.withheld());
    List<Weighed> candidates = new ArrayList<>();
    for (Subject subject : subjects) {
      for (Alternative other : subject.others()) {
        Single single = new Single(subject, other);
        if (!changes(came(List.of(single)))) {
          candidates.add(weighed(single, additions));
        }
      }
    }
    long others = count(candidates, additions);
    Set<Weighed> closest = Collections.newSetFromMap(new IdentityHashMap<>());
    closest.addAll(others <= most ? candidates : closest(candidates, most));
    List<Variation> found = new ArrayList<>();
    for (int i = 0; i < candidates.size(); i++) {
      for (int j = i + 1; j < candidates.size(); j++) {
        Weighed one = candidates.get(i);
        Weighed other = candidates.get(j);
        boolean worthJudging =
            additions.addUp(one.adds(), other.adds())
                ? additions.leader(one.adds(), other.adds()) != leaderNow
                : closest.contains(one) && closest.contains(other);
        if (worthJudging) {
          tryPair(one.single(), other.single(), found);
        }
      }
    }
    return new Pairs(sorted(found), others <= most);
  }

  /**
   * A change that turns nothing alone.
   *
   * @param margin by how many points the leader is ahead of the best rival after it
   */
  private record Weighed(Single single, Additions.Addition adds, int margin) {}

  /** How many pairs do not add up. */
  private static long count(List<Weighed> candidates, Additions additions) {
    long count = 0;
    for (int i = 0; i < candidates.size(); i++) {
      for (int j = i + 1; j < candidates.size(); j++) {
        Weighed one = candidates.get(i);
        Weighed other = candidates.get(j);
        boolean same = one.single().subject() == other.single().subject();
        count += same || additions.addUp(one.adds(), other.adds()) ? 0 : 1;
      }
    }
    return count;
  }

  private static long count(long singles) {
    return singles * (singles - 1) / 2;
  }

  private void tryPair(Single one, Single other, List<Variation> found) {
    if (one.subject().asked().order() == other.subject().asked().order()) {
      return;
    }
    Came came = came(List.of(one, other));
    if (changes(came)) {
      List<Variation.Step> steps =
          List.of(step(one.subject(), one.other()), step(other.subject(), other.other()));
      found.add(new Variation(steps, came.verdict()));
    }
  }

  /** As many as give no more than so many pairs: those that narrow the lead most, nearest first. */
  private static List<Weighed> closest(List<Weighed> candidates, int most) {
    List<Weighed> order = new ArrayList<>(candidates);
    order.sort(
        Comparator.comparingInt(Weighed::margin)
            .thenComparingInt(w -> Math.abs(w.single().other().offset())));
    int taken = 0;
    while (taken < order.size() && count(taken + 1L) <= most) {
      taken++;
    }
    return order.subList(0, taken);
  }

  private Weighed weighed(Single single, Additions additions) {
    long[] changedBase = base.clone();
    long[] changed = state.clone();
    Outcome[] then = outcomes.clone();
    apply(single, changedBase, changed, then);
    return new Weighed(
        single, additions.of(single.subject().reach(), then), margin(judge.tally(then)));
  }

  /** By how many points the leader is ahead of the best rival. */
  private int margin(Tally tally) {
    int rival = Integer.MIN_VALUE / 2;
    for (int i = 0; i < program.bank().approaches().size(); i++) {
      if (i != leaderNow && judge.canLead(i) && tally.status(i) != Standing.Status.RULED_OUT) {
        rival = Math.max(rival, tally.points(i));
      }
    }
    return (leaderNow == Judge.NOBODY ? 0 : tally.points(leaderNow)) - rival;
  }

  private Came came(List<Single> singles) {
    long[] changedBase = base.clone();
    long[] changed = state.clone();
    Outcome[] then = outcomes.clone();
    singles.forEach(s -> apply(s, changedBase, changed, then));
    Tally tally = judge.tally(then);
    boolean withheld = judge.withheld(then, changed);
    int leader = withheld ? Judge.NOBODY : judge.leader(tally);
    boolean same = leader == leaderNow && withheld == now.withheld();
    return new Came(leader, withheld, same ? now : judge.verdict(tally, then, changed));
  }

  private void apply(Single single, long[] changedBase, long[] changed, Outcome[] then) {
    Subject subject = single.subject();
    if (changed[subject.asked().howSlot()] == Node.NOT_APPLICABLE) {
      // The other change of a pair has set this question aside.
      return;
    }
    subject.asked().put(single.other().value(), changedBase);
    subject.asked().put(single.other().value(), changed);
    for (Step step : subject.reach().steps()) {
      step.run(changedBase, changed);
    }
    for (int rule : subject.reach().rules()) {
      then[rule] = program.rules().get(rule).in(changed);
    }
  }
}
