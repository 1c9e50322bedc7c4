package closehand.json;

import closehand.bank.EnableWhen;
import closehand.bank.Field;
import closehand.bank.Problem;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.bank.Section;
import closehand.bank.TaskKind;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.HashMap;
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
  private final Map<String, Where> linkIds = new HashMap<>();

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
    Optional<JsonValue> type = in.optional("resourceType");
    if (!(type.orElse(null) instanceof JsonValue.Str word)
        || !word.value().equals("Questionnaire")) {
      note(
          type.map(JsonValue::where).orElse(in.where()),
          "wrong-format",
          "This is not a FHIR Questionnaire.",
          "\"resourceType\" must be \"Questionnaire\".");
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
    extensions(in);
    List<Section> sections = new ArrayList<>();
    for (JsonValue item : in.list("item")) {
      ObjectReading.of(item, problems).flatMap(this::section).ifPresent(sections::add);
    }
    in.finish();
    return Optional.of(new Questionnaire(url, version, title, sections, groupTexts));
  }

  private FhirExtensions extensions(ObjectReading in) {
    return new FhirExtensions(in.optionalList("extension"), problems).check();
  }

  private Optional<Section> section(ObjectReading in) {
    Optional<String> type = in.optionalText("type");
    if (type.isPresent() && !type.get().equals("group")) {
      note(
          in.where("type"),
          "wrong-type",
          "The items at the top are groups: the sections of the interview.",
          "Put this one below a group.");
      return Optional.empty();
    }
    in.text("type");
    String id = linkId(in);
    String title = in.text("text");
    groupTexts.put(id, title);
    List<EnableWhen> around = EnableWhenReader.read(in, problems).map(List::of).orElse(List.of());
    extensions(in);
    List<Question> questions = new ArrayList<>();
    for (JsonValue item : items(in)) {
      ObjectReading.of(item, problems)
          .flatMap(q -> question(q, id, around))
          .ifPresent(questions::add);
    }
    in.finish();
    return Optional.of(new Section(id, title, questions));
  }

  /** The items of a group, which may not be empty. */
  private List<JsonValue> items(ObjectReading in) {
    List<JsonValue> items = in.list("item");
    if (items.isEmpty() && in.optional("item").orElse(null) instanceof JsonValue.Arr list) {
      note(list.where(), "empty-list", "This group is empty.", "Add a question or remove it.");
    }
    return items;
  }

  private Optional<Question> question(ObjectReading in, String section, List<EnableWhen> around) {
    String type = in.optionalText("type").orElse("");
    if (type.equals("display")) {
      note(
          in.where("type"),
          "wrong-type",
          "A help text stands here, not a question.",
          "Put it below the question that it belongs to.");
      return Optional.empty();
    }
    String id = in.text("prefix");
    FhirExtensions extensions = extensions(in);
    HelpTexts help = new HelpTexts(problems);
    List<Field> found = new ArrayList<>();
    String text = in.text("text");
    if (type.equals("group")) {
      group(in, around, List.of(section), help, found, extensions);
    } else {
      field(in, around, List.of(section), help, found, extensions);
    }
    help.check(in);
    QuestionWords words = new QuestionWords(extensions, problems);
    return Optional.of(
        new Question(
            id,
            section,
            text,
            extensions.textOf(FhirExtensions.OWN + "short-name"),
            extensions.textOf(FhirExtensions.OWN + "remote-text"),
            extensions.textOf(FhirExtensions.OWN + "alone-text"),
            help.why(),
            help.room(),
            help.video(),
            help.alone(),
            help.conditions(),
            words.route(),
            words.askedBy(),
            words.weight(),
            found,
            in.where()));
  }

  private void group(
      ObjectReading in,
      List<EnableWhen> around,
      List<String> outer,
      HelpTexts help,
      List<Field> found,
      FhirExtensions extensions) {
    String linkId = linkId(in);
    groupTexts.put(linkId, in.optionalText("text").orElse(""));
    in.optionalText("prefix");
    in.optionalText("type");
    in.optionalList("code");
    List<EnableWhen> conditions = new ArrayList<>(around);
    EnableWhenReader.read(in, problems).ifPresent(conditions::add);
    in.flag("required", false);
    if (in.flag("repeats", false)) {
      note(
          in.where("repeats"),
          "wrong-type",
          "Groups do not repeat here.",
          "Write the group out as often as it is needed.");
    }
    List<String> groups = new ArrayList<>(outer);
    groups.add(linkId);
    int before = found.size();
    List<JsonValue> items = items(in);
    for (JsonValue item : items) {
      ObjectReading.of(item, problems)
          .ifPresent(i -> child(i, conditions, groups, help, found, true));
    }
    if (found.size() == before && !items.isEmpty()) {
      note(in.where("item"), "missing", "There is no question in this group.", "Add one.");
    }
    new QuestionWords(extensions, problems)
        .task()
        .ifPresent(kind -> taskOfGroup(kind, found.subList(before, found.size())));
    in.finish();
  }

  /** A task named on a group holds for every field in it that names none. */
  private static void taskOfGroup(TaskKind kind, List<Field> inside) {
    inside.replaceAll(
        f ->
            new Field(
                f.fact(),
                f.label(),
                f.remoteLabel(),
                f.aloneLabel(),
                f.type(),
                f.required(),
                f.conditions(),
                f.groups(),
                f.task().or(() -> Optional.of(kind)),
                f.askedAgain(),
                f.classification(),
                f.where()));
  }

  private void field(
      ObjectReading in,
      List<EnableWhen> around,
      List<String> groups,
      HelpTexts help,
      List<Field> found,
      FhirExtensions extensions) {
    String linkId = linkId(in);
    List<Field> below = new ArrayList<>();
    for (JsonValue item : in.optionalList("item")) {
      ObjectReading.of(item, problems).ifPresent(i -> child(i, around, groups, help, below, false));
    }
    found.add(fields.read(in, linkId, around, groups, extensions));
    found.addAll(below);
    in.finish();
  }

  /** An item below a question or below a group inside one. */
  private void child(
      ObjectReading in,
      List<EnableWhen> around,
      List<String> groups,
      HelpTexts help,
      List<Field> found,
      boolean inGroup) {
    String type = in.optionalText("type").orElse("");
    if (type.equals("display")) {
      linkId(in);
      help.take(in);
      return;
    }
    if (!inGroup) {
      note(
          in.where(),
          "nested-question",
          "A question stands below another question.",
          "Put both below a group.");
    }
    FhirExtensions extensions = extensions(in);
    if (type.equals("group")) {
      group(in, around, groups, help, found, extensions);
    } else {
      field(in, around, groups, help, found, extensions);
    }
  }

  /** The link id, which no other item may have. */
  private String linkId(ObjectReading in) {
    String linkId = in.text("linkId");
    Where where = in.where("linkId");
    Where first = linkId.isEmpty() ? null : linkIds.putIfAbsent(linkId, where);
    if (first != null) {
      note(
          where,
          "duplicate-id",
          "The link id \"" + linkId + "\" is used already, on line " + first.line() + ".",
          "Choose another.");
    }
    return linkId;
  }

  private void note(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
