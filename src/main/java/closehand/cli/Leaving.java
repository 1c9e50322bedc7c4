package closehand.cli;

import closehand.interview.Interview;
import closehand.interview.Sharing;
import closehand.interview.Suggested;
import closehand.interview.Value;
import closehand.line.Console;
import closehand.plan.Planning;
import closehand.report.Consultation;
import closehand.report.PageInput;
import closehand.rules.Advice;
import closehand.rules.Warning;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The end of a sitting: everything is kept, or it is said plainly what is not. */
final class Leaving {
  /** What somebody chooses who wants nothing kept after the session. */
  private static final String THIS_SESSION = "thisSession";

  private final Surroundings surroundings;
  private final Console console;
  private final Pages pages;
  private final StoredCase kept;
  private final CaseDesk desk;

  Leaving(Surroundings surroundings, Console console, Pages pages, StoredCase kept, CaseDesk desk) {
    this.surroundings = surroundings;
    this.console = console;
    this.pages = pages;
    this.kept = kept;
    this.desk = desk;
  }

  /**
   * Keeps the interview and its pages, or deletes both where the player wanted nothing kept.
   *
   * @return whether nothing is left unsaved
   */
  boolean leave(Interview interview) {
    if (forget(interview)) {
      desk.delete().forEach(console::say);
      return true;
    }
    return keep(interview);
  }

  /** Keeps the interview and its pages; tells whether nothing is left unsaved. */
  boolean keep(Interview interview) {
    Advice advice = pages.advise(interview.answers());
    kept.suggest(suggested(advice), Days.reviewOn(surroundings.clock(), advice));
    if (!saved(interview)) {
      return false;
    }
    farewell(interview);
    return true;
  }

  /**
   * Keeps the interview after a stop that ended the session, in as few words as can be; whom to
   * call stands last.
   *
   * @return whether nothing is left unsaved
   */
  boolean stopped(Interview interview) {
    Advice advice = pages.advise(interview.answers());
    kept.suggest(suggested(advice), Days.reviewOn(surroundings.clock(), advice));
    if (!saved(interview)) {
      return false;
    }
    written(interview);
    console.say(
        shares(interview, THIS_SESSION)
            ? "Your answers are kept until closehand forget " + kept.name() + " deletes them."
            : "Your answers are kept.");
    desk.consult(interview).notices().stream()
        .filter(Consultation.Notice::endsSession)
        .map(Consultation.Notice::contact)
        .filter(contact -> !contact.isEmpty())
        .findFirst()
        .ifPresent(console::say);
    return true;
  }

  /** After a missing consent: no page stays, and how the rest is removed is said. */
  void withoutConsent() throws IOException {
    kept.pages().delete();
    console.say("What is kept so far stays until closehand forget " + kept.name() + " removes it.");
  }

  private Suggested suggested(Advice advice) {
    return new Suggested(
        Moment.now(surroundings.clock()),
        pages.bank().questionnaire().version(),
        pages.bank().fingerprint(),
        advice.withheld(),
        codes(advice.stops()),
        codes(advice.cautions()),
        advice.suggestions().stream()
            .map(
                s -> new Suggested.Idea(s.approach().id(), s.approach().words().name(), s.points()))
            .toList());
  }

  private static List<String> codes(List<Warning> warnings) {
    return warnings.stream().map(w -> w.caution().code()).toList();
  }

  /** Saves, here or elsewhere, until it is done or somebody says that the answers may be lost. */
  private boolean saved(Interview interview) {
    List<String> trouble = desk.keep(interview);
    while (!trouble.isEmpty()) {
      trouble.forEach(console::say);
      if (console.scripted()) {
        console.say(unsaved() + " not saved.");
        return false;
      }
      console.say(unsaved() + " not saved. What now?");
      console.item("1", "try again (or press Enter)");
      console.item("2", "keep the case in another folder, such as one on a memory stick");
      console.item("3", "leave without them");
      String typed = console.ask("Number: ").map(String::strip).orElse("3");
      if (typed.equals("2")) {
        elsewhere();
      } else if (typed.equals("3") && lost()) {
        return false;
      }
      trouble = desk.keep(interview);
    }
    return true;
  }

  private String unsaved() {
    int changes = kept.unsavedChanges();
    return changes == 1 ? "1 change is" : changes + " changes are";
  }

  private void elsewhere() {
    String typed = console.ask("Folder: ").map(String::strip).orElse("");
    if (typed.isEmpty()) {
      return;
    }
    try {
      kept.moveTo(Path.of(typed).toAbsolutePath());
      console.say("The case is called " + kept.name() + " there.");
    } catch (IOException | InvalidPathException e) {
      console.say("That folder cannot be used.");
    }
  }

  private boolean lost() {
    console.say("They cannot be brought back. Type lose to leave all the same.");
    boolean sure =
        console.ask("> ").map(l -> l.strip().equalsIgnoreCase("lose")).orElse(/* other= */ true);
    if (sure) {
      console.say(unsaved() + " lost.");
    }
    return sure;
  }

  private void farewell(Interview interview) {
    for (Written written : written(interview)) {
      console.say(written.sentence());
      written.file().ifPresent(console::path);
    }
    if (shares(interview, THIS_SESSION) && console.scripted()) {
      console.say(
          "You asked to have this deleted after this session. Nobody could confirm it here: closehand forget "
              + kept.name()
              + " deletes it.");
    }
    console.say(
        "To go on: closehand interview "
            + kept.name()
            + ". To print the page: closehand summary "
            + kept.name()
            + ".");
  }

  /** Writes the pages; tells where they are, or why there are none. */
  List<String> write(Interview interview) {
    return written(interview).stream()
        .flatMap(w -> Stream.concat(Stream.of(w.sentence()), w.file().stream()))
        .toList();
  }

  /** A sentence, and the file that it speaks of. */
  private record Written(String sentence, Optional<String> file) {
    static Written of(String sentence) {
      return new Written(sentence, Optional.empty());
    }

    static Written of(String sentence, Path file) {
      return new Written(sentence, Optional.of(file.toString()));
    }
  }

  private List<Written> written(Interview interview) {
    if (kept.isSealed()) {
      return List.of(Written.of("Everything is kept, sealed. No page is left beside it."));
    }
    PageFiles files = kept.pages();
    boolean clinician = Sharing.CLINICIAN.agreed(interview.answers());
    try {
      String today = surroundings.today();
      PageInput input =
          pages.input(interview, kept, today).with(pages.since(kept.document(), today));
      Optional<Planning> planning = Pages.planning(input, kept);
      files.write(Pages.loaded(Pages.ranked(input, planning), planning), clinician);
      return List.of(
          Written.of("Everything is kept. The page for the player:", files.player()),
          clinician
              ? Written.of("The page for the clinician:", files.clinician())
              : Written.of(
                  "No page for a clinician was written, since sharing with one was not agreed."));
    } catch (IOException e) {
      return List.of(Written.of("Everything is kept, but the pages could not be written."));
    }
  }

  private static boolean shares(Interview interview, String whom) {
    return interview
        .answers()
        .value(Sharing.FACT)
        .filter(v -> v instanceof Value.Codes c && c.codes().contains(whom))
        .isPresent();
  }

  /** Whether the player wanted nothing kept after the session, and says so again now. */
  private boolean forget(Interview interview) {
    if (!shares(interview, THIS_SESSION) || console.scripted()) {
      return false;
    }
    console.say(
        "You chose to keep this for this session only. Type keep to keep it all the same, or press Enter to delete it.");
    return console.ask("> ").map(l -> !l.strip().equalsIgnoreCase("keep")).orElse(false);
  }
}
