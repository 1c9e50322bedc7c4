package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.bank.Stops;
import closehand.casefile.CaseFile;
import closehand.casefile.CaseLock;
import closehand.casefile.CaseName;
import closehand.casefile.CaseStore;
import closehand.casefile.Holder;
import closehand.interview.CaseRecord;
import closehand.interview.Interview;
import closehand.json.TrialReader;
import closehand.line.BeforeFace;
import closehand.line.TrialFace;
import closehand.measure.before.Before;
import closehand.measure.trial.Trial;
import closehand.measure.trial.TrialDialogue;
import closehand.report.Diary;
import closehand.report.Glyphs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Takes down a trial, line by line, and keeps it in its case after every answer. */
final class TrialCommand {
  private final Surroundings surroundings;
  private final BankOption options;
  private final Cases cases;
  private final boolean line;

  /**
   * For one run.
   *
   * @param line whether the line face is wanted even where the full screen would do
   */
  TrialCommand(Surroundings surroundings, BankOption options, Cases cases, boolean line) {
    this.surroundings = surroundings;
    this.options = options;
    this.cases = cases;
    this.line = line;
  }

  int run(String name) throws IOException {
    if (!CaseName.isLawful(name)) {
      surroundings.error().println("Name a saved case by its name.");
      return ExitCode.USAGE;
    }
    BankSource.Loaded loaded = BankSource.await(BankSource.ahead(options.folder()));
    Commands.report(loaded.problems(), surroundings);
    if (loaded.bank().isEmpty()) {
      return ExitCode.BAD_DATA;
    }
    if (!cases.store().names().contains(name)) {
      surroundings.error().println("There is no such case.");
      return ExitCode.NO_INPUT;
    }
    Holder me =
        new Holder(
            System.getProperty("user.name", ""),
            ProcessHandle.current().pid(),
            Moment.now(surroundings.clock()));
    CaseLock.Taking taking = cases.store().lock(name, me);
    if (taking instanceof CaseLock.Taking.Held) {
      surroundings.error().println("The case is open in another window. Close it there first.");
      return ExitCode.CANNOT_CREATE;
    }
    try {
      return open(name, loaded.bank().get());
    } catch (UncheckedIOException e) {
      throw e.getCause();
    } finally {
      if (taking instanceof CaseLock.Taking.Taken taken) {
        taken.lock().close();
      }
    }
  }

  private int open(String name, Bank bank) throws IOException {
    CaseStore.Opened opened = cases.open(name, bank, surroundings.passphrases());
    if (opened instanceof CaseStore.Opened.Refused refused) {
      Commands.report(refused.problems(), surroundings);
      return ExitCode.BAD_DATA;
    }
    CaseFile file = ((CaseStore.Opened.Case) opened).file();
    if (!file.dropped().isEmpty()) {
      surroundings
          .error()
          .println(
              "The case was made with another version of the questions. Open it with closehand interview first.");
      return ExitCode.BAD_DATA;
    }
    List<Problem> problems = new ArrayList<>();
    List<Trial> trials = TrialReader.read(file.document().trials(), problems);
    Commands.report(problems, surroundings);
    Glyphs glyphs = options.glyphs(surroundings);
    PlainConsole console =
        new PlainConsole(surroundings, surroundings.input(), glyphs, !surroundings.typed());
    Interview interview = file.saved().open(bank.questionnaire());
    Anew anew = new Anew(bank, interview, Moment.now(surroundings.clock()));
    TrialGate gate = new TrialGate(new Pages(bank), glyphs, surroundings.today());
    Diary diary = Diaries.of(file.document());
    CaseRecord record = file.document().record();
    Optional<List<String>> closed = gate.closed(interview, record, trials, diary, anew.facts());
    if (closed.isPresent()) {
      console.lines(closed.get());
      surroundings.output().flush();
      return problems.isEmpty() ? ExitCode.DONE : ExitCode.BAD_DATA;
    }
    TrialKeeping keeping = new TrialKeeping(cases, bank, file);
    Asked asked =
        new Asked(
            anew.before(),
            before -> {
              List<String> lines = new ArrayList<>(keeping.keep(d -> anew.kept(d, before)));
              gate.closed(anew.after(before), record, trials, diary, Set.of())
                  .ifPresent(lines::addAll);
              return lines;
            });
    return lead(
        console, keeping, asked, problems.isEmpty() ? trials : List.of(), trials, stops(bank));
  }

