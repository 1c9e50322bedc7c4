package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.CaseRecord;
import closehand.interview.Event;
import closehand.interview.Measured;
import closehand.interview.Value;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A case of every schema there ever was, written by the program of its time. They are opened for
 * ever; a file is never changed once it is here.
 */
class FrozenCasesTest {
  private static final Questionnaire CORE = CoreForm.questionnaire();

  private static Path file(int schema) {
    return Path.of("src/test/resources/cases/schema-" + schema + ".json");
  }

  private static CaseReader.Result read(byte[] bytes) {
    List<Problem> problems = new ArrayList<>();
    Optional<CaseReader.Result> result = CaseReader.read("case.json", bytes, CORE, problems);
    assertTrue(result.isPresent(), problems::toString);
    return result.get();
  }

  @Test
  void everySchemaOpensAndIsWrittenInThePresentOne() throws IOException {
    for (int schema = 1; schema <= CaseWriter.SCHEMA; schema++) {
      CaseReader.Result result = read(Files.readAllBytes(file(schema)));
      assertEquals(List.of(), result.dropped(), "schema " + schema);
      String now = CaseWriter.write(result.document(), CORE);
      CaseReader.Result again = read(now.getBytes(StandardCharsets.UTF_8));
      assertEquals(result.document().saved(), again.document().saved());
      assertEquals(result.document().record(), again.document().record());
      assertEquals(now, CaseWriter.write(again.document(), CORE));
    }
  }

  @Test
  void thePresentSchemaIsWrittenAsItWasFrozen() throws IOException {
    String frozen = Files.readString(file(CaseWriter.SCHEMA));
    CaseReader.Result result = read(frozen.getBytes(StandardCharsets.UTF_8));
    assertEquals(frozen, CaseWriter.write(result.document(), CORE));
  }

  @Test
  void formatAndSchemaComeFirst() throws IOException {
    String written = Files.readString(file(CaseWriter.SCHEMA));
    assertTrue(
        written.startsWith(
            "{\n \"format\" : \"closehand-case\",\n \"schema\" : " + CaseWriter.SCHEMA + ",\n"),
        written.substring(0, 80));
  }

  @Test
  void theFirstSchemaKeepsItsAnswersAndHasNoHistory() throws IOException {
    CaseDocument one = read(Files.readAllBytes(file(1))).document();
    Answers answers = one.saved().answers();
    assertEquals(18, answers.byFact().size());
    assertEquals(Optional.of(new Value.Codes(List.of())), answers.value("comm.mode"));
    assertEquals(Optional.of(new Value.Code("no")), answers.value("safe.adNow"));
    assertTrue(answers.isLowered("C-NEURO"));
    assertEquals(CaseRecord.NONE, one.record());
  }

  @Test
  void theSecondSchemaKeepsWhatHappened() throws IOException {
    CaseDocument two = read(Files.readAllBytes(file(2))).document();
    CaseRecord record = two.record();
    assertEquals(Optional.of("2027-11-25"), record.keepUntil());
    assertEquals(
        List.of("consent.state", "consent.by", "consent.share", "consent.media", "consent.state"),
        record.consents().stream().map(c -> c.fact()).toList());
    Event changed =
        record.history().stream()
            .filter(e -> e.what() == Event.What.CHANGED)
            .findFirst()
            .orElseThrow();
    assertEquals("safe.sciT6", changed.subject());
    assertEquals(Optional.of(new Answer.Given(new Value.Text("yes"))), changed.from());
    assertEquals(Optional.of(new Answer.Given(new Value.Text("no"))), changed.to());
    Event aside =
        record.history().stream()
            .filter(e -> e.what() == Event.What.SET_ASIDE)
            .findFirst()
            .orElseThrow();
    assertEquals("safe.adNow", aside.subject());
    assertEquals("safe.sciT6", aside.why());
    Event lowered =
        record.history().stream()
            .filter(e -> e.what() == Event.What.LOWERED)
            .findFirst()
            .orElseThrow();
    assertEquals("A. Therapist (invented)", lowered.by());
    assertEquals("looked at it this morning", lowered.why());
    assertEquals(2, record.suggested().size());
  }

  @Test
  void theThirdSchemaKeepsEveryGoOfWhatWasMeasured() throws IOException {
    CaseRecord record = read(Files.readAllBytes(file(3))).document().record();
    assertEquals(
        List.of("T1 L.I done", "T8 L stopped"),
        record.measured().stream()
            .map(m -> m.task() + " " + m.place() + " " + m.ending().code())
            .toList());
    Measured taps = record.measured().get(0);
    assertEquals(
        List.of("", "heldKey", "", ""), taps.goes().stream().map(Measured.Go::discarded).toList());
    assertEquals(new Value.Number(28), taps.goes().get(3).values().get("taps"));
    assertEquals(
        new Measured.Circumstances("room", "sittingAsInPlay", "armAndFeet", "morning", 31),
        taps.circumstances());
    assertEquals("pain", record.measured().get(1).stop());
    assertEquals(List.of(), read(Files.readAllBytes(file(2))).document().record().measured());
  }

  @Test
  void theFourthSchemaKeepsWhatWasHalfTyped() throws IOException {
    assertEquals(
        Map.of("goal.good.words", "to play with my"),
        read(Files.readAllBytes(file(4))).document().saved().halfTyped());
    assertEquals(Map.of(), read(Files.readAllBytes(file(3))).document().saved().halfTyped());
  }

  @Test
  void plansAndTrialsArePassedOnUnchanged() throws IOException {
    String frozen = Files.readString(file(CaseWriter.SCHEMA));
    String room = "[ {\n  \"format\" : \"x\",\n  \"n\" : [ 1.50, true, null, \"a\" ]\n } ]";
    String with = frozen.replace("\"plans\" : [ ]", "\"plans\" : " + room);
    assertEquals(
        with, CaseWriter.write(read(with.getBytes(StandardCharsets.UTF_8)).document(), CORE));
  }
}
