package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import ca.uhn.fhir.context.FhirContext;
import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Questionnaire;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.interview.Enablement;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.Value;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * HL7's own example forms, walked at random by our engine and judged by HL7's validator. The forms
 * are fetched by {@code .ci/fetch-forms}; without them the test skips itself.
 */
class ForeignFormsTest {
  private static final int WALKS = Integer.getInteger("closehand.walks", 2);
  private static final Path FORMS = Path.of("target/hl7-forms");
  private static final FhirContext FHIR = FhirContext.forR4();
  private static final ResponseWriter.Header HEADER =
      new ResponseWriter.Header("wren-alder", "volunteer", "2026-11-25T10:00:00Z", false);

  /** Forms that cannot be walked, each with the reason. */
  private static final List<String> LEFT_OUT = new ArrayList<>();

  private record Form(String name, org.hl7.fhir.r4.model.Questionnaire reshaped) {}

  private static List<Form> forms() throws IOException {
    assumeTrue(
        Files.exists(FORMS.resolve("complete")),
        "HL7's forms are not here; .ci/fetch-forms fetches them");
    List<Form> forms = new ArrayList<>();
    LEFT_OUT.clear();
    try (Stream<Path> files = Files.list(FORMS)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        org.hl7.fhir.r4.model.Questionnaire form =
            FHIR.newJsonParser()
                .parseResource(org.hl7.fhir.r4.model.Questionnaire.class, Files.readString(file));
        try {
          ForeignForm.reshape(form, "http://closehand.invalid/foreign/" + forms.size());
          if (form.hasItem()) {
            FhirReference.get().know(FHIR.newJsonParser().encodeResourceToString(form));
            forms.add(new Form(String.valueOf(file.getFileName()), form));
          }
        } catch (ForeignForm.NotWalkable e) {
          LEFT_OUT.add(file.getFileName() + ": " + e.getMessage());
        }
      }
    }
    return forms;
  }

  /** Random lawful answers until every question that applies has one. */
  private static Answers walk(Questionnaire form, Dice dice) {
    Interview walker = Interview.begin(form, Interview.Route.FULL, Provenance.By.VOLUNTEER);
    Map<String, List<Value>> wanted = wanted(form);
    Map<String, Answers.Recorded> given = new LinkedHashMap<>();
    boolean more = true;
    while (more) {
      more = false;
      Answers answers = new Answers(given, List.of());
      Enablement enablement = Enablement.of(walker.outline(), answers);
      for (Field field : form.fieldsByFact().values()) {
        if (!given.containsKey(field.fact()) && enablement.applies(field.fact())) {
          given.put(field.fact(), answer(wanted, field, dice));
          more = true;
        }
      }
    }
    return new Answers(given, List.of());
  }

  private static Answers.Recorded answer(Map<String, List<Value>> wanted, Field field, Dice dice) {
    Answer answer =
        dice.oneIn(8)
            ? new Answer.Absent(Answer.Reason.DECLINED)
            : new Answer.Given(value(wanted.getOrDefault(field.fact(), List.of()), field, dice));
    return new Answers.Recorded(answer, Provenance.PLAYER_TOLD);
  }

  /** Often the very value that a condition waits for. */
  private static Value value(List<Value> wanted, Field field, Dice dice) {
    FactType type = field.type();
    if (!wanted.isEmpty() && dice.oneIn(2)) {
      return wanted.get(dice.below(wanted.size()));
    }
    if (type instanceof FactType.YesNo) {
      return new Value.Flag(dice.oneIn(2));
    }
    if (type instanceof FactType.Amount) {
      return new Value.Number(dice.below(20));
    }
    return type instanceof FactType.OneOf
        ? new Value.Code(type.choices().get(dice.below(type.choices().size())).code())
        : new Value.Text("words " + dice.below(5));
  }

  private static Map<String, List<Value>> wanted(Questionnaire form) {
    Map<String, List<Value>> wanted = new HashMap<>();
    for (Field field : form.fieldsByFact().values()) {
      for (EnableWhen when : field.conditions()) {
        for (EnableWhen.Test test : when.tests()) {
          if (test.operator() != EnableWhen.Operator.EXISTS) {
            wanted.computeIfAbsent(test.fact(), f -> new ArrayList<>()).add(value(test.expected()));
          }
        }
      }
    }
    return wanted;
  }

  private static Value value(EnableWhen.Expected expected) {
    if (expected instanceof EnableWhen.Expected.Flag flag) {
      return new Value.Flag(flag.value());
    }
    if (expected instanceof EnableWhen.Expected.Number number) {
      return new Value.Number(number.value());
    }
    return expected instanceof EnableWhen.Expected.Coded coded
        ? new Value.Code(coded.code())
        : new Value.Text(((EnableWhen.Expected.Text) expected).value());
  }

  private static List<String> errors(Questionnaire form, Answers answers) {
    return FhirReference.get().errors(ResponseWriter.write(form, answers, HEADER));
  }

  @Test
  void everyLawfulWalkIsAcceptedByTheValidator() throws IOException {
    List<Form> forms = forms();
    assertTrue(forms.size() >= 34, "left out: " + LEFT_OUT);
    int conditional = 0;
    for (Form form : forms) {
      Questionnaire ours = ForeignForm.read(form.reshaped(), UnaryOperator.identity());
      boolean branches =
          ours.fieldsByFact().values().stream().anyMatch(f -> !f.conditions().isEmpty());
      conditional += branches ? 1 : 0;
      for (int seed = 1; seed <= WALKS; seed++) {
        Answers answers = walk(ours, new Dice(seed));
        assertEquals(List.of(), errors(ours, answers), form.name() + ", seed " + seed);
      }
    }
    assertTrue(conditional >= 7, "forms with conditions: " + conditional);
  }

  @Test
  void anEngineThatBranchesWronglyIsNoticed() throws IOException {
    List<Form> forms = forms();
    assertNoticed(forms, conditions -> List.of(), "everything always applies");
    assertNoticed(
        forms, ForeignFormsTest::anyForAll, "one condition suffices where all are wanted");
    assertNoticed(forms, ForeignFormsTest::opposite, "exists and = turned round");
  }

  private static List<EnableWhen> anyForAll(List<EnableWhen> conditions) {
    return conditions.stream().map(c -> new EnableWhen(c.tests(), !c.all())).toList();
  }

  private static List<EnableWhen> opposite(List<EnableWhen> conditions) {
    return conditions.stream()
        .map(c -> new EnableWhen(c.tests().stream().map(t -> turned(t)).toList(), c.all()))
        .toList();
  }

  private static EnableWhen.Test turned(EnableWhen.Test test) {
    if (test.operator() == EnableWhen.Operator.EXISTS
        && test.expected() instanceof EnableWhen.Expected.Flag flag) {
      return new EnableWhen.Test(
          test.fact(), test.operator(), new EnableWhen.Expected.Flag(!flag.value()), test.where());
    }
    EnableWhen.Operator other =
        test.operator() == EnableWhen.Operator.EQUAL
            ? EnableWhen.Operator.NOT_EQUAL
            : EnableWhen.Operator.EQUAL;
    return new EnableWhen.Test(test.fact(), other, test.expected(), test.where());
  }

  private static void assertNoticed(
      List<Form> forms, UnaryOperator<List<EnableWhen>> sabotage, String what) {
    boolean noticed = false;
    for (Form form : forms) {
      Questionnaire wrong = ForeignForm.read(form.reshaped(), sabotage);
      boolean conditional =
          !ForeignForm.read(form.reshaped(), UnaryOperator.identity())
              .fieldsByFact()
              .values()
              .stream()
              .allMatch(f -> f.conditions().isEmpty());
      for (int seed = 1; conditional && !noticed && seed <= 3; seed++) {
        noticed = !errors(wrong, walk(wrong, new Dice(seed))).isEmpty();
      }
    }
    assertTrue(noticed, "not noticed: " + what);
    assertFalse(forms.isEmpty());
  }
}
