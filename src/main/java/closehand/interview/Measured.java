package closehand.interview;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A measured task as it went, kept for good.
 *
 * @param at when it ended, as an ISO date and time with zone; empty until it is kept
 * @param task the task's id
 * @param place the part of the body it was done with, or empty
 * @param by who ran it
 * @param circumstances where and how the player sat or lay
 * @param keys whether taps on a key of this machine were counted
 * @param goes every go, also practice and those that do not count
 * @param timedSeconds timed work, practice with it
 * @param ending how it ended
 * @param stop what ended it, where it was stopped; or empty
 * @param facts the facts it answered
 */
public record Measured(
    String at,
    String task,
    String place,
    Provenance.By by,
    Circumstances circumstances,
    boolean keys,
    List<Go> goes,
    int timedSeconds,
    Ending ending,
    String stop,
    List<String> facts) {
  public Measured {
    goes = List.copyOf(goes);
    facts = List.copyOf(facts);
  }

  /**
   * Where and how.
   *
   * @param setting {@code room} or {@code video}
   * @param posture a code of the bank
   * @param support a code of the bank
   * @param partOfDay such as {@code morning}
   * @param minutesIn minutes since the sitting began
   */
  public record Circumstances(
      String setting, String posture, String support, String partOfDay, int minutesIn) {}

  /**
   * One go.
   *
   * @param practice whether it was for practice
   * @param discarded why it does not count; empty if it does
   * @param values what was counted or seen
   */
  public record Go(boolean practice, String discarded, Map<String, Value> values) {
    public Go {
      Map<String, Value> asInFiles = new LinkedHashMap<>();
      values.forEach(
          (id, value) ->
              Event.asInFiles(new Answer.Given(value))
                  .given()
                  .ifPresent(v -> asInFiles.put(id, v)));
      values = java.util.Collections.unmodifiableMap(asInFiles);
    }

    /** Whether it is one of those a result is made of. */
    public boolean counts() {
      return !practice && discarded.isEmpty();
    }
  }

  /** How a task ended. */
  public enum Ending {
    /** With a result. */
    DONE("done"),
    /** Something ended it at once; it is not done again that day. */
    STOPPED("stopped"),
    /** It was left without a result. */
    LEFT("left");

    private final String code;

    Ending(String code) {
      this.code = code;
    }

    /** The word used in files. */
    public String code() {
      return code;
    }

    /** The ending with this code. */
    public static Optional<Ending> of(String code) {
      for (Ending ending : values()) {
        if (ending.code.equals(code)) {
          return Optional.of(ending);
        }
      }
      return Optional.empty();
    }
  }

  /** The same, ended at this moment. */
  public Measured at(String moment) {
    return new Measured(
        moment, task, place, by, circumstances, keys, goes, timedSeconds, ending, stop, facts);
  }

  /** Whether it was on this day. */
  public boolean isOn(String isoDate) {
    return at.startsWith(isoDate);
  }

  /** Those of some that were on this day. */
  public static List<Measured> on(List<Measured> some, String isoDate) {
    List<Measured> today = new ArrayList<>(some);
    today.removeIf(m -> !m.isOn(isoDate));
    return today;
  }
}
