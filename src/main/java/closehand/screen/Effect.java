package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.report.ByHand;
import java.util.List;

/** Something the program around the screen is asked to do. */
public sealed interface Effect {
  /** Keep the interview as it stands. */
  record Keep(Interview interview) implements Effect {}

  /**
   * Begin a new interview.
   *
   * @param sealing how its case is kept
   */
  record Begin(Provenance.By asker, Interview.Route route, Sealing sealing) implements Effect {}

  /** Look a saved case up, to say what can be done with it. */
  record Open(String name) implements Effect {}

  /** Put the case that was found back unchanged. */
  record PutBack() implements Effect {}

  /** Do this with the case that was found. */
  record Take(Wish wish) implements Effect {}

  /** Seal the case that was found from now on, and go on with it. */
  record Seal(Sealing sealing) implements Effect {}

  /** These characters of a passphrase were typed. */
  record SecretTyped(String characters) implements Effect {
    @Override
    public String toString() {
      return "SecretTyped";
    }
  }

  /** The last character of the passphrase is taken back. */
  record SecretShortened() implements Effect {}

  /** The passphrase is typed to its end. */
  record SecretTaken() implements Effect {}

  /** What was typed of a passphrase is forgotten. */
  record SecretForgotten() implements Effect {}

  /**
   * Work out the control plan and show it.
   *
   * @param load whether what it asks of the body is wanted in full instead
   */
  record WorkOutPlan(Interview interview, boolean load) implements Effect {}

  /** Begin to change the control plan by hand. */
  record BeginByHand(Interview interview) implements Effect {}

  /**
   * Go on changing the control plan by hand.
   *
   * @param at where that stands
   * @param digit the choice; not looked at where a line was typed
   * @param typed the line, or empty
   */
  record ChangeByHand(ByHand at, int digit, String typed) implements Effect {}

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

  /**
   * Tell whoever follows that something came up outside the questions, such as the start.
   *
   * @param parts what stands there, from the top
   */
  record Came(List<Part> parts) implements Effect {
    /** Copies the parts. */
    public Came {
      parts = List.copyOf(parts);
    }

    /** A paragraph, or with a mark a line that can be taken. */
    public record Part(String mark, String text) {}
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
    /** The person goes on to practise the plan; everything is kept. */
    TO_PRACTICE,
    /** The person goes on to a trial of a set-up; everything is kept. */
    TO_TRIAL,
    /** The terminal is gone. */
    CLOSED
  }
}
