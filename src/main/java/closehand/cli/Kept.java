package closehand.cli;

import closehand.interview.Interview;
import closehand.interview.Measured;
import closehand.measure.practice.PracticeRecord;
import closehand.plan.PlanChanges;
import closehand.report.Diary;
import closehand.strain.OwnLimits;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Where one case is kept. */
interface Kept {
  /** The pseudonym it goes by. */
  String name();

  /** Keeps the interview as it stands, in place of what was kept before. */
  void save(Interview interview) throws IOException;

  /** Why the last save failed, where saves are not waited for; nothing where it did not. */
  default Optional<IOException> unsaved() {
    return Optional.empty();
  }

  /** Whether anything is kept at all. */
  default boolean isKept() {
    return true;
  }

  /** Every task of the case that was measured, as far as it is kept. */
  default List<Measured> measured() {
    return List.of();
  }

  /** What was done with the case on which day, as far as it is kept. */
  default Diary diary() {
    return Diary.EMPTY;
  }

  /** What the player changed by hand in the games and their plans. */
  default PlanChanges changes() {
    return PlanChanges.NONE;
  }

  /** Keeps these changes by hand, in place of those before, the next time the case is saved. */
  default void change(PlanChanges changes) {}

  /** What was said about the body that no question asks. */
  default OwnLimits limits() {
    return OwnLimits.NONE;
  }

  /** Practice runs of the case, the oldest first. */
  default List<PracticeRecord> practised() {
    return List.of();
  }

  /** Why it could not be kept, in a plain sentence. */
  String trouble(IOException e);

  /** Removes the case and its pages. */
  void delete() throws IOException;
}
