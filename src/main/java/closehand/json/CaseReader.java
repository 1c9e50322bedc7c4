package closehand.json;

import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import closehand.bank.Where;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a saved case.
 *
 * <p>A document that is damaged, ambiguous or made by a newer version is refused with problems that
 * say where. Single answers that do not fit the bank in use are left out with a warning.
 */
public final class CaseReader {
  private static final Set<String> MEMBERS =
      Set.of(
          "format",
          "schema",
          "name",
          "bank",
          "asker",
          "route",
          "at",
          "started",
          "saved",
          "response",
          "setAside",
          "noneOfThem",
          "lowered",
          "halfTyped",
          "keepUntil",
          "reviewOn",
          "consents",
          "history",
          "suggested",
          "measured",
          "plans",
          "trials");

  private final Questionnaire questionnaire;
  private final List<Problem> problems;
  private final List<String> dropped = new ArrayList<>();

  private CaseReader(Questionnaire questionnaire, List<Problem> problems) {
    this.questionnaire = questionnaire;
    this.problems = problems;
  }

  /**
   * What a document holds.
   *
   * @param document the case
   * @param dropped link ids of answers that do not fit the bank in use
   */
  public record Result(CaseDocument document, List<String> dropped) {
    public Result {
      dropped = List.copyOf(dropped);
    }
  }

  /**
   * Reads a document; empty when any error was found.
   *
   * @param file the name used in messages
   * @param bytes the document
   * @param questionnaire the questionnaire in use
   * @param problems receives whatever is wrong
   */
  public static Optional<Result> read(
      String file, byte[] bytes, Questionnaire questionnaire, List<Problem> problems) {
    List<Problem> found = new ArrayList<>();
    Optional<Result> result =
        JsonReader.read(file, bytes, found)
            .flatMap(document -> new CaseReader(questionnaire, found).document(document));
    problems.addAll(found);
    return Problem.anyError(found) ? Optional.empty() : result;
  }

  /**
   * The answers of a case alone; whatever else stands in the document is not looked at.
   *
   * @param problems receives whatever is wrong with them
   * @return nothing when the document is no case, or one of a newer version
   */
  static Optional<Answers> answers(
      JsonValue document, Questionnaire questionnaire, List<Problem> problems) {
    List<Problem> found = new ArrayList<>();
    CaseReader reader = new CaseReader(questionnaire, found);
    Optional<Answers> answers =
        reader
            .migrated(document)
            .map(now -> reader.answers(new ObjectReading(now, reader.problems)));
    problems.addAll(found);
    return Problem.anyError(found) ? Optional.empty() : answers;
  }

  private Optional<Result> document(JsonValue document) {
    return migrated(document).flatMap(this::present);
  }

  /** The document in the present schema; nothing with a problem where it is no case. */
  private Optional<JsonValue.Obj> migrated(JsonValue document) {
    Optional<ObjectReading> in = ObjectReading.of(document, problems);
    if (in.isEmpty()) {
      return Optional.empty();
    }
    Optional<JsonValue> format = in.get().optional("format");
    if (!(format.orElse(null) instanceof JsonValue.Str text)
        || !text.value().equals(CaseWriter.FORMAT)) {
      return refuse(
          document.where(), "wrong-format", "This is not a saved case.", "Is it the right file?");
    }
    int schema = in.get().whole("schema", 1, Integer.MAX_VALUE);
    if (schema > CaseWriter.SCHEMA) {
      return refuse(
          in.get().where("schema"),
          "newer-version",
          "This case was made by a newer version of the program.",
          "Update the program to open it.");
    }
    if (Problem.anyError(problems)) {
      return Optional.empty();
    }
    return Optional.of(CaseMigrations.migrated((JsonValue.Obj) document, schema));
  }

  /** Reads a document of the present schema. */
  private Optional<Result> present(JsonValue.Obj document) {
    ObjectReading in = new ObjectReading(document, problems);
    String name = in.text("name");
    SavedCase.BankStamp bank = bank(in);
    Optional<Provenance.By> asker = Provenance.By.of(in.text("asker"));
    Optional<Interview.Route> route = Interview.Route.of(in.text("route"));
    if (asker.isEmpty() || route.isEmpty()) {
      return refuse(in.where(), "unknown-value", "Who asks, or how much, is not known here.", "");
    }
    Optional<String> at = in.optionalText("at");
    String started = instant(in, "started");
    String saved = instant(in, "saved");
    Answers answers = answers(in);
    unknownMembers(document);
    return Optional.of(
        new Result(
            new CaseDocument(
                new SavedCase(
                    name,
                    bank,
                    asker.get(),
                    route.get(),
                    at,
                    answers,
                    halfTyped(in),
                    started,
                    saved),
                new RecordReader(problems).read(in),
                room(in, "plans"),
                room(in, "trials")),
            dropped));
  }

