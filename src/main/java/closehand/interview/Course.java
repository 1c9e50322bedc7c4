package closehand.interview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Moves an interview from field to field within one turn. */
final class Course {
  /** The safety weight of questions whose answers can stop something. */
  static final int GATE = 3;

  private Interview now;
  private Enablement enablement;

  Course(Interview now) {
    this.now = now;
    this.enablement = Enablement.of(now.outline(), now.answers());
  }

  Interview now() {
    return now;
  }

  void become(Interview next) {
    now = next;
  }

  /** The interview, standing at a field that can be asked if there is one. */
  Interview settled() {
    Optional<Outline.Place> here = now.at().flatMap(now.outline()::place);
    if (here.isEmpty()) {
      Walk.Step first = walk().first();
      if (first.place().isPresent()) {
        arrive(first);
      }
    } else if (!walk().canBeAsked(here.get())) {
      moveOn(here.get());
    }
    return now;
  }

  void startAt(Optional<String> fact) {
    Optional<Outline.Place> start = fact.flatMap(now.outline()::place);
    arrive(start.map(walk()::atOrAfter).orElseGet(walk()::first));
  }

  void record(Outline.Place place, Answer answer, Provenance provenance) {
    Answers.Recorded earlier = now.answers().byFact().get(place.fact());
    String note = PlainText.of(provenance.note());
    if (earlier != null && note.isEmpty()) {
      // What somebody typed beside the answer is not lost with the answer.
      note = earlier.provenance().note();
    }
    Provenance kept = new Provenance(provenance.by(), provenance.how(), note);
    boolean changesWarning =
        place.question().safetyWeight() == GATE
            && (earlier == null || !earlier.answer().equals(answer));
    // A clinician lowered a stop on the answers as they were; on other answers it must stand again.
    Answers before = changesWarning ? now.answers().withNothingLowered() : now.answers();
    now = now.with(before.with(place.fact(), new Answers.Recorded(answer, kept)));
    Sitting sitting = now.sitting().giving(place.fact());
    if (answer.isPutOff()) {
      sitting = sitting.passing(place.fact());
    }
    Checks checks = sitting.checks();
    if (place.field().askedAgain() && checks.begun()) {
      checks = checks.verdict(place, answer).map(checks::stop).orElse(checks);
    }
    now = now.with(sitting.with(touched(checks, place).without(place.fact())));
  }

  /** Passes a field without an answer. */
  void pass(Outline.Place place) {
    if (walk().isOpen(place)) {
      now = now.with(now.sitting().passing(place.fact()));
    }
    touch(place);
  }

  /** Goes on after a field was dealt with. */
  void goOn(Outline.Place from) {
    now = now.with(now.sitting().leaving(from.fact()));
    moveOn(from);
  }

  void jumpTo(Outline.Place target) {
    Optional<Outline.Place> from = now.at().flatMap(now.outline()::place);
    if (from.equals(Optional.of(target))) {
      return;
    }
    from.ifPresent(
        place -> {
          touch(place);
          now = now.with(now.sitting().leaving(place.fact()));
        });
    if (checks().stage() == Checks.Stage.BEFORE_TASKS) {
      now = now.with(checks().drop());
    }
    goTo(Optional.of(target));
  }

  /** The first of these that is open and wanted. */
  Optional<Outline.Place> wanted(List<Outline.Place> fields) {
    Walk walk = walk();
    return fields.stream().filter(walk::isWanted).findFirst();
  }

  /**
   * Goes to a proposed field in place of the next in order, as if nothing had been said of that
   * one; false while questions are asked again. A check before tasks that has not begun is dropped.
   */
  boolean steer(Outline.Place target) {
    boolean notBegun =
        checks().stage() == Checks.Stage.BEFORE_TASKS
            && checks().queue().size() == walk().askedAgain().size();
    if (!checks().queue().isEmpty() && !notBegun) {
      return false;
    }
    if (notBegun && checks().then().equals(Optional.of(target.fact()))) {
      return true;
    }
    if (notBegun) {
      now = now.with(checks().drop());
    }
    goTo(Optional.of(target));
    return true;
  }

