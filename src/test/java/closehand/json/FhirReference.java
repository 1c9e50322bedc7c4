package closehand.json;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.context.support.IValidationSupport;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.PrePopulatedValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.SnapshotGeneratingValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.hl7.fhir.instance.model.api.IBaseResource;
import org.hl7.fhir.r4.model.Questionnaire;
import org.hl7.fhir.r4.model.Questionnaire.QuestionnaireItemComponent;
import org.hl7.fhir.r4.model.Questionnaire.QuestionnaireItemType;

/**
 * HL7's own validator (hapi-fhir-validation 8.8.0), offline, as a judge that shares no code with
 * this project. Setting it up takes seconds, so there is one for all tests.
 */
final class FhirReference {
  private static final FhirReference ONE = new FhirReference();

  /** Every message about missing narrative text; our files have none on purpose. */
  private static final String NARRATIVE = "dom-6";

  private final FhirContext context = FhirContext.forR4();
  private final PrePopulatedValidationSupport own = new PrePopulatedValidationSupport(context);
  private final Forms forms = new Forms();
  private final FhirValidator validator;

  private FhirReference() {
    IValidationSupport[] chain = {
      own,
      forms,
      new DefaultProfileValidationSupport(context),
      new CommonCodeSystemsTerminologyService(context),
      new InMemoryTerminologyServerValidationSupport(context),
      new SnapshotGeneratingValidationSupport(context)
    };
    FhirInstanceValidator module = new FhirInstanceValidator(new ValidationSupportChain(chain));
    module.setAnyExtensionsAllowed(false);
    module.setErrorForUnknownProfiles(true);
    validator = context.newValidator().registerValidatorModule(module);
    try (Stream<Path> files = Files.list(Path.of("question-banks/definitions"))) {
      for (Path file : files.sorted().toList()) {
        own.addResource(context.newJsonParser().parseResource(Files.readString(file)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static FhirReference get() {
    return ONE;
  }

  /** Makes a form known, so that responses to it can be checked. */
  void know(String questionnaire) {
    forms.add((Questionnaire) context.newJsonParser().parseResource(questionnaire));
  }

  /** The same form under another address with every question made required. */
  String allRequired(String questionnaire, String url) {
    Questionnaire form = (Questionnaire) context.newJsonParser().parseResource(questionnaire);
    form.setUrl(url);
    form.getItem().forEach(FhirReference::require);
    return context.newJsonParser().encodeResourceToString(form);
  }

  private static void require(QuestionnaireItemComponent item) {
    boolean question =
        item.getType() != QuestionnaireItemType.GROUP
            && item.getType() != QuestionnaireItemType.DISPLAY;
    if (question) {
      item.setRequired(true);
    }
    item.getItem().forEach(FhirReference::require);
  }

  /** All errors and warnings about a resource but for the one about missing narrative. */
  List<String> complaints(String resource) {
    return validator.validateWithResult(resource).getMessages().stream()
        .filter(m -> m.getSeverity() != ResultSeverityEnum.INFORMATION)
        .filter(m -> !String.valueOf(m.getMessageId()).contains(NARRATIVE))
        .map(m -> m.getSeverity() + " " + m.getLocationString() + " " + m.getMessage())
        .toList();
  }

  /** The errors about a resource. */
  List<String> errors(String resource) {
    return complaints(resource).stream().filter(c -> !c.startsWith("WARNING")).toList();
  }

  /**
   * The prepopulated support drops questionnaires without a word, so they need one of their own.
   */
  private final class Forms implements IValidationSupport {
    private final Map<String, Questionnaire> byUrl = new HashMap<>();

    void add(Questionnaire form) {
      byUrl.put(form.getUrl(), form);
      byUrl.put(form.getUrl() + "|" + form.getVersion(), form);
    }

    @Override
    public FhirContext getFhirContext() {
      return context;
    }

    @Override
    @SuppressWarnings("NullAway") // the interface answers null for "not here"
    public <T extends IBaseResource> T fetchResource(Class<T> type, String uri) {
      Questionnaire form = byUrl.get(uri);
      return type.isInstance(form) ? type.cast(form) : null;
    }
  }
}
