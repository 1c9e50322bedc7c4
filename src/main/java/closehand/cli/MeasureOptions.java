package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be typed after {@code closehand measure}. */
@Command(
    name = "measure",
    mixinStandardHelpOptions = true,
    description = {
      "Run measured tasks of a case line by line, with the questions before and after them.",
      "On the full screen a task is taken up at its question, with m."
    },
    footer = {
      "",
      "Tasks: T1 taps in 10 seconds, T1b taps over 30 seconds, T2 holding a key, T3 cells of a side panel,",
      "T4 keys of a keyboard, T5 pointing at paper dots, T6 switch press, T7 two together, T8 stick,",
      "T9 phrases, T10 sip and puff (clinician), T11 resting and sliding the hand, T12 everyday hold,",
      "T13 a second job for buttons.",
      "A place may follow: L or R for a side, then T I M R L for thumb, index, middle, ring and little",
      "finger, as in T1.L.I; T6 takes a part of the body, such as T6.footL. A task that cannot begin",
      "is listed with the reason."
    })
final class MeasureOptions extends Subcommand {
  @CommandLine.Mixin private final BankOption bank = new BankOption();

  @Parameters(index = "0", paramLabel = "CASE", description = "A saved case: its name or file.")
  private String caseName = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "TASK",
      description = "A task such as T1 or T1.L.I; without one you choose.")
  private @Nullable String task;

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

  @Option(
      names = "--asker",
      paramLabel = "WHO",
      description = "Who runs it: helper, volunteer or clinician.")
  private @Nullable String asker;

  @Override
  int run(Surroundings surroundings) throws IOException {
    InterviewCommand.Wanted wanted = new InterviewCommand.Wanted();
    wanted.bank = bank.folder();
    wanted.caseName = Optional.of(caseName);
    wanted.home = Optional.ofNullable(home);
    wanted.asker = Optional.ofNullable(asker);
    wanted.line = true;
    wanted.lineWasSaid = true;
    wanted.ascii = bank.ascii();
    wanted.measure = Optional.of(Optional.ofNullable(task).orElse(""));
    return new InterviewCommand(surroundings, wanted).run();
  }
}
