package closehand.cli;

import closehand.bank.Problem;
import closehand.json.PointingWriter;
import closehand.json.PressLogReader;
import closehand.measure.practice.LoggedPresses;
import closehand.measure.practice.PointingFindings;
import closehand.measure.practice.PointingTask;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.Prompts;
import closehand.measure.practice.Sheet;
import closehand.measure.practice.Signal;
import closehand.measure.practice.Try;
import closehand.plan.PlanAsk;
import closehand.plan.Planned;
import closehand.plan.Planning;
import closehand.plan.supply.SuppliedInput;
import closehand.report.Diary;
import closehand.report.Glyphs;
import closehand.report.PageInput;
import closehand.report.TaskGate;
import closehand.report.practice.Beforehand;
import closehand.report.practice.PracticeSheets;
import closehand.screen.Settings;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Showing;
import closehand.screen.practice.PointingFace;
import closehand.screen.practice.PracticeFace;
import closehand.screen.terminal.FaceChoice;
import closehand.screen.terminal.FullScreen;
import closehand.screen.terminal.Theme;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** Button check and practice of a control plan, at the terminal or from a log. */
final class PractiseCommand {
  private static final int DAYS_A_WEEK = 7;

  private final Surroundings surroundings;
  private final BankOption bank;
  private final AnswersOption source;
  private final Wanted wanted;

  /** What was asked for on the command line. */
  record Wanted(
      OptionalInt game,
      Optional<Path> log,
      boolean prompts,
      List<String> ways,
      OptionalInt week,
      OptionalLong seed,
      boolean line) {
    Wanted {
      ways = List.copyOf(ways);
    }
  }

  PractiseCommand(Surroundings surroundings, BankOption bank, AnswersOption source, Wanted wanted) {
    this.surroundings = surroundings;
    this.bank = bank;
    this.source = source;
    this.wanted = wanted;
  }

  /** Everything one sitting works with. */
  private record Ready(
      CaseLoading loading,
      PracticeKeeping keeping,
      Planned planned,
      List<PracticeRecord> earlier,
      PracticeLoop loop,
      CasePractice.Sitting sitting) {}

  int run() throws IOException {
    CaseLoading loading = new CaseLoading(surroundings, bank.folder(), source);
    Optional<Case> found = loading.load();
    if (found.isEmpty()) {
      return loading.exitCode();
    }
    Case one = found.get();
    PageInput input = loading.pages().input(one, surroundings.today());
    List<PracticeRecord> earlier = one.document().map(d -> d.practised()).orElse(List.of());
    Diary diary = one.document().map(Diaries::of).orElse(Diary.EMPTY);
    List<String> missing = Beforehand.missing(input, earlier, diary);
    Optional<Planning> planning = Pages.planning(input, one);
    if (planning.isEmpty() || !missing.isEmpty()) {
      return notNow(missing);
    }
    int slot = wanted.game().orElse(planning.get().slots().stream().findFirst().orElse(1) - 1) + 1;
    if (!planning.get().slots().contains(slot)) {
      surroundings.error().println("There is no such game; games are counted from 0.");
      return ExitCode.USAGE;
    }
    return run(ready(loading, input, planning.get(), earlier, diary, slot));
  }

  private int notNow(List<String> missing) {
    PlainConsole console = console();
    console.say("Practice cannot begin now.");
    missing.forEach(m -> console.item("", m));
    if (missing.isEmpty()) {
      console.say("There is no control plan yet, since suggestions wait for a health check.");
    }
    surroundings.output().flush();
    return ExitCode.UNFINISHED;
  }

  private Ready ready(
      CaseLoading loading,
      PageInput input,
      Planning planning,
      List<PracticeRecord> earlier,
      Diary diary,
      int slot) {
    TaskGate gate = TaskGate.of(input.bank()).orElseThrow();
    Planned planned = planning.inSession(slot, PlanAsk.USUAL, () -> PlanWork.PLAN);
    PracticeKeeping keeping = PracticeKeeping.of(surroundings, source, loading);
    long seed = wanted.seed().orElse(surroundings.clock().millis());
    CasePractice.Sitting sitting =
        new CasePractice.Sitting(
            keeping.at(),
            wanted.week().orElse(week(earlier, slot - 1)),
            seed,
            Beforehand.tired(input.answers()),
            gate.secondsLeft(diary, input.isoDate()),
            gate.book().stops());
    return new Ready(
        loading,
        keeping,
        planned,
        earlier,
        new PracticeLoop(planning, planned, earlier, keeping, seed),
        sitting);
  }

  /** Weeks since the first practice of this game. */
  private int week(List<PracticeRecord> earlier, int game) {
    return earlier.stream()
        .filter(r -> r.game() == game)
        .findFirst()
        .map(
            r ->
                ChronoUnit.DAYS.between(
                    LocalDate.parse(r.day()), LocalDate.now(surroundings.clock())))
        .map(days -> (int) Math.max(0, days / DAYS_A_WEEK) + 1)
        .orElse(1);
  }

  private int run(Ready ready) throws IOException {
    if (wanted.prompts()) {
      return prompts(ready);
    }
    if (wanted.log().isPresent()) {
      return log(ready, wanted.log().get());
    }
    FaceChoice choice =
        FaceChoice.of(
            new FaceChoice.Circumstances(
                wanted.line(),
                /* scripted= */ false,
                surroundings.typed(),
                surroundings.environment(),
                System.getProperty("os.name", "")));
    if (!choice.fullScreen()) {
      return lines(ready, choice.why());
    }
    return screen(ready);
  }

