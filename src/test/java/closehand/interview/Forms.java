package closehand.interview;

import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.bank.Section;
import closehand.bank.TaskKind;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Small invented questionnaires, written inline in a test. */
public final class Forms {
  /** The code system of all options here. */
  public static final String SYSTEM = "http://closehand.invalid/fhir/answers";

  private static final Where HERE = Where.file("form");

  private Forms() {}

  public static Questionnaire form(Section... sections) {
    return new Questionnaire(
        "http://closehand.invalid/fhir/Questionnaire/test",
        "1.0.0",
        "Test",
        List.of(sections),
        Map.of());
  }

  public static Section section(String id, Asked... questions) {
    List<Question> built = new ArrayList<>();
    for (Asked question : questions) {
      built.add(question.in(id));
    }
    return new Section(id, "Part " + id, built);
  }

  public static Asked question(String id, Item... fields) {
    return new Asked(id, Question.Route.CORE, Question.AskedBy.VOLUNTEER, "", List.of(fields));
  }

  /** A question before it is put in a section. */
  public record Asked(
      String id, Question.Route route, Question.AskedBy by, String remote, List<Item> fields) {
    public Asked onlyInFull() {
      return new Asked(id, Question.Route.FULL, by, remote, fields);
    }

    public Asked followUp() {
      return new Asked(id, Question.Route.FOLLOW_UP, by, remote, fields);
    }

    public Asked forClinician() {
      return new Asked(id, route, Question.AskedBy.CLINICIAN, remote, fields);
    }

    public Asked overVideo(String wording) {
      return new Asked(id, route, by, wording, fields);
    }

    private Question in(String section) {
      return new Question(
          id,
          section,
          "Question " + id,
          Optional.empty(),
          Optional.of(remote).filter(r -> !r.isEmpty()),
          Optional.empty(),
          "why",
          "look at " + id,
          "film " + id,
          "alone " + id,
          List.of(),
          route,
          by,
          0,
          fields.stream().map(Item::field).toList(),
          HERE);
    }
  }

  public static Item yesNo(String fact) {
    return item(fact, new FactType.YesNo());
  }

  public static Item whole(String fact, int minimum, int maximum, String unit) {
    return item(fact, new FactType.Amount(minimum, maximum, 0, unit));
  }

  public static Item one(String fact, String... codes) {
    return item(fact, new FactType.OneOf(options(codes)));
  }

  /** Several of these; a code that ends in "!" excludes the others. */
  public static Item several(String fact, String... codes) {
    return item(fact, new FactType.SeveralOf(options(codes)));
  }

  public static Item words(String fact) {
    return item(fact, new FactType.Words(500));
  }

  public static Item list(String fact) {
    return item(fact, new FactType.WordList());
  }

  public static Item item(String fact, FactType type) {
    return new Item(
        new Field(
            fact,
            "Label of " + fact,
            Optional.empty(),
            Optional.empty(),
            type,
            false,
            List.of(),
            List.of(),
            Optional.empty(),
            false,
            List.of(),
            HERE));
  }

  public static List<Option> options(String... codes) {
    List<Option> options = new ArrayList<>();
    for (String code : codes) {
      boolean exclusive = code.endsWith("!");
      String bare = exclusive ? code.substring(0, code.length() - 1) : code;
      options.add(new Option(SYSTEM, bare, "Say " + bare, OptionalDouble.empty(), exclusive, HERE));
    }
    return options;
  }

  /** A field under construction. */
  public record Item(Field field) {
    public Item task(TaskKind kind) {
      return with(field.conditions(), Optional.of(kind), field.askedAgain());
    }

    public Item again() {
      return with(field.conditions(), field.task(), true);
    }

    public Item when(EnableWhen.Test... tests) {
      return when(new EnableWhen(List.of(tests), true));
    }

    public Item whenAny(EnableWhen.Test... tests) {
      return when(new EnableWhen(List.of(tests), false));
    }

    private Item when(EnableWhen one) {
      List<EnableWhen> more = new ArrayList<>(field.conditions());
      more.add(one);
      return with(more, field.task(), field.askedAgain());
    }

    private Item with(List<EnableWhen> conditions, Optional<TaskKind> task, boolean again) {
      return new Item(
          new Field(
              field.fact(),
              field.label(),
              field.remoteLabel(),
              field.aloneLabel(),
              field.type(),
              field.required(),
              conditions,
              field.groups(),
              task,
              again,
              field.classification(),
              field.where()));
    }
  }

  public static EnableWhen.Test is(String fact, String code) {
    return test(fact, EnableWhen.Operator.EQUAL, new EnableWhen.Expected.Coded(SYSTEM, code));
  }

  public static EnableWhen.Test isNot(String fact, String code) {
    return test(fact, EnableWhen.Operator.NOT_EQUAL, new EnableWhen.Expected.Coded(SYSTEM, code));
  }

  public static EnableWhen.Test exists(String fact, boolean wanted) {
    return test(fact, EnableWhen.Operator.EXISTS, new EnableWhen.Expected.Flag(wanted));
  }

  public static EnableWhen.Test isTrue(String fact) {
    return test(fact, EnableWhen.Operator.EQUAL, new EnableWhen.Expected.Flag(true));
  }

  public static EnableWhen.Test test(
      String fact, EnableWhen.Operator operator, EnableWhen.Expected expected) {
    return new EnableWhen.Test(fact, operator, expected, HERE);
  }
}
