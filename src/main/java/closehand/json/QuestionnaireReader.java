package closehand.json;

import closehand.bank.EnableWhen;
import closehand.bank.Field;
import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.bank.Section;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads an HL7 FHIR R4 Questionnaire that keeps to this project's conventions: sections are
 * top-level groups, below them one item a question (with a prefix), below it one item a field, and
 * help texts as display items.
 */
public final class QuestionnaireReader {
  private final List<Problem> problems;
  private final FieldReader fields;
  private final Map<String, String> groupTexts = new LinkedHashMap<>();

  private QuestionnaireReader(List<Problem> problems) {
    this.problems = problems;
    this.fields = new FieldReader(problems);
  }

  /** Reads the questionnaire; empty if the document is no questionnaire at all. */
  public static Optional<Questionnaire> read(JsonValue document, List<Problem> problems) {
    Optional<ObjectReading> reading = ObjectReading.of(document, problems);
    return reading.flatMap(in -> new QuestionnaireReader(problems).questionnaire(in));
  }

  private Optional<Questionnaire> questionnaire(ObjectReading in) {
    String type = in.text("resourceType");
    if (!type.equals("Questionnaire")) {
      problems.add(
          Problem.error(
              in.where(),
              "wrong-type",
              "This is not a FHIR Questionnaire.",
              "resourceType must be Questionnaire."));
      return Optional.empty();
    }
    String url = in.text("url");
    String version = in.text("version");
    in.optionalText("name");
    String title = in.text("title");
    in.text("status");
    in.optionalText("language");
    in.optionalText("date");
    in.optionalText("description");
    in.optionalText("publisher");
    in.optionalTexts("subjectType");
    new FhirExtensions(in.optionalList("extension"), problems).checkAddresses();
    List<Section> sections = new ArrayList<>();
    for (JsonValue item : in.list("item")) {
      ObjectReading.of(item, problems).ifPresent(s -> sections.add(section(s)));
    }
    in.finish();
    return Optional.of(new Questionnaire(url, version, title, sections, groupTexts));
  }

  private Section section(ObjectReading in) {
    String id = in.text("linkId");
    String title = in.text("text");
    groupTexts.put(id, title);
    if (!in.text("type").equals("group")) {
      problems.add(
          Problem.error(in.where(), "wrong-type", "A top-level item is a group: a section.", ""));
    }
    List<EnableWhen> around = EnableWhenReader.read(in, problems).map(List::of).orElse(List.of());
    new FhirExtensions(in.optionalList("extension"), problems).checkAddresses();
    List<Question> questions = new ArrayList<>();
    for (JsonValue item : in.list("item")) {
      ObjectReading.of(item, problems).ifPresent(q -> questions.add(question(q, id, around)));
    }
    in.finish();
    return new Section(id, title, questions);
  }

  private Question question(ObjectReading in, String section, List<EnableWhen> around) {
    String id = in.text("prefix");
    FhirExtensions extensions =
        new FhirExtensions(in.optionalList("extension"), problems).checkAddresses();
    Texts texts = new Texts();
    List<Field> found = new ArrayList<>();
    boolean group = in.optionalText("type").orElse("").equals("group");
    String text = in.text("text");
    if (group) {
      group(in, around, List.of(section), texts, found, extensions);
    } else {
      children(in.optionalList("item"), List.of(), List.of(), texts, found, false);
      found.add(fields.read(in, around, List.of(section), extensions));
      in.finish();
    }
    if (found.isEmpty()) {
      problems.add(
          Problem.error(in.where(), "missing", "This question has nothing to answer.", ""));
    }
    texts.check(in, id, problems);
    return new Question(
        id,
        section,
        text,
        extensions.textOf(FhirExtensions.OWN + "short-name", "valueString"),
        extensions.textOf(FhirExtensions.OWN + "remote-text", "valueString"),
        texts.why,
        texts.room,
        texts.video,
        route(in, extensions),
        askedBy(in, extensions),
        weight(in, extensions),
        found,
        in.where());
  }

  private void group(
      ObjectReading in,
      List<EnableWhen> around,
      List<String> outer,
      Texts texts,
      List<Field> found,
      FhirExtensions extensions) {
    String linkId = in.text("linkId");
    groupTexts.put(linkId, in.optionalText("text").orElse(""));
    in.optionalText("prefix");
    in.optionalText("type");
    in.optionalList("code");
    List<EnableWhen> conditions = new ArrayList<>(around);
    EnableWhenReader.read(in, problems).ifPresent(conditions::add);
    in.flag("required", false);
    if (in.flag("repeats", false)) {
      problems.add(
          Problem.error(
              in.where(), "wrong-type", "Groups do not repeat here.", "Write the group out."));
    }
    List<String> groups = new ArrayList<>(outer);
    groups.add(linkId);
    int before = found.size();
    children(in.list("item"), conditions, groups, texts, found, true);
    if (extensions.value(FhirExtensions.OWN + "task", "valueCode").isPresent()) {
      taskOfGroup(in, extensions, found, before);
    }
    in.finish();
  }

