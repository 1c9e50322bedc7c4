package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseStore;
import closehand.casefile.Passphrases;
import closehand.json.CaseDocument;
import closehand.json.DueWriter;
import closehand.json.TrialReader;
import closehand.measure.followup.Due;
import closehand.measure.followup.DueCase;
import closehand.measure.trial.Day;
import closehand.report.DueText;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists over all cases what is due; a sealed case is named and not looked into. */
final class DueCommand {
  private final Surroundings surroundings;
  private final BankOption options;
  private final Cases cases;
  private final List<DueCase> due = new ArrayList<>();
  private final List<String> sealed = new ArrayList<>();
  private final List<String> unread = new ArrayList<>();

  DueCommand(Surroundings surroundings, BankOption options, Cases cases) {
    this.surroundings = surroundings;
    this.options = options;
    this.cases = cases;
  }

  int run(String by, boolean json) throws IOException {
    Optional<Day> day = Day.of(by);
    if (day.isEmpty()) {
      surroundings.error().println("--by is a date such as 2026-12-24.");
      return ExitCode.USAGE;
    }
    BankSource.Loaded loaded = BankSource.await(BankSource.ahead(options.folder()));
    Commands.report(loaded.problems(), surroundings);
    if (loaded.bank().isEmpty()) {
      return ExitCode.BAD_DATA;
    }
    for (String name : cases.store().names()) {
      look(name, loaded.bank().get(), day.get());
    }
    List<DueCase> sorted = DueCase.inOrder(due);
    surroundings
        .output()
        .print(
            json
                ? DueWriter.write(by, sorted, sealed)
                : DueText.of(by, sorted, sealed, options.glyphs(surroundings)));
    surroundings.output().flush();
    unread.forEach(n -> surroundings.error().println("The case " + n + " could not be read."));
    return unread.isEmpty() ? ExitCode.DONE : ExitCode.BAD_DATA;
  }

  private void look(String name, Bank bank, Day by) throws IOException {
    if (Files.exists(cases.store().sealedPath(name))) {
      sealed.add(name);
      return;
    }
    Passphrases none = attempt -> Optional.empty();
    if (!(cases.open(name, bank, none) instanceof CaseStore.Opened.Case opened)) {
      unread.add(name);
      return;
    }
    CaseDocument document = opened.file().document();
    for (Due one :
        Due.of(document.record(), TrialReader.read(document.trials(), new ArrayList<>()), by)) {
      due.add(new DueCase(name, one));
    }
  }
}
