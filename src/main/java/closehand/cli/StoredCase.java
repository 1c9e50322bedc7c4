package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseStore;
import closehand.interview.Interview;
import closehand.interview.SavedCase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** A case kept in the folder of cases. */
final class StoredCase implements Kept {
  private final Path folder;
  private final CaseStore store;
  private final Bank bank;
  private final Clock clock;
  private final String name;
  private final String started;
  private Optional<FileTime> lastSaved;

  StoredCase(Path folder, CaseStore store, Bank bank, Clock clock, String name, String started)
      throws IOException {
    this.folder = folder;
    this.store = store;
    this.bank = bank;
    this.clock = clock;
    this.name = name;
    this.started = started;
    this.lastSaved = stampOf(store.path(name));
  }

  /** Now, as an ISO date and time with zone. */
  static String now(Clock clock) {
    return ZonedDateTime.now(clock)
        .truncatedTo(ChronoUnit.SECONDS)
        .format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public void save(Interview interview) throws IOException {
    refuseIfChangedElsewhere();
    SavedCase.BankStamp stamp = SavedCase.BankStamp.of(bank.questionnaire(), bank.fingerprint());
    store.save(SavedCase.of(name, stamp, interview, started, now(clock)), bank.questionnaire());
    lastSaved = stampOf(store.path(name));
  }

  /**
   * Two windows on one case: the one that saves second must not wipe out what the other one saved.
   *
   * @throws ChangedElsewhere if the file is not as this run left or found it
   */
  private void refuseIfChangedElsewhere() throws IOException {
    Optional<FileTime> now = stampOf(store.path(name));
    if (lastSaved.isPresent() && now.isPresent() && !now.equals(lastSaved)) {
      throw new ChangedElsewhere();
    }
  }

  private static Optional<FileTime> stampOf(Path file) throws IOException {
    return Files.exists(file) ? Optional.of(Files.getLastModifiedTime(file)) : Optional.empty();
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
    new PageFiles(folder, name).delete();
    store.delete(name);
  }
}
