package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Field;
import closehand.bank.Problem;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.interview.Enablement;
import closehand.interview.Provenance;
import closehand.interview.Sharing;
import closehand.interview.Value;
import closehand.interview.WellKnown;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What is handed over: lawful in the eyes of HL7's validator, and the same when read again. */
class SharedAnswersTest {
  private static final Questionnaire CORE = CoreForm.questionnaire();
  private static final ResponseWriter.Header HEADER =
      new ResponseWriter.Header("wren-alder", "volunteer", "2026-11-25T10:00:00Z", false);

  private static Answers random(long seed) {
    Dice dice = new Dice(seed);
    Answers answers = Answers.NONE;
    for (Field field : CORE.fieldsByFact().values()) {
      if (!dice.oneIn(3)) {
        answers =
            answers.with(
                field.fact(), new Answers.Recorded(dice.answer(field.type()), dice.provenance()));
      }
    }
    return Enablement.of(CORE, answers).effective();
  }

  @Test
  void everyExportIsLawfulAndReadsBackEqual() {
    FhirReference.get().know(CoreForm.text());
    for (int seed = 1; seed <= 4; seed++) {
      for (Sharing reader : Sharing.values()) {
        Answers visible = reader.visible(CORE, random(seed));
        String response = ResponseWriter.write(CORE, visible, HEADER);
        assertEquals(List.of(), FhirReference.get().errors(response), reader + " " + seed);
        List<Problem> problems = new ArrayList<>();
        JsonValue json = CoreForm.json(response, problems).orElseThrow();
        Answers read = ResponseReader.read(json, CORE, problems).orElseThrow().answers();
        assertEquals(List.of(), problems);
        assertEquals(withoutEmpty(Enablement.of(CORE, visible).effective()), read.byFact());
      }
    }
  }

  /** A response cannot hold a choice of none where no option says so. */
  private static java.util.Map<String, Answers.Recorded> withoutEmpty(Answers answers) {
    java.util.Map<String, Answers.Recorded> some = new java.util.LinkedHashMap<>(answers.byFact());
    some.entrySet()
        .removeIf(
            e -> !ResponseWriter.holds(CORE.fieldsByFact().get(e.getKey()), e.getValue().answer()));
    return some;
  }

  @Test
  void theFlatFormReadsBackEqual() {
    for (int seed = 1; seed <= 10; seed++) {
      Answers answers = random(seed);
      List<Problem> problems = new ArrayList<>();
      JsonValue json =
          JsonReader.read(
                  "a.json", FlatWriter.write(answers).getBytes(StandardCharsets.UTF_8), problems)
              .orElseThrow();
      assertEquals(answers.byFact().keySet(), FlatReader.read(json, problems).keySet());
      assertEquals(List.of(), problems);
    }
  }

  @Test
  void whoeverArrangesKitGetsNoWarningSignsNoPatternAndNoNotes() {
    Answers visible = Sharing.TEAM.visible(CORE, random(5));
    Set<String> health =
        CORE.questions().stream()
            .filter(q -> q.section().equals("SAF") || q.section().equals("PAT"))
            .map(Question::fields)
            .flatMap(List::stream)
            .map(Field::fact)
            .collect(Collectors.toSet());
    assertTrue(health.size() > 20, "the sections are still called that");
    assertFalse(visible.byFact().isEmpty());
    visible
        .byFact()
        .forEach(
            (fact, recorded) -> {
              assertFalse(health.contains(fact), fact);
              assertEquals("", recorded.provenance().note());
            });
  }

  @Test
  void nobodyGetsWhatTheyWereNotGiven() {
    Answers toClinician =
        Answers.NONE.with(
            Sharing.FACT,
            new Answers.Recorded(
                new Answer.Given(new Value.Codes(List.of("clinician"))), Provenance.PLAYER_TOLD));
    Answers takenBack =
        toClinician.with(
            WellKnown.CONSENT_STATE,
            new Answers.Recorded(new Answer.Given(new Value.Code("no")), Provenance.PLAYER_TOLD));
    assertFalse(Sharing.CLINICIAN.agreed(takenBack));
    assertTrue(Sharing.PLAYER.agreed(takenBack));
    assertTrue(Sharing.CLINICIAN.agreed(toClinician));
    assertFalse(Sharing.TEAM.agreed(toClinician));
    assertTrue(Sharing.PLAYER.agreed(Answers.NONE));
    assertFalse(Sharing.CLINICIAN.agreed(Answers.NONE));
    assertEquals(Optional.of(Sharing.TEAM), Sharing.of("team"));
    assertEquals(Optional.empty(), Sharing.of("everybody"));
  }
}
