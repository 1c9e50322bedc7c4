package closehand.measure.practice;

import java.util.List;

/**
 * One prompt: an action, or two to be pressed one right after the other.
 *
 * @param actions one or two action ids
 */
public record Cue(List<String> actions) {
  /** Copies the list. */
  public Cue {
    actions = List.copyOf(actions);
  }

  /** A prompt for one action. */
  public static Cue of(String action) {
    return new Cue(List.of(action));
  }
}
