package closehand.interview;

import closehand.bank.TaskKind;
import java.util.Map;
import java.util.Optional;

/** A measured task is taken up or has ended, within one turn. */
final class TaskTurn {
  /** How a note begins that says under which circumstances something was measured. */
  static final String MEASURED = "Measured: ";

  private final Interview before;
  private final Course course;

  TaskTurn(Interview before, Course course) {
    this.before = before;
    this.course = course;
  }

  Optional<String> takeUp(Message.TakeUpTask take) {
    Optional<Outline.Place> place = before.outline().place(take.fact());
    if (place.isEmpty()) {
      return Optional.of("There is no question that this task could answer.");
    }
    Optional<String> refusal =
        pending()
            .or(before::tasksStopped)
            .or(() -> held(take))
            .or(
                () ->
                    take.forClinician() && before.asker() != Provenance.By.CLINICIAN
                        ? Optional.of("Only a clinician may run this.")
                        : Optional.empty())
            .or(() -> course.hindrance(place.get()));
    if (refusal.isEmpty()) {
      course.takeUp(place.get(), new Checks.Taken(take.fact(), take.kinds(), before.at()));
    }
    return refusal;
  }

  private Optional<String> pending() {
    Checks checks = before.sitting().checks();
    boolean again =
        checks.stage() == Checks.Stage.AFTER_BREAK || checks.stage() == Checks.Stage.AFTER_TASKS;
    return again && !checks.queue().isEmpty()
        ? Optional.of("The questions that are asked again come first.")
        : Optional.empty();
  }

  private Optional<String> held(Message.TakeUpTask take) {
    return take.kinds().stream()
        .sorted()
        .filter(before.held()::contains)
        .findFirst()
        .map(TaskKind::code)
        .map(kind -> "This must wait: " + kind + " tasks are on hold. " + take.reason())
        .map(String::strip);
  }

  Optional<String> end(Message.EndTask end) {
    Optional<Checks.Taken> taken =
        before.taskDue().isPresent() ? before.sitting().checks().taken() : Optional.empty();
    if (taken.isEmpty()) {
      return Optional.of("No task may be run at the moment.");
    }
    for (Map.Entry<String, Value> result : end.results().entrySet()) {
      Outline.Place place = before.outline().place(result.getKey()).orElse(null);
      if (place == null || Validity.refusal(place.field().type(), result.getValue()).isPresent()) {
        return Optional.of("This result does not fit its question: " + result.getKey() + ".");
      }
    }
    end.results().forEach((fact, value) -> record(fact, value, end.note()));
    Interview now = course.now();
    Sitting sitting = now.sitting().measuring(end.measured());
    if (end.measured().ending() == Measured.Ending.STOPPED) {
      // What was stopped is not asked again at once.
      sitting = sitting.passing(taken.get().fact());
    }
    Checks checks = sitting.checks();
    course.become(now.with(sitting.with(end.noMoreTasks().map(checks::stop).orElse(checks))));
    course.leaveTask(taken.get());
    return Optional.empty();
  }

  private void record(String fact, Value value, String circumstances) {
    Outline.Place place = before.outline().place(fact).orElseThrow();
    if (course.hindrance(place).isPresent()) {
      return;
    }
    String earlier =
        Optional.ofNullable(before.answers().byFact().get(fact))
            .map(r -> r.provenance().note())
            .orElse("");
    String own =
        earlier.contains(MEASURED) ? earlier.substring(0, earlier.indexOf(MEASURED)) : earlier;
    String note = (own.isBlank() ? "" : own.strip() + " ") + MEASURED + circumstances;
    String kept = note.length() <= Validity.LONGEST_NOTE ? note : own;
    Value valid = Validity.kept(place.field().type(), value);
    course.record(
        place,
        new Answer.Given(valid),
        new Provenance(before.asker(), Provenance.How.MEASURED, kept));
  }
}
