package closehand.cli;

import closehand.bank.Bank;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.report.Glyphs;
import closehand.screen.Settings;
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
    return show(session -> {});
  }

  /**
   * Shows a new interview or the case wanted.
   *
   * @return the exit code, or nothing where the line face is to serve
   */
  Optional<Integer> run(Optional<Provenance.By> asker, Optional<Interview.Route> route)
      throws IOException {
    return show(
        session -> {
          if (wanted.caseName.isPresent()) {
            session.with(session.book().open(wanted.caseName.get()));
          } else if (asker.isPresent() || route.isPresent()) {
            session.with(
                session
                    .book()
                    .begin(
                        asker.orElse(Provenance.By.VOLUNTEER),
                        route.orElse(Interview.Route.CORE)));
          } else {
            session.face().beginning();
          }
        });
  }

  /** What is in sight first. */
  private interface Opening {
    void on(ScreenSession session);
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
    Optional<Theme> theme =
        Theme.chosen(wanted.theme, wanted.noColour, surroundings.environment());
    if (theme.isEmpty()) {
      surroundings.error().println("A theme is plain, contrast or mono.");
      return Optional.of(ExitCode.USAGE);
    }
    Ahead<BankSource.Loaded> loading = BankSource.ahead(wanted.bank);
    if (wanted.bank.isPresent() && BankSource.await(loading).bank().isEmpty()) {
      Commands.report(BankSource.await(loading).problems(), surroundings);
      return Optional.of(ExitCode.BAD_DATA);
    }
    return show(opening, theme.get(), loading);
  }

  private Optional<Integer> show(
      Opening opening, Theme theme, Ahead<BankSource.Loaded> loading) throws IOException {
    Settings settings = SettingsFile.in(surroundings).read();
    Optional<FullScreen> screen =
        FullScreen.takeOver(
            new FileInputStream(FileDescriptor.in),
            new FileOutputStream(FileDescriptor.out),
            surroundings.characters(),
            new FullScreen.Manner(theme, settings.holdMillis(), settings.bounceMillis()));
    if (screen.isEmpty()) {
      return lineByLine(FaceChoice.noSetUp());
    }
    Glyphs glyphs = wanted.ascii || surroundings.plainAscii() ? Glyphs.ASCII : Glyphs.UNICODE;
    Supplier<Bank> bank = () -> loading.get().bank().orElseThrow();
    try (ScreenSession session =
        new ScreenSession(surroundings, cases, wanted.bank, bank, glyphs)) {
      opening.on(session);
      screen.get().show(session.face());
      return Optional.of(session.finish());
    }
  }

  private Optional<Integer> lineByLine(FaceChoice choice) {
    if (surroundings.typed() && !wanted.line) {
      surroundings.output().println(choice.why());
    }
    return Optional.empty();
  }
}
