package closehand.line;

import closehand.bank.Field;
import closehand.interview.Prompt;
import closehand.report.Consultation;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Says stops and cautions, each once while it stands. A stop is said as soon as its question is
 * answered in full; other cautions are said together when the next part begins. Each needs one
 * Enter.
 */
final class Notices {
  private final Console console;
  private final Set<String> said = new HashSet<>();
  private Optional<String> part = Optional.empty();

  Notices(Console console) {
    this.console = console;
  }

  /** Says what is new; tells whether a stop stands that ends the session. */
  boolean say(Consultation consultation, Optional<Prompt> prompt) {
    Optional<String> now = prompt.map(p -> p.section().id());
    boolean newPart = !now.equals(part);
    part = now;
    Set<String> standing = new HashSet<>();
    List<Consultation.Notice> cares = new ArrayList<>();
    boolean ends = false;
    for (Consultation.Notice notice : consultation.notices()) {
      standing.add(key(notice));
      ends |= notice.endsSession();
      if (notice.stops()) {
        stop(notice, prompt);
      } else if (newPart && !said.contains(key(notice))) {
        cares.add(notice);
      }
    }
    cares(cares);
    said.retainAll(standing);
    return ends;
  }

  private void stop(Consultation.Notice notice, Optional<Prompt> prompt) {
    boolean unfinished =
        !notice.endsSession() && prompt.map(p -> concerns(notice, p)).orElse(false);
    if (!unfinished && said.add(key(notice))) {
      console.gap();
      console.lines(notice.lines());
      acknowledge();
    }
  }

  /** Whether the question at hand still asks about the same thing, such as where it hurts. */
  private static boolean concerns(Consultation.Notice notice, Prompt prompt) {
    return prompt.question().fields().stream().map(Field::fact).anyMatch(notice.facts()::contains);
  }

  private void cares(List<Consultation.Notice> cares) {
    if (!cares.isEmpty()) {
      console.gap();
      for (Consultation.Notice care : cares) {
        said.add(key(care));
        console.lines(care.lines());
      }
      acknowledge();
    }
  }

  private void acknowledge() {
    if (!console.scripted()) {
      console.ask("Press Enter when you have read this. ");
    }
  }

  private static String key(Consultation.Notice notice) {
    return notice.code() + (notice.stops() ? " stop" : "");
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
