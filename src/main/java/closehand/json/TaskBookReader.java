package closehand.json;

import closehand.bank.Condition;
import closehand.bank.Findings;
import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.StopSign;
import closehand.bank.Stops;
import closehand.bank.Task;
import closehand.bank.TaskBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code tasks.json}: what holds for all measured tasks, and the tasks. */
final class TaskBookReader {
  private static final int DAY_SECONDS = 3600;
  private static final int MOST = 100;
  private static final String PLACES = "places";

  private final List<Problem> problems;

  TaskBookReader(List<Problem> problems) {
    this.problems = problems;
  }

  TaskBook read(ObjectReading in) {
    in.optionalText("note");
    TaskBook book =
        new TaskBook(
            new FigureReading(in).part("limits", this::limits),
            needs(in, "before", problems),
            assurances(in),
            choices(in.list("postures"), problems),
            choices(in.list("supports"), problems),
            new Stops(stops(in)),
            tasks(in),
            in.texts("basis"),
            in.where());
    in.finish();
    return book;
  }

  private TaskBook.Limits limits(FigureReading in) {
    return new TaskBook.Limits(
        in.whole("timedSecondsADay", 1, DAY_SECONDS),
        in.whole("restSeconds", 1, DAY_SECONDS),
        in.whole("longRestSeconds", 1, DAY_SECONDS),
        condition(in.in(), "longRestWhen", problems),
        in.whole("tasksADay", 1, MOST),
        condition(in.in(), "fewTasksWhen", problems),
        in.whole("digitsAHand", 1, MOST),
        in.whole("failedInARow", 1, MOST),
        in.whole("spasmSeconds", 1, DAY_SECONDS),
        in.whole("painRise", 1, 10),
        in.whole("painAt", 1, 10),
        condition(in.in(), "quietWhen", problems));
  }

  static Condition condition(ObjectReading in, String name, List<Problem> problems) {
    Optional<JsonValue> value = in.required(name);
    return value.isPresent()
        ? new ConditionReader(problems).read(value.get())
        : new Condition.Always(in.where());
  }

  /** Conditions with what is said where they keep a task waiting. */
  static List<Task.Need> needs(ObjectReading in, String name, List<Problem> problems) {
    List<Task.Need> needs = new ArrayList<>();
    for (JsonValue value : in.optionalList(name)) {
      Optional<ObjectReading> reading = ObjectReading.of(value, problems);
      if (reading.isPresent()) {
        ObjectReading one = reading.get();
        boolean wanted = one.optional("must").isPresent();
        Condition when = condition(one, wanted ? "must" : "mustNot", problems);
        needs.add(new Task.Need(when, wanted, one.text("say"), one.where()));
        one.finish();
      }
    }
    return needs;
  }

  private List<TaskBook.Assurance> assurances(ObjectReading in) {
    List<TaskBook.Assurance> all = new ArrayList<>();
    for (JsonValue value : in.list("assurances")) {
      ObjectReading.of(value, problems)
          .ifPresent(
              one -> {
                all.add(
                    new TaskBook.Assurance(
                        one.text("ask"), one.text("otherwise"), one.flag("onCallOnly", false)));
                one.finish();
              });
    }
    return all;
  }

  static List<Task.Choice> choices(List<JsonValue> values, List<Problem> problems) {
    List<Task.Choice> choices = new ArrayList<>();
    for (JsonValue value : values) {
      ObjectReading.of(value, problems)
          .ifPresent(
              one -> {
                choices.add(new Task.Choice(one.text("code"), one.text("words")));
                one.finish();
              });
    }
    return choices;
  }

  private List<TaskBook.Stop> stops(ObjectReading in) {
    List<TaskBook.Stop> stops = new ArrayList<>();
    for (JsonValue value : in.list("stops")) {
      ObjectReading.of(value, problems)
          .ifPresent(
              one -> {
                stops.add(
                    new TaskBook.Stop(
                        word(one, "id", StopSign.values(), StopSign::code, problems),
                        one.text("words"),
                        one.texts("then"),
                        one.flag("endsTasks", false),
                        one.flag("waits", false),
                        one.where()));
                one.finish();
              });
    }
    return stops;
  }

  private List<Task> tasks(ObjectReading in) {
    List<Task> tasks = new ArrayList<>();
    for (JsonValue value : in.list("tasks")) {
      if (!(value instanceof JsonValue.Obj object)) {
        ObjectReading.wrongType(value, "an object: a task", problems);
        continue;
      }
      Findings findings = new Findings(problems);
      for (Template template : templates(object)) {
        List<Problem> found = new ArrayList<>();
        tasks.add(new TaskReader(found).read(template.fill(object), template.name()));
        findings.addInstance(found);
      }
    }
    return tasks;
  }

  /** The sides or digits it is made out for, or the places it names itself. */
  private List<Template> templates(JsonValue.Obj object) {
    Optional<JsonValue> places = object.member(PLACES);
    if (places.isEmpty()) {
      return Template.of(object, problems);
    }
    List<Template> templates = new ArrayList<>();
    for (JsonValue place : ObjectReading.items(places.get(), problems)) {
      ObjectReading.of(place, problems)
          .ifPresent(
              one -> {
                String name = one.text("name");
                templates.add(new Template(name, List.of("{P}", name, "{p}", one.text("words"))));
                one.finish();
              });
    }
    return templates;
  }

  /** Which of these words it is; the first after a problem. */
  static <T> T word(
      ObjectReading in,
      String name,
      T[] all,
      java.util.function.Function<T, String> code,
      List<Problem> problems) {
    String text = in.text(name);
    List<String> known = new ArrayList<>();
    for (T one : all) {
      if (code.apply(one).equals(text)) {
        return one;
      }
      known.add(code.apply(one));
    }
    if (!text.isEmpty()) {
      problems.add(
          Problem.error(
              in.where(name),
              "unknown-value",
              "\"" + text + "\" is not one of " + String.join(", ", known) + ".",
              Hint.didYouMean(text, known)));
    }
    return all[0];
  }
}
