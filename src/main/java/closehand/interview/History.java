package closehand.interview;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Works out what happened between two states of one interview. */
public final class History {
  private static final Set<Event.What> ANSWERS =
      Set.of(Event.What.ANSWERED, Event.What.CHANGED, Event.What.CONFIRMED);

  private final Interview before;
  private final Interview after;
  private final Stamp stamp;
  private final List<Event> events = new ArrayList<>();

  private History(Interview before, Interview after, Stamp stamp) {
    this.before = before;
    this.after = after;
    this.stamp = stamp;
  }

  /**
   * A moment of a sitting.
   *
   * @param at an ISO date and time with zone
   * @param elapsedSeconds seconds since the sitting began
   */
  public record Stamp(String at, int elapsedSeconds) {}

  /** The record of a case after an interview went on from one state to another. */
  public static CaseRecord after(
      CaseRecord record, Interview before, Interview after, Stamp stamp) {
    History history = new History(before, after, stamp);
    List<Consent> consents = history.consents();
    history.answers();
    history.lowered();
    List<Measured> measured = history.measured();
    if (!record.suggested().isEmpty()) {
      history.expiry();
    }
    return record.consenting(consents).measuring(measured).with(history.events);
  }

  /** The tasks measured since; an interview that began anew has only its own. */
  private List<Measured> measured() {
    List<Measured> known = before.measured();
    List<Measured> now = after.measured();
    boolean goesOn = known.size() <= now.size() && now.subList(0, known.size()).equals(known);
    return now.subList(goesOn ? known.size() : 0, now.size()).stream()
        .map(m -> m.at(stamp.at()))
        .toList();
  }

  private void answers() {
    Map<String, Answers.Recorded> earlier = before.answers().byFact();
    Map<String, Answers.Recorded> now = after.answers().byFact();
    now.forEach((fact, recorded) -> answer(fact, Optional.ofNullable(earlier.get(fact)), recorded));
    String cause = String.join(", ", events.stream().map(Event::subject).toList());
    earlier.forEach(
        (fact, recorded) -> {
          if (!now.containsKey(fact)) {
            add(Event.What.TAKEN_BACK, fact, Optional.of(recorded.answer()), Optional.empty(), "");
          }
        });
    if (!earlier.equals(now)) {
      moved(Event.What.SET_ASIDE, before.effective(), after.setAside(), cause);
      moved(Event.What.BACK_IN_USE, before.setAside(), after.effective(), cause);
    }
  }

  private void answer(String fact, Optional<Answers.Recorded> earlier, Answers.Recorded now) {
    Optional<Answer> from = earlier.map(Answers.Recorded::answer);
    Optional<Answer> to = Optional.of(now.answer());
    if (from.isEmpty()) {
      add(Event.What.ANSWERED, fact, from, to, "");
    } else if (!from.equals(to)) {
      add(Event.What.CHANGED, fact, from, to, "");
    } else if (!earlier.get().provenance().note().equals(now.provenance().note())) {
      add(Event.What.NOTED, fact, Optional.empty(), Optional.empty(), "");
    } else if (confirmed(fact)) {
      add(Event.What.CONFIRMED, fact, from, to, "");
    }
  }

  /** Whether a question that was asked again got the answer it had. */
  private boolean confirmed(String fact) {
    boolean asked =
        before
            .current()
            .filter(p -> p.again() != Prompt.Again.NO && p.field().fact().equals(fact))
            .isPresent();
    return asked && after.sitting().justGiven().filter(fact::equals).isPresent();
  }

  private void moved(Event.What what, Answers from, Answers to, String cause) {
    to.byFact()
        .forEach(
            (fact, recorded) -> {
              if (from.byFact().containsKey(fact)) {
                add(what, fact, Optional.empty(), Optional.of(recorded.answer()), cause);
              }
            });
  }

  /** What was suggested before no longer holds, once answers given since say so. */
  private void expiry() {
    Set<String> answered = new LinkedHashSet<>();
    for (Event event : events) {
      if (ANSWERS.contains(event.what())) {
        answered.add(event.subject());
      }
    }
    Review.expiry(before, after, answered)
        .ifPresent(
            why -> add(Event.What.PLAN_EXPIRED, "", Optional.empty(), Optional.empty(), why));
  }

  private void lowered() {
    for (Answers.Lowered one : after.answers().lowered()) {
      if (!before.answers().lowered().contains(one)) {
        events.add(
            new Event(
                stamp.at(),
                stamp.elapsedSeconds(),
                Event.What.LOWERED,
                one.code(),
                Optional.empty(),
                Optional.empty(),
                one.by(),
                one.reason()));
      }
    }
    for (Answers.Lowered one : before.answers().lowered()) {
      if (!after.answers().isLowered(one.code())) {
        add(Event.What.STANDS_AGAIN, one.code(), Optional.empty(), Optional.empty(), "");
      }
    }
  }

  private void add(
      Event.What what, String subject, Optional<Answer> from, Optional<Answer> to, String why) {
    Answers.Recorded recorded = after.answers().byFact().get(subject);
    Provenance.By by = recorded == null ? after.asker() : recorded.provenance().by();
    events.add(
        new Event(stamp.at(), stamp.elapsedSeconds(), what, subject, from, to, by.code(), why));
  }

  private List<Consent> consents() {
    List<Consent> consents = new ArrayList<>();
    after
        .answers()
        .byFact()
        .forEach(
            (fact, now) -> {
              if (fact.startsWith(Consent.BEGINNING) && asked(fact, now)) {
                consents.add(new Consent(fact, now.answer(), now.provenance().by(), stamp.at()));
              }
            });
    return consents;
  }

  private boolean asked(String fact, Answers.Recorded now) {
    Answers.Recorded earlier = before.answers().byFact().get(fact);
    return earlier == null || !earlier.answer().equals(now.answer()) || confirmed(fact);
  }
}
