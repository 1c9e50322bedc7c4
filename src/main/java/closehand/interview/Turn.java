package closehand.interview;

import closehand.bank.Hint;
import closehand.bank.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One message taken in: from the interview before to the interview after. */
final class Turn {
  private static final String NOTHING_TO_ANSWER = "There is no question to answer at the moment.";

  private final Interview before;
  private final Course course;

  Turn(Interview before) {
    this.before = before;
    this.course = new Course(before.quiet());
  }

  /** Puts a new or loaded interview at this field, or at the first one wanted. */
  Interview open(Optional<String> fact) {
    course.startAt(fact);
    return course.settled();
  }

  Interview take(Message message) {
    Optional<String> refusal = follow(message);
    return refusal.isPresent() ? before.refusing(refusal.get()) : course.settled();
  }

  private Optional<String> follow(Message message) {
    if (message instanceof Message.Give give) {
      return here().isEmpty()
          ? Optional.of(NOTHING_TO_ANSWER)
          : give(here().get(), give.value(), give.provenance());
    }
    if (message instanceof Message.NoAnswer none) {
      return noAnswer(none);
    }
    if (message instanceof Message.GiveFor give) {
      return giveFor(give);
    }
    if (message instanceof Message.Note note) {
      return note(PlainText.of(note.text()));
    }
    if (message instanceof Message.Back) {
      return back();
    }
    if (message instanceof Message.JumpTo jump) {
      return jumpTo(PlainText.of(jump.id()));
    }
    if (message instanceof Message.Onward) {
      return onward();
    }
    if (message instanceof Message.Lower lower) {
      return lower(lower.lowered());
    }
    if (message instanceof Message.Steer steer) {
      return steer(PlainText.of(steer.question()));
    }
    if (message instanceof Message.TakeUpTask take) {
      return new TaskTurn(before, course).takeUp(take);
    }
    if (message instanceof Message.EndTask end) {
      return new TaskTurn(before, course).end(end);
    }
    return arrange(message);
  }

  private Optional<String> arrange(Message message) {
    Interview now = course.now();
    if (message instanceof Message.Hold hold) {
      // A hold follows an answer unasked; what that answer passed over has not been said yet.
      course.become(now.holding(hold.kinds()).passingOver(before.passedOver()));
    } else if (message instanceof Message.TakeRoute take) {
      course.become(now.taking(take.route()));
    } else if (message instanceof Message.Conduct conduct) {
      course.become(now.askedBy(conduct.asker()));
    } else if (message instanceof Message.Resume) {
      course.resume();
    } else if (message instanceof Message.Review) {
      course.review();
    } else {
      throw new IllegalArgumentException("Unknown message: " + message.getClass().getSimpleName());
    }
    return Optional.empty();
  }

  private Optional<Outline.Place> here() {
    return before.at().flatMap(before.outline()::place);
  }

  private Optional<String> give(Outline.Place place, Value value, Provenance provenance) {
    Optional<String> refusal =
        Validity.refusal(place.field().type(), value).or(() -> tooLong(provenance.note()));
    if (refusal.isEmpty()) {
      Value kept = Validity.kept(place.field().type(), value);
      course.record(place, new Answer.Given(kept), provenance);
      course.goOn(place);
    }
    return refusal;
  }

  private Optional<String> noAnswer(Message.NoAnswer none) {
    Optional<String> refusal =
        here().isEmpty() ? Optional.of(NOTHING_TO_ANSWER) : tooLong(none.provenance().note());
    if (refusal.isPresent()) {
      return refusal;
    }
    if (here().get().fact().equals(WellKnown.CONSENT_STATE)) {
      return Optional.of(
          "We need a clear yes before we go on, or we stop here. Please say yes, not today or no.");
    }
    if (none.reason() == Answer.Reason.NOT_APPLICABLE
        && here().get().question().safetyWeight() == Course.GATE) {
      return Optional.of(
          "This is a safety question, so it applies to everybody. \"Don't know\" and \"rather not say\" are answers too.");
    }
    course.record(here().get(), new Answer.Absent(none.reason()), none.provenance());
    course.goOn(here().get());
    return Optional.empty();
  }

  private Optional<String> giveFor(Message.GiveFor give) {
    if (before.at().filter(give.fact()::equals).isPresent()) {
      return give(here().orElseThrow(), give.value(), give.provenance());
    }
    Optional<Outline.Place> place = before.outline().place(give.fact());
    if (place.isEmpty()) {
      return unknown(give.fact());
    }
    Optional<String> refusal =
        consentFirst()
            .or(() -> notNow(place.get()))
            .or(() -> course.checkFirst(place.get()))
            .or(() -> Validity.refusal(place.get().field().type(), give.value()))
            .or(() -> tooLong(give.provenance().note()));
    if (refusal.isEmpty()) {
      Value kept = Validity.kept(place.get().field().type(), give.value());
      course.record(place.get(), new Answer.Given(kept), give.provenance());
    }
    return refusal;
  }

