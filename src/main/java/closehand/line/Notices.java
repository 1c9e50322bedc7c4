package closehand.line;

import closehand.interview.Prompt;
import closehand.report.Announced;
import closehand.report.Consultation;
import java.util.Locale;
import java.util.Optional;

/** Says stops and cautions as they come due. Each that does not end the session needs one Enter. */
final class Notices {
  private final Console console;
  private Announced announced = Announced.NOTHING;
  private final boolean kept;
  private boolean left;

  /**
   * Notices of one interview.
   *
   * @param kept whether anything is kept that could be deleted
   */
  Notices(Console console, boolean kept) {
    this.console = console;
    this.kept = kept;
  }

  /** Says what is new; tells whether a stop stands that ends the session. */
  boolean say(Consultation consultation, Optional<Prompt> prompt) {
    Announced.Due due = announced.due(consultation, prompt);
    announced = due.then();
    for (Consultation.Notice stop : due.stops()) {
      console.gap();
      console.lines(stop.lines());
      if (!stop.endsSession()) {
        acknowledge();
      }
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
      left |=
          console
              .ask("Press Enter when you have read this. ")
              .filter(typed -> typed.strip().matches(":?[qQ]"))
              .isPresent();
    }
  }

  /** Whether somebody left at a notice since this was asked last. */
  boolean left() {
    boolean was = left;
    left = false;
    return was;
  }

  /** Says the ways out of a stop that ends the session and reads which, in small letters. */
  String wayOut(Consultation consultation) {
    waysOut(consultation);
    String line = console.ask("> ").map(String::strip).orElse("");
    return (line.startsWith(":") ? line.substring(1) : line).toLowerCase(Locale.ROOT);
  }

  /** The shortest ways out of a stop; whom to call stands last, where a small screen shows it. */
  private void waysOut(Consultation consultation) {
    if (consentStands(consultation)) {
      console.say(
          "Nothing more is written down. Type "
              + (kept ? "delete to remove everything kept so far, " : "")
              + "b if this was a slip, or press Enter, or q, to end.");
      return;
    }
    console.say(
        "Press Enter, or q, to end. If this was a slip or has changed, type b to answer again."
            + (mayBeLowered(consultation) ? " A clinician can type c." : ""));
    ending(consultation)
        .map(Consultation.Notice::contact)
        .filter(contact -> !contact.isEmpty())
        .ifPresent(console::say);
  }

  /** Whether a clinician may lower what ends the session. */
  boolean mayBeLowered(Consultation consultation) {
    return consultation.notices().stream()
        .anyMatch(n -> n.endsSession() && consultation.mayBeLowered(n));
  }

  private static Optional<Consultation.Notice> ending(Consultation consultation) {
    return consultation.notices().stream().filter(Consultation.Notice::endsSession).findFirst();
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
