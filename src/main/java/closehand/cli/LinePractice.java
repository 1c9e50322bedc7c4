package closehand.cli;

import closehand.bank.StopSign;
import closehand.interview.WellKnown;
import closehand.line.Console;
import closehand.line.StopTyped;
import closehand.measure.practice.ButtonCheck;
import closehand.measure.practice.CheckWords;
import closehand.measure.practice.Cue;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.Prompts;
import closehand.measure.practice.Sheet;
import closehand.measure.practice.Signal;
import closehand.measure.practice.StopReason;
import closehand.measure.practice.Try;
import closehand.plan.Planned;
import closehand.report.practice.PracticeSheets;
import closehand.screen.practice.StopWords;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/**
 * Practice line by line: an input is pressed, then Enter by whoever sits at the keyboard. Which key
 * came is honest, how long it took is not, so nothing is timed.
 */
final class LinePractice {
  private static final long SECOND = 1_000_000_000L;

  private final Console console;
  private final CasePractice desk;
  private final PracticeLoop loop;
  private final Planned planned;
  private final CasePractice.Sitting sitting;
  private final Set<Signal> ofPlan = new HashSet<>();
  private Optional<StopReason> stop = Optional.empty();
  private boolean gone;
  private int seconds;

  LinePractice(
      Console console,
      CasePractice desk,
      PracticeLoop loop,
      Planned planned,
      CasePractice.Sitting sitting) {
    this.console = console;
    this.desk = desk;
    this.loop = loop;
    this.planned = planned;
    this.sitting = sitting;
  }

  void run() throws IOException {
    desk.first("typing stop or pain, then Enter, always stops").forEach(console::say);
    console.say(
        "Line by line nothing is timed: press the input, then let Enter follow on the keyboard."
            + " Any line that begins with stop or pain stops at once; p alone does too, where it is"
            + " no key of the plan.");
    Map<String, Signal> found = check();
    if (stop.isEmpty() && (gone || found.isEmpty())) {
      return;
    }
    // A check that was broken off is no ground for another day.
    Map<String, Signal> signals = stop.isPresent() ? Map.of() : found;
    List<Try> tries = stop.isPresent() ? List.of() : rounds(PracticeSheets.of(planned, signals));
    stop.ifPresent(reason -> StopWords.of(reason, desk.stops()).forEach(console::say));
    PracticeRecord record =
        new PracticeRecord(
            sitting.at(),
            planned.plan().game(),
            sitting.week(),
            /* timed= */ false,
            signals,
            tries,
            stop,
            seconds,
            Map.of());
    new PracticeTalk(console, loop).told(loop.practised(record), !gone && stop.isEmpty());
  }

  private boolean over() {
    return gone || stop.isPresent();
  }

  private Map<String, Signal> check() {
    ButtonCheck check = ButtonCheck.of(desk.inputs());
    check.wanted().forEach(w -> w.expected().ifPresent(ofPlan::add));
    while (!check.done() && !over()) {
      console.say(
          "Press: "
              + check.asked().name()
              + ", with your "
              + check.asked().part()
              + ". Enter alone if nothing comes.");
      Optional<String> line = line();
      if (line.isPresent()) {
        check = taken(check, line.get());
        ofPlan.addAll(check.signals().values());
      }
    }
    if (!over()) {
      CheckWords.of(check).forEach(console::say);
    }
    return check.signals();
  }

  private static ButtonCheck taken(ButtonCheck check, String line) {
    return line.isEmpty()
        ? check.nothingCame()
        : new ButtonCheck(
                check.wanted(),
                check.arrived(),
                check.at(),
                Long.MIN_VALUE / 2,
                Optional.empty(),
                0,
                "")
            .pressed(signal(line), 0);
  }

  /** Of a key that came several times only the first counts. */
  private static Signal signal(String line) {
    return line.isBlank()
        ? Signal.key("Space")
        : Signal.key(line.substring(0, line.offsetByCodePoints(0, 1)));
  }

