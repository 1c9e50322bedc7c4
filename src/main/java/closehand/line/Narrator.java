package closehand.line;

import closehand.interview.Entry;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Prompt;
import closehand.interview.Wording;
import closehand.report.Advisor;
import closehand.report.Consultation;
import java.util.List;
import java.util.Optional;

/**
 * Says in the words of the line face what happens to an interview that is held on another face, for
 * speech or braille to follow. Only what the line face asks for in between is left out.
 */
public final class Narrator {
  private final Console console;
  private final Advisor advisor;
  private final Asides asides;
  private final Notices notices;
  private Optional<String> shownQuestion = Optional.empty();

  /** A narrator that says everything on this console. */
  public Narrator(Console console, Advisor advisor) {
    this.console = console;
    this.advisor = advisor;
    this.asides = new Asides(console, advisor);
    this.notices = new Notices(console, advisor.isKept());
  }

  /** The interview begins, or goes on after a break. */
  public void begin(Interview interview) {
    say(interview, advisor.consult(interview));
  }

  /**
   * Something was said to the interview.
   *
   * @param message what
   * @param before the interview before
   * @param after the interview after, or with the refusal
   * @param why why the next question is asked, on the briefest route
   */
  public void sent(Message message, Interview before, Interview after, List<String> why) {
    Consultation consultation = advisor.consult(after);
    if (after.refusal().isPresent()) {
      console.say(after.refusal().get());
    } else if (came(message, before)) {
      console.lines(consultation.quietLine());
      console.lines(why);
    }
    if (message instanceof Message.Back || message instanceof Message.JumpTo) {
      shownQuestion = Optional.empty();
    }
    say(after, consultation);
  }

  /** Says what came of a message; tells whether it can change what the answers point to. */
  private boolean came(Message message, Interview before) {
    if (message instanceof Message.Give give && before.current().isPresent()) {
      Prompt prompt = before.current().get();
      asides.noted(
          prompt,
          List.of(new Entry.Line.For(prompt.field().fact(), give.value())),
          advisor.names(before, prompt.field()));
      return true;
    }
    if (message instanceof Message.NoAnswer none) {
      console.say("Noted: " + Wording.of(none.reason()) + ".");
      return true;
    }
    if (message instanceof Message.Lower) {
      console.say("Lowered. The page will say so, with your name and reason.");
      return true;
    }
    if (message instanceof Message.Note) {
      console.say("Noted.");
    }
    return false;
  }

  /** The last change was taken back. */
  public void undone(Interview now) {
    console.say("Taken back.");
    shownQuestion = Optional.empty();
    say(now, advisor.consult(now));
  }

  /** Why the question is asked, and what can be done. */
  public void helped(Interview interview) {
    Consultation consultation = advisor.consult(interview);
    if (interview.current().isPresent()) {
      asides.why(interview.current().get());
      say(interview, consultation);
    }
    asides.help();
    say(interview, consultation);
  }

  /** All answers, part by part. */
  public void overview(Interview interview) {
    asides.overview(interview, "");
    say(interview, advisor.consult(interview));
  }

  /** Something was read, such as the page. */
  public void read(Interview interview, List<String> lines) {
    console.lines(lines);
    say(interview, advisor.consult(interview));
  }

  private void say(Interview interview, Consultation consultation) {
    Optional<Prompt> prompt = interview.current();
    if (notices.say(consultation, prompt)) {
      return;
    }
    asides.passedOver(interview);
    if (prompt.isEmpty()) {
      console.gap();
      console.say("That was the last question for now. Thank you.");
      if (interview.route() != Interview.Route.BRIEF) {
        asides.open(interview);
      }
      return;
    }
    question(interview, prompt.get());
  }

  private void question(Interview interview, Prompt prompt) {
    var names = advisor.names(interview, prompt.field());
    if (shownQuestion.equals(Optional.of(prompt.question().id()))) {
      asides.field(prompt, names);
    } else {
      asides.question(prompt, names);
      shownQuestion = Optional.of(prompt.question().id());
    }
  }
}
