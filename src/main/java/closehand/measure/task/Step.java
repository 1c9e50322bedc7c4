package closehand.measure.task;

import closehand.interview.Value;
import java.util.Map;

/** Where a run stands. */
public sealed interface Step {
  /** It must wait; the setup says why. */
  record Refused() implements Step {}

  /** What is done and why; nothing has begun. */
  record Told() implements Step {}

  /** Somebody must say yes to the assurance of this number. */
  record Assured(int number) implements Step {}

  /** The answer was no; something comes first. */
  record First(int number) implements Step {}

  /** How the player sits or lies. */
  record Posture() implements Step {}

  /** What carries arm and feet. */
  record Support() implements Step {}

  /** Whether somebody counts or the keyboard does. */
  record Method() implements Step {}

  /** Rest that is still due. */
  record Resting(boolean early) implements Step {}

  /** Ready for a go. */
  record Ready(boolean practice) implements Step {}

  /**
   * A go is on.
   *
   * @param begunAt when it began
   * @param taps taps so far, where they are counted
   * @param key the key that is tapped, or empty
   */
  record Going(boolean practice, long begunAt, Taps taps, String key) implements Step {}

  /** Somebody stopped the go, and is asked why. */
  record Why(boolean practice) implements Step {}

  /** A spasm is waited for. */
  record Settling(boolean practice) implements Step {}

  /** The go does not count, and this is said. */
  record NotCounted(boolean practice, Spoilt cause) implements Step {}

  /** What was counted is written down, the measure of this number next. */
  record Counting(int number, Map<String, Value> values) implements Step {
    public Counting {
      values = Map.copyOf(values);
    }
  }

  /** Pain now. */
  record PainNow(boolean practice) implements Step {}

  /** Whether there is another go. */
  record Another() implements Step {}

  /** What is asked once at the end, the measure of this number next. */
  record Once(int number) implements Step {}

  /** The result in words. */
  record Result() implements Step {}

  /** It ended at once, for this reason. */
  record Stopped(String stop) implements Step {}

  /** It is over: nothing more is asked. */
  record Over() implements Step {}
}
