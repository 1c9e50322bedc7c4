package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.casefile.CaseFile;
import closehand.casefile.CaseStore;
import closehand.interview.Interview;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Loads the bank, then the answers of a case or of a file, and says what is wrong with either. */
final class CaseLoading {
  private final Surroundings surroundings;
  private final AnswersOption source;
  private Optional<Pages> pages = Optional.empty();
  private final OnceAsked passphrases;
  private final Ahead<BankSource.Loaded> bank;
  private int exitCode = ExitCode.DONE;

  /** Begins to load the bank; whoever needs it waits for it. */
  CaseLoading(Surroundings surroundings, Optional<Path> bankFolder, AnswersOption source) {
    this.bank = BankSource.ahead(bankFolder);
    this.surroundings = surroundings;
    this.source = source;
    this.passphrases = new OnceAsked(surroundings.passphrases());
  }

  /** The exit code when nothing could be loaded. */
  int exitCode() {
    return exitCode;
  }

  /** Opens the same case again without its passphrase being typed again. */
  OnceAsked passphrases() {
    return passphrases;
  }

  /** What pages are made with; only after something was loaded. */
  Pages pages() {
    return pages.orElseThrow();
  }

  /**
   * The answers; nothing when they, or the bank, could not be used, which has been said by then.
   */
  Optional<Case> load() throws IOException {
    if (source.answers().isPresent() == source.caseName().isPresent()) {
      surroundings.error().println("Name one case, or a file with --answers.");
      exitCode = ExitCode.USAGE;
      return Optional.empty();
    }
    Optional<AnswersSource.Read> read =
        source.answers().isPresent()
            ? Optional.of(AnswersSource.read(source.answers().get(), surroundings.input()))
            : Optional.empty();
    BankSource.Loaded loaded = BankSource.await(bank);
    if (loaded.bank().isEmpty()) {
      return refuse(loaded.problems());
    }
    Bank found = loaded.bank().get();
    pages = Optional.of(new Pages(found));
    return read.isPresent()
        ? flat(AnswersSource.match(found, read.get()))
        : saved(found, source.caseName().orElseThrow());
  }

  private Optional<Case> flat(AnswersSource.Loaded answers) {
    if (answers.answers().isEmpty()) {
      return refuse(answers.problems());
    }
    Commands.report(answers.problems(), surroundings);
    return Optional.of(
        new Case(
            answers.answers().get(),
            "",
            Optional.empty(),
            Optional.empty(),
            answers.profiles(),
            answers.limits()));
  }

  private Optional<Case> saved(Bank bank, String name) throws IOException {
    CaseStore.Opened opened = Cases.in(source.home(), surroundings).open(name, bank, passphrases);
    if (opened instanceof CaseStore.Opened.Refused refused) {
      Optional<Case> nothing = refuse(refused.problems());
      exitCode = Commands.missing(refused.problems()) ? ExitCode.NO_INPUT : ExitCode.BAD_DATA;
      return nothing;
    }
    CaseFile file = ((CaseStore.Opened.Case) opened).file();
    Commands.report(file.warnings(), surroundings);
    Interview interview = file.saved().open(bank.questionnaire());
    return Optional.of(
        new Case(
            interview.answers(),
            file.saved().name(),
            Optional.of(interview),
            Optional.of(file.document()),
            Map.of(),
            file.document().limits()));
  }

  private Optional<Case> refuse(List<Problem> problems) {
    Commands.report(problems, surroundings);
    exitCode = ExitCode.BAD_DATA;
    return Optional.empty();
  }
}
