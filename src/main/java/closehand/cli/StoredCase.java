package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseLock;
import closehand.casefile.Holder;
import closehand.casefile.SealKey;
import closehand.interview.CaseRecord;
import closehand.interview.Event;
import closehand.interview.History;
import closehand.interview.Interview;
import closehand.interview.Measured;
import closehand.interview.SavedCase;
import closehand.interview.Suggested;
import closehand.json.CaseDocument;
import closehand.measure.practice.PracticeRecord;
import closehand.plan.PlanChanges;
import closehand.report.Diary;
import closehand.strain.OwnLimits;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** A case kept in the folder of cases, locked against other windows until it is closed. */
final class StoredCase implements Kept, Closeable {
  private Cases cases;
  private final Bank bank;
  private final Clock clock;
  private CaseLock.Taking lock;
  private final long begunNanos = System.nanoTime();
  private final Object writing = new Object();
  private final SavingSoon soon = new SavingSoon(this);
  private volatile CaseDocument document;
  private Interview last;
  private volatile int savedEvents;
  private Optional<SealKey> key;
  private Optional<FileTime> lastSaved;

  /**
   * A case that is gone on with.
   *
   * @param document the case as it is on the disk, or as it will first be
   * @param interview the interview as it stands
   * @param key what it is sealed with, if it is
   */
  StoredCase(
      Cases cases,
      Bank bank,
      Clock clock,
      CaseLock.Taking lock,
      CaseDocument document,
      Interview interview,
      Optional<SealKey> key) {
    this.cases = cases;
    this.bank = bank;
    this.clock = clock;
    this.lock = lock;
    this.document = document;
    this.last = interview;
    this.key = key;
    this.savedEvents = document.record().history().size();
    this.lastSaved = stamp();
  }

  @Override
  public String name() {
    return document.saved().name();
  }

  /** The whole case, up to the last save. */
  CaseDocument document() {
    return document;
  }

  @Override
  public List<Measured> measured() {
    return document.record().measured();
  }

  @Override
  public Diary diary() {
    return Diaries.of(document);
  }

  @Override
  public PlanChanges changes() {
    return document.changes();
  }

  @Override
  public void change(PlanChanges changes) {
    document = document.changing(changes);
  }

  @Override
  public OwnLimits limits() {
    return document.limits();
  }

  @Override
  public List<PracticeRecord> practised() {
    return document.practised();
  }

  /** Whether the case is sealed. */
  boolean isSealed() {
    return key.isPresent();
  }

  /** Seals the case from now on. */
  void seal(SealKey with) {
    key = Optional.of(with);
    note(Event.What.SEALED, "");
  }

  /**
   * Seals a case that was kept in the clear until now; its pages in the clear are removed.
   *
   * @throws IOException if it cannot be sealed; it is then kept as before
   */
  void sealNow(SealKey with) throws IOException {
    CaseDocument before = document;
    note(Event.What.SEALED, "");
    try {
      cases.store().seal(document, bank.questionnaire(), with);
    } catch (IOException e) {
      document = before;
      throw e;
    }
    key = Optional.of(with);
    lastSaved = stamp();
    savedEvents = document.record().history().size();
    pages().delete();
  }

  /** Notes something that happened to the case as a whole. */
  void note(Event.What what, String why) {
    Event event =
        new Event(
            Moment.now(clock),
            elapsedSeconds(),
            what,
            "",
            Optional.empty(),
            Optional.empty(),
            last.asker().code(),
            why);
    document = document.with(document.saved(), document.record().with(List.of(event)));
  }

  /** Keeps what is suggested at the end of a sitting, with the days that follow from it. */
  void suggest(Suggested suggested, String reviewOn) {
    CaseRecord record =
        document
            .record()
            .suggesting(suggested)
            .on(document.record().keepUntil(), Optional.of(reviewOn));
    document = document.with(document.saved(), record);
  }

  @Override
  public String trouble(IOException e) {
    return Trouble.of(e, cases.folder());
  }