  private Map<String, String> halfTyped(ObjectReading in) {
    Map<String, String> texts = new LinkedHashMap<>();
    in.required("halfTyped")
        .flatMap(v -> ObjectReading.of(v, problems))
        .ifPresent(
            half ->
                half.names()
                    .forEach(
                        fact -> {
                          if (questionnaire.fieldsByFact().containsKey(fact)) {
                            half.optionalText(fact).ifPresent(text -> texts.put(fact, text));
                          } else {
                            dropped.add(fact);
                          }
                        }));
    return texts;
  }

  private List<JsonValue.Obj> room(ObjectReading in, String name) {
    List<JsonValue.Obj> objects = new ArrayList<>();
    for (JsonValue value : in.optionalList(name)) {
      if (value instanceof JsonValue.Obj object) {
        objects.add(object);
      } else {
        ObjectReading.wrongType(value, "an object", problems);
      }
    }
    return objects;
  }

  private <T> Optional<T> refuse(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
    return Optional.empty();
  }

  private SavedCase.BankStamp bank(ObjectReading in) {
    Optional<ObjectReading> bank = in.required("bank").flatMap(v -> ObjectReading.of(v, problems));
    return bank.map(
            b -> new SavedCase.BankStamp(b.text("url"), b.text("version"), b.text("fingerprint")))
        .orElseGet(() -> new SavedCase.BankStamp("", "", ""));
  }

  private Answers answers(ObjectReading in) {
    Map<String, Answers.Recorded> all = new LinkedHashMap<>();
    in.required("response")
        .flatMap(r -> ResponseReader.read(r, questionnaire, problems))
        .ifPresent(
            r -> {
              all.putAll(r.answers().byFact());
              dropped.addAll(r.dropped());
            });
    BesideReader beside = new BesideReader(questionnaire, problems);
    for (String name : List.of("noneOfThem", "setAside")) {
      in.optional(name)
          .map(beside::read)
          .ifPresent(some -> some.forEach((fact, recorded) -> all.putIfAbsent(fact, recorded)));
    }
    dropped.addAll(beside.dropped());
    return new Answers(all, lowered(in));
  }

  private List<Answers.Lowered> lowered(ObjectReading in) {
    List<Answers.Lowered> lowered = new ArrayList<>();
    for (JsonValue value : in.optionalList("lowered")) {
      ObjectReading.of(value, problems)
          .ifPresent(
              l ->
                  lowered.add(
                      new Answers.Lowered(
                          l.text("code"),
                          l.optionalText("by").orElse(""),
                          l.optionalText("date").orElse(""),
                          l.optionalText("reason").orElse(""))));
    }
    return lowered;
  }

  private void unknownMembers(JsonValue document) {
    if (document instanceof JsonValue.Obj object) {
      for (JsonValue.Member member : object.members()) {
        if (!MEMBERS.contains(member.name())) {
          problems.add(
              Problem.warning(
                  member.nameWhere(),
                  "unknown-key",
                  "\"" + member.name() + "\" means nothing here and is left out.",
                  ""));
        }
      }
    }
  }

  private String instant(ObjectReading in, String name) {
    String text = in.text(name);
    if (!isInstant(text)) {
      problems.add(
          Problem.error(
              in.where(),
              "wrong-type",
              "\"" + name + "\" is no date and time with zone.",
              "Write it like 2026-11-24T10:00:00+01:00."));
    }
    return text;
  }

  /** Whether this has the shape of an ISO date and time to the second with a zone. */
  static boolean isInstant(String text) {
    String shape = "0000-00-00T00:00:00";
    if (text.length() < shape.length()) {
      return false;
    }
    String zone = text.substring(shape.length());
    return hasShape(text.substring(0, shape.length()), shape)
        && (zone.equals("Z") || hasShape(zone, "+00:00") || hasShape(zone, "-00:00"));
  }

  private static boolean hasShape(String text, String shape) {
    if (text.length() != shape.length()) {
      return false;
    }
    for (int i = 0; i < shape.length(); i++) {
      boolean digit = text.charAt(i) >= '0' && text.charAt(i) <= '9';
      if (shape.charAt(i) == '0' ? !digit : text.charAt(i) != shape.charAt(i)) {
        return false;
      }
    }
    return true;
  }
}
