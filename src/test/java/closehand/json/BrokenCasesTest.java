package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/**
 * Case files damaged in thousands of ways, always the same ones: each opens or is refused with a
 * reason, and what opens can be written and opened again.
 */
class BrokenCasesTest {
  private static final Questionnaire CORE = CoreForm.questionnaire();

  /** With damaged answers files and banks they come to ten thousand in every build. */
  private static final int MUTATIONS = Integer.getInteger("closehand.mutations", 3500);

  private static byte[] frozen(int schema) {
    try {
      return Files.readAllBytes(Path.of("src/test/resources/cases/schema-" + schema + ".json"));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void everyDamagedCaseOpensOrIsRefusedWithAReason() {
    AtomicInteger refused = new AtomicInteger();
    InBatches.seeds(
        MUTATIONS,
        seed -> {
          byte[] file = frozen(1 + seed % CaseWriter.SCHEMA);
          byte[] damaged = new Mutation(seed).damage(file, frozen(CaseWriter.SCHEMA));
          List<Problem> problems = new ArrayList<>();
          Optional<CaseReader.Result> result =
              CaseReader.read("case.json", damaged, CORE, problems);
          assertEquals(result.isEmpty(), Problem.anyError(problems), "seed " + seed);
          result.ifPresentOrElse(r -> opensAgain(r.document()), refused::incrementAndGet);
        });
    int found = refused.get();
    assertTrue(found > MUTATIONS / 5 && found < MUTATIONS, "refused " + found);
  }

  private static void opensAgain(CaseDocument document) {
    String text = CaseWriter.write(document, CORE);
    List<Problem> problems = new ArrayList<>();
    CaseReader.Result again =
        CaseReader.read("case.json", text.getBytes(StandardCharsets.UTF_8), CORE, problems)
            .orElseThrow(() -> new AssertionError(problems.toString()));
    assertEquals(document.saved().answers().byFact(), again.document().saved().answers().byFact());
    assertEquals(document.record(), again.document().record());
  }

  @Test
  void noMessageQuotesAnAnswer() {
    for (int seed = 1; seed <= MUTATIONS / 5; seed++) {
      byte[] damaged = new Mutation(seed).damage(frozen(2), frozen(1));
      List<Problem> problems = new ArrayList<>();
      CaseReader.read("case.json", damaged, CORE, problems);
      assertFalse(problems.toString().contains("prefers short"), "seed " + seed);
      assertFalse(problems.toString().contains("looked at it"), "seed " + seed);
    }
  }
}
