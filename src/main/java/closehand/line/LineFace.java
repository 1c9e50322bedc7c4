package closehand.line;

import closehand.interview.Answer;
import closehand.interview.Entry;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Prompt;
import closehand.interview.Provenance;
import closehand.interview.StillOpen;
import closehand.interview.Wording;
import closehand.report.Consultation;
import closehand.report.Desk;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Leads through an interview line by line: says the question, reads a line, says what came of it.
 *
 * <p>Nothing is printed over, nothing moves, nothing waits for speed. Every answer is kept before
 * the next question is said.
 */
public final class LineFace {
  private final Console console;
  private final Desk desk;
  private final Asides asides;
  private final Notices notices;
  private final Tasks tasks;
  private final Source source = new Source();
  private Interview interview;
  private Consultation consultation;
  private Optional<String> shownQuestion = Optional.empty();
  private boolean changed;
  private boolean answeringAgain;
  private boolean slipped;
  private List<String> saidWhy = List.of();
  private Optional<List<String>> enough = Optional.empty();

  /** How a run ended. */
  public enum Ending {
    /** Every question on the route was put. */
    FINISHED,
    /** The person left; everything is kept. */
    LEFT,
    /** A stop ended the session. */
    STOPPED,
    /** Consent was not given or was taken back; nothing more is written. */
    NO_CONSENT,
    /** Consent was not given or was taken back, and the case was deleted. */
    DELETED,
    /** The person goes on to practise, or to a trial of a set-up; everything is kept. */
    TO_PRACTICE,
    TO_TRIAL,
    /** The input ended before the questions did. */
    INPUT_ENDED,
    /** A line of a script could not be followed. */
    NOT_UNDERSTOOD
  }

  /** A face over an interview. */
  public LineFace(Console console, Desk desk, Interview interview) {
    this.console = console;
    this.desk = desk;
    this.notices = new Notices(console, desk.isKept());
    this.tasks = new Tasks(console, desk);
    this.asides = new Asides(console, desk, p -> tasks.forPrompt(p).isPresent());
    this.interview = interview;
    this.consultation = desk.consult(interview);
  }

  /** The interview as it stands. */
  public Interview interview() {
    return interview;
  }

  /**
   * Runs measured tasks only, with the questions that belong around them.
   *
   * @param key a task such as {@code T1.L.I} or {@code T1}; empty to choose
   */
  public Ending measure(String key) {
    tasks.measure(key);
    return run();
  }

  /** Runs until the interview ends or the person leaves. */
  public Ending run() {
    takeIn(false);
    steer();
    while (true) {
      if (enough.isPresent() && !goOn(enough.get())) {
        return finish();
      }
      Optional<Prompt> prompt = interview.current();
      if (notices.say(consultation, prompt) && !answeringAgain) {
        Optional<Ending> ending = afterStop();
        if (ending.isPresent()) {
          return ending.get();
        }
        prompt = interview.current();
      }
      if (notices.left()) {
        return Ending.LEFT;
      }
      boolean onlyTasks = tasks.isMeasuring();
      if (task(prompt)) {
        continue;
      }
      if (tasks.isDone(onlyTasks)) {
        return Ending.LEFT;
      }
      if (!slipped) {
        asides.passedOver(interview);
      }
      if (prompt.isEmpty()) {
        return finish();
      }
      if (!slipped) {
        say(prompt.get());
      }
      slipped = false;
      Optional<String> line = console.ask("> ");
      if (line.isEmpty()) {
        return Ending.INPUT_ENDED;
      }
      Optional<Ending> ending =
          follow(Typed.read(line.get(), Optional.of(prompt.get().field())), prompt.get());
      if (ending.isPresent()) {
        return ending.get();
      }
    }
  }

  /** Runs a task that is due, or takes up one that is wanted. */
  private boolean task(Optional<Prompt> prompt) {
    Optional<Message> next = tasks.next(interview, prompt);
    next.ifPresent(this::told);
    return next.isPresent();
  }

  private void told(Message message) {
    move(message);
    takeIn(false);
  }