  /** Goes to the field shown before; false when there is none. */
  boolean back() {
    List<String> trail = new ArrayList<>(now.sitting().trail());
    while (!trail.isEmpty()) {
      String fact = trail.remove(trail.size() - 1);
      Optional<Outline.Place> place = now.outline().place(fact).filter(walk()::canBeAsked);
      if (place.isPresent() && !now.at().equals(Optional.of(fact))) {
        now.at().flatMap(now.outline()::place).ifPresent(this::touch);
        now = now.with(now.sitting().trailing(trail));
        if (walk().isTaskAhead(place.get())) {
          goTo(place);
        } else {
          now = now.standingAt(Optional.of(fact));
        }
        return true;
      }
    }
    return false;
  }

  /** A new sitting, which begins with consent where it was asked before. */
  void resume() {
    Optional<String> bookmark = now.bookmark();
    now = now.with(Sitting.NEW);
    Optional<Outline.Place> consent =
        now.outline()
            .place(WellKnown.CONSENT_STATE)
            .filter(walk()::canBeAsked)
            .filter(p -> now.answers().answer(p.fact()).isPresent());
    if (consent.isEmpty()) {
      startAt(bookmark);
      return;
    }
    List<String> queue = List.of(WellKnown.CONSENT_STATE);
    Checks checks = checks().begin(Checks.Stage.AFTER_BREAK, queue, bookmark, now.answers());
    now = now.with(checks).standingAt(Optional.of(WellKnown.CONSENT_STATE));
  }

  /**
   * A new sitting that asks again what a review asks: consent, what has changed, warning signs and
   * pain.
   */
  void review() {
    Optional<String> bookmark = now.bookmark();
    now = now.with(Sitting.NEW);
    List<String> queue = Review.askedAgain(now.outline(), walk());
    if (queue.isEmpty()) {
      startAt(bookmark);
      return;
    }
    Checks checks = checks().begin(Checks.Stage.AFTER_BREAK, queue, bookmark, now.answers());
    now = now.with(checks).standingAt(Optional.of(queue.get(0)));
  }

  /** The first of these that is open and can be asked, or else the first that can be asked. */
  Optional<Outline.Place> best(List<Outline.Place> fields) {
    Walk walk = walk();
    List<Outline.Place> possible = new ArrayList<>(fields);
    possible.removeIf(p -> !walk.canBeAsked(p));
    return possible.stream()
        .filter(walk::isOpen)
        .findFirst()
        .or(() -> possible.stream().findFirst());
  }

  Optional<Outline.Place> applying(List<Outline.Place> fields) {
    return fields.stream().filter(p -> walk().enablement().applies(p.fact())).findFirst();
  }

  /** Why this field cannot be put to somebody now, if it cannot. */
  Optional<String> hindrance(Outline.Place place) {
    if (!walk().enablement().applies(place.fact())) {
      return Optional.of("This question does not apply at the moment.");
    }
    return walk().canBeAsked(place)
        ? Optional.empty()
        : Optional.of(walk().stillOpen(place).because());
  }

  /** Refuses a task while the check before tasks is still to come. */
  Optional<String> checkFirst(Outline.Place place) {
    boolean due =
        walk().isTaskAhead(place)
            && checks().stage() != Checks.Stage.TASKS
            && !walk().askedAgain().isEmpty();
    return due ? Optional.of("The questions before a task come first.") : Optional.empty();
  }

  private void moveOn(Outline.Place from) {
    List<String> queue = new ArrayList<>(checks().queue());
    queue.removeIf(fact -> now.outline().place(fact).filter(walk()::canBeAsked).isEmpty());
    now = now.with(checks().keep(queue));
    if (!queue.isEmpty()) {
      now = now.standingAt(Optional.of(queue.get(0)));
      return;
    }
    Checks.Stage stage = checks().stage();
    if (stage == Checks.Stage.TALK || stage == Checks.Stage.TASKS) {
      arrive(walk().after(from));
      return;
    }
    Optional<Outline.Place> then = checks().then().flatMap(now.outline()::place);
    now = now.with(checks().done(now.answers()));
    arrive(then.map(walk()::atOrAfter).orElseGet(walk()::first));
  }

