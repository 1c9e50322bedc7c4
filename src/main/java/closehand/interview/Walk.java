package closehand.interview;

import closehand.bank.Question;
import closehand.bank.TaskKind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which fields can be put to somebody at the moment, and which comes next. */
final class Walk {
  private final Interview interview;
  private final Enablement enablement;
  private Optional<Boolean> painStops = Optional.empty();

  Walk(Interview interview) {
    this(interview, Enablement.of(interview.outline(), interview.answers()));
  }

  Walk(Interview interview, Enablement enablement) {
    this.interview = interview;
    this.enablement = enablement;
  }

  Enablement enablement() {
    return enablement;
  }

  /** Whether a field belongs to the route taken. */
  boolean inRoute(Outline.Place place) {
    return switch (interview.route()) {
      case FULL -> true;
      case BRIEF -> !place.isReview();
      case CORE -> !place.isReview() && place.question().route() != Question.Route.FULL;
    };
  }

  /** Whether a field applies and has no answer, or one that asks for later. */
  boolean isOpen(Outline.Place place) {
    return enablement.applies(place) && !isSettled(place);
  }

  private boolean isSettled(Outline.Place place) {
    Answers.Recorded recorded = interview.answers().byFact().get(place.fact());
    return recorded != null && !recorded.answer().isPutOff();
  }

  /** Whether a field applies and is dealt with. */
  boolean isAnswered(Outline.Place place) {
    return enablement.applies(place) && isSettled(place);
  }

  /** Whether a field can be put to somebody now, answered or not. */
  boolean canBeAsked(Outline.Place place) {
    return enablement.applies(place) && !isForClinician(place) && heldKind(place).isEmpty();
  }

  boolean isForClinician(Outline.Place place) {
    return place.question().askedBy() == Question.AskedBy.CLINICIAN
        && interview.asker() != Provenance.By.CLINICIAN;
  }

  /** The kind of task that keeps this field waiting, if one does. */
  Optional<TaskKind> heldKind(Outline.Place place) {
    return place
        .field()
        .task()
        .filter(
            k ->
                interview.tasksStopped().isPresent()
                    || interview.held().contains(k)
                    || painStops());
  }

  /**
   * Whether the player said in this sitting that there is too much pain for any task, so that
   * nothing is asked again before one. What was said in another sitting is asked again first.
   */
  private boolean painStops() {
    if (painStops.isEmpty()) {
      painStops = Optional.of(saidTooMuchPain());
    }
    return painStops.get();
  }

  private boolean saidTooMuchPain() {
    return interview.sitting().trail().contains(WellKnown.PAIN_NOW)
        && interview
            .answers()
            .value(WellKnown.PAIN_NOW)
            .filter(v -> v instanceof Value.Number n && n.value() >= WellKnown.PAIN_THAT_STOPS)
            .isPresent();
  }

  /** Why a field has no answer. */
  StillOpen stillOpen(Outline.Place place) {
    StillOpen.Why why = why(place);
    return new StillOpen(
        place.section(), place.question(), place.field(), why, because(place, why));
  }

  /** Why a field that is open is. */
  StillOpen.Why why(Outline.Place place) {
    if (isForClinician(place)) {
      return StillOpen.Why.FOR_CLINICIAN;
    }
    if (heldKind(place).isPresent()) {
      return StillOpen.Why.HELD;
    }
    if (interview.answers().answer(place.fact()).isPresent()) {
      return StillOpen.Why.LATER;
    }
    return interview.sitting().passed().contains(place.fact())
        ? StillOpen.Why.SKIPPED
        : StillOpen.Why.NOT_YET_ASKED;
  }

  private String because(Outline.Place place, StillOpen.Why why) {
    return switch (why) {
      case NOT_YET_ASKED -> "Its turn has not come yet.";
      case SKIPPED -> "It was passed without an answer.";
      case LATER -> "It was put off for later.";
      case FOR_CLINICIAN -> "Only a clinician may ask this.";
      case HELD ->
          interview
              .tasksStopped()
              .orElseGet(
                  () ->
                      painStops()
                          ? "This must wait while pain now is at "
                              + Wording.number(WellKnown.PAIN_THAT_STOPS)
                              + " of 10 or more."
                          : "This must wait: " + holdWords(heldKind(place).orElseThrow()));
    };
  }

