package closehand.bank;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * All that can be asked, in order. The file behind it is an HL7 FHIR R4 Questionnaire. A class
 * rather than a record only so that the look-up by fact, which every page makes hundreds of times,
 * is made once; equal when all its parts are.
 */
public final class Questionnaire {
  private final String url;
  private final String version;
  private final String title;
  private final List<Section> sections;
  private final Map<String, String> groupTexts;
  private volatile @Nullable Index index;

  /** What is found by fact id; made when somebody first looks, the same whoever makes it. */
  private record Index(
      List<Question> questions,
      Map<String, Field> fieldsByFact,
      Map<String, Question> questionsByFact) {
    static Index of(List<Section> sections) {
      List<Question> questions = new ArrayList<>();
      Map<String, Field> fieldsByFact = new LinkedHashMap<>();
      Map<String, Question> questionsByFact = new HashMap<>();
      for (Section section : sections) {
        for (Question question : section.questions()) {
          questions.add(question);
          for (Field field : question.fields()) {
            fieldsByFact.putIfAbsent(field.fact(), field);
            questionsByFact.putIfAbsent(field.fact(), question);
          }
        }
      }
      return new Index(
          Collections.unmodifiableList(questions),
          Collections.unmodifiableMap(fieldsByFact),
          questionsByFact);
    }
  }

  /**
   * Makes one.
   *
   * @param url the canonical address
   * @param version the version of the wording and conditions
   * @param title plain words
   * @param sections in the order asked
   * @param groupTexts the texts of all groups by link id, needed to write a response
   */
  public Questionnaire(
      String url,
      String version,
      String title,
      List<Section> sections,
      Map<String, String> groupTexts) {
    this.url = url;
    this.version = version;
    this.title = title;
    this.sections = List.copyOf(sections);
    this.groupTexts = Map.copyOf(groupTexts);
  }

  /** The canonical address. */
  public String url() {
    return url;
  }

  /** The version of the wording and conditions. */
  public String version() {
    return version;
  }

  /** Plain words. */
  public String title() {
    return title;
  }

  /** The sections in the order asked. */
  public List<Section> sections() {
    return sections;
  }

  /** The texts of all groups by link id. */
  public Map<String, String> groupTexts() {
    return groupTexts;
  }

  /** Every question in order. */
  public List<Question> questions() {
    return index().questions();
  }

  /** Every field in order, by fact id; where two have the same, the first. */
  public Map<String, Field> fieldsByFact() {
    return index().fieldsByFact();
  }

  /** The first question that finds out this fact. */
  public Optional<Question> questionOf(String fact) {
    return Optional.ofNullable(index().questionsByFact().get(fact));
  }

  /**
   * Whether every answer means the same in both: the same facts in the same order, each with the
   * same kind of answer. Wording may differ.
   */
  public boolean takesTheSameAnswers(Questionnaire other) {
    List<Field> ours = List.copyOf(fieldsByFact().values());
    List<Field> theirs = List.copyOf(other.fieldsByFact().values());
    boolean same = ours.size() == theirs.size();
    for (int i = 0; same && i < ours.size(); i++) {
      same =
          ours.get(i).fact().equals(theirs.get(i).fact())
              && ours.get(i).type().takesTheSame(theirs.get(i).type());
    }
    return same;
  }

  private Index index() {
    Index made = index;
    if (made == null) {
      made = Index.of(sections);
      index = made;
    }
    return made;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Questionnaire that
        && url.equals(that.url)
        && version.equals(that.version)
        && title.equals(that.title)
        && sections.equals(that.sections)
        && groupTexts.equals(that.groupTexts);
  }

  @Override
  public int hashCode() {
    return Objects.hash(url, version, title, sections, groupTexts);
  }

  @Override
  public String toString() {
    return "Questionnaire[url=" + url + ", version=" + version + "]";
  }
}
