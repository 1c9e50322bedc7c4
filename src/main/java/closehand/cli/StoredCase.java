package closehand.cli;

import closehand.bank.Bank;
import closehand.casefile.CaseStore;
import closehand.interview.Interview;
import closehand.interview.SavedCase;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/** A case kept in the folder of cases. */
final class StoredCase implements Kept {
  private final Path folder;
  private final CaseStore store;
  private final Bank bank;
  private final Clock clock;
  private final String name;
  private final String started;

  StoredCase(Path folder, CaseStore store, Bank bank, Clock clock, String name, String started) {
    this.folder = folder;
    this.store = store;
    this.bank = bank;
    this.clock = clock;
    this.name = name;
    this.started = started;
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
    SavedCase.BankStamp stamp = SavedCase.BankStamp.of(bank.questionnaire(), bank.fingerprint());
    store.save(SavedCase.of(name, stamp, interview, started, now(clock)), bank.questionnaire());
  }

  @Override
  public void delete() throws IOException {
    new PageFiles(folder, name).delete();
    store.delete(name);
  }
}
