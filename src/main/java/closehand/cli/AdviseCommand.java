package closehand.cli;

import closehand.json.AdviceWriter;
import closehand.report.SuggestionText;
import java.io.IOException;
import java.util.Optional;

/** Prints what answers point to, as text or JSON. */
final class AdviseCommand {
  private final Surroundings surroundings;
  private final BankOption bank;
  private final AnswersOption source;

  AdviseCommand(Surroundings surroundings, BankOption bank, AnswersOption source) {
    this.surroundings = surroundings;
    this.bank = bank;
    this.source = source;
  }

  int run(boolean json) throws IOException {
    CaseLoading loading = new CaseLoading(surroundings, bank.folder(), source);
    // While the bank is being read there is time to find out the day.
    String today = surroundings.today();
    Optional<Case> found = loading.load();
    if (found.isEmpty()) {
      return loading.exitCode();
    }
    Pages pages = loading.pages();
    Case one = found.get();
    String text =
        json
            ? AdviceWriter.write(pages.advise(one.answers()), pages.byGame(one.answers()))
            : SuggestionText.of(pages.input(one, today), bank.glyphs(surroundings));
    surroundings.output().print(text);
    surroundings.output().flush();
    return ExitCode.DONE;
  }
}
