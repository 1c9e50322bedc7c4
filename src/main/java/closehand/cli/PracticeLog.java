package closehand.cli;

import closehand.bank.Problem;
import closehand.json.PressLogReader;
import closehand.measure.practice.LoggedPresses;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.Prompts;
import closehand.measure.practice.Sheet;
import closehand.measure.practice.Signal;
import closehand.measure.practice.Try;
import closehand.plan.Planned;
import closehand.plan.supply.SuppliedInput;
import closehand.report.practice.PracticeSheets;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Practice away from this terminal: what to ask there, and the presses that were logged. */
final class PracticeLog {
  private final Surroundings surroundings;
  private final PlainConsole console;
  private final PracticeLoop loop;
  private final CasePractice.Sitting sitting;

  PracticeLog(
      Surroundings surroundings,
      PlainConsole console,
      PracticeLoop loop,
      CasePractice.Sitting sitting) {
    this.surroundings = surroundings;
    this.console = console;
    this.loop = loop;
    this.sitting = sitting;
  }

  /** Every input by its id: what a log names needs no key. */
  private static Sheet sheet(Planned planned) {
    Map<String, Signal> named = new LinkedHashMap<>();
    for (SuppliedInput input : PracticeSheets.inputs(planned)) {
      named.put(input.id(), Signal.key(input.id()));
    }
    return PracticeSheets.of(planned, named);
  }

  /** Prints what to ask; the exit code. */
  int prompts(Planned planned) {
    Sheet sheet = sheet(planned);
    console.say(
        "Ask for these one after the other, with a rest of half a minute after each round. In a"
            + " log, name the action and the input by the words in brackets.");
    console.say(
        "First, each time: try out the stop signal, ask how much it hurts and about chest and"
            + " breathing: questions END-02 and SAF-03. Stop at once where anything hurts more or feels wrong.");
    int round = 0;
    for (var cues : Prompts.of(sheet, sitting.week(), sitting.seed())) {
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

  /**
   * Takes what was pressed elsewhere; the exit code.
   *
   * @param earlier runs that are kept already
   */
  int log(Planned planned, List<PracticeRecord> earlier, Path file) throws IOException {
    byte[] bytes =
        file.toString().equals("-")
            ? surroundings.input().readAllBytes()
            : Files.readAllBytes(file);
    List<Problem> problems = new ArrayList<>();
    Sheet sheet = sheet(planned);
    Optional<LoggedPresses> log = PressLogReader.read(file.toString(), bytes, sheet, problems);
    Commands.report(problems, surroundings);
    if (log.isEmpty()) {
      return ExitCode.BAD_DATA;
    }
    if (log.get().lostRounds() > 0) {
      console.say("Rounds that were disturbed, of which nothing counts: " + log.get().lostRounds());
    }
    List<Try> tries = log.get().tries(sheet);
    if (tries.isEmpty()) {
      console.say("Nothing in this log counts, so nothing of it is kept.");
      surroundings.output().flush();
      return ExitCode.DONE;
    }
    int game = planned.plan().game();
    if (earlier.stream().anyMatch(r -> r.game() == game && r.hasPressesOf(tries))) {
      surroundings
          .error()
          .println(
              "These presses are kept already, from an earlier log or from its beginning. They are not counted again;"
                  + " log new rounds in a file of their own.");
      return ExitCode.BAD_DATA;
    }
    PracticeRecord record =
        new PracticeRecord(
            sitting.at(),
            game,
            sitting.week(),
            /* timed= */ true,
            Map.of(),
            tries,
            Optional.empty(),
            Map.of());
    boolean ask = surroundings.typed() && !file.toString().equals("-");
    new PracticeTalk(console, loop).told(loop.practised(record), ask);
    surroundings.output().flush();
    return ExitCode.DONE;
  }
}
