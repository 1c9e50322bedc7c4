package closehand.screen.practice;

import closehand.measure.practice.ButtonCheck;
import closehand.measure.practice.PracticeRun;
import closehand.measure.practice.Signal;
import java.util.Map;

/** Where somebody is in practice. */
sealed interface Phase {
  /** What is to be read first. */
  record First() implements Phase {}

  /** An input is to be pressed. */
  record Checking(ButtonCheck check) implements Phase {}

  /** The check is paused. */
  record CheckPaused(ButtonCheck check) implements Phase {}

  /**
   * Asked why the check is to be stopped.
   *
   * @param body whether the list of signs of the body is shown
   */
  record CheckStopping(ButtonCheck check, boolean body) implements Phase {}

  /** The check is over. */
  record Checked(ButtonCheck check) implements Phase {}

  /** Rounds. */
  record Running(Map<String, Signal> signals, PracticeRun run) implements Phase {}

  /**
   * Asked why it was paused or is to be stopped.
   *
   * @param body whether the list of signs of the body is shown
   */
  record Stopping(Map<String, Signal> signals, PracticeRun run, boolean body) implements Phase {}

  /** What came of it. */
  record Told(PracticeRun run, PracticeDesk.Outcome outcome) implements Phase {}

  /** Over. */
  record Left() implements Phase {}
}
