package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Field;
import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.interview.Enablement;
import closehand.interview.Interview;
import closehand.interview.PlainText;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import closehand.interview.Value;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is written can be read again, and what cannot be read is said. */
class CaseRoundTripTest {
  private static final Questionnaire CORE = CoreForm.questionnaire();
  private static final ResponseWriter.Header HEADER =
      new ResponseWriter.Header("heron-oak", "volunteer", "2026-11-24T10:00:00+01:00", false);

  private static SavedCase saved(Answers answers) {
    return new SavedCase(
        "heron-oak",
        SavedCase.BankStamp.of(CORE, "abc"),
        Provenance.By.HELPER,
        Interview.Route.FULL,
        Optional.of("pain.now"),
        answers,
        Map.of("pain.now", "1"),
        "2026-11-24T10:00:00+01:00",
        "2026-11-24T10:05:00Z");
  }

  /** Answers to anything, whether it applies or not. */
  private static Answers anything(Dice dice) {
    Answers answers = Answers.NONE;
    for (Field field : CORE.fieldsByFact().values()) {
      if (!dice.oneIn(3)) {
        answers =
            answers.with(
                field.fact(), new Answers.Recorded(dice.answer(field.type()), dice.provenance()));
      }
    }
    return answers;
  }

  private static Optional<CaseReader.Result> read(String text, List<Problem> problems) {
    return CaseReader.read("case.json", text.getBytes(StandardCharsets.UTF_8), CORE, problems);
  }

  @Test
  void aCaseComesBackWithEverythingSetAsideOrNot() {
    for (int seed = 1; seed <= 20; seed++) {
      Answers answers =
          anything(new Dice(seed))
              .lowering(new Answers.Lowered("C-SKIN", "A. T.", "2026-11-20", "healed"))
              .lowering(new Answers.Lowered("C-NECK", "", "", ""));
      assertFalse(Enablement.of(CORE, answers).setAside().byFact().isEmpty());
      List<Problem> problems = new ArrayList<>();
      CaseReader.Result result =
          read(CaseWriter.write(CaseDocument.of(saved(answers)), CORE), problems).orElseThrow();
      assertEquals(List.of(), problems);
      assertEquals(saved(answers), result.document().saved(), "seed " + seed);
      assertEquals(List.of(), result.dropped());
    }
  }

  @Test
  void theResponseHoldsWhatAppliesAndNothingElse() {
    Answers answers = anything(new Dice(77));
    List<Problem> problems = new ArrayList<>();
    JsonValue written =
        CoreForm.json(ResponseWriter.write(CORE, answers, HEADER), problems).orElseThrow();
    ResponseReader.Result read = ResponseReader.read(written, CORE, problems).orElseThrow();
    assertEquals(List.of(), problems);
    assertEquals(Enablement.of(CORE, answers).effective(), read.answers());
  }

  @Test
  void pickingNothingIsKeptEvenWhereAResponseCannotSayIt() {
    Answers answers =
        given("comm.mode", new Value.Codes(List.of()))
            .with("safe.devices", recorded(new Value.Codes(List.of())));
    String text = CaseWriter.write(CaseDocument.of(saved(answers)), CORE);
    Answers back = read(text, new ArrayList<>()).orElseThrow().document().saved().answers();
    assertEquals(Optional.of(new Value.Codes(List.of())), back.value("comm.mode"));
    assertEquals(Optional.of(new Value.Codes(List.of("none"))), back.value("safe.devices"));
    assertFalse(ResponseWriter.isComplete(CORE, answers));
  }

  private static Answers given(String fact, Value value) {
    return Answers.NONE.with(fact, recorded(value));
  }

  private static Answers.Recorded recorded(Value value) {
    return new Answers.Recorded(new Answer.Given(value), Provenance.PLAYER_TOLD);
  }

  @Test
  void anotherVersionIsReadByIdAndWhatDoesNotFitIsListed() {
    Answers answers =
        given("pain.now", new Value.Number(3))
            .with("end.minutes", recorded(new Value.Number(40)))
            .with("consent.state", recorded(new Value.Code("yes")));
    String text =
        ResponseWriter.write(CORE, answers, HEADER)
            .replace("|" + CORE.version(), "|0.0.1")
            .replace("\"yes\"", "\"gladly\"")
            .replace("\"end.minutes\"", "\"end.hours\"");
    List<Problem> problems = new ArrayList<>();
    ResponseReader.Result read =
        ResponseReader.read(CoreForm.json(text, problems).orElseThrow(), CORE, problems)
            .orElseThrow();
    assertEquals(given("pain.now", new Value.Number(3)).byFact(), read.answers().byFact());
    assertEquals(List.of("consent.state", "end.hours"), read.dropped());
    assertTrue(
        problems.stream()
            .anyMatch(
                p -> p.what().equals("\"end.hours\": No question has this id. It is left out.")));
    assertEquals(
        List.of("other-version", "answer-left-out", "answer-left-out"),
        problems.stream().map(Problem::code).toList());
    assertFalse(Problem.anyError(problems));
    assertTrue(problems.get(1).where().line() > 1);
    assertTrue(problems.get(1).where().pointer().startsWith("/item/0/item/0"));
  }

