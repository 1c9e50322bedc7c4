package closehand.report;

import closehand.bank.TaskKind;
import java.util.List;
import java.util.Set;

/**
 * What a face needs to know after each answer, already in words.
 *
 * @param quietLine what the answers so far point to and what is still open
 * @param holds kinds of task that must wait
 * @param notices stops that stand, strongest first
 * @param suggestions the suggestions as they stand, in full
 */
public record Consultation(
    List<String> quietLine, Set<TaskKind> holds, List<Notice> notices, Text suggestions) {
  public Consultation {
    quietLine = List.copyOf(quietLine);
    holds = Set.copyOf(holds);
    notices = List.copyOf(notices);
  }

  /** Text that is only put together when somebody wants to read it. */
  @FunctionalInterface
  public interface Text {
    /** The lines, ready to print. */
    List<String> lines();
  }

  /**
   * A stop that stands.
   *
   * @param code the caution's code
   * @param title a few words
   * @param endsSession whether nothing may go on after it
   * @param lowerable whether a clinician may lower it
   * @param lines the whole notice, ready to print
   */
  public record Notice(
      String code, String title, boolean endsSession, boolean lowerable, List<String> lines) {
    public Notice {
      lines = List.copyOf(lines);
    }
  }
}
