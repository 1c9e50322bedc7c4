package closehand.cli;

import closehand.interview.Interview;
import closehand.json.PointingWriter;
import closehand.measure.before.Before;
import closehand.measure.practice.PointingFindings;
import closehand.measure.practice.PointingTask;
import closehand.measure.practice.PracticeRecord;
import closehand.plan.PlanAsk;
import closehand.plan.Planned;
import closehand.plan.Planning;
import closehand.report.Diary;
import closehand.report.Glyphs;
import closehand.report.PageInput;
import closehand.report.StopNotice;
import closehand.report.TaskGate;
import closehand.report.practice.Beforehand;
import closehand.screen.Settings;
import closehand.screen.frame.Guards;
import closehand.screen.frame.InTurn;
import closehand.screen.frame.Showing;
import closehand.screen.practice.BeforeFace;
import closehand.screen.practice.PointingFace;
import closehand.screen.practice.PracticeFace;
import closehand.screen.terminal.FaceChoice;
import closehand.screen.terminal.FullScreen;
import closehand.screen.terminal.Theme;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;

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
      CasePractice.Sitting sitting,
      Before before,
      Function<Before, List<String>> settle) {}

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
    Interview interview =
        one.interview().orElseGet(() -> Anew.interview(input.bank(), one.answers()));
    Anew anew = new Anew(input.bank(), interview, Moment.now(surroundings.clock()));
    boolean now = !wanted.prompts() && wanted.log().isEmpty();
    List<String> missing = Beforehand.missing(input, earlier, diary, now ? anew.facts() : Set.of());
    Optional<Planning> planning = Pages.planning(input, one);
    if (planning.isEmpty() || !missing.isEmpty()) {
      return notNow(missing);
    }
    int slot = wanted.game().orElse(planning.get().slots().stream().findFirst().orElse(1) - 1) + 1;
    if (!planning.get().slots().contains(slot)) {
      surroundings.error().println("There is no such game; games are counted from 0.");
      return ExitCode.USAGE;
    }
    return run(
        ready(
            loading,
            input,
            planning.get(),
            earlier,
            diary,
            slot,
            new Asking(anew, before -> missing(loading, one, anew.after(before), earlier, diary))));
  }

  /**
   * What is asked anew before practice.
   *
   * @param judged why nothing begins on what was said, as sentences; nothing where it may
   */
  private record Asking(Anew anew, Function<Before, List<String>> judged) {}

  /** Why practice cannot begin on answers given anew; of a stop its whole notice. */
  private List<String> missing(
      CaseLoading loading, Case one, Interview now, List<PracticeRecord> earlier, Diary diary) {
    Case changed =
        new Case(now.answers(), one.name(), Optional.of(now), one.document(), one.profiles());
    PageInput input = loading.pages().input(changed, surroundings.today());
    List<String> lines = new ArrayList<>();
    if (!input.together().stops().isEmpty()) {
      String notice = StopNotice.of(input.together().stops(), glyphs());
      lines.addAll(List.of(notice.strip().split("\n", -1)));
    }
    lines.addAll(Beforehand.missing(input, earlier, diary, Set.of()));
    return lines;
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
      int slot,
      Asking asking) {
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
        sitting,
        asking.anew().before(),
        before -> settled(asking, keeping, before));
  }

  private static List<String> settled(Asking asking, PracticeKeeping keeping, Before before) {
    List<String> lines = new ArrayList<>();
    try {
      lines.addAll(keeping.keepAnswers(d -> asking.anew().kept(d, before)));
    } catch (IOException e) {
      lines.add("What was said could not be kept, so nothing begins.");
    }
    lines.addAll(asking.judged().apply(before));
    return lines;
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
      return written(ready).prompts(ready.planned());
    }
    if (wanted.log().isPresent()) {
      return written(ready).log(ready.planned(), ready.earlier(), wanted.log().get());
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
    Settings settings = SettingsFile.in(surroundings).read();
    BeforeFace before =
        new BeforeFace(
            ready.before(),
            ready.settle(),
            glyphs(),
            new Guards(settings.holdMillis(), settings.bounceMillis()));
    screen
        .get()
        .show(
            new InTurn(
                before, () -> before.isClear() ? Optional.of(shown(ready)) : Optional.empty()));
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
    if (!new closehand.line.BeforeFace(console, ready.before(), ready.settle()).run()) {
      surroundings.output().flush();
      return ExitCode.DONE;
    }
    CasePractice desk =
        new CasePractice(ready.planned(), ready.earlier(), ready.loop(), ready.sitting());
    new LinePractice(console, desk, ready.loop(), ready.planned(), ready.sitting()).run();
    surroundings.output().flush();
    return ExitCode.DONE;
  }

  private PracticeLog written(Ready ready) {
    return new PracticeLog(surroundings, console(), ready.loop(), ready.sitting());
  }

  private Glyphs glyphs() {
    return bank.glyphs(surroundings);
  }

  private PlainConsole console() {
    return new PlainConsole(surroundings, surroundings.input(), glyphs(), !surroundings.typed());
  }
}
