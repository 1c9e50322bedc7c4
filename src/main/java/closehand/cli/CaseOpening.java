package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseFile;
import closehand.casefile.CaseLock;
import closehand.casefile.CaseName;
import closehand.casefile.CaseStore;
import closehand.casefile.Holder;
import closehand.casefile.SealKey;
import closehand.interview.CaseRecord;
import closehand.interview.Event;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import closehand.json.CaseDocument;
import closehand.line.Console;
import java.io.IOException;
import java.util.Optional;

/** Begins a case or opens one again, so that no other window writes it in the meantime. */
final class CaseOpening {
  private final Surroundings surroundings;
  private final Cases cases;
  private final Bank bank;
  private final Console console;
  private final Holder me;

  CaseOpening(Surroundings surroundings, Cases cases, Bank bank, Console console) {
    this.surroundings = surroundings;
    this.cases = cases;
    this.bank = bank;
    this.console = console;
    this.me =
        new Holder(
            System.getProperty("user.name", ""),
            ProcessHandle.current().pid(),
            Moment.now(surroundings.clock()));
  }

  /** What came of it. */
  sealed interface Outcome {
    /** The interview can go on; the case is to be closed in the end. */
    record Ready(StoredCase kept, Interview interview) implements Outcome {}

    /** Nothing more is to be done. */
    record Ended(int exitCode) implements Outcome {}
  }

  /** A new case under a name that no other has. */
  Outcome.Ready fresh(Interview.Route route, Provenance.By asker) {
    Interview interview = Interview.begin(bank.questionnaire(), route, asker);
    StoredCase kept = kept(interview);
    console.say(
        "This case is called " + kept.name() + ". No name or birth date is needed anywhere.");
    new SealOffer(console, surroundings.secrets()).make(kept, cases.folder());
    return new Outcome.Ready(kept, interview);
  }

  private StoredCase kept(Interview interview) {
    long number = surroundings.clock().millis();
    String name = CaseName.of(number);
    try {
      for (int i = 0; i < CaseName.count(); i++) {
        name = cases.store().freshName(number + i);
        CaseLock.Taking taking = cases.store().lock(name, me);
        if (!(taking instanceof CaseLock.Taking.Held)) {
          return kept(taking, blank(name, interview), interview);
        }
      }
    } catch (IOException e) {
      console.say(Trouble.of(e, cases.folder()));
    }
    return kept(new CaseLock.Taking.Unguarded(), blank(name, interview), interview);
  }

  private StoredCase kept(CaseLock.Taking lock, CaseDocument document, Interview interview) {
    return kept(lock, document, interview, Optional.empty());
  }

  private StoredCase kept(
      CaseLock.Taking lock, CaseDocument document, Interview interview, Optional<SealKey> key) {
    return new StoredCase(cases, bank, surroundings.clock(), lock, document, interview, key);
  }

  private CaseDocument blank(String name, Interview interview) {
    SavedCase.BankStamp stamp = SavedCase.BankStamp.of(bank.questionnaire(), bank.fingerprint());
    String now = Moment.now(surroundings.clock());
    SavedCase saved = SavedCase.of(name, stamp, interview, now, now);
    CaseRecord record =
        CaseRecord.NONE.on(Optional.of(Days.keepUntil(surroundings.clock())), Optional.empty());
    return CaseDocument.of(saved).with(saved, record);
  }

  /** A saved case, by its name or its file, gone on with where it was left. */
  Outcome again(String nameOrFile) throws IOException {
    return again(nameOrFile, /* review= */ false);
  }

  /** A saved case, by its name or its file. */
  Outcome again(String nameOrFile, boolean review) throws IOException {
    OnceAsked passphrases = new OnceAsked(surroundings.passphrases());
    Optional<String> name = nameHere(nameOrFile, passphrases);
    CaseLock.Taking taking = new CaseLock.Taking.Unguarded();
    if (name.isPresent()) {
      taking = lock(name.get());
    }
    Outcome outcome = again(nameOrFile, name, taking, passphrases, review);
    passphrases.forget();
    if (outcome instanceof Outcome.Ended && taking instanceof CaseLock.Taking.Taken taken) {
      taken.lock().close();
    }
    return outcome;
  }

  /** The name under which a case is kept here; nothing if there is no such case. */
  private Optional<String> nameHere(String nameOrFile, OnceAsked passphrases) throws IOException {
    if (CaseName.isLawful(nameOrFile)) {
      return Optional.of(nameOrFile).filter(cases.store().names()::contains);
    }
    return cases.open(nameOrFile, bank, passphrases) instanceof CaseStore.Opened.Case opened
        ? Optional.of(opened.file().saved().name())
        : Optional.empty();
  }

  private CaseLock.Taking lock(String name) {
    try {
      return cases.store().lock(name, me);
    } catch (IOException e) {
      return new CaseLock.Taking.Unguarded();
    }
  }

  private Outcome again(
      String nameOrFile,
      Optional<String> name,
      CaseLock.Taking taking,
      OnceAsked passphrases,
      boolean reviewWanted)
      throws IOException {
    CaseStore.Opened opened = cases.open(nameOrFile, bank, passphrases);
    if (opened instanceof CaseStore.Opened.Refused refused) {
      Commands.report(refused.problems(), surroundings);
      return new Outcome.Ended(
          Commands.missing(refused.problems()) ? ExitCode.NO_INPUT : ExitCode.BAD_DATA);
    }
    CaseFile file = ((CaseStore.Opened.Case) opened).file();
    SavedCase saved = file.saved();
    Interview interview = saved.open(bank.questionnaire());
    boolean held = taking instanceof CaseLock.Taking.Held;
    Recovery recovery = new Recovery(console, surroundings.clock(), cases);
    recovery.say(saved, interview, !console.scripted() && !held);
    recovery.sayDays(file.document().record(), surroundings.today());
    file.warnings().forEach(w -> console.say(w.where().path().step() + ": " + w.what()));
    if (taking instanceof CaseLock.Taking.Held other) {
      recovery.sayHeld(other.holder());
      return new Outcome.Ended(look(saved, interview));
    }
    boolean review = reviewWanted;
    boolean seal = false;
    if (!console.scripted() && !reviewWanted) {
      Recovery.Wish wish =
          recovery.ask(
              saved.name(),
              !file.document().record().suggested().isEmpty(),
              file.key().isEmpty() && name.isPresent());
      review = wish == Recovery.Wish.REVIEW;
      seal = wish == Recovery.Wish.SEAL;
      if (wish == Recovery.Wish.LOOK || wish == Recovery.Wish.DISCARD) {
        return new Outcome.Ended(
            wish == Recovery.Wish.LOOK ? look(saved, interview) : ExitCode.DONE);
      }
    }
    if (!file.dropped().isEmpty()) {
      recovery.sayDropped(file);
      cases.store().keepAsItWas(saved.name(), file.path());
    }
    Interview resumed = interview.after(review ? new Message.Review() : new Message.Resume());
    CaseDocument document = file.document().named(name.orElse(saved.name()));
    StoredCase kept = kept(taking, document, resumed, file.key());
    if (review) {
      kept.note(Event.What.REVIEW_BEGUN, "");
    }
    if (seal) {
      new SealOffer(console, surroundings.secrets()).later(kept);
    }
    return new Outcome.Ready(kept, resumed);
  }

  /** Shows a case without changing it. */
  private int look(SavedCase saved, Interview interview) {
    if (console.scripted()) {
      return ExitCode.CANNOT_CREATE;
    }
    Pages pages = new Pages(bank);
    return Look.at(console, pages.input(interview, saved.name(), surroundings.today()));
  }
}
