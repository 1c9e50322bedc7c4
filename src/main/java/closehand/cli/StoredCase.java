package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseLock;
import closehand.interview.Interview;
import closehand.interview.SavedCase;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.util.Optional;

/** A case kept in the folder of cases, locked against other windows until it is closed. */
final class StoredCase implements Kept, Closeable {
  private final Cases cases;
  private final Bank bank;
  private final Clock clock;
  private final String name;
  private final String started;
  private final CaseLock.Taking lock;
  private Optional<FileTime> lastSaved;

  StoredCase(
      Cases cases, Bank bank, Clock clock, String name, String started, CaseLock.Taking lock) {
    this.cases = cases;
    this.bank = bank;
    this.clock = clock;
    this.name = name;
    this.started = started;
    this.lock = lock;
    this.lastSaved = stampOf(cases.store().path(name));
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String trouble(IOException e) {
    return Trouble.of(e, cases.folder());
  }

  @Override
  public void save(Interview interview) throws IOException {
    refuseIfChangedElsewhere();
    SavedCase.BankStamp stamp = SavedCase.BankStamp.of(bank.questionnaire(), bank.fingerprint());
    cases
        .store()
        .save(
            SavedCase.of(name, stamp, interview, started, Moment.now(clock)), bank.questionnaire());
    lastSaved = stampOf(cases.store().path(name));
  }

  /**
   * Where locks cannot be had, the one that saves second must still not wipe out what the other one
   * saved.
   *
   * @throws ChangedElsewhere if the file is not as this run left or found it
   */
  private void refuseIfChangedElsewhere() throws IOException {
    Optional<FileTime> now = stampOf(cases.store().path(name));
    if (lastSaved.isPresent() && now.isPresent() && !now.equals(lastSaved)) {
      throw new ChangedElsewhere();
    }
  }

  private static Optional<FileTime> stampOf(Path file) {
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
    new PageFiles(cases, name).delete();
    cases.store().delete(name);
  }

  @Override
  public void close() throws IOException {
    if (lock instanceof CaseLock.Taking.Taken taken) {
      taken.lock().close();
    }
  }
}
