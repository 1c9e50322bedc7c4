package closehand.line;

import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.report.Consultation;
import java.util.List;
import java.util.Optional;

/** Lets a clinician lower a stop, with name and reason. */
final class Lowering {
  /** The stop that stands when consent is not given. */
  static final String CONSENT = "C-CONSENT";

  private Lowering() {}

  static Optional<Answers.Lowered> ask(
      Console console, Interview interview, List<Consultation.Lowerable> some, String today) {
    if (some.isEmpty()) {
      console.say("Nothing stands that could be lowered.");
      return Optional.empty();
    }
    if (interview.asker() != Provenance.By.CLINICIAN) {
      console.say(
          "Only a clinician can lower a stop or caution. If a clinician takes over now, type a first.");
      return Optional.empty();
    }
    console.say("Which one do you lower?");
    Optional<Consultation.Lowerable> chosen =
        Choice.of(
            console,
            Optional.empty(),
            some.toArray(new Consultation.Lowerable[0]),
            n -> n.title() + " (" + n.code() + ")");
    if (chosen.isEmpty()) {
      console.say("Nothing was lowered.");
      return Optional.empty();
    }
    Optional<String> name = console.ask("Your name and profession: ").map(String::strip);
    Optional<String> reason = reason(console);
    if (name.orElse("").isEmpty() || reason.orElse("").isEmpty()) {
      console.say("It is only lowered with a name and a reason. It stays.");
      return Optional.empty();
    }
    return Optional.of(new Answers.Lowered(chosen.get().code(), name.get(), today, reason.get()));
  }

  /** One letter is a slip of a command, not a reason: it is asked for again. */
  private static Optional<String> reason(Console console) {
    Optional<String> reason = console.ask("Your reason: ").map(String::strip);
    while (reason.isPresent() && reason.get().length() == 1) {
      console.say("Please give the reason in words, or press Enter alone to let the stop stand.");
      reason = console.ask("Your reason: ").map(String::strip);
    }
    return reason;
  }
}
