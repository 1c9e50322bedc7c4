package closehand.strain;

import java.util.ArrayList;
import java.util.List;

/**
 * One session of play with its pauses: never longer than this person's own comfortable time, never
 * longer next time by plan.
 *
 * @param playMinutes minutes of play in all
 * @param steps play and pauses in order; it ends with play
 * @param restMinutes rest afterwards, at least
 * @param reasons a reason for every number
 */
public record SessionPlan(
    int playMinutes, List<Step> steps, int restMinutes, List<Reason> reasons) {
  public SessionPlan {
    steps = List.copyOf(steps);
    reasons = List.copyOf(reasons);
  }

  /** A stretch of a session. */
  public sealed interface Step {
    /** Play. */
    record Play(int minutes) implements Step {}

    /** Hands off everything. */
    record HandsOff(int seconds) implements Step {}

    /** A longer break away from the controls. */
    record Break(int minutes) implements Step {}
  }

  /**
   * Why a number is what it is.
   *
   * @param number the number with its unit, as it stands in the plan
   * @param because a plain sentence without its full stop, spoken to the player
   * @param basis a source, "common practice, no source", or whose choice it is
   */
  public record Reason(String number, String because, String basis) {}

  /**
   * Minutes of play between two small pauses, at most: our choice, shorter than the 20 minutes of
   * McLean et al. 2001.
   */
  static final int SMALL_PAUSE_AFTER = 15;

  /** Minutes of play before a longer break, at most. */
  static final int BREAK_AFTER = 50;

  /** Length of a small pause. */
  static final int HANDS_OFF_SECONDS = 30;

  /** Length of a longer break: the longer end of 5 to 10 minutes. */
  static final int BREAK_MINUTES = 10;

  /** The session for a person. */
  public static SessionPlan of(Pace pace) {
    List<Reason> reasons = new ArrayList<>();
    int minutes = SessionLength.minutes(pace, reasons);
    int small = PauseReasons.smallPauseAfter(pace);
    int large = pace.halved() ? BREAK_AFTER / 2 : BREAK_AFTER;
    List<Step> steps = new ArrayList<>();
    for (int stretch : evenly(minutes, large)) {
      if (!steps.isEmpty()) {
        steps.add(new Step.Break(BREAK_MINUTES));
      }
      boolean first = true;
      for (int piece : evenly(stretch, small)) {
        if (!first) {
          steps.add(new Step.HandsOff(HANDS_OFF_SECONDS));
        }
        steps.add(new Step.Play(piece));
        first = false;
      }
    }
    PauseReasons.add(pace, steps, reasons);
    int rest = SessionLength.rest(pace, minutes, reasons);
    return new SessionPlan(minutes, steps, rest, reasons);
  }

  /** Whole minutes in parts of at most {@code most}, as even as can be, longer ones first. */
  private static List<Integer> evenly(int minutes, int most) {
    int count = (minutes + most - 1) / most;
    List<Integer> parts = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      parts.add(minutes / count + (i < minutes % count ? 1 : 0));
    }
    return parts;
  }
}