  private void arrive(Walk.Step step) {
    Sitting sitting = now.sitting();
    List<StillOpen> over = new ArrayList<>(now.passedOver());
    for (Outline.Place place : step.passedOver()) {
      if (!sitting.told().contains(place.fact())) {
        over.add(walk().stillOpen(place));
        sitting = sitting.telling(place.fact());
      }
    }
    now = now.with(sitting).passingOver(over);
    goTo(step.place());
  }

  /** Stands at a field, after the questions asked again where a run of tasks begins or ends. */
  private void goTo(Optional<Outline.Place> target) {
    Optional<String> fact = target.map(Outline.Place::fact);
    boolean inRun = checks().stage() == Checks.Stage.TASKS;
    List<String> again = walk().askedAgain();
    if (!inRun && target.filter(walk()::isTaskAhead).isPresent()) {
      if (again.isEmpty()) {
        now = now.with(checks().run());
      } else {
        now = now.with(checks().begin(Checks.Stage.BEFORE_TASKS, again, fact, now.answers()));
        fact = Optional.of(again.get(0));
      }
    } else if (inRun && target.filter(this::isTask).isEmpty()) {
      if (checks().touched() && !again.isEmpty()) {
        Optional<String> then = fact.filter(f -> !again.contains(f));
        now = now.with(checks().begin(Checks.Stage.AFTER_TASKS, again, then, now.answers()));
        fact = Optional.of(again.get(0));
      } else {
        now = now.with(checks().drop());
      }
    }
    now = now.standingAt(fact);
  }

  private boolean isTask(Outline.Place place) {
    return place.field().task().isPresent()
        || checks().taken().filter(t -> t.fact().equals(place.fact())).isPresent();
  }

  /** Goes to a measured task, after the questions that come before tasks. */
  void takeUp(Outline.Place target, Checks.Taken taken) {
    now.at().ifPresent(fact -> now = now.with(now.sitting().leaving(fact)));
    List<String> again = walk().askedAgain();
    Optional<String> fact = Optional.of(target.fact());
    if (again.isEmpty()) {
      now = now.with(checks().run().taking(taken)).standingAt(fact);
      return;
    }
    Checks checks = checks().begin(Checks.Stage.BEFORE_TASKS, again, fact, now.answers());
    now = now.with(checks.taking(taken)).standingAt(Optional.of(again.get(0)));
  }

  /** Leaves a measured task, for the questions that come after tasks. */
  void leaveTask(Checks.Taken taken) {
    now = now.with(now.sitting().leaving(taken.fact()));
    Optional<Outline.Place> from = taken.from().flatMap(now.outline()::place);
    Optional<String> then =
        from.filter(p -> walk().isWanted(p))
            .or(() -> from.flatMap(p -> walk().after(p).place()))
            .map(Outline.Place::fact);
    List<String> again = walk().askedAgain();
    if (again.isEmpty()) {
      now = now.with(checks().drop());
      startAt(then);
      return;
    }
    Checks checks = checks().begin(Checks.Stage.AFTER_TASKS, again, then, now.answers());
    now = now.with(checks).standingAt(Optional.of(again.get(0)));
  }

  private void touch(Outline.Place place) {
    now = now.with(touched(checks(), place));
  }

  private static Checks touched(Checks checks, Outline.Place place) {
    boolean inRun = checks.stage() == Checks.Stage.TASKS;
    return inRun && place.field().task().isPresent() ? checks.touch() : checks;
  }

  private Checks checks() {
    return now.sitting().checks();
  }

  private Walk walk() {
    if (!enablement.isOf(now.answers())) {
      enablement = Enablement.of(now.outline(), now.answers());
    }
    return new Walk(now, enablement);
  }
}
