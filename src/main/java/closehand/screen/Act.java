package closehand.screen;

import closehand.interview.Answer;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.interview.Value;
import java.util.Optional;

/** What happens when somebody takes an offer. */
sealed interface Act {
  /** A value for the current field. */
  record Give(Value value) implements Act {}

  /** No value for the current field, for a reason. */
  record Absent(Answer.Reason reason) implements Act {}

  /** A message to the interview; the question comes up again. */
  record Send(Message message) implements Act {}

  /** An answer that stop signs hang on is given again; the stop is not shown until it is. */
  record AnswerAgain(String fact) implements Act {}

  /** An answer is corrected out of the list of all; then it goes on where it was. */
  record Correct(String fact) implements Act {}

  /** A screen on top. */
  record Show(Screen screen) implements Act {}

  /** Another screen in place of the top, at its start. */
  record Swap(Screen screen) implements Act {}

  /** Another screen in place of the top, with the cursor where it is. */
  record Turn(Screen screen) implements Act {}

  /** The top screen closes. */
  record Close() implements Act {}

  /** Everything closes but the question. */
  record Return() implements Act {}

  /** On with the short interview after the briefest. */
  record GoOn() implements Act {}

  /** Takes back the last change. */
  record Undo() implements Act {}

  /** Other settings. */
  record Adjust(Settings settings) implements Act {}

  /** Who answers from here on and how it is known; what is not named stays. */
  record Source(Optional<Provenance.By> by, Optional<Provenance.How> how) implements Act {}

  /** Something outside. */
  record Run(Effect effect) implements Act {}

  /** One after the other: an act, and something outside. */
  record Also(Act first, Effect then) implements Act {}

  /** What a command does. */
  record Do(Command command) implements Act {}

  /** Why the control with this id stands as it does. */
  record Explain(String id) implements Act {}

  /** The typed line is taken. */
  record Accept() implements Act {}

  /** Nothing but a sentence. */
  record Say(String sentence) implements Act {}
}
