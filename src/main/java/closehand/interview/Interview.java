package closehand.interview;

import closehand.bank.Field;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.bank.TaskKind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One interview as it stands. Immutable: {@link #update} gives the next one.
 *
 * @param outline what can be asked, in order
 * @param answers everything answered, also what does not apply at the moment
 * @param route the short or the whole interview
 * @param asker who asks
 * @param held kinds of task that the rules put on hold
 * @param at the fact of the current field; nothing when nothing more is to be asked
 * @param halfTyped what was typed into fields and not given as their answer, by fact
 * @param sitting what is forgotten when the case is opened again
 * @param refusal why the last message changed nothing, in a plain sentence
 * @param passedOver fields passed over with the last message, and with a hold that followed it,
 *     since somebody else must ask them or a task must wait; each is named once in a sitting
 */
public record Interview(
    Outline outline,
    Answers answers,
    Route route,
    Provenance.By asker,
    Set<TaskKind> held,
    Optional<String> at,
    Map<String, String> halfTyped,
    Sitting sitting,
    Optional<String> refusal,
    List<StillOpen> passedOver) {
  public Interview {
    held = Set.copyOf(held);
    halfTyped = Collections.unmodifiableMap(new LinkedHashMap<>(halfTyped));
    passedOver = List.copyOf(passedOver);
  }

  /** How much is asked. */
  public enum Route {
    /** The short interview, with what earlier answers open. */
    CORE("core"),
    /** Everything, with trials and reviews at the end. */
    FULL("full"),
    /**
     * Warning signs, and then whatever somebody who knows the rules proposes, out of everything but
     * trials and reviews; without proposals in the order of the questionnaire.
     */
    BRIEF("brief");

    private final String code;

    Route(String code) {
      this.code = code;
    }

    /** The word used in files. */
    public String code() {
      return code;
    }

    /** The route with this code. */
    public static Optional<Route> of(String code) {
      for (Route route : values()) {
        if (route.code.equals(code)) {
          return Optional.of(route);
        }
      }
      return Optional.empty();
    }
  }

  /** A new interview at its first question. */
  public static Interview begin(Questionnaire questionnaire, Route route, Provenance.By asker) {
    return reopen(questionnaire, Answers.NONE, route, asker, Optional.empty());
  }

  /**
   * An interview with answers from before. Whoever goes on asking sends {@link Message.Resume}
   * first.
   *
   * @param at the fact of the field that was current, if known; it is kept where it still applies
   */
  public static Interview reopen(
      Questionnaire questionnaire,
      Answers answers,
      Route route,
      Provenance.By asker,
      Optional<String> at) {
    Interview start =
        new Interview(
            Outline.of(questionnaire),
            answers,
            route,
            asker,
            Set.of(),
            Optional.empty(),
            Map.of(),
            Sitting.NEW,
            Optional.empty(),
            List.of());
    return new Turn(start).open(at);
  }

  /** The interview after a message; the same with a refusal when the message cannot be followed. */
  public static Interview update(Interview interview, Message message) {
    return new Turn(interview).take(message);
  }

  /** The same as {@link #update}, to write one message after the other. */
  public Interview after(Message message) {
    return update(this, message);
  }

  /** What can be asked. */
  public Questionnaire questionnaire() {
    return outline.questionnaire();
  }

  /** The current question; nothing when nothing more is to be asked. */
  public Optional<Prompt> current() {
    return at.flatMap(outline::place).map(place -> Prompt.of(this, place));
  }

  /** Whether nothing more is to be asked; questions may still be open, see {@link #open}. */
  public boolean finished() {
    return at.isEmpty();
  }

  /** Everything open on this route, in order, each with the reason. */
  public List<StillOpen> open() {
    return new Walk(this).open();
  }

  /** What is open because only a clinician may ask it. */
  public List<StillOpen> leftForClinician() {
    return openFor(StillOpen.Why.FOR_CLINICIAN);
  }

  /** What is open because its task must wait; the field names the kind of task. */
  public List<StillOpen> heldBack() {
    return openFor(StillOpen.Why.HELD);
  }

  private List<StillOpen> openFor(StillOpen.Why why) {
    List<StillOpen> some = new ArrayList<>(open());
    some.removeIf(o -> o.why() != why);
    return some;
  }

  /** Why there are no more bodily tasks in this sitting, if so. */
  public Optional<String> tasksStopped() {
    return sitting.checks().stopped();
  }

  /**
   * The fact of the measured task that may be run now: it was taken up, the questions before it are
   * answered, and nothing holds it.
   */
  public Optional<String> taskDue() {
    Checks checks = sitting.checks();
    return checks.stage() == Checks.Stage.TASKS && tasksStopped().isEmpty()
        ? checks
            .taken()
            .filter(t -> at.equals(Optional.of(t.fact())))
            .filter(t -> java.util.Collections.disjoint(t.kinds(), held))
            .map(Checks.Taken::fact)
        : Optional.empty();
  }

  /** The questions asked again before and after bodily tasks, as far as they can be asked now. */
  public List<Field> askedAgain() {
    return new Walk(this)
        .askedAgain().stream()
            .flatMap(f -> outline.place(f).stream())
            .map(Outline.Place::field)
            .toList();
  }

  /** The tasks that were measured in this sitting. */
  public List<Measured> measured() {
    return sitting.measured();
  }

  /** The answers that apply. */
  public Answers effective() {
    return Enablement.of(outline, answers).effective();
  }

  /** The answers that are kept but do not apply at the moment. */
  public Answers setAside() {
    return Enablement.of(outline, answers).setAside();
  }

  /** How far the interview is. */
  public Progress progress() {
    return Progress.of(this);
  }

  /** How many questions of the route are answered in full. */
  public int answeredCount() {
    return progress().answered();
  }

  /** Every part with its answers and what is open. */
  public Overview overview() {
    return Overview.of(this);
  }

  /** What became of the fields of one question that have an answer or can be asked. */
  public List<Overview.Row> rows(Question question) {
    return Overview.of(this, question);
  }

  /**
   * The current field and those after it in its question that take the same kind of answer: what
   * one typed line can fill.
   */
  public List<Field> lineOfFields() {
    return current().map(Prompt::lineOfFields).orElse(List.of());
  }

  /** The field at which a case that is saved now should be opened again. */
  public Optional<String> bookmark() {
    Checks checks = sitting.checks();
    return checks.queue().isEmpty() ? at : checks.then();
  }

  Interview refusing(String sentence) {
    return copy(answers, at, sitting, Optional.of(sentence), List.of());
  }

  Interview quiet() {
    return copy(answers, at, sitting, Optional.empty(), List.of());
  }

  Interview with(Answers next) {
    return copy(next, at, sitting, refusal, passedOver);
  }

  Interview with(Sitting next) {
    return copy(answers, at, next, refusal, passedOver);
  }

  Interview with(Checks checks) {
    return with(sitting.with(checks));
  }

  Interview standingAt(Optional<String> fact) {
    return copy(answers, fact, sitting, refusal, passedOver);
  }

  Interview passingOver(List<StillOpen> over) {
    return copy(answers, at, sitting, refusal, over);
  }

  /** With this typed into a field and not given as its answer; nothing typed takes it away. */
  Interview halfTyping(String fact, String text) {
    Map<String, String> next = new LinkedHashMap<>(halfTyped);
    next.remove(fact);
    if (!text.isBlank()) {
      next.put(fact, text);
    }
    return halfTyping(next);
  }

  Interview halfTyping(Map<String, String> next) {
    return new Interview(
        outline, answers, route, asker, held, at, next, sitting, refusal, passedOver);
  }

  Interview holding(Set<TaskKind> kinds) {
    return new Interview(
        outline, answers, route, asker, kinds, at, halfTyped, sitting, refusal, passedOver);
  }

  Interview taking(Route next) {
    return new Interview(
        outline, answers, next, asker, held, at, halfTyped, sitting, refusal, passedOver);
  }

  Interview askedBy(Provenance.By next) {
    return new Interview(
        outline, answers, route, next, held, at, halfTyped, sitting, refusal, passedOver);
  }

  private Interview copy(
      Answers nextAnswers,
      Optional<String> nextAt,
      Sitting nextSitting,
      Optional<String> nextRefusal,
      List<StillOpen> nextOver) {
    return new Interview(
        outline,
        nextAnswers,
        route,
        asker,
        held,
        nextAt,
        halfTyped,
        nextSitting,
        nextRefusal,
        nextOver);
  }
}