  private Showing shown(Ready ready) {
    Settings settings = SettingsFile.in(surroundings).read();
    Guards guards = new Guards(settings.holdMillis(), settings.bounceMillis());
    if (!wanted.ways().isEmpty()) {
      return new PointingFace(
          wanted.ways(),
          t -> pointed(ready, t),
          ready.sitting().stops(),
          ready.sitting().mostSeconds(),
          glyphs(),
          guards);
    }
    CasePractice desk =
        new CasePractice(ready.planned(), ready.earlier(), ready.loop(), ready.sitting());
    return new PracticeFace(desk, glyphs(), guards);
  }

  private static List<String> pointed(Ready ready, PointingTask task) {
    PointingFindings found = PointingFindings.of(task);
    List<String> lines = new ArrayList<>();
    try {
      String at = ready.sitting().at();
      lines.addAll(ready.keeping().keep(PointingWriter.write(at, task, found)));
    } catch (IOException e) {
      lines.add("What was measured could not be kept.");
    }
    lines.addAll(found.words());
    return lines;
  }

  private int screen(Ready ready) throws IOException {
    Optional<Theme> theme =
        Theme.chosen(Optional.empty(), /* noColour= */ false, surroundings.environment());
    Optional<FullScreen> screen =
        FullScreen.takeOver(
            new FileInputStream(FileDescriptor.in),
            new FileOutputStream(FileDescriptor.out),
            surroundings.characters(),
            theme.orElse(Theme.PLAIN));
    if (screen.isEmpty()) {
      return lines(ready, FaceChoice.noSetUp().why());
    }
    screen.get().show(shown(ready), () -> {});
    return ExitCode.DONE;
  }

  private int lines(Ready ready, String why) throws IOException {
    PlainConsole console = console();
    if (!surroundings.typed()) {
      console.say(
          "Nobody can time a press through a pipe. Practise at a terminal, or give a log of"
              + " presses with --log FILE; --prompts prints what to ask.");
      surroundings.output().flush();
      return ExitCode.USAGE;
    }
    console.say(why);
    if (!wanted.ways().isEmpty()) {
      console.say("Pointing needs the full screen: lines have no places to point at.");
      surroundings.output().flush();
      return ExitCode.USAGE;
    }
    CasePractice desk =
        new CasePractice(ready.planned(), ready.earlier(), ready.loop(), ready.sitting());
    new LinePractice(console, desk, ready.loop(), ready.planned(), ready.sitting()).run();
    surroundings.output().flush();
    return ExitCode.DONE;
  }

  /** Every input by its id: what a log names needs no key. */
  private static Sheet sheet(Planned planned) {
    Map<String, Signal> named = new LinkedHashMap<>();
    for (SuppliedInput input : PracticeSheets.inputs(planned)) {
      named.put(input.id(), Signal.key(input.id()));
    }
    return PracticeSheets.of(planned, named);
  }

  private int prompts(Ready ready) {
    Sheet sheet = sheet(ready.planned());
    PlainConsole console = console();
    console.say(
        "Ask for these one after the other, with a rest of half a minute after each round. In a"
            + " log, name the action and the input by the words in brackets.");
    int round = 0;
    for (var cues : Prompts.of(sheet, ready.sitting().week(), ready.sitting().seed())) {
      console.gap();
      console.say("Round " + ++round);
      for (var cue : cues) {
        List<String> names = new ArrayList<>();
        cue.actions()
            .forEach(
                a -> names.add(sheet.job(a).name() + " (" + a + ", " + sheet.job(a).input() + ")"));
        console.item("-", String.join(", then ", names));
      }
    }
    surroundings.output().flush();
    return ExitCode.DONE;
  }

  private int log(Ready ready, Path file) throws IOException {
    byte[] bytes =
        file.toString().equals("-")
            ? surroundings.input().readAllBytes()
            : Files.readAllBytes(file);
    List<Problem> problems = new ArrayList<>();
    Sheet sheet = sheet(ready.planned());
    Optional<LoggedPresses> log = PressLogReader.read(file.toString(), bytes, sheet, problems);
    Commands.report(problems, surroundings);
    if (log.isEmpty()) {
      return ExitCode.BAD_DATA;
    }
    PlainConsole console = console();
    if (log.get().lostRounds() > 0) {
      console.say("Rounds that were disturbed, of which nothing counts: " + log.get().lostRounds());
    }
    List<Try> tries = log.get().tries(sheet);
    if (tries.isEmpty()) {
      console.say("Nothing in this log counts, so nothing of it is kept.");
      surroundings.output().flush();
      return ExitCode.DONE;
    }
    int game = ready.planned().plan().game();
    if (ready.earlier().stream().anyMatch(r -> r.game() == game && r.hasPressesOf(tries))) {
      surroundings
          .error()
          .println(
              "These presses are kept already, from an earlier log. They are not counted again.");
      return ExitCode.BAD_DATA;
    }
    PracticeRecord record =
        new PracticeRecord(
            ready.sitting().at(),
            game,
            ready.sitting().week(),
            /* timed= */ true,
            Map.of(),
            tries,
            Optional.empty(),
            Map.of());
    boolean ask = surroundings.typed() && !file.toString().equals("-");
    new PracticeTalk(console, ready.loop()).told(ready.loop().practised(record), ask);
    surroundings.output().flush();
    return ExitCode.DONE;
  }

  private Glyphs glyphs() {
    return bank.glyphs(surroundings);
  }

  private PlainConsole console() {
    return new PlainConsole(surroundings, surroundings.input(), glyphs(), !surroundings.typed());
  }
}
