package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.casefile.CaseFile;
import closehand.casefile.CaseLock;
import closehand.casefile.CaseName;
import closehand.casefile.CaseStore;
import closehand.casefile.Holder;
import closehand.casefile.Passphrases;
import closehand.casefile.SealKey;
import closehand.interview.CaseRecord;
import closehand.interview.Event;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import closehand.interview.Sharing;
import closehand.json.CaseDocument;
import closehand.line.Console;
import closehand.report.PageInput;
import java.io.IOException;
import java.util.List;
import java.util.Map;
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
    new SealOffer(console, surroundings).make(kept, cases.folder());
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
    Finding finding = find(nameOrFile, passphrases);
    passphrases.forget();
    if (finding instanceof Finding.Not not) {
      Commands.report(not.problems(), surroundings);
      return new Outcome.Ended(
          Commands.missing(not.problems()) ? ExitCode.NO_INPUT : ExitCode.BAD_DATA);
    }
    Found found = ((Finding.Here) finding).found();
    Outcome outcome = again(found, review);
    if (outcome instanceof Outcome.Ended) {
      found.release();
    }
    return outcome;
  }

  /**
   * A case that was opened, before anybody said what is to be done with it.
   *
   * @param name the name under which it is kept here; nothing for a file from elsewhere
   * @param taking its lock
   * @param file what was read
   * @param interview the interview as it was left
   */
  record Found(Optional<String> name, CaseLock.Taking taking, CaseFile file, Interview interview) {
    SavedCase saved() {
      return file.saved();
    }

    /** Whether another window has it open, so that it may only be looked at. */
    boolean held() {
      return taking instanceof CaseLock.Taking.Held;
    }

    boolean reviewable() {
      return !file.document().record().suggested().isEmpty();
    }

    boolean sealable() {
      return file.key().isEmpty() && name.isPresent();
    }

    /** Lets go of it. */
    void release() {
      try {
        if (taking instanceof CaseLock.Taking.Taken taken) {
          taken.lock().close();
        }
      } catch (IOException e) {
        // Only the lock's file may stay behind, which keeps nobody out.
      }
    }
  }

  /** What came of looking for a case. */
  sealed interface Finding {
    /** It is there, and its lock with it where it can be had. */
    record Here(Found found) implements Finding {}

    /** It cannot be opened. */
    record Not(List<Problem> problems) implements Finding {
      public Not {
        problems = List.copyOf(problems);
      }
    }
  }

  /** Looks for a case by its name or its file, and takes its lock. */
  Finding find(String nameOrFile, Passphrases passphrases) throws IOException {
    Optional<String> name = nameHere(nameOrFile, passphrases);
    CaseLock.Taking taking = name.map(this::lock).orElseGet(CaseLock.Taking.Unguarded::new);
    CaseStore.Opened opened = cases.open(nameOrFile, bank, passphrases);
    if (opened instanceof CaseStore.Opened.Refused refused) {
      if (taking instanceof CaseLock.Taking.Taken taken) {
        taken.lock().close();
      }
      return new Finding.Not(refused.problems());
    }
    CaseFile file = ((CaseStore.Opened.Case) opened).file();
    Interview interview = file.saved().open(bank.questionnaire());
    return new Finding.Here(new Found(name, taking, file, interview));
  }

  /** The name under which a case is kept here; nothing if there is no such case. */
  private Optional<String> nameHere(String nameOrFile, Passphrases passphrases) throws IOException {
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

  private Outcome again(Found found, boolean reviewWanted) throws IOException {
    say(found, !console.scripted() && !found.held());
    if (found.held()) {
      return new Outcome.Ended(look(found));
    }
    Recovery.Wish wish =
        console.scripted() || reviewWanted
            ? Recovery.Wish.GO_ON
            : recovery().ask(found.saved().name(), found.reviewable(), found.sealable());
    if (wish == Recovery.Wish.LOOK || wish == Recovery.Wish.DISCARD) {
      return new Outcome.Ended(wish == Recovery.Wish.LOOK ? look(found) : ExitCode.DONE);
    }
    if (wish == Recovery.Wish.LEAVE) {
      return new Outcome.Ended(ExitCode.DONE);
    }
    Outcome.Ready ready = take(found, reviewWanted || wish == Recovery.Wish.REVIEW);
    if (wish == Recovery.Wish.SEAL) {
      new SealOffer(console, surroundings).later(ready.kept());
    }
    return ready;
  }

  private Recovery recovery() {
    return new Recovery(console, surroundings.clock(), cases);
  }

  /** Says where a case was left, and what else is to be known before it is gone on with. */
  void say(Found found, boolean asking) {
    Recovery recovery = recovery();
    recovery.say(found.saved(), found.interview(), asking);
    recovery.sayDays(found.file().document().record(), surroundings.today());
    if (!found.file().dropped().isEmpty()) {
      recovery.sayDropped(found.file().dropped());
    }
    found.file().warnings().stream()
        .filter(w -> !w.code().equals("answer-left-out"))
        .forEach(w -> console.say(line(w) + w.what()));
    if (found.taking() instanceof CaseLock.Taking.Held other) {
      recovery.sayHeld(other.holder());
    }
  }

  /** Where in the file a warning stands, where it is known. */
  private static String line(Problem warning) {
    return warning.where().line() > 0 ? "Line " + warning.where().line() + " of its file: " : "";
  }

  /** Goes on with a case that was found, or reviews it. */
  Outcome.Ready take(Found found, boolean review) throws IOException {
    CaseFile file = found.file();
    if (!file.dropped().isEmpty()) {
      cases.store().keepAsItWas(found.saved().name(), file.path());
    }
    Interview resumed =
        found.interview().after(review ? new Message.Review() : new Message.Resume());
    CaseDocument document = file.document().named(found.name().orElse(found.saved().name()));
    StoredCase kept = kept(found.taking(), document, resumed, file.key());
    if (review) {
      kept.note(Event.What.REVIEW_BEGUN, "");
    }
    return new Outcome.Ready(kept, resumed);
  }

  /** Shows a case without changing it. */
  private int look(Found found) {
    if (console.scripted()) {
      return ExitCode.CANNOT_CREATE;
    }
    Pages pages = new Pages(bank);
    PageInput input =
        pages
            .input(found.interview(), found.saved().name(), surroundings.today())
            .with(found.file().document().limits());
    // A clinician who asks the questions has the answers on the screen anyway.
    boolean clinician =
        Sharing.CLINICIAN.agreed(found.interview().answers())
            || found.interview().asker() == Provenance.By.CLINICIAN;
    return Look.at(console, Pages.loaded(input, Pages.planning(input, Map.of())), clinician);
  }
}