  @Override
  public void save(Interview interview) throws IOException {
    takeIn(interview);
    write();
  }

  /** The same case, saved beside whoever asks for it, who need not wait for the disk. */
  SavingSoon soon() {
    return soon;
  }

  /**
   * Writes the case as it stands, one writer at a time, so that the last to write is the latest.
   */
  void write() throws IOException {
    synchronized (writing) {
      CaseDocument now = document;
      refuseIfChangedElsewhere();
      cases.store().save(now, bank.questionnaire(), key);
      lastSaved = stamp();
      savedEvents = now.record().history().size();
    }
  }

  /** How much happened that is only in this window. */
  int unsavedChanges() {
    return document.record().history().size() - savedEvents;
  }

  /** The pages beside the case. */
  PageFiles pages() {
    return new PageFiles(cases, name());
  }

  /**
   * Keeps the case in another folder from now on, under another name where its own is taken there.
   *
   * @throws IOException if nothing can be kept there; all is then as before
   */
  void moveTo(Path folder) throws IOException {
    soon.finish();
    Cases there = Cases.at(folder);
    String name = there.store().names().contains(name()) ? there.store().freshName(0) : name();
    CaseLock.Taking taking = there.store().lock(name, holder());
    if (taking instanceof CaseLock.Taking.Held) {
      throw new ChangedElsewhere();
    }
    try {
      there.store().save(document.named(name), bank.questionnaire(), key);
    } catch (IOException e) {
      release(taking);
      throw e;
    }
    release(lock);
    cases = there;
    lock = taking;
    document = document.named(name);
    lastSaved = stamp();
    savedEvents = document.record().history().size();
  }

  private Holder holder() {
    return new Holder(
        System.getProperty("user.name", ""), ProcessHandle.current().pid(), Moment.now(clock));
  }

  private static void release(CaseLock.Taking taking) throws IOException {
    if (taking instanceof CaseLock.Taking.Taken taken) {
      taken.lock().close();
    }
  }

  /** What happened is noted at its time, even if it can only be saved later. */
  void takeIn(Interview interview) {
    String now = Moment.now(clock);
    CaseRecord record =
        History.after(document.record(), last, interview, new History.Stamp(now, elapsedSeconds()));
    SavedCase.BankStamp stamp = SavedCase.BankStamp.of(bank.questionnaire(), bank.fingerprint());
    String started = document.saved().started();
    int known = document.record().history().size();
    document = document.with(SavedCase.of(name(), stamp, interview, started, now), record);
    record.history().subList(known, record.history().size()).stream()
        .filter(e -> e.what() == Event.What.PLAN_EXPIRED)
        .forEach(e -> document = document.expired(e.at(), e.why()));
    last = interview;
  }

  private int elapsedSeconds() {
    return (int) Duration.ofNanos(System.nanoTime() - begunNanos).toSeconds();
  }

  /**
   * Where locks cannot be had, the one that saves second must still not wipe out what the other one
   * saved.
   *
   * @throws ChangedElsewhere if the file is not as this run left or found it
   */
  private void refuseIfChangedElsewhere() throws IOException {
    Optional<FileTime> now = stamp();
    if (lastSaved.isPresent() && now.isPresent() && !now.equals(lastSaved)) {
      throw new ChangedElsewhere();
    }
  }

  private Optional<FileTime> stamp() {
    Path file = key.isPresent() ? cases.store().sealedPath(name()) : cases.store().path(name());
    try {
      return Files.exists(file) ? Optional.of(Files.getLastModifiedTime(file)) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** The case was saved by another run in the meantime. */
  static final class ChangedElsewhere extends IOException {
    private static final long serialVersionUID = 1L;

    ChangedElsewhere() {
      super("the case was saved by another run");
    }
  }

  @Override
  public void delete() throws IOException {
    soon.finish();
    pages().delete();
    cases.store().delete(name());
  }

  @Override
  public void close() throws IOException {
    soon.finish();
    key.ifPresent(SealKey::forget);
    release(lock);
  }
}
