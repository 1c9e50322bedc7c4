package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.Field;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.CaseRecord;
import closehand.interview.Event;
import closehand.interview.History;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import closehand.interview.Value;
import closehand.interview.WellKnown;
import closehand.json.CaseDocument;
import closehand.measure.before.Before;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The questions asked anew before practice or a trial of one case, and its answers after them. */
final class Anew {
  private final Bank bank;
  private final Interview interview;
  private final String now;

  /**
   * For one sitting.
   *
   * @param now this moment, as an ISO date and time with zone
   */
  Anew(Bank bank, Interview interview, String now) {
    this.bank = bank;
    this.interview = interview;
    this.now = now;
  }

  /** For answers that belong to no saved case. */
  static Interview interview(Bank bank, Answers answers) {
    return Interview.reopen(
        bank.questionnaire(),
        answers,
        Interview.Route.CORE,
        Provenance.By.VOLUNTEER,
        Optional.empty());
  }

  /** What is asked; only for a bank with tasks. */
  Before before() {
    boolean room =
        interview
            .answers()
            .value(WellKnown.SESSION_MODE)
            .filter(v -> v.equals(new Value.Code(WellKnown.ROOM)))
            .isPresent();
    return Before.of(
        bank.tasks().orElseThrow(), !room, interview.askedAgain(), interview.answers());
  }

  /** The facts of which a saved answer says nothing, since they are asked anew. */
  Set<String> facts() {
    return interview.askedAgain().stream().map(Field::fact).collect(Collectors.toSet());
  }

  /** The interview with what was said. */
  Interview after(Before before) {
    Interview next = interview;
    for (var one : before.answers().entrySet()) {
      Provenance by = new Provenance(interview.asker(), Provenance.How.TOLD, "");
      next =
          one.getValue().isPresent()
              ? next.after(new Message.GiveFor(one.getKey(), one.getValue().get(), by))
              : notKnown(next, one.getKey(), by);
    }
    return next;
  }

  private static Interview notKnown(Interview before, String fact, Provenance by) {
    Interview next =
        before
            .after(new Message.JumpTo(fact))
            .after(new Message.NoAnswer(Answer.Reason.UNKNOWN, by));
    return before.at().map(at -> next.after(new Message.JumpTo(at))).orElse(next);
  }

  /** A case with what was said; a question that was answered as before is kept as asked again. */
  CaseDocument kept(CaseDocument document, Before before) {
    Interview after = after(before);
    SavedCase saved = document.saved();
    SavedCase.BankStamp stamp = SavedCase.BankStamp.of(bank.questionnaire(), bank.fingerprint());
    CaseRecord record =
        History.after(document.record(), interview, after, new History.Stamp(now, 0))
            .with(confirmed(before));
    return document.with(SavedCase.of(saved.name(), stamp, after, saved.started(), now), record);
  }

  private List<Event> confirmed(Before before) {
    List<Event> events = new ArrayList<>();
    before
        .answers()
        .forEach(
            (fact, value) -> {
              Optional<Answer> answer = value.map(Answer.Given::new);
              if (answer.isPresent() && answer.equals(interview.answers().answer(fact))) {
                events.add(
                    new Event(
                        now,
                        0,
                        Event.What.CONFIRMED,
                        fact,
                        answer,
                        answer,
                        interview.asker().code(),
                        ""));
              }
            });
    return events;
  }
}