  /** A task named on a group holds for every field in it. */
  private void taskOfGroup(
      ObjectReading in, FhirExtensions extensions, List<Field> found, int from) {
    Optional<closehand.bank.TaskKind> kind =
        extensions
            .textOf(FhirExtensions.OWN + "task", "valueCode")
            .flatMap(closehand.bank.TaskKind::of);
    if (kind.isEmpty()) {
      problems.add(
          Problem.error(
              in.where(),
              "unknown-value",
              "This is not a kind of task.",
              "Use timed, strength, breath or head."));
      return;
    }
    for (int i = from; i < found.size(); i++) {
      Field f = found.get(i);
      found.set(
          i,
          new Field(
              f.fact(),
              f.label(),
              f.remoteLabel(),
              f.type(),
              f.required(),
              f.conditions(),
              f.groups(),
              f.task().or(() -> kind),
              f.askedAgain(),
              f.classification(),
              f.where()));
    }
  }

  private void children(
      List<JsonValue> items,
      List<EnableWhen> around,
      List<String> groups,
      Texts texts,
      List<Field> found,
      boolean questionsAllowed) {
    for (JsonValue item : items) {
      Optional<ObjectReading> reading = ObjectReading.of(item, problems);
      if (reading.isEmpty()) {
        continue;
      }
      ObjectReading in = reading.get();
      String type = in.optionalText("type").orElse("");
      if (type.equals("display")) {
        texts.take(in, problems);
        in.finish();
      } else if (!questionsAllowed) {
        problems.add(
            Problem.error(
                in.where(),
                "nested-question",
                "A question stands below another question.",
                "Put both below a group."));
      } else if (type.equals("group")) {
        FhirExtensions extensions =
            new FhirExtensions(in.optionalList("extension"), problems).checkAddresses();
        group(in, around, groups, texts, found, extensions);
      } else {
        FhirExtensions extensions =
            new FhirExtensions(in.optionalList("extension"), problems).checkAddresses();
        children(in.optionalList("item"), List.of(), List.of(), texts, found, false);
        found.add(fields.read(in, around, groups, extensions));
        in.finish();
      }
    }
  }

  private Question.Route route(ObjectReading in, FhirExtensions extensions) {
    String word = extensions.textOf(FhirExtensions.OWN + "path", "valueCode").orElse("full");
    for (Question.Route route : Question.Route.values()) {
      if (route.code().equals(word)) {
        return route;
      }
    }
    unknownWord(
        in, word, Arrays.stream(Question.Route.values()).map(Question.Route::code).toList());
    return Question.Route.FULL;
  }

  private Question.AskedBy askedBy(ObjectReading in, FhirExtensions extensions) {
    String word =
        extensions.textOf(FhirExtensions.OWN + "asked-by", "valueCode").orElse("volunteer");
    for (Question.AskedBy by : Question.AskedBy.values()) {
      if (by.code().equals(word)) {
        return by;
      }
    }
    unknownWord(
        in, word, Arrays.stream(Question.AskedBy.values()).map(Question.AskedBy::code).toList());
    return Question.AskedBy.CLINICIAN;
  }

  private int weight(ObjectReading in, FhirExtensions extensions) {
    int weight =
        extensions
            .numberOf(FhirExtensions.OWN + "safety-weight", "valueInteger")
            .orElse(0.0)
            .intValue();
    if (weight < 0 || weight > 3) {
      problems.add(
          Problem.error(in.where(), "out-of-range", "A safety weight is from 0 to 3.", ""));
    }
    return weight;
  }

  private void unknownWord(ObjectReading in, String word, List<String> known) {
    problems.add(
        Problem.error(
            in.where(),
            "unknown-value",
            "\"" + word + "\" is not one of " + String.join(", ", known) + ".",
            Hint.didYouMean(word, known)));
  }

  /** The help texts of one question, told apart by the end of their link id. */
  private static final class Texts {
    private String why = "";
    private String room = "";
    private String video = "";

    void take(ObjectReading in, List<Problem> problems) {
      String linkId = in.text("linkId");
      String text = in.text("text");
      in.optionalText("type");
      EnableWhenReader.read(in, problems);
      new FhirExtensions(in.optionalList("extension"), problems).checkAddresses();
      if (linkId.endsWith(".why")) {
        why = text;
      } else if (linkId.endsWith(".room")) {
        room = text;
      } else if (linkId.endsWith(".video")) {
        video = text;
      } else {
        problems.add(
            Problem.error(
                in.where(),
                "unknown-value",
                "A help text's link id ends in .why, .room or .video.",
                ""));
      }
    }

    void check(ObjectReading in, String id, List<Problem> problems) {
      String missing =
          (why.isEmpty() ? " why" : "")
              + (room.isEmpty() ? " room" : "")
              + (video.isEmpty() ? " video" : "");
      if (!missing.isEmpty()) {
        problems.add(
            Problem.error(
                in.where(),
                "missing",
                "Question " + id + " lacks the help text:" + missing + ".",
                "Add a display item."));
      }
    }
  }
}
