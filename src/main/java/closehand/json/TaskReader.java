package closehand.json;

import closehand.bank.Condition;
import closehand.bank.Problem;
import closehand.bank.Task;
import closehand.bank.TaskKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads one task of {@code tasks.json}, its placeholders filled in. */
final class TaskReader {
  private static final int MOST_GOES = 3;
  private static final int MOST_SECONDS = 720;
  private static final int MOST_COUNT = 1000;

  private final List<Problem> problems;

  TaskReader(List<Problem> problems) {
    this.problems = problems;
  }

  Task read(JsonValue.Obj object, String place) {
    ObjectReading in = new ObjectReading(object, problems);
    in.optional("for");
    in.optional("places");
    Task.Words words =
        new Task.Words(
            in.text("name"),
            in.text("what"),
            in.text("why"),
            in.text("room"),
            in.text("video"),
            in.text("posture"));
    List<Task.Result> results = results(in);
    if (results.isEmpty()) {
      in.missing(List.of("results"), "No answer comes of this task.", "Name a fact it answers.");
      results = List.of(new Task.Result("", "", 1, List.of(), in.where()));
    }
    Task task =
        new Task(
            in.text("id"),
            place,
            words,
            kinds(in),
            in.flag("forClinician", false),
            TaskBookReader.needs(in, "before", problems),
            new FigureReading(in).part("go", this::go),
            measures(in),
            results,
            readings(in),
            in.texts("basis"),
            in.where());
    in.finish();
    return task;
  }

  private Set<TaskKind> kinds(ObjectReading in) {
    Set<TaskKind> kinds = EnumSet.noneOf(TaskKind.class);
    for (String code : in.texts("kinds")) {
      TaskKind.of(code)
          .ifPresentOrElse(
              kinds::add,
              () ->
                  problems.add(
                      Problem.error(
                          in.where("kinds"),
                          "unknown-value",
                          "\"" + code + "\" is not a kind of task.",
                          "Kinds are "
                              + String.join(
                                  ", ",
                                  Arrays.stream(TaskKind.values()).map(TaskKind::code).toList())
                              + ".")));
    }
    if (kinds.isEmpty()) {
      in.missing(List.of("kinds"), "No stop could hold this task.", "Name its kinds.");
    }
    return kinds;
  }

  private Task.Go go(FigureReading in) {
    int seconds = in.whole("seconds", 0, MOST_SECONDS);
    return new Task.Go(
        in.in().flag("practice", true),
        in.whole("most", 1, MOST_GOES),
        seconds,
        in.whole("atMostSeconds", Math.max(1, seconds), MOST_SECONDS),
        in.in().flag("keys", false),
        in.in().text("start"),
        in.in().text("stop"));
  }

  private List<Task.Measure> measures(ObjectReading in) {
    List<Task.Measure> measures = new ArrayList<>();
    for (JsonValue value : in.list("measures")) {
      ObjectReading.of(value, problems).ifPresent(one -> measures.add(measure(one)));
    }
    return measures;
  }

  private Task.Measure measure(ObjectReading in) {
    Task.Kind kind = TaskBookReader.word(in, "kind", Task.Kind.values(), Task.Kind::code, problems);
    boolean number = kind == Task.Kind.COUNT || kind == Task.Kind.DROP;
    boolean picked = kind == Task.Kind.CHOICE || kind == Task.Kind.SEVERAL;
    boolean workedOut = kind == Task.Kind.DROP;
    Task.Measure measure =
        new Task.Measure(
            in.text("id"),
            workedOut ? "" : in.text("ask"),
            kind,
            workedOut
                ? Task.Counting.WORKED_OUT
                : TaskBookReader.word(
                    in, "counting", Task.Counting.values(), Task.Counting::code, problems),
            in.flag("eachGo", true),
            number ? in.whole("minimum", 0, MOST_COUNT) : 0,
            number ? in.whole("maximum", 1, MOST_COUNT) : 0,
            in.optionalText("unit").orElse(""),
            picked ? TaskBookReader.choices(in.list("options"), problems) : List.of(),
            workedOut ? in.texts("of") : List.of(),
            in.optional("taps").isPresent()
                ? TaskBookReader.word(in, "taps", Task.Taps.values(), Task.Taps::code, problems)
                : Task.Taps.NONE,
            in.where());
    in.finish();
    return measure;
  }

  private List<Task.Result> results(ObjectReading in) {
    List<Task.Result> results = new ArrayList<>();
    for (JsonValue value : in.list("results")) {
      ObjectReading.of(value, problems).ifPresent(one -> results.add(result(one)));
    }
    return results;
  }

  private Task.Result result(ObjectReading in) {
    Optional<String> measure = in.optionalText("measure");
    int times = in.optional("times").isPresent() ? in.whole("times", 1, MOST_COUNT) : 1;
    List<Task.Case> cases = new ArrayList<>();
    for (JsonValue value : measure.isPresent() ? List.<JsonValue>of() : in.list("cases")) {
      ObjectReading.of(value, problems)
          .ifPresent(
              one -> {
                Condition when = TaskBookReader.condition(one, "when", problems);
                one.required("value")
                    .flatMap(this::operand)
                    .ifPresent(v -> cases.add(new Task.Case(when, v)));
                one.finish();
              });
    }
    Task.Result result =
        new Task.Result(in.text("fact"), measure.orElse(""), times, cases, in.where());
    in.finish();
    return result;
  }

  private Optional<Condition.Operand> operand(JsonValue value) {
    if (value instanceof JsonValue.Bool flag) {
      return Optional.of(new Condition.Operand.Flag(flag.value(), flag.where()));
    }
    if (value instanceof JsonValue.Num number) {
      return Optional.of(new Condition.Operand.Number(number.value(), number.where()));
    }
    if (value instanceof JsonValue.Str code) {
      return Optional.of(new Condition.Operand.Code(code.value(), code.where()));
    }
    ObjectReading.wrongType(value, "a code, a number, true or false", problems);
    return Optional.empty();
  }

  private List<Task.Reading> readings(ObjectReading in) {
    List<Task.Reading> readings = new ArrayList<>();
    for (JsonValue value : in.list("readings")) {
      ObjectReading.of(value, problems)
          .ifPresent(
              one -> {
                readings.add(
                    new Task.Reading(
                        TaskBookReader.condition(one, "when", problems), one.text("say")));
                one.finish();
              });
    }
    return readings;
  }
}