  private static Stops stops(Bank bank) {
    return bank.tasks().orElseThrow().stops();
  }

  /**
   * What is asked before a trial.
   *
   * @param settle keeps what was said and tells why no trial may begin; nothing where one may
   */
  record Asked(Before before, Function<Before, List<String>> settle) {}

  /**
   * Leads through a trial.
   *
   * @param mayGoOn trials of which the last may be gone on with
   */
  private int lead(
      PlainConsole console,
      TrialKeeping keeping,
      Asked asked,
      List<Trial> mayGoOn,
      List<Trial> trials,
      Stops stops)
      throws IOException {
    String today = surroundings.today();
    Optional<Trial> open =
        mayGoOn.isEmpty()
            ? Optional.empty()
            : Optional.of(mayGoOn.get(mayGoOn.size() - 1)).filter(t -> !t.done());
    boolean goOn = open.map(t -> t.day().equals(today)).orElse(false);
    if (open.isPresent()) {
      console.say(
          goOn
              ? "This trial was begun today and is gone on with."
              : "The trial of "
                  + Moment.day(open.get().day())
                  + " was not finished. It stays as it is; this is a new one.");
    }
    if (goOn) {
      keeping.goOn();
    }
    List<Trial> earlier = goOn ? trials.subList(0, trials.size() - 1) : trials;
    Trial trial = goOn ? open.orElseThrow() : Trial.begun(today);
    TrialDialogue dialogue = TrialDialogue.on(trial, earlier, stops);
    TrialScreen screen = new TrialScreen(surroundings, options.glyphs(surroundings), line);
    Optional<TrialScreen.Shown> shown =
        screen.show(asked, dialogue, now -> keeping.keep(now, surroundings));
    if (shown.isPresent() && !shown.get().begun()) {
      return ExitCode.DONE;
    }
    if (shown.isPresent()) {
      Trial last = shown.get().trial();
      TrialFace.Ending ending = last.done() ? TrialFace.Ending.FINISHED : TrialFace.Ending.LEFT;
      farewell(console, ending, last, keeping);
      surroundings.output().flush();
      return exitCode(ending, keeping);
    }
    console.say(screen.why());
    if (!new BeforeFace(console, asked.before(), asked.settle()).run()) {
      surroundings.output().flush();
      return ExitCode.DONE;
    }
    TrialFace face = new TrialFace(console, dialogue, now -> keeping.keep(now, surroundings));
    TrialFace.Ending ending = face.run();
    farewell(console, ending, face.trial(), keeping);
    surroundings.output().flush();
    return exitCode(ending, keeping);
  }

  private static void farewell(
      PlainConsole console, TrialFace.Ending ending, Trial trial, TrialKeeping keeping) {
    console.gap();
    if (ending == TrialFace.Ending.FINISHED) {
      console.say(
          "Thank you. That was the whole trial."
              + (keeping.isKept() ? " Everything is kept." : ""));
      console.say(
          "Ask in 24 to 48 hours how it was: pain that is still there, numbness, swelling, a skin mark or a crash"
              + " means ease off, and more than a day of it means medical advice.");
      if (trial.stopped().isPresent()) {
        console.say(
            "Before another trial, go through pain and the warning signs again: closehand interview "
                + keeping.name()
                + " --review.");
      }
    }
    console.say(
        "closehand compare "
            + keeping.name()
            + " sets two set-ups side by side; closehand due tells when to ask again.");
  }

  private static int exitCode(TrialFace.Ending ending, TrialKeeping keeping) {
    if (!keeping.isKept()) {
      return ExitCode.INPUT_OUTPUT;
    }
    return switch (ending) {
      case FINISHED, LEFT -> ExitCode.DONE;
      case INPUT_ENDED -> ExitCode.UNFINISHED;
      case NOT_UNDERSTOOD -> ExitCode.BAD_DATA;
    };
  }
}
