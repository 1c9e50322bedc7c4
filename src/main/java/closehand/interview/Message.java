package closehand.interview;

import closehand.bank.TaskKind;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Something that happens to an interview. */
public sealed interface Message {
  /** A value for the current field. */
  record Give(Value value, Provenance provenance) implements Message {}

  /** No value for the current field, for a reason. */
  record NoAnswer(Answer.Reason reason, Provenance provenance) implements Message {}

  /** A value for a field that need not be the current one; a line that fills several fields. */
  record GiveFor(String fact, Value value, Provenance provenance) implements Message {}

  /**
   * A remark beside the current field's answer, or beside the one just given; empty takes it off.
   */
  record Note(String text) implements Message {}

  /**
   * A field was left with something typed that was not given as its answer; it is kept until the
   * field is answered. Nothing typed, or only spaces, keeps nothing.
   */
  record HalfTyped(String fact, String text) implements Message {}

  /** To the field shown before. */
  record Back() implements Message {}

  /** To a question or a field, by its id. */
  record JumpTo(String id) implements Message {}

  /** Onward without answering; what was answered stays answered. */
  record Onward() implements Message {}

  /** What the rules put on hold at the moment; replaces the hold before. */
  record Hold(Set<TaskKind> kinds) implements Message {
    public Hold {
      kinds = Set.copyOf(kinds);
    }
  }

  /** The short or the whole interview from here on. */
  record TakeRoute(Interview.Route route) implements Message {}

  /**
   * To a question that tells more than the next one in order; what lies between is not passed.
   *
   * @param question the id of a question, or of a field
   */
  record Steer(String question) implements Message {}

  /** Who asks from here on. */
  record Conduct(Provenance.By asker) implements Message {}

  /** A stop is lowered; only a clinician may. */
  record Lower(Answers.Lowered lowered) implements Message {}

  /**
   * A measured task is taken up: the questions before tasks come first, also where the task's
   * question can be answered in words too.
   *
   * @param fact the fact it answers first of all
   * @param kinds which kinds of task it is
   * @param forClinician whether only a clinician may run it
   * @param reason whole sentences to say why, should tasks of its kind be on hold; may be empty
   */
  record TakeUpTask(String fact, Set<TaskKind> kinds, boolean forClinician, String reason)
      implements Message {
    public TakeUpTask {
      kinds = Set.copyOf(kinds);
    }

    /** One for which no reason of a hold is known. */
    public TakeUpTask(String fact, Set<TaskKind> kinds, boolean forClinician) {
      this(fact, kinds, forClinician, "");
    }
  }

  /**
   * The task that was taken up has ended; the questions after tasks come next.
   *
   * @param measured how it went
   * @param results the answers that came of it, by fact; none where it was stopped
   * @param note what stands beside each answer
   * @param noMoreTasks why no other task may follow in this sitting, if so
   */
  record EndTask(
      Measured measured, Map<String, Value> results, String note, Optional<String> noMoreTasks)
      implements Message {
    public EndTask {
      results = Map.copyOf(results);
    }
  }

  /** A saved case is opened again: a new sitting begins, and consent is asked again first. */
  record Resume() implements Message {}

  /**
   * A saved case is opened for a review: a new sitting begins, in which consent, what has changed,
   * the warning signs and pain are asked again, and nothing else that is answered.
   */
  record Review() implements Message {}
}
