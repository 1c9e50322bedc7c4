package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseFolder;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.line.LineFace;
import closehand.line.Sitting;
import closehand.report.Glyphs;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Holds an interview line by line, new or opened again, and keeps it after every answer. */
final class InterviewCommand {
  private final Surroundings surroundings;
  private final Wanted wanted;
  private final Cases cases;
  private final Optional<PlainConsole> begun;
  private Optional<GoingOn.To> next = Optional.empty();

  /** What was asked for on the command line. */
  static final class Wanted {
    Optional<Path> bank = Optional.empty();
    Optional<String> caseName = Optional.empty();
    Optional<Path> home = Optional.empty();
    Optional<String> asker = Optional.empty();
    Optional<String> route = Optional.empty();
    Optional<String> script = Optional.empty();
    Optional<String> theme = Optional.empty();
    Optional<Path> transcript = Optional.empty();
    boolean noColour;
    boolean line;
    boolean lineWasSaid;
    boolean ascii;
    boolean review;

    /** Only tasks are wanted: the named one, or empty to choose. */
    Optional<String> measure = Optional.empty();

    private boolean folderWasSaid;

    /**
     * Says once what others can see of a folder that was named; what is made here shows nothing.
     */
    void sayWhoSeesTheFolder(Surroundings surroundings) {
      if (!folderWasSaid && home.filter(CaseFolder::showsItsNames).isPresent()) {
        surroundings
            .error()
            .println(
                "Others on this computer can see the names of the files in this folder,"
                    + " but not what is in the cases.");
      }
      folderWasSaid = true;
    }
  }

  InterviewCommand(Surroundings surroundings, Wanted wanted) {
    this(surroundings, wanted, Optional.empty());
  }

  /** With a console that was spoken on already, so that no line typed ahead is lost. */
  InterviewCommand(Surroundings surroundings, Wanted wanted, Optional<PlainConsole> begun) {
    this.surroundings = surroundings;
    this.wanted = wanted;
    this.begun = begun;
    this.cases = Cases.in(wanted.home, surroundings);
  }

