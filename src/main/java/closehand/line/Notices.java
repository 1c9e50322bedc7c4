package closehand.line;

import closehand.interview.Prompt;
import closehand.report.Announced;
import closehand.report.Consultation;
import java.util.Optional;

/** Says stops and cautions as they come due. Each needs one Enter. */
final class Notices {
  private final Console console;
  private Announced announced = Announced.NOTHING;

  Notices(Console console) {
    this.console = console;
  }

  /** Says what is new; tells whether a stop stands that ends the session. */
  boolean say(Consultation consultation, Optional<Prompt> prompt) {
    Announced.Due due = announced.due(consultation, prompt);
    announced = due.then();
    for (Consultation.Notice stop : due.stops()) {
      console.gap();
      console.lines(stop.lines());
      acknowledge();
    }
    if (!due.cares().isEmpty()) {
      console.gap();
      due.cares().forEach(care -> console.lines(care.lines()));
      acknowledge();
    }
    return due.ends();
  }

  private void acknowledge() {
    if (!console.scripted()) {
      console.ask("Press Enter when you have read this. ");
    }
  }

  /** Whether the stop for missing consent stands. */
  boolean consentStands(Consultation consultation) {
    return consultation.notices().stream()
        .anyMatch(n -> n.endsSession() && n.code().equals(Lowering.CONSENT));
  }

  /** The question behind the first stop that ends the session. */
  Optional<String> question(Consultation consultation) {
    return consultation.notices().stream()
        .filter(Consultation.Notice::endsSession)
        .flatMap(n -> n.facts().stream())
        .findFirst();
  }
}
