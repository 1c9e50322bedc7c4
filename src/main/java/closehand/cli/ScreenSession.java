package closehand.cli;

import closehand.bank.Bank;
import closehand.interview.Interview;
import closehand.report.Consultation;
import closehand.report.Glyphs;
import closehand.screen.CaseBook;
import closehand.screen.Effect;
import closehand.screen.ScreenFace;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/** One sitting at the full screen: the face before, the pages and last words after. */
final class ScreenSession implements AutoCloseable {
  private final Surroundings surroundings;
  private final Glyphs glyphs;
  private final ScreenCases book;
  private final ScreenFace face;

  ScreenSession(
      Surroundings surroundings,
      Cases cases,
      Optional<Path> bankFolder,
      Supplier<Bank> loading,
      Glyphs glyphs) {
    this.surroundings = surroundings;
    this.glyphs = glyphs;
    this.book = new ScreenCases(surroundings, cases, bankFolder, loading, glyphs);
    this.face = new ScreenFace(book, glyphs, SettingsFile.in(surroundings).read());
  }

  /** What is shown and takes the keys. */
  ScreenFace face() {
    return face;
  }

  /** Goes straight to this case; shows why where it cannot be opened. */
  ScreenSession with(CaseBook.Opened opened) {
    face.with(opened);
    return this;
  }

  /** Which characters are shown. */
  Glyphs glyphs() {
    return glyphs;
  }

  /** The cases the face sees. */
  ScreenCases book() {
    return book;
  }

  /**
   * After the screen is given back: keeps what is to be kept, writes the pages, and prints the page
   * where it stays readable.
   *
   * @return the exit code
   */
  int finish() throws IOException {
    PlainConsole console =
        new PlainConsole(surroundings, surroundings.input(), glyphs, !surroundings.typed());
    face.lastWords().forEach(console::say);
    int code = ExitCode.DONE;
    Optional<StoredCase> stored = book.stored();
    Optional<Interview> interview = face.interview();
    if (stored.isPresent() && interview.isPresent()) {
      code = finish(console, stored.get(), interview.get());
    } else if (interview.isPresent()) {
      console.say(Example.LAST);
    }
    surroundings.output().flush();
    return code;
  }

  /** What somebody goes on to, where it is so. */
  Optional<GoingOn.To> next() {
    return face.ending()
        .flatMap(
            ending ->
                switch (ending) {
                  case TO_PRACTICE -> Optional.of(GoingOn.To.PRACTICE);
                  case TO_TRIAL -> Optional.of(GoingOn.To.TRIAL);
                  default -> Optional.empty();
                });
  }

  private int finish(PlainConsole console, StoredCase stored, Interview interview)
      throws IOException {
    Effect.Ending ending = face.ending().orElse(Effect.Ending.CLOSED);
    if (ending == Effect.Ending.DELETED) {
      return ExitCode.DONE;
    }
    CaseDesk desk = new CaseDesk(book.pages(), stored, glyphs, surroundings.clock());
    if (ending == Effect.Ending.NO_CONSENT) {
      notices(console, desk, interview);
      console.say("Nothing more is written down.");
      book.leaving(stored, console).withoutConsent();
      return ExitCode.DONE;
    }
    if (ending == Effect.Ending.STOPPED) {
      notices(console, desk, interview);
      return book.leaving(stored, console).stopped(interview)
          ? ExitCode.DONE
          : ExitCode.INPUT_OUTPUT;
    }
    if (next().isEmpty()) {
      console.lines(desk.page(interview));
      console.gap();
    }
    if (!book.leaving(stored, console).keep(interview)) {
      return ExitCode.INPUT_OUTPUT;
    }
    return ExitCode.DONE;
  }

  /** What ended the session, once more where it stays readable. */
  private static void notices(PlainConsole console, CaseDesk desk, Interview interview) {
    desk.consult(interview).notices().stream()
        .filter(Consultation.Notice::endsSession)
        .forEach(n -> console.lines(n.lines()));
  }

  @Override
  public void close() throws IOException {
    book.close();
  }
}
