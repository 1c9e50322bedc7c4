package closehand.cli;

import closehand.bank.Bank;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.report.Glyphs;
import closehand.screen.CaseBook;
import closehand.screen.Wish;
import closehand.screen.frame.ScreenSize;
import closehand.screen.terminal.FaceChoice;
import closehand.screen.terminal.FullScreen;
import closehand.screen.terminal.Theme;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Supplier;

/** Opens the full screen where the terminal can serve; elsewhere says why the line face comes. */
final class ScreenCommand {
  private final Surroundings surroundings;
  private final InterviewCommand.Wanted wanted;
  private final Cases cases;

  ScreenCommand(Surroundings surroundings, InterviewCommand.Wanted wanted) {
    this.surroundings = surroundings;
    this.wanted = wanted;
    this.cases = Cases.in(wanted.home, surroundings);
  }

  /**
   * Shows the start screen until somebody leaves.
   *
   * @return the exit code, or nothing where the line face is to serve
   */
  Optional<Integer> start() throws IOException {
    return show(session -> Optional.empty());
  }

  /**
   * Shows a new interview or the case wanted.
   *
   * @return the exit code, or nothing where the line face is to serve
   */
  Optional<Integer> run(Optional<Provenance.By> asker, Optional<Interview.Route> route)
      throws IOException {
    return show(session -> open(session, asker, route));
  }

  private Optional<Integer> open(
      ScreenSession session, Optional<Provenance.By> asker, Optional<Interview.Route> route)
      throws IOException {
    if (wanted.caseName.isPresent()) {
      return again(session, wanted.caseName.get(), asker, route);
    }
    if (asker.isPresent() || route.isPresent()) {
      session
          .face()
          .beginning(asker.orElse(Provenance.By.VOLUNTEER), route.orElse(Interview.Route.CORE));
    } else {
      session.face().beginning();
    }
    return Optional.empty();
  }

  /** A saved case is looked up before the screen is taken over, so that a wrong name is told. */
  private Optional<Integer> again(
      ScreenSession session,
      String name,
      Optional<Provenance.By> asker,
      Optional<Interview.Route> route)
      throws IOException {
    CaseBook.Found found = session.book().find(name, new char[0]);
    if (found instanceof CaseBook.Found.Refused) {
      Commands.report(session.book().problems(), surroundings);
      return Optional.of(
          Commands.missing(session.book().problems()) ? ExitCode.NO_INPUT : ExitCode.BAD_DATA);
    }
    session
        .book()
        .conducting(
            interview -> {
              Interview asked =
                  asker.map(a -> interview.after(new Message.Conduct(a))).orElse(interview);
              return route.map(r -> asked.after(new Message.TakeRoute(r))).orElse(asked);
            });
    session
        .face()
        .opening(name, found, wanted.review ? Optional.of(Wish.REVIEW) : Optional.empty());
    return Optional.empty();
  }

  /** What is in sight first; an exit code where nothing is to be shown. */
  private interface Opening {
    Optional<Integer> on(ScreenSession session) throws IOException;
  }

  private Optional<Integer> show(Opening opening) throws IOException {
    FaceChoice choice =
        FaceChoice.of(
            new FaceChoice.Circumstances(
                wanted.line,
                wanted.script.isPresent(),
                surroundings.typed(),
                surroundings.environment(),
                System.getProperty("os.name", "")));
    if (!choice.fullScreen()) {
      return lineByLine(choice);
    }
    Optional<Theme> theme = Theme.chosen(wanted.theme, wanted.noColour, surroundings.environment());
    if (theme.isEmpty()) {
      surroundings.error().println("A theme is plain, contrast or mono.");
      return Optional.of(ExitCode.USAGE);
    }
    Thread characters = new Thread(FullScreen::prepare, "characters");
    characters.setDaemon(true);
    characters.start();
    Ahead<BankSource.Loaded> loading = BankSource.later(wanted.bank);
    if (wanted.bank.isPresent() && BankSource.await(loading).bank().isEmpty()) {
      Commands.report(BankSource.await(loading).problems(), surroundings);
      return Optional.of(ExitCode.BAD_DATA);
    }
    return show(opening, theme.get(), loading);
  }

  private Optional<Integer> show(Opening opening, Theme theme, Ahead<BankSource.Loaded> loading)
      throws IOException {
    Glyphs glyphs = wanted.ascii || surroundings.plainAscii() ? Glyphs.ASCII : Glyphs.UNICODE;
    Supplier<Bank> bank = () -> loading.get().bank().orElseThrow();
    Optional<GoingOn.To> next;
    String name;
    int code;
    try (ScreenSession session =
        new ScreenSession(surroundings, cases, wanted.bank, bank, glyphs)) {
      if (wanted.transcript.isPresent()) {
        session.face().followedBy(Transcript.in(wanted.transcript.get(), surroundings, glyphs));
      }
      Optional<Integer> ended = opening.on(session);
      if (ended.isPresent()) {
        return ended;
      }
      Ahead<Optional<FullScreen>> taking = Ahead.begin("terminal", new Taking(surroundings, theme));
      // While the terminal is asked, what it will show is laid out once: the second time is quick.
      session.face().frame(ScreenSize.USUAL);
      Optional<FullScreen> screen = taking.get();
      if (screen.isEmpty()) {
        return lineByLine(FaceChoice.noSetUp());
      }
      session.book().whenTroubleChanges(screen.get()::note);
      screen.get().show(session.face(), loading::begin);
      code = session.finish();
      next = session.next();
      name = session.book().stored().map(StoredCase::name).orElse("");
    }
    return Optional.of(
        code == ExitCode.DONE && next.isPresent() && !name.isEmpty()
            ? new GoingOn(surroundings, wanted).run(next.get(), name, /* lines= */ false)
            : code);
  }

  /** Takes the terminal over on another thread. */
  private record Taking(Surroundings surroundings, Theme theme)
      implements Supplier<Optional<FullScreen>> {
    @Override
    public Optional<FullScreen> get() {
      return FullScreen.takeOver(
          new FileInputStream(FileDescriptor.in),
          new FileOutputStream(FileDescriptor.out),
          surroundings.characters(),
          theme);
    }
  }

  private Optional<Integer> lineByLine(FaceChoice choice) {
    if (!wanted.lineWasSaid) {
      surroundings.output().println(choice.why());
      wanted.lineWasSaid = true;
    }
    return Optional.empty();
  }
}
