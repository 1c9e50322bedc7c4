package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.interview.Enablement;
import closehand.interview.FlatAnswers;
import closehand.rules.GoldAnswers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every set of answers that is kept here stands before HL7's own validator (hapi-fhir-validation
 * 8.8.0) without an error and without a warning: the gold cases, the examples, the frozen cases.
 */
class SavedAnswersReferenceTest {
  private static final Path EXAMPLES = Path.of("examples");
  private static final Path FROZEN = Path.of("src/test/resources/cases");

  @TestFactory
  Stream<DynamicTest> goldCasesAndExamples() throws IOException {
    FhirReference.get().know(CoreForm.text());
    Bank bank = GoldAnswers.bank();
    Map<String, Answers> all = new LinkedHashMap<>(GoldAnswers.of(bank));
    all.putAll(examples(bank));
    assertEquals(12, all.size(), all.keySet().toString());
    return all.entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> judged(bank, e.getValue())));
  }

  private static void judged(Bank bank, Answers answers) {
    Answers effective = Enablement.of(bank.questionnaire(), answers).effective();
    assertFalse(effective.byFact().isEmpty());
    ResponseWriter.Header header =
        new ResponseWriter.Header("quiet-heron", "volunteer", "2026-11-24T10:00:00+01:00", false);
    String response = ResponseWriter.write(bank.questionnaire(), effective, header);
    assertEquals(List.of(), complaints(response));
  }

  /** An unfinished set may lack an answer to a question that must have one in the end. */
  private static List<String> complaints(String response) {
    boolean unfinished = response.contains("\"in-progress\"");
    return FhirReference.get().complaints(response).stream()
        .filter(c -> !(unfinished && c.contains("No response answer found for required item")))
        .toList();
  }

  private static Map<String, Answers> examples(Bank bank) throws IOException {
    Map<String, Answers> found = new LinkedHashMap<>();
    try (Stream<Path> folders = Files.list(EXAMPLES)) {
      for (Path file : folders.map(f -> f.resolve("answers.json")).sorted().toList()) {
        if (Files.exists(file)) {
          List<Problem> problems = new ArrayList<>();
          JsonValue json = CoreForm.json(Files.readString(file), problems).orElseThrow();
          FlatAnswers flat = FlatAnswers.of(bank, FlatReader.read(json, problems));
          assertEquals(List.of(), problems, file.toString());
          found.put(file.getParent().getFileName().toString(), flat.answers());
        }
      }
    }
    return found;
  }

  @TestFactory
  Stream<DynamicTest> frozenCases() throws IOException {
    FhirReference.get().know(CoreForm.text());
    try (Stream<Path> files = Files.list(FROZEN)) {
      List<Path> cases = files.sorted().toList();
      assertTrue(cases.size() >= 4, cases.toString());
      return cases.stream()
          .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> judged(f)));
    }
  }

  private static void judged(Path file) throws IOException {
    String text = Files.readString(file);
    int start = text.indexOf('{', text.indexOf("\"response\""));
    assertTrue(start > 0, "a case holds a response");
    assertEquals(List.of(), complaints(object(text, start)));
  }

  /** The JSON object that opens here, as it stands in the file. */
  private static String object(String text, int start) {
    boolean words = false;
    int depth = 0;
    for (int i = start; i < text.length(); i++) {
      char here = text.charAt(i);
      if (words && here == '\\') {
        i++;
      } else if (here == '"') {
        words = !words;
      } else if (!words && here == '{') {
        depth++;
      } else if (!words && here == '}' && --depth == 0) {
        return text.substring(start, i + 1);
      }
    }
    throw new AssertionError("no end");
  }
}
