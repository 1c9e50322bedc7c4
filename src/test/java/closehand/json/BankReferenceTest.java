package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The core questionnaire before an independent judge of HL7 FHIR R4: HAPI FHIR's validator. */
class BankReferenceTest {
  @Test
  void theQuestionnaireHasNoErrorAndNoWarning() {
    assertEquals(List.of(), FhirReference.get().complaints(CoreForm.text()));
  }

  @Test
  void aTypeThatDoesNotExistIsSeen() {
    String broken = CoreForm.text().replaceFirst("\"type\": *\"choice\"", "\"type\": \"choise\"");
    assertFalse(FhirReference.get().complaints(broken).isEmpty());
  }
}
