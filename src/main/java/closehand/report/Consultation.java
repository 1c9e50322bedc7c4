package closehand.report;

import closehand.bank.TaskKind;
import java.util.List;
import java.util.Set;

/**
 * What a face needs to know after each answer, already in words.
 *
 * @param quietLine what the answers so far point to and what is still open
 * @param holds kinds of task that must wait
 * @param notices stops that stand, strongest first, then other cautions of the class CARE
 * @param lowerable cautions that stand and that a clinician may lower
 * @param suggestions the suggestions as they stand, in full
 */
public record Consultation(
    List<String> quietLine,
    Set<TaskKind> holds,
    List<Notice> notices,
    List<Lowerable> lowerable,
    Text suggestions) {
  public Consultation {
    quietLine = List.copyOf(quietLine);
    holds = Set.copyOf(holds);
    notices = List.copyOf(notices);
    lowerable = List.copyOf(lowerable);
  }

  /** Whether a stop that stands ends the session. */
  public boolean ends() {
    return notices.stream().anyMatch(Notice::endsSession);
  }

  /** Whether a clinician may lower this notice. */
  public boolean mayBeLowered(Notice notice) {
    return lowerable.stream().anyMatch(l -> l.code().equals(notice.code()));
  }

  /** A caution that a clinician may lower, and its name in a few words. */
  public record Lowerable(String code, String title) {}

  /** Text that is only put together when somebody wants to read it. */
  @FunctionalInterface
  public interface Text {
    /** The lines, ready to print. */
    List<String> lines();
  }

  /**
   * A stop or caution that stands.
   *
   * @param code the caution's code
   * @param title a few words
   * @param stops whether it is a stop
   * @param endsSession whether nothing may go on after it
   * @param contact whom to ask or call
   * @param facts the facts it rests on
   * @param lines the whole notice, ready to print
   */
  public record Notice(
      String code,
      String title,
      boolean stops,
      boolean endsSession,
      String contact,
      List<String> facts,
      List<String> lines) {
    public Notice {
      facts = List.copyOf(facts);
      lines = List.copyOf(lines);
    }

    /** A notice that names nobody to ask beside its lines. */
    public Notice(
        String code,
        String title,
        boolean stops,
        boolean endsSession,
        List<String> facts,
        List<String> lines) {
      this(code, title, stops, endsSession, "", facts, lines);
    }
  }
}
