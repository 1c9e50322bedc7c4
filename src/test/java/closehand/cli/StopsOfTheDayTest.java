package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.StopSign;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.StopReason;
import closehand.report.Diary;
import closehand.report.Glyphs;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A practice run stopped today reaches the measured tasks of an interview. Records are invented.
 */
class StopsOfTheDayTest {
  private static final String DAY = "2026-11-25";

  private static Optional<String> stopped(String at) throws IOException {
    Bank bank = BankSource.await(BankSource.ahead(Optional.empty())).bank().orElseThrow();
    PracticeRecord run =
        new PracticeRecord(
            at,
            0,
            1,
            true,
            Map.of(),
            List.of(),
            Optional.of(StopReason.of(StopSign.FAINT)),
            Map.of());
    Kept kept =
        new KeptInTheHead(
            new Diary(Diary.entries(List.of(), List.of(run), List.of(), List.of()), List.of()));
    Interview interview =
        Interview.reopen(
            bank.questionnaire(),
            Answers.NONE,
            Interview.Route.CORE,
            Provenance.By.VOLUNTEER,
            Optional.empty());
    return new CaseDesk(new Pages(bank), kept, Glyphs.UNICODE, DAY)
        .day(interview)
        .diary()
        .why(bank, DAY);
  }

  private record KeptInTheHead(Diary diary) implements Kept {
    @Override
    public String name() {
      return "quiet-heron";
    }

    @Override
    public void save(Interview interview) {}

    @Override
    public String trouble(IOException e) {
      return "";
    }

    @Override
    public void delete() {}
  }

  @Test
  void practiceStoppedTodayIsKnownWhereATaskIsDue() throws IOException {
    String why = stopped(DAY + "T08:00:00Z").orElse("");
    assertTrue(why.startsWith("A practice run was stopped today: Giddy"), why);
    assertEquals(Optional.empty(), stopped("2026-11-24T08:00:00Z"));
  }
}
