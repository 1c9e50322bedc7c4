package closehand.cli;

import closehand.bank.Problem;
import closehand.json.CaseDocument;
import closehand.json.ComparisonWriter;
import closehand.json.TrialReader;
import closehand.measure.trial.SetUp;
import closehand.measure.trial.SideBySide;
import closehand.measure.trial.Trial;
import closehand.report.ComparisonText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sets two set-ups of a case side by side. */
final class CompareCommand {
  private final Surroundings surroundings;
  private final BankOption bank;
  private final AnswersOption source;

  CompareCommand(Surroundings surroundings, BankOption bank, AnswersOption source) {
    this.surroundings = surroundings;
    this.bank = bank;
    this.source = source;
  }

  /**
   * Prints the comparison.
   *
   * @param between two names, or none for the two tried last
   */
  int run(List<String> between, boolean json) throws IOException {
    CaseLoading loading = new CaseLoading(surroundings, bank.folder(), source);
    Optional<Case> found = loading.load();
    if (found.isEmpty()) {
      return loading.exitCode();
    }
    List<Problem> problems = new ArrayList<>();
    List<Trial> trials =
        TrialReader.read(
            found.get().document().map(CaseDocument::trials).orElse(List.of()), problems);
    Commands.report(problems, surroundings);
    if (!problems.isEmpty()) {
      return ExitCode.BAD_DATA;
    }
    List<String> known = SideBySide.setUps(trials).stream().map(SetUp::name).toList();
    for (String name : between) {
      if (!known.contains(name)) {
        surroundings
            .error()
            .println(
                "No finished trial with \""
                    + Words.clean(name)
                    + "\". Tried: "
                    + Words.clean(String.join("; ", known))
                    + ".");
        return ExitCode.USAGE;
      }
    }
    if (!between.isEmpty() && between.get(0).equals(between.get(1))) {
      surroundings.error().println("Name two different set-ups.");
      return ExitCode.USAGE;
    }
    Optional<SideBySide> two =
        between.isEmpty()
            ? SideBySide.ofLastTwo(trials)
            : Optional.of(SideBySide.of(trials, between.get(0), between.get(1)));
    if (two.isEmpty()) {
      surroundings
          .error()
          .println(
              "Two set-ups with at least one finished trial each are needed. closehand trial takes trials down.");
      return ExitCode.UNFINISHED;
    }
    print(two.get(), trials, json);
    return ExitCode.DONE;
  }

  private void print(SideBySide both, List<Trial> trials, boolean json) {
    surroundings
        .output()
        .print(
            json
                ? ComparisonWriter.write(both)
                : ComparisonText.of(both, trials, bank.glyphs(surroundings)));
    surroundings.output().flush();
  }
}
