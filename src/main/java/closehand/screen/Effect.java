package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import java.util.List;

/** Something the program around the screen is asked to do. */
public sealed interface Effect {
  /** Keep the interview as it stands. */
  record Keep(Interview interview) implements Effect {}

  /**
   * Begin a new interview.
   *
   * @param sealed whether its case opens with a passphrase only, which is drawn now
   */
  record Begin(Provenance.By asker, Interview.Route route, boolean sealed) implements Effect {}

  /** Open a saved case. */
  record Open(String name) implements Effect {}

  /** Open the invented example, of which nothing is kept. */
  record Example() implements Effect {}

  /** Check the question bank and show what was found. */
  record CheckBank() implements Effect {}

  /** Write the pages of this interview to files now. */
  record WritePages(Interview interview) implements Effect {}

  /** Remove the case and everything kept of it, and leave. */
  record Delete() implements Effect {}

  /** Keep these settings for the next time. */
  record KeepSettings(Settings settings) implements Effect {}

  /**
   * Tell whoever follows that this was said to the interview.
   *
   * @param before the interview before
   * @param after the interview after, or with the refusal
   * @param why why the next question is asked, on the briefest route
   */
  record Sent(Message message, Interview before, Interview after, List<String> why)
      implements Effect {
    /** Copies the lines. */
    public Sent {
      why = List.copyOf(why);
    }
  }

  /** Tell whoever follows that the last change was taken back. */
  record Undone(Interview now) implements Effect {}

  /** Tell whoever follows that this was brought up to be read. */
  record Shown(Interview interview, Command command, List<String> lines) implements Effect {
    /** Copies the lines. */
    public Shown {
      lines = List.copyOf(lines);
    }
  }

  /** Close the screen. */
  record Leave(Ending ending) implements Effect {}

  /** How a run ended. */
  enum Ending {
    /** Every question on the route was put. */
    FINISHED,
    /** The person left; everything is kept. */
    LEFT,
    /** A stop ended the session. */
    STOPPED,
    /** Consent was not given or was taken back; nothing more is written. */
    NO_CONSENT,
    /** The case was deleted. */
    DELETED,
    /** The terminal is gone. */
    CLOSED
  }
}