  int run() throws IOException {
    Optional<Provenance.By> asker = wanted.asker.flatMap(Provenance.By::of);
    Optional<Interview.Route> route = wanted.route.flatMap(Interview.Route::of);
    if (asker.isPresent() != wanted.asker.isPresent()
        || route.isPresent() != wanted.route.isPresent()) {
      surroundings
          .error()
          .println(
              "--asker is player, helper, volunteer or clinician; --route is core, full or brief.");
      return ExitCode.USAGE;
    }
    wanted.sayWhoSeesTheFolder(surroundings);
    Optional<Integer> shown = new ScreenCommand(surroundings, wanted).run(asker, route);
    if (shown.isPresent()) {
      return shown.get();
    }
    try (InputStream input = input()) {
      return hold(input, asker, route);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private InputStream input() throws IOException {
    if (wanted.script.isEmpty() || wanted.script.get().equals("-")) {
      return surroundings.input();
    }
    Path file = Path.of(wanted.script.get());
    if (!Files.isRegularFile(file)) {
      throw new NoSuchFileException(file.toString());
    }
    return Files.newInputStream(file);
  }

  private int hold(
      InputStream input, Optional<Provenance.By> asker, Optional<Interview.Route> route)
      throws IOException {
    boolean scripted = wanted.script.isPresent() || !surroundings.typed();
    Glyphs glyphs = wanted.ascii || surroundings.plainAscii() ? Glyphs.ASCII : Glyphs.UNICODE;
    PlainConsole console =
        begun.orElseGet(() -> new PlainConsole(surroundings, input, glyphs, scripted));
    Ahead<BankSource.Loaded> loading = BankSource.ahead(wanted.bank);
    if (wanted.caseName.isPresent()) {
      return again(console, glyphs, loading, asker, route);
    }
    cases.brokenOff().ifPresent(console::say);
    console.say("Nothing here needs speed, colour or two keys at once.");
    console.say(
        "The player leads: any question may be skipped, and the player has the last word. At every question h lists what you can type.");
    Provenance.By by =
        asker.orElseGet(() -> scripted ? Provenance.By.VOLUNTEER : Sitting.askWho(console));
    Interview.Route way =
        route.orElseGet(() -> scripted ? Interview.Route.CORE : Sitting.askRoute(console));
    Optional<Bank> bank = bank(loading);
    if (bank.isEmpty()) {
      return ExitCode.BAD_DATA;
    }
    CaseOpening.Outcome.Ready fresh = opening(console, bank.get()).fresh(way, by);
    return run(console, glyphs, bank.get(), fresh.kept(), fresh.interview());
  }

  private CaseOpening opening(PlainConsole console, Bank bank) {
    return new CaseOpening(surroundings, cases, bank, console);
  }

  private int again(
      PlainConsole console,
      Glyphs glyphs,
      Ahead<BankSource.Loaded> loading,
      Optional<Provenance.By> asker,
      Optional<Interview.Route> route)
      throws IOException {
    Optional<Bank> bank = bank(loading);
    if (bank.isEmpty()) {
      return ExitCode.BAD_DATA;
    }
    CaseOpening.Outcome outcome =
        opening(console, bank.get()).again(wanted.caseName.orElseThrow(), wanted.review);
    if (outcome instanceof CaseOpening.Outcome.Ended ended) {
      surroundings.output().flush();
      return ended.exitCode();
    }
    CaseOpening.Outcome.Ready ready = (CaseOpening.Outcome.Ready) outcome;
    Interview resumed = ready.interview();
    if (asker.isPresent()) {
      resumed = resumed.after(new Message.Conduct(asker.get()));
    }
    if (route.isPresent()) {
      resumed = resumed.after(new Message.TakeRoute(route.get()));
    }
    return run(console, glyphs, bank.get(), ready.kept(), resumed);
  }

  private Optional<Bank> bank(Ahead<BankSource.Loaded> loading) throws IOException {
    BankSource.Loaded loaded = BankSource.await(loading);
    Commands.report(loaded.problems(), surroundings);
    return loaded.bank();
  }

  private int run(
      PlainConsole console, Glyphs glyphs, Bank bank, StoredCase kept, Interview interview)
      throws IOException {
    int code;
    try (kept) {
      code = lead(console, glyphs, bank, kept, interview);
    }
    return next.isPresent()
        ? new GoingOn(surroundings, wanted).run(next.get(), kept.name(), /* lines= */ true)
        : code;
  }

  private int lead(
      PlainConsole console, Glyphs glyphs, Bank bank, StoredCase kept, Interview interview)
      throws IOException {
    Pages pages = new Pages(bank);
    CaseDesk desk = new CaseDesk(pages, kept, glyphs, surroundings.clock());
    LineFace face = new LineFace(console, desk, interview);
    LineFace.Ending ending = wanted.measure.map(face::measure).orElseGet(face::run);
    if (ending == LineFace.Ending.DELETED) {
      return ExitCode.DONE;
    }
    Leaving leaving = new Leaving(surroundings, console, pages, kept, desk);
    if (ending == LineFace.Ending.NO_CONSENT) {
      leaving.withoutConsent();
      surroundings.output().flush();
      return ExitCode.DONE;
    }
    boolean all =
        ending == LineFace.Ending.STOPPED
            ? leaving.stopped(face.interview())
            : leaving.leave(face.interview());
    surroundings.output().flush();
    if (all && ending == LineFace.Ending.TO_PRACTICE) {
      next = Optional.of(GoingOn.To.PRACTICE);
    } else if (all && ending == LineFace.Ending.TO_TRIAL) {
      next = Optional.of(GoingOn.To.TRIAL);
    }
    return all ? exitCode(ending, face.interview()) : ExitCode.INPUT_OUTPUT;
  }

  private static int exitCode(LineFace.Ending ending, Interview interview) {
    return switch (ending) {
      case FINISHED, LEFT, TO_PRACTICE, TO_TRIAL, STOPPED, DELETED, NO_CONSENT -> ExitCode.DONE;
      case INPUT_ENDED -> interview.finished() ? ExitCode.DONE : ExitCode.UNFINISHED;
      case NOT_UNDERSTOOD -> ExitCode.BAD_DATA;
    };
  }
}
