package closehand.bank;

import java.util.List;
import java.util.Optional;

/**
 * The measured tasks of a bank, and what holds for all of them.
 *
 * @param limits how much may be asked of a player
 * @param before what must hold before every task
 * @param assurances what somebody must say yes to, right before
 * @param postures how the player can sit or lie
 * @param supports what can carry arms and feet
 * @param stops what ends a task at once
 * @param tasks every task, made out for each side, digit or site
 * @param basis sources, or words that say there is none
 * @param where where it stands in the bank
 */
public record TaskBook(
    Limits limits,
    List<Task.Need> before,
    List<Assurance> assurances,
    List<Task.Choice> postures,
    List<Task.Choice> supports,
    Stops stops,
    List<Task> tasks,
    List<String> basis,
    Where where) {
  public TaskBook {
    before = List.copyOf(before);
    assurances = List.copyOf(assurances);
    postures = List.copyOf(postures);
    supports = List.copyOf(supports);
    tasks = List.copyOf(tasks);
    basis = List.copyOf(basis);
  }

  /**
   * How much may be asked of a player.
   *
   * @param timedSecondsADay timed work on one day
   * @param restSeconds rest between two tasks
   * @param longRestSeconds rest between two tasks where {@code longRestWhen} holds
   * @param longRestWhen a condition over facts
   * @param tasksADay tasks on one day where {@code fewTasksWhen} may hold
   * @param fewTasksWhen a condition over facts; open counts as holding
   * @param digitsAHand digits of one hand on one day
   * @param failedInARow goes without a count, one after the other, that end a task
   * @param spasmSeconds how long a spasm is waited for
   * @param painRise a rise in pain that ends a task, in points of 10
   * @param painAt pain that ends a task, in points of 10
   * @param quietWhen where no time is shown, a condition over facts
   */
  public record Limits(
      int timedSecondsADay,
      int restSeconds,
      int longRestSeconds,
      Condition longRestWhen,
      int tasksADay,
      Condition fewTasksWhen,
      int digitsAHand,
      int failedInARow,
      int spasmSeconds,
      int painRise,
      int painAt,
      Condition quietWhen) {}

  /**
   * Something that somebody must say yes to before a task begins.
   *
   * @param ask the question
   * @param otherwise what to do first, where the answer is no
   * @param onCallOnly whether it is asked over a call only
   */
  public record Assurance(String ask, String otherwise, boolean onCallOnly) {}

  /**
   * Something that ends a task at once.
   *
   * @param sign which of the ten it is
   * @param words what was noticed, a few words
   * @param then what to do now, whole sentences
   * @param endsTasks whether no other task may follow in this sitting
   * @param waits whether it is waited for first, and ends the task only if it stays or comes back
   */
  public record Stop(
      StopSign sign,
      String words,
      List<String> then,
      boolean endsTasks,
      boolean waits,
      Where where) {
    public Stop {
      then = List.copyOf(then);
    }

    /** Its name in files. */
    public String id() {
      return sign.code();
    }
  }

  /** The task with this id and place. */
  public Optional<Task> task(String key) {
    return tasks.stream().filter(t -> t.key().equals(key)).findFirst();
  }

  /** The task that answers this fact, before others the one that answers it first of all. */
  public Optional<Task> taskFor(String fact) {
    return tasks.stream()
        .filter(t -> t.fact().equals(fact))
        .findFirst()
        .or(
            () ->
                tasks.stream()
                    .filter(t -> t.results().stream().anyMatch(r -> r.fact().equals(fact)))
                    .findFirst());
  }

  /** What ends a task under this name, also one that older cases have. */
  public Optional<Stop> stop(String id) {
    return stops.named(id);
  }
}
