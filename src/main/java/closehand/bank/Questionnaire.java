package closehand.bank;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that can be asked, in order. The file behind it is an HL7 FHIR R4 Questionnaire.
 *
 * @param url the canonical address
 * @param version the version of the wording and conditions
 * @param title plain words
 * @param sections in the order asked
 * @param groupTexts the texts of all groups by link id, needed to write a response
 */
public record Questionnaire(
    String url,
    String version,
    String title,
    List<Section> sections,
    Map<String, String> groupTexts) {
  public Questionnaire {
    sections = List.copyOf(sections);
    groupTexts = Map.copyOf(groupTexts);
  }

  /** Every question in order. */
  public List<Question> questions() {
    return sections.stream().flatMap(s -> s.questions().stream()).toList();
  }

  /** Every field in order, by fact id. */
  public Map<String, Field> fieldsByFact() {
    Map<String, Field> byFact = new LinkedHashMap<>();
    for (Section section : sections) {
      for (Question question : section.questions()) {
        for (Field field : question.fields()) {
          byFact.putIfAbsent(field.fact(), field);
        }
      }
    }
    return byFact;
  }

  /** The question that finds out this fact. */
  public Optional<Question> questionOf(String fact) {
    return questions().stream()
        .filter(q -> q.fields().stream().anyMatch(f -> f.fact().equals(fact)))
        .findFirst();
  }
}
