package closehand.interview;

import closehand.bank.TaskKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The questions asked again: before and after a run of bodily tasks, and consent after a break.
 *
 * @param stage where the interview stands
 * @param queue facts still to be asked again now, in order
 * @param then where the interview goes once the queue is empty
 * @param touched whether a task of this run was put to the player
 * @param painBefore the lowest pain found before a run in this sitting
 * @param earlier what the questions asked again had as answers before the first check
 * @param stopped why there are no more tasks in this sitting, if so
 * @param taken a measured task that was taken up, if one was
 */
record Checks(
    Stage stage,
    List<String> queue,
    Optional<String> then,
    boolean touched,
    Optional<Double> painBefore,
    Map<String, Answer> earlier,
    Optional<String> stopped,
    Optional<Taken> taken) {

  /** Nothing asked again yet. */
  static final Checks NONE =
      new Checks(
          Stage.TALK,
          List.of(),
          Optional.empty(),
          false,
          Optional.empty(),
          Map.of(),
          Optional.empty(),
          Optional.empty());

  Checks {
    queue = List.copyOf(queue);
    earlier = Map.copyOf(earlier);
  }

  /** Where the interview stands with regard to bodily tasks. */
  enum Stage {
    /** Ordinary questions. */
    TALK,
    /** Asked again because a task comes next. */
    BEFORE_TASKS,
    /** A run of tasks. */
    TASKS,
    /** Asked again because a run of tasks is over. */
    AFTER_TASKS,
    /** Asked again because a saved case was opened. */
    AFTER_BREAK
  }

  /**
   * A measured task that was taken up.
   *
   * @param fact the fact it answers first of all
   * @param kinds which kinds of task it is
   * @param from where the interview stood before
   */
  record Taken(String fact, Set<TaskKind> kinds, Optional<String> from) {
    Taken {
      kinds = Set.copyOf(kinds);
    }
  }

  /** A measured task is taken up. */
  Checks taking(Taken one) {
    return new Checks(stage, queue, then, touched, painBefore, earlier, stopped, Optional.of(one));
  }

  /** Begins asking these again; the answers they have now are what later ones are held against. */
  Checks begin(Stage next, List<String> facts, Optional<String> destination, Answers answers) {
    Map<String, Answer> known = new HashMap<>(earlier);
    for (String fact : facts) {
      answers.answer(fact).ifPresent(answer -> known.putIfAbsent(fact, answer));
    }
    return new Checks(
        next, facts, destination, false, painBefore, known, stopped, Optional.empty());
  }

  /** A run of tasks begins at once, since the bank asks nothing again. */
  Checks run() {
    return new Checks(Stage.TASKS, List.of(), then, false, painBefore, earlier, stopped, taken);
  }

  /** A task was put to the player. */
  Checks touch() {
    return new Checks(stage, queue, then, true, painBefore, earlier, stopped, taken);
  }

  /** Only these are still to be asked again. */
  Checks keep(List<String> facts) {
    return new Checks(stage, facts, then, touched, painBefore, earlier, stopped, taken);
  }

  /** One question is dealt with, asked again or not. */
  Checks without(String fact) {
    List<String> rest = new ArrayList<>(queue);
    rest.remove(fact);
    return new Checks(
        stage,
        rest,
        then.filter(t -> !t.equals(fact)),
        touched,
        painBefore,
        earlier,
        stopped,
        taken);
  }

  /** The queue is empty: a run begins after the check before it, else the talk goes on. */
  Checks done(Answers answers) {
    boolean begins = stage == Stage.BEFORE_TASKS && stopped.isEmpty();
    Optional<Double> pain = begins ? lowest(pain(answers)) : painBefore;
    Stage next = begins ? Stage.TASKS : Stage.TALK;
    Optional<Taken> on = begins ? taken : Optional.empty();
    return new Checks(next, List.of(), Optional.empty(), false, pain, earlier, stopped, on);
  }

  /** The talk goes on and nothing is left to ask again. */
  Checks drop() {
    return new Checks(
        Stage.TALK,
        List.of(),
        Optional.empty(),
        false,
        painBefore,
        earlier,
        stopped,
        Optional.empty());
  }

  /** No more tasks in this sitting; the first reason stays. */
  Checks stop(String because) {
    return stopped.isPresent()
        ? this
        : new Checks(stage, queue, then, touched, painBefore, earlier, Optional.of(because), taken);
  }

  /** Whether a check or a run has begun in this sitting. */
  boolean begun() {
    return stage == Stage.BEFORE_TASKS
        || stage == Stage.TASKS
        || stage == Stage.AFTER_TASKS
        || painBefore.isPresent();
  }

  /** Why the new answer to a question asked again ends the tasks, if it does. */
  Optional<String> verdict(Outline.Place place, Answer answer) {
    if (place.fact().equals(WellKnown.PAIN_NOW)) {
      return pain(answer);
    }
    boolean same = answer.given().isPresent() && answer.equals(earlier.get(place.fact()));
    return same || WellKnown.isAllClear(answer) || place.fact().equals(WellKnown.CONSENT_STATE)
        ? Optional.empty()
        : Optional.of(
            "No more tasks in this sitting: this is not clear any more: " + place.field().label());
  }

  private Optional<String> pain(Answer answer) {
    Optional<Double> now = number(answer);
    if (now.isEmpty()) {
      return Optional.of("No more tasks in this sitting: how much pain there is now is not known.");
    }
    if (now.get() >= WellKnown.PAIN_THAT_STOPS) {
      return Optional.of(
          "No more tasks in this sitting: pain has reached "
              + Wording.number(now.get())
              + " of 10.");
    }
    return painBefore
        .filter(before -> now.get() - before >= WellKnown.PAIN_RISE_THAT_STOPS)
        .map(
            before ->
                "No more tasks in this sitting: pain has risen from "
                    + Wording.number(before)
                    + " to "
                    + Wording.number(now.get())
                    + ".");
  }

  private Optional<Double> lowest(Optional<Double> pain) {
    return pain.isPresent() && painBefore.isPresent()
        ? Optional.of(Math.min(pain.get(), painBefore.get()))
        : pain.or(() -> painBefore);
  }

  private static Optional<Double> pain(Answers answers) {
    return answers.answer(WellKnown.PAIN_NOW).flatMap(Checks::number);
  }

  private static Optional<Double> number(Answer answer) {
    return answer
        .given()
        .filter(v -> v instanceof Value.Number)
        .map(v -> ((Value.Number) v).value());
  }
}