  private Ending finish() {
    console.gap();
    console.say("That was the last question for now. Thank you.");
    if (interview.route() != Interview.Route.BRIEF) {
      asides.open(interview);
    }
    while (true) {
      console.say(
          "p shows the page, o all answers, j goes back to a question, f practises or tries something, q leaves"
              + (desk.isKept() ? " and keeps everything." : "."));
      Optional<String> line = console.ask("> ");
      if (line.isEmpty()) {
        return Ending.FINISHED;
      }
      Typed typed = Typed.read(line.get(), Optional.empty());
      if (typed instanceof Typed.Ask ask && ask.command() != Typed.Command.LEAVE) {
        Optional<Ending> ending = command(ask, Optional.empty());
        if (ending.isPresent() || interview.current().isPresent()) {
          return ending.orElseGet(this::run);
        }
      } else if (!(typed instanceof Typed.Nothing)) {
        return Ending.FINISHED;
      }
    }
  }

  private Optional<Ending> follow(Typed typed, Prompt prompt) {
    if (typed instanceof Typed.Nothing) {
      if (prompt.earlier().isPresent()) {
        send(new Message.Onward());
        interview.refusal().ifPresent(console::say);
      } else {
        asides.nothingTyped();
      }
      return Optional.empty();
    }
    if (typed instanceof Typed.Ask ask) {
      return command(ask, Optional.of(prompt));
    }
    return answer(((Typed.AnswerText) typed).text(), prompt);
  }

  private Optional<Ending> answer(String text, Prompt prompt) {
    Map<String, String> names = desk.names(interview, prompt.field());
    if (!names.isEmpty() && text.strip().equalsIgnoreCase("none")) {
      return absent(Answer.Reason.NOT_APPLICABLE, Optional.of(prompt));
    }
    Entry.Line read = Listed.read(prompt, text, names);
    if (read instanceof Entry.Line.NotRead refused) {
      slipped = !names.isEmpty();
      return refuse(refused.sentence());
    }
    List<Entry.Line.For> values = ((Entry.Line.Filled) read).values();
    for (Entry.Line.For value : values) {
      boolean current = interview.at().equals(Optional.of(value.fact()));
      Provenance provenance = source.of(interview.asker(), prompt.field());
      send(
          current
              ? new Message.Give(value.value(), provenance)
              : new Message.GiveFor(value.fact(), value.value(), provenance));
      if (interview.refusal().isPresent()) {
        return refuse(interview.refusal().get());
      }
    }
    asides.noted(prompt, values, names);
    takeIn(true);
    return Optional.empty();
  }

  private Optional<Ending> refuse(String sentence) {
    console.say(sentence);
    if (console.scripted()) {
      console.say("Line " + console.lineNumber() + " of the answers could not be followed.");
      return Optional.of(Ending.NOT_UNDERSTOOD);
    }
    return Optional.empty();
  }

  private Optional<Ending> command(Typed.Ask ask, Optional<Prompt> prompt) {
    switch (ask.command()) {
      case WHY -> prompt.ifPresent(asides::why);
      case BACK -> move(new Message.Back());
      case JUMP -> jump(ask.rest());
      case OVERVIEW -> asides.overview(interview, ask.rest());
      case UNKNOWN, DECLINE, NOT_APPLICABLE, LATER -> {
        return absent(ask.command().reason(), prompt);
      }
      case NOTE -> note(ask.rest());
      case TASK -> prompt.flatMap(p -> tasks.takeUp(interview, p)).ifPresent(this::told);
      case WHO -> source.ask(console);
      case SO_FAR -> console.lines(consultation.suggestions().lines());
      case EXPLAIN -> asides.explain(desk, interview, ask.rest());
      case PLAN -> asides.plan(desk, interview, ask.rest());
      case PAGE -> console.lines(desk.page(interview));
      case FIND_OUT -> {
        return FindingOut.ask(console);
      }
      case LOWER -> lower();
      case ASKER -> {
        Sitting.change(console, interview).ifPresent(this::send);
        takeIn(false);
      }
      case REPEAT -> shownQuestion = Optional.empty();
      case HELP -> asides.help();
      case LEAVE -> {
        return Optional.of(Ending.LEFT);
      }
    }
    return Optional.empty();
  }

  private void move(Message message) {
    send(message);
    interview.refusal().ifPresent(console::say);
    shownQuestion = Optional.empty();
  }

  private void jump(String rest) {
    Optional<String> place = rest.isEmpty() ? asides.askPlace(interview) : Optional.of(rest);
    place.flatMap(p -> asides.placeOf(interview, p)).ifPresent(id -> move(new Message.JumpTo(id)));
  }