  private static String holdWords(TaskKind kind) {
    return switch (kind) {
      case TIMED -> "timed tasks are on hold.";
      case STRENGTH -> "strength tasks are on hold.";
      case BREATH -> "breath tasks are on hold.";
      case HEAD -> "head movement tasks are on hold.";
    };
  }

  /** Everything on the route that is open, in order. */
  List<StillOpen> open() {
    List<StillOpen> open = new ArrayList<>();
    for (Outline.Place place : interview.outline().places()) {
      if (inRoute(place) && isOpen(place)) {
        open.add(stillOpen(place));
      }
    }
    return open;
  }

  /** The facts that are asked again around tasks and can be asked now. */
  List<String> askedAgain() {
    List<String> facts = new ArrayList<>();
    for (Outline.Place place : interview.outline().places()) {
      if (place.field().askedAgain() && canBeAsked(place)) {
        facts.add(place.fact());
      }
    }
    return facts;
  }

  /** Whether a field is a bodily task that is still to be done. */
  boolean isTaskAhead(Outline.Place place) {
    return place.field().task().isPresent() && isOpen(place);
  }

  /**
   * The next field wanted after one place, around to the beginning, and where fields were passed
   * over on the way.
   *
   * @param place the field, or nothing when all is done
   * @param passedOver fields that were open but could not be asked
   */
  record Step(Optional<Outline.Place> place, Set<Outline.Place> passedOver) {}

  /** The first field wanted in the whole interview. */
  Step first() {
    Set<Outline.Place> over = new LinkedHashSet<>();
    return new Step(scan(places(), over), over);
  }

  /** The field wanted next after this one: rest of its question, later ones, earlier ones. */
  Step after(Outline.Place from) {
    Set<Outline.Place> over = new LinkedHashSet<>();
    noteIfLeft(from, over);
    int reviews = interview.outline().firstReview();
    int at = Math.min(from.index(), reviews);
    int later = Math.min(from.index() + 1, reviews);
    Optional<Outline.Place> next =
        restOfQuestion(from, over)
            .or(() -> scan(places().subList(later, reviews), over))
            .or(() -> scan(places().subList(0, at), over))
            .or(() -> scan(places().subList(reviews, places().size()), over));
    return new Step(next, over);
  }

  /** This field if it can be asked, or the one wanted next. */
  Step atOrAfter(Outline.Place from) {
    return canBeAsked(from) ? new Step(Optional.of(from), Set.of()) : after(from);
  }

  private Optional<Outline.Place> restOfQuestion(Outline.Place from, Set<Outline.Place> over) {
    for (Outline.Place place : interview.outline().placesOf(from.question())) {
      if (place.index() > from.index()) {
        if (isWanted(place)) {
          return Optional.of(place);
        }
        noteIfLeft(place, over);
      }
    }
    return Optional.empty();
  }

  private Optional<Outline.Place> scan(List<Outline.Place> some, Set<Outline.Place> over) {
    for (Outline.Place place : some) {
      if (inRoute(place) && isWanted(place)) {
        return Optional.of(place);
      }
      noteIfLeft(place, over);
    }
    return Optional.empty();
  }

  private void noteIfLeft(Outline.Place place, Set<Outline.Place> over) {
    if (inRoute(place) && isOpen(place) && !canBeAsked(place)) {
      over.add(place);
    }
  }

  /** Whether a field is open, can be asked and was not passed. */
  boolean isWanted(Outline.Place place) {
    return isOpen(place)
        && canBeAsked(place)
        && !interview.sitting().passed().contains(place.fact());
  }

  private List<Outline.Place> places() {
    return interview.outline().places();
  }
}