  private Optional<String> note(String text) {
    Optional<String> tooLong = tooLong(text);
    if (tooLong.isPresent()) {
      return tooLong;
    }
    Optional<String> fact =
        before
            .at()
            .filter(before.answers().byFact()::containsKey)
            .or(() -> before.sitting().justGiven());
    if (fact.isEmpty()) {
      return Optional.of("There is no answer yet that a note could stand beside.");
    }
    Answers.Recorded noted = before.answers().byFact().get(fact.get());
    if (noted != null) {
      Provenance from = noted.provenance();
      Provenance with = new Provenance(from.by(), from.how(), text);
      Answers.Recorded next = new Answers.Recorded(noted.answer(), with);
      course.become(course.now().with(before.answers().with(fact.get(), next)));
    }
    return Optional.empty();
  }

  private static Optional<String> tooLong(String note) {
    return note.length() <= Validity.LONGEST_NOTE
        ? Optional.empty()
        : Optional.of("Please keep a note to at most " + Validity.LONGEST_NOTE + " characters.");
  }

  private Optional<String> back() {
    return course.back() ? Optional.empty() : Optional.of("This is where the sitting began.");
  }

  private Optional<String> jumpTo(String id) {
    List<Outline.Place> fields = fieldsOf(id);
    if (fields.isEmpty()) {
      return unknown(id);
    }
    Optional<String> pending = consentFirst();
    if (pending.isPresent()) {
      return pending;
    }
    Optional<Outline.Place> target = course.best(fields);
    if (target.isEmpty()) {
      return notNow(course.applying(fields).orElse(fields.get(0)));
    }
    course.jumpTo(target.get());
    return Optional.empty();
  }

  private Optional<String> steer(String id) {
    Optional<Outline.Place> target = course.wanted(fieldsOf(id));
    if (target.isEmpty()) {
      return Optional.of("This question cannot be put to anybody now.");
    }
    return course.steer(target.get())
        ? Optional.empty()
        : Optional.of("The questions that are asked again come first.");
  }

  private List<Outline.Place> fieldsOf(String id) {
    Optional<Outline.Place> place = before.outline().place(id);
    if (place.isPresent()) {
      return List.of(place.get());
    }
    Optional<Question> question = before.outline().question(id);
    return question.map(before.outline()::placesOf).orElse(List.of());
  }

  private Optional<String> onward() {
    if (here().isEmpty()) {
      return Optional.of("There is no question to pass at the moment.");
    }
    if (here().get().fact().equals(WellKnown.CONSENT_STATE)
        && !before.answers().byFact().containsKey(WellKnown.CONSENT_STATE)) {
      return Optional.of("We need a clear yes before we go on, or we stop here.");
    }
    if (before.sitting().checks().queue().contains(here().get().fact())) {
      return Optional.of(
          "This is asked again for safety, so please answer it."
              + " \"Rather not say\" is an answer too.");
    }
    course.pass(here().get());
    course.goOn(here().get());
    return Optional.empty();
  }

  private Optional<String> lower(Answers.Lowered raw) {
    Answers.Lowered lowered =
        new Answers.Lowered(
            PlainText.of(raw.code()),
            PlainText.of(raw.by()),
            PlainText.of(raw.date()),
            PlainText.of(raw.reason()));
    if (before.asker() != Provenance.By.CLINICIAN) {
      return Optional.of("Only a clinician may lower a stop.");
    }
    if (lowered.by().isBlank() || lowered.date().isBlank() || lowered.reason().isBlank()) {
      return Optional.of("Lowering a stop needs a name, a date and a reason.");
    }
    Optional<String> tooLong = tooLong(lowered.by() + lowered.date() + lowered.reason());
    if (tooLong.isPresent()) {
      return tooLong;
    }
    course.become(course.now().with(before.answers().lowering(lowered)));
    return Optional.empty();
  }

  private Optional<String> consentFirst() {
    return before.sitting().consentPending()
        ? Optional.of("Please say first whether you are happy to go on. \"No\" is an answer too.")
        : Optional.empty();
  }

  /** Why this field cannot be put to somebody now, if it cannot. */
  private Optional<String> notNow(Outline.Place place) {
    return course.hindrance(place);
  }

  private Optional<String> unknown(String id) {
    List<String> known = new ArrayList<>();
    for (Outline.Place place : before.outline().places()) {
      known.add(place.fact());
      known.add(place.question().id());
    }
    String hint = Hint.didYouMean(id, known);
    return Optional.of(
        "There is no question called \"" + id + "\"." + (hint.isEmpty() ? "" : " " + hint));
  }
}
