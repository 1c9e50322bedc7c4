package closehand.screen;

import closehand.bank.Field;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Prompt;
import closehand.interview.Provenance;
import closehand.report.Advisor;
import closehand.report.Announced;
import closehand.report.Consultation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The interview on the screen, with what belongs to it.
 *
 * @param advisor what the answers mean
 * @param interview the interview as it stands
 * @param prompt its current question, put together once
 * @param consultation what its answers mean
 * @param by who answers, where it was set
 * @param how how answers are known, where it was set
 * @param announced stops and cautions that were shown
 * @param again whether an answer behind a stop is being given again
 * @param then the field to return to once an answer is corrected
 * @param past the interview before each change, the latest last
 * @param trouble what went wrong with keeping it, in sentences
 */
record Talk(
    Advisor advisor,
    Interview interview,
    Optional<Prompt> prompt,
    Consultation consultation,
    Optional<Provenance.By> by,
    Optional<Provenance.How> how,
    Announced announced,
    boolean again,
    Optional<String> then,
    List<Interview> past,
    List<String> trouble) {
  Talk {
    past = List.copyOf(past);
    trouble = List.copyOf(trouble);
  }

  static Talk about(Advisor advisor, Interview interview) {
    Consultation consultation = advisor.consult(interview);
    return new Talk(
            advisor,
            interview,
            interview.current(),
            consultation,
            Optional.empty(),
            Optional.empty(),
            Announced.NOTHING,
            false,
            Optional.empty(),
            List.of(),
            List.of())
        .held();
  }

  /** What holds for an answer to this field; the player told it, and a task is measured. */
  Provenance source(Field field) {
    Provenance.How usual = field.task().isPresent() ? Provenance.How.MEASURED : Provenance.How.TOLD;
    return new Provenance(by.orElse(Provenance.By.PLAYER), how.orElse(usual), "");
  }

  /** After a message; the same with the interview's refusal where it was refused. */
  Talk after(Message message) {
    Interview next = interview.after(message);
    if (next.refusal().isPresent()) {
      return with(next, consultation, past);
    }
    List<Interview> longer = new ArrayList<>(past);
    longer.add(interview);
    if (message instanceof Message.EndTask) {
      // Nothing leads back into a task that has ended.
      longer.clear();
    }
    return with(next, advisor.consult(next), longer).answering(false).held();
  }

  /** With what was half typed kept; no change of its own, so nothing is there to take back. */
  Talk leaving(Message.HalfTyped typed) {
    return with(interview.after(typed), consultation, past);
  }

  /** What takes up the task that answers the question in sight, if there is one. */
  Optional<Message> task() {
    return prompt
        .flatMap(p -> advisor.taskBook().flatMap(book -> book.taskFor(p.field().fact())))
        .flatMap(t -> advisor.tasks().map(gate -> gate.takeUp(interview, t)));
  }

  /** At the question that tells most; the same where it cannot be asked now. */
  Talk steered(String question) {
    Interview next = interview.after(new Message.Steer(question));
    return next.refusal().isPresent() ? this : with(next, consultation, past);
  }

  /** As before the last change; the same where there was none. */
  Talk undone() {
    if (past.isEmpty()) {
      return this;
    }
    Interview before = past.get(past.size() - 1);
    return with(before, advisor.consult(before), past.subList(0, past.size() - 1))
        .answering(false)
        .returning(Optional.empty())
        .held();
  }

  /** Holds that follow from the answers are passed on to the interview. */
  private Talk held() {
    return consultation.holds().equals(interview.held())
        ? this
        : with(interview.after(new Message.Hold(consultation.holds())), consultation, past);
  }

  private Talk with(Interview next, Consultation meaning, List<Interview> before) {
    return new Talk(
        advisor, next, next.current(), meaning, by, how, announced, again, then, before, trouble);
  }

  Talk answering(boolean on) {
    return new Talk(
        advisor, interview, prompt, consultation, by, how, announced, on, then, past, trouble);
  }

  /** With a field to return to once an answer is corrected, or none. */
  Talk returning(Optional<String> fact) {
    return new Talk(
        advisor, interview, prompt, consultation, by, how, announced, again, fact, past, trouble);
  }

  /** Back where somebody was before correcting an answer; the same where that cannot be asked. */
  Talk returned() {
    Talk free = returning(Optional.empty());
    if (then.isEmpty()) {
      return free;
    }
    Interview there = interview.after(new Message.JumpTo(then.get()));
    return there.refusal().isPresent() ? free : free.with(there, consultation, past);
  }

  Talk hearing(Announced next) {
    return new Talk(
        advisor, interview, prompt, consultation, by, how, next, again, then, past, trouble);
  }

  Talk from(Optional<Provenance.By> person, Optional<Provenance.How> way) {
    return new Talk(
        advisor,
        interview,
        prompt,
        consultation,
        person.or(() -> by),
        way.or(() -> how),
        announced,
        again,
        then,
        past,
        trouble);
  }

  Talk troubled(List<String> sentences) {
    return new Talk(
        advisor, interview, prompt, consultation, by, how, announced, again, then, past, sentences);
  }
}
