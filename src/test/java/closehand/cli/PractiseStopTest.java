package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.StopSign;
import closehand.casefile.CaseStore;
import closehand.interview.CaseRecord;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.measure.CoreStops;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.StopReason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stops and logs of {@code closehand practise}: what is kept of them. All presses are invented. */
class PractiseStopTest {
  private static final String CHECK = "a\nb\nc\nd\ne\nf\ng\nh\ni\nj\nk\nl\nm\nn\no\n";

  @TempDir private Path folder = Path.of(".");

  @BeforeEach
  void aCaseIsThere() throws IOException {
    TriedCase.keep(folder, "quiet-heron", TriedCase.NAME, CaseRecord.NONE);
  }

  private World practise(String typed, String... more) {
    List<String> all =
        new java.util.ArrayList<>(List.of("practise", TriedCase.NAME, "--home", folder.toString()));
    all.addAll(List.of(more));
    return World.typed(TriedCase.READY + typed, all.toArray(new String[0]));
  }

  private List<PracticeRecord> kept() throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    CaseStore.Opened opened =
        Cases.at(folder)
            .store()
            .open(TriedCase.NAME, bank.questionnaire(), attempt -> Optional.empty());
    return ((CaseStore.Opened.Case) opened).file().document().practised();
  }

  private static String flowing(World world) {
    return world.output().replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @CsvSource({
    "stop,'',WISH",
    "STOP,5,CHEST",
    "stop: pain,'',PAIN",
    "Stop: pain,3,NUMB",
    "pain,'',PAIN",
    "Painful!,2,PAIN",
    "p,'',PAIN",
    "P,8,BALANCE"
  })
  void anyLineThatMeansStopStopsInTheCheckInARoundAndWherePainIsAsked(
      String line, String sign, StopSign felt) throws IOException {
    String[] before = {"a\nb\n", CHECK, CHECK + "2\na\n"};
    for (String typed : before) {
      aCaseIsThere();
      World world = practise(typed + line + "\n" + sign + "\n", "--line");
      assertEquals(ExitCode.DONE, world.code(), world.error());
      assertTrue(
          flowing(world).contains("STOPPED. " + CoreStops.all().words(felt)), world.output());
      assertTrue(flowing(world).contains("New tingling, numbness or weakness"), "the ten signs");
      assertEquals(1, kept().size(), typed);
      assertEquals(Optional.of(StopReason.of(felt)), kept().get(0).stop());
      World again = practise("", "--line");
      assertEquals(ExitCode.UNFINISHED, again.code());
      assertTrue(flowing(again).contains("not repeated on the same day"), again.output());
    }
  }

  @Test
  void aStopIsKeptThoughNobodySaysWhichSignItWas() throws IOException {
    practise("a\nstop", "--line");
    assertEquals(Optional.of(StopReason.of(StopSign.WISH)), kept().get(0).stop());
    assertTrue(kept().get(0).signals().isEmpty(), "half a check is no ground for another day");
  }

  @Test
  void theLetterMayHaveComeFromAnInput() throws IOException {
    World world = practise("p\n11\np\n", "--line");
    assertFalse(world.output().contains("STOPPED"), world.output());
    assertTrue(kept().isEmpty());
  }

  @Test
  void theOpeningTextTellsWhatStopsInLines() {
    String said = flowing(practise("", "--line"));
    assertFalse(said.contains("Backspace"), said);
    assertTrue(said.contains("typing stop or pain, then Enter, always stops."), said);
  }

  @Test
  void anEmptyLogIsNotKept() throws IOException {
    Path log = folder.resolve("empty.log");
    Files.writeString(log, "# nothing\n");
    World world = practise("", "--log", log.toString());
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertTrue(flowing(world).contains("nothing of it is kept"), world.output());
    assertTrue(kept().isEmpty());
  }
}
