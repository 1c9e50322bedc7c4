package closehand.bank;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A small bodily task that a second person runs with the player: what is done, how it is counted,
 * and which answers come of it.
 *
 * @param id such as {@code T1}
 * @param place the part of the body it is done with, such as {@code L.T}; empty where there is only
 *     one way of doing it
 * @param words what is said about it
 * @param kinds which kinds of task it is; a hold on any of them keeps it waiting
 * @param forClinician whether only a clinician may run it
 * @param before what must hold besides what must hold before every task
 * @param go how one go is done
 * @param measures what is counted or seen
 * @param results the answers that come of it
 * @param readings what a result says to the player; the first that holds is said
 * @param basis sources, or words that say there is none
 * @param where where it stands in the bank
 */
public record Task(
    String id,
    String place,
    Words words,
    Set<TaskKind> kinds,
    boolean forClinician,
    List<Need> before,
    Go go,
    List<Measure> measures,
    List<Result> results,
    List<Reading> readings,
    List<String> basis,
    Where where) {
  public Task {
    kinds = Set.copyOf(kinds);
    before = List.copyOf(before);
    measures = List.copyOf(measures);
    results = List.copyOf(results);
    readings = List.copyOf(readings);
    basis = List.copyOf(basis);
  }

  /** The id with its place, such as {@code T1.L.T}. */
  public String key() {
    return place.isEmpty() ? id : id + "." + place;
  }

  /** The fact whose question asks for this task. */
  public String fact() {
    return results.get(0).fact();
  }

  /** What is counted under this id. */
  public Optional<Measure> measure(String measureId) {
    return measures.stream().filter(m -> m.id().equals(measureId)).findFirst();
  }

  /**
   * What is said about a task, to the player.
   *
   * @param name a few words
   * @param what what is done
   * @param why what it is good for
   * @param room how it is done in one room
   * @param video how it is done over a call
   * @param posture how to sit or lie, and what carries the arm
   */
  public record Words(
      String name, String what, String why, String room, String video, String posture) {}

  /**
   * Something that must hold before a task, or must not.
   *
   * @param when a condition over facts
   * @param wanted whether it must surely hold; if not, it must not surely hold
   * @param say why the task waits, in a plain sentence
   */
  public record Need(Condition when, boolean wanted, String say, Where where) {}

  /**
   * How one go is done.
   *
   * @param practice whether one go is practised first
   * @param most how many goes count at most, 1 to 3
   * @param seconds how long a go lasts; 0 if it ends when it is done
   * @param atMostSeconds how long a go is taken to last when time is kept
   * @param keys whether taps on a key of this machine can be counted, in the room
   * @param start what is said at the start of a go
   * @param stop what is said at its end
   */
  public record Go(
      boolean practice,
      int most,
      int seconds,
      int atMostSeconds,
      boolean keys,
      String start,
      String stop) {}

  /** What kind of thing is counted or seen. */
  public enum Kind {
    /** A whole number. */
    COUNT("count"),
    /** Yes or no. */
    YES_NO("yesNo"),
    /** One of several. */
    CHOICE("choice"),
    /** Any number out of a list. */
    SEVERAL("several"),
    /** By how much the second of two counts lies below the first, in percent; worked out. */
    DROP("drop");

    private final String code;

    Kind(String code) {
      this.code = code;
    }

    /** The word used in bank files. */
    public String code() {
      return code;
    }
  }

  /** Who or what counts. */
  public enum Counting {
    /** Somebody who watches. */
    EYE("eye"),
    /** Somebody with a watch. */
    WATCH("watch"),
    /** The player's own machine shows it. */
    MACHINE("machine"),
    /** The player says it. */
    ASKED("asked"),
    /** Worked out from the others. */
    WORKED_OUT("workedOut");

    private final String code;

    Counting(String code) {
      this.code = code;
    }

    /** The word used in bank files. */
    public String code() {
      return code;
    }
  }

  /** Which taps of a go on a key are meant. */
  public enum Taps {
    /** None: somebody counts. */
    NONE("none"),
    ALL("all"),
    /** Those of the first ten seconds. */
    FIRST_TEN_SECONDS("firstTenSeconds"),
    /** Those of the last ten seconds. */
    LAST_TEN_SECONDS("lastTenSeconds");

    private final String code;

    Taps(String code) {
      this.code = code;
    }

    /** The word used in bank files. */
    public String code() {
      return code;
    }
  }

  /**
   * One thing that is counted or seen.
   *
   * @param id its name inside the task
   * @param ask what the person who counts is asked
   * @param kind what kind of thing it is
   * @param counting who or what counts
   * @param eachGo whether it is written down after every go; if not, once at the end
   * @param minimum the smallest count
   * @param maximum the largest count
   * @param unit a word after the number, may be empty
   * @param options what can be picked
   * @param of the two counts a drop is worked out from
   * @param taps which taps of a go on a key it counts
   */
  public record Measure(
      String id,
      String ask,
      Kind kind,
      Counting counting,
      boolean eachGo,
      int minimum,
      int maximum,
      String unit,
      List<Choice> options,
      List<String> of,
      Taps taps,
      Where where) {
    public Measure {
      options = List.copyOf(options);
      of = List.copyOf(of);
    }
  }

  /** Something to pick. */
  public record Choice(String code, String words) {}

  /**
   * An answer that comes of a task.
   *
   * @param fact the fact it answers
   * @param measure the measure it is taken from; empty where {@code cases} say it
   * @param times what a count is multiplied by
   * @param cases the value by conditions over measures; the first that holds counts
   */
  public record Result(String fact, String measure, int times, List<Case> cases, Where where) {
    public Result {
      cases = List.copyOf(cases);
    }
  }

  /** A value where a condition over measures holds. */
  public record Case(Condition when, Condition.Operand value) {}

  /** A sentence where a condition over measures holds. */
  public record Reading(Condition when, String say) {}
}