  /** A line; nothing where the player stops or input ends. */
  private Optional<String> line() {
    Optional<String> line = console.ask("> ");
    if (line.isEmpty()) {
      gone = true;
    } else if (StopTyped.in(line.get()) || isPainKey(line.get())) {
      stop = which(line.get());
      return stop.isPresent() ? Optional.empty() : line;
    }
    return line;
  }

  private boolean isPainKey(String line) {
    String key = line.strip();
    return key.equalsIgnoreCase("p") && !ofPlan.contains(Signal.key(key));
  }

  /** Which sign it was; one letter alone may also be what an input sent. */
  private Optional<StopReason> which(String line) {
    console.gap();
    console.say("Stopped. Let go and rest. What is it?");
    List<Optional<StopSign>> signs = new ArrayList<>();
    for (StopSign sign : StopSign.values()) {
      signs.add(Optional.of(sign));
    }
    if (!StopTyped.in(line)) {
      signs.add(Optional.empty());
    }
    Optional<StopSign> usual = Optional.of(StopTyped.ofPain(line) ? StopSign.PAIN : StopSign.WISH);
    return StopTyped.which(
            console,
            usual,
            signs,
            s -> s.map(desk.stops()::words).orElse("It came from the input: go on"))
        .map(StopReason::of);
  }

  private List<Try> rounds(Sheet sheet) {
    List<Try> kept = new ArrayList<>();
    int before = pain();
    List<List<Cue>> rounds = Prompts.of(sheet, sitting.week(), sitting.seed());
    for (int round = 0; round < rounds.size() && !over(); round++) {
      console.gap();
      console.say("Round " + (round + 1) + " of " + rounds.size() + ".");
      List<Try> going = new ArrayList<>();
      long begun = console.nanos();
      for (Cue cue : rounds.get(round)) {
        for (String action : cue.actions()) {
          if (!over()) {
            asked(sheet, round, action).ifPresent(going::add);
          }
        }
      }
      seconds += (int) ((console.nanos() - begun) / SECOND);
      if (!over()) {
        kept.addAll(going);
        int now = pain();
        if (now >= WellKnown.PAIN_THAT_STOPS || now - before >= WellKnown.PAIN_RISE_THAT_STOPS) {
          stop = Optional.of(StopReason.of(StopSign.PAIN));
        } else if (stop.isEmpty() && seconds > sitting.mostSeconds()) {
          stop = Optional.of(StopReason.TIME);
        } else if (round + 1 < rounds.size()) {
          console.say("Rest now: half a minute at least. Enter goes on.");
          line();
        }
      }
    }
    return kept;
  }

  private int pain() {
    console.say("How much does it hurt now? 0 is not at all, 10 the worst.");
    while (!over()) {
      Optional<String> line = line();
      if (line.isPresent() && line.get().strip().matches("[0-9]|10")) {
        int pain = Integer.parseInt(line.get().strip());
        if (pain >= WellKnown.PAIN_THAT_STOPS) {
          stop = Optional.of(StopReason.of(StopSign.PAIN));
        }
        return pain;
      }
      console.say("A number from 0 to 10, or stop.");
    }
    return 0;
  }

  private Optional<Try> asked(Sheet sheet, int round, String action) {
    Sheet.Job job = sheet.job(action);
    console.say(job.held().map(h -> "Hold " + h + " and press: ").orElse("") + job.name() + ".");
    Optional<String> line = line();
    if (line.isEmpty()) {
      return Optional.empty();
    }
    Sheet.Target target = sheet.target(action);
    Optional<Signal> came =
        line.get().isEmpty() ? Optional.empty() : Optional.of(signal(line.get()));
    boolean hit = came.equals(Optional.of(target.signal()));
    Optional<Sheet.Target> other = hit ? Optional.empty() : came.flatMap(sheet::sending);
    other.ifPresent(o -> console.say("That was: " + o.name() + "."));
    return Optional.of(
        new Try(
            round,
            action,
            job.input(),
            hit,
            OptionalLong.empty(),
            other.map(Sheet.Target::input),
            other.filter(o -> o.place().isBeside(target.place())).isPresent(),
            Try.Marks.NONE));
  }
}