  private Optional<Ending> absent(Answer.Reason reason, Optional<Prompt> prompt) {
    if (prompt.isEmpty()) {
      return Optional.empty();
    }
    send(new Message.NoAnswer(reason, source.of(interview.asker(), prompt.get().field())));
    if (interview.refusal().isPresent()) {
      return refuse(interview.refusal().get());
    }
    console.say("Noted: " + Wording.of(reason) + ".");
    takeIn(true);
    return Optional.empty();
  }

  private void note(String words) {
    Optional<String> text = words.isEmpty() ? console.ask("Your note: ") : Optional.of(words);
    text.ifPresent(t -> send(new Message.Note(t)));
    console.say(interview.refusal().orElse("Noted."));
    takeIn(false);
  }

  private void lower() {
    Lowering.ask(console, interview, consultation.lowerable(), desk.today())
        .ifPresent(
            lowered -> {
              send(new Message.Lower(lowered));
              console.say(
                  interview
                      .refusal()
                      .orElse("Lowered. The page will say so, with your name and reason."));
            });
    takeIn(true);
  }

  private void send(Message message) {
    interview = interview.after(message);
    changed = true;
    answeringAgain = false;
  }

  /** Keeps the answers, asks what they mean and says the quiet line. */
  private void takeIn(boolean aloud) {
    consultation = desk.consult(interview);
    if (!consultation.holds().equals(interview.held())) {
      interview = interview.after(new Message.Hold(consultation.holds()));
    }
    if (changed) {
      desk.keep(interview).forEach(console::say);
      changed = false;
    }
    if (aloud) {
      console.lines(consultation.quietLine());
      steer();
    }
  }

  /** On the briefest route: goes to the question that tells most and says why it is asked. */
  private void steer() {
    enough = Optional.empty();
    boolean between = interview.current().map(Prompt::firstOfQuestion).orElse(false);
    if (interview.route() != Interview.Route.BRIEF || !between || consultation.ends()) {
      return;
    }
    desk.next(interview)
        .ifPresent(
            next -> {
              if (next.question().isEmpty()) {
                enough = Optional.of(next.lines());
                return;
              }
              interview = interview.after(new Message.Steer(next.question().get()));
              if (interview.refusal().isEmpty() && !next.lines().equals(saidWhy)) {
                console.lines(next.lines());
                saidWhy = next.lines();
              }
            });
  }

  /** Enough is known: goes on with the short interview if that is wanted. */
  private boolean goOn(List<String> lines) {
    enough = Optional.empty();
    if (!asides.wantsMore(lines)) {
      return false;
    }
    send(new Message.TakeRoute(Interview.Route.CORE));
    interview.open().stream()
        .filter(o -> o.why() == StillOpen.Why.NOT_YET_ASKED)
        .findFirst()
        .ifPresent(o -> send(new Message.JumpTo(o.question().id())));
    return true;
  }

  /** After a stop that ends the session: ended, unless it was a slip or a clinician lowers it. */
  private Optional<Ending> afterStop() {
    boolean consent = notices.consentStands(consultation);
    while (true) {
      String typed = notices.wayOut(consultation);
      if (typed.isEmpty() || typed.equals("q")) {
        return Optional.of(consent ? Ending.NO_CONSENT : Ending.STOPPED);
      }
      if (consent && typed.equals("delete")) {
        desk.delete().forEach(console::say);
        return Optional.of(Ending.DELETED);
      }
      if (typed.equals("b")) {
        notices.question(consultation).ifPresent(fact -> send(new Message.JumpTo(fact)));
        answeringAgain = true;
        shownQuestion = Optional.empty();
        return Optional.empty();
      }
      if (typed.equals("a")) {
        Sitting.change(console, interview).ifPresent(this::send);
        takeIn(false);
      } else if (typed.equals("c") && notices.mayBeLowered(consultation)) {
        lower();
        if (!consultation.ends()) {
          return Optional.empty();
        }
      } else {
        console.say("That is none of these.");
      }
    }
  }

  private void say(Prompt prompt) {
    Map<String, String> names = desk.names(interview, prompt.field());
    if (shownQuestion.equals(Optional.of(prompt.question().id()))) {
      asides.field(prompt, names);
    } else {
      asides.question(prompt, names);
      shownQuestion = Optional.of(prompt.question().id());
    }
  }
}