  @Test
  void aReasonForNoValueIsFoundInAllThreePlaces() {
    String absent =
        "{\"url\": \"http://hl7.org/fhir/StructureDefinition/data-absent-reason\","
            + " \"valueCode\": \"asked-declined\"}";
    String item =
        """
        {"resourceType": "QuestionnaireResponse", "questionnaire": "%s|%s",
         "item": [{"linkId": "pain.now", %s}]}""";
    for (String place :
        List.of(
            "\"extension\": [" + absent + "]",
            "\"answer\": [{\"extension\": [" + absent + "]}]",
            "\"answer\": [{\"_valueInteger\": {\"extension\": [" + absent + "]}}]")) {
      List<Problem> problems = new ArrayList<>();
      JsonValue json =
          CoreForm.json(item.formatted(CORE.url(), CORE.version(), place), problems).orElseThrow();
      Answers answers = ResponseReader.read(json, CORE, problems).orElseThrow().answers();
      assertEquals(List.of(), problems);
      assertEquals(
          Optional.of(new Answer.Absent(Answer.Reason.DECLINED)), answers.answer("pain.now"));
    }
  }

  @Test
  void answersOfTheWrongKindAreLeftOutWithTheirPlace() {
    for (String answer :
        List.of(
            "{\"valueString\": \"3\"}",
            "{\"valueInteger\": 11}",
            "{\"valueDecimal\": 2.5}",
            "{\"valueInteger\": 1}, {\"valueInteger\": 2}",
            "{}",
            "3",
            "{\"extension\": [{\"url\":"
                + " \"http://hl7.org/fhir/StructureDefinition/data-absent-reason\","
                + " \"valueCode\": \"masked\"}]}")) {
      List<Problem> problems = new ArrayList<>();
      String text =
          "{\"resourceType\": \"QuestionnaireResponse\", \"questionnaire\": \""
              + CORE.url()
              + "\", \"item\": [{\"linkId\": \"pain.now\", \"answer\": ["
              + answer
              + "]}]}";
      ResponseReader.Result read =
          ResponseReader.read(CoreForm.json(text, problems).orElseThrow(), CORE, problems)
              .orElseThrow();
      assertEquals(List.of("pain.now"), read.dropped(), answer);
      assertEquals(List.of("answer-left-out"), problems.stream().map(Problem::code).toList());
    }
  }

  @Test
  void whatIsNoResponseIsRefused() {
    for (String text : List.of("[]", "{}", "{\"resourceType\": \"Questionnaire\"}")) {
      List<Problem> problems = new ArrayList<>();
      assertEquals(
          Optional.empty(),
          ResponseReader.read(CoreForm.json(text, problems).orElseThrow(), CORE, problems));
      assertTrue(Problem.anyError(problems));
    }
  }

  @Test
  void aCaseSaysWhatItsStateIs() {
    Answers some = given("pain.now", new Value.Number(3));
    assertTrue(ResponseWriter.write(CORE, some, HEADER).contains("\"in-progress\""));
    ResponseWriter.Header stopped =
        new ResponseWriter.Header("heron-oak", "volunteer", "2026-11-24T10:00:00Z", true);
    assertTrue(ResponseWriter.write(CORE, some, stopped).contains("\"stopped\""));
  }

  @Test
  void oddDatesAndWordsAreRefused() {
    String text = CaseWriter.write(CaseDocument.of(saved(Answers.NONE)), CORE);
    for (String change :
        List.of(
            "2026-11-24T10:00:00+01:00|yesterday",
            "2026-11-24T10:00:00+01:00|2026-11-24T10:00:00",
            "\"asker\" : \"helper\"|\"asker\" : \"robot\"",
            "\"route\" : \"full\"|\"route\" : \"scenic\"",
            "\"route\" : \"full\"|\"rout\" : \"full\"")) {
      int bar = change.indexOf('|');
      String changed = text.replace(change.substring(0, bar), change.substring(bar + 1));
      List<Problem> problems = new ArrayList<>();
      assertEquals(Optional.empty(), read(changed, problems), change);
      assertTrue(Problem.anyError(problems), change);
    }
    List<Problem> problems = new ArrayList<>();
    String schema = "\"schema\" : " + CaseWriter.SCHEMA;
    String more = text.replace(schema, schema + ", \"colour\" : \"blue\"");
    assertTrue(read(more, problems).isPresent());
    assertEquals(List.of("unknown-key"), problems.stream().map(Problem::code).toList());
  }

  @Test
  void wordsThatCanBeKeptAreExactlyThoseThatCanBeRead() {
    for (int c = 0; c <= Character.MAX_CODE_POINT; c++) {
      String word = new String(Character.toChars(c));
      boolean line = c == '\n' || c == '\r' || c == '\t'; // read as spaces, so never kept
      boolean readable = UncleanText.firstUnclean(word) < 0 && !line;
      assertEquals(
          readable, PlainText.isPlain(word), () -> Integer.toHexString(word.codePointAt(0)));
      assertTrue(PlainText.isPlain(PlainText.of("a" + word + "b")));
    }
  }
}
