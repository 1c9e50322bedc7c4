package closehand.bank;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** Checks the measured tasks against the rest of the bank. */
final class TaskCheck {
  private static final List<String> NO_SOURCE =
      List.of("common practice", "practice estimate", "from memory");

  private final Bank bank;
  private final TaskBook book;
  private final FactKinds kinds;
  private final Doubt doubt;
  private final Findings findings;
  private List<Problem> problems = new ArrayList<>();

  TaskCheck(Bank bank, TaskBook book, FactKinds kinds, Doubt doubt, List<Problem> all) {
    this.bank = bank;
    this.book = book;
    this.kinds = kinds;
    this.doubt = doubt;
    this.findings = new Findings(all);
  }

  void check() {
    ConditionCheck conditions = new ConditionCheck(kinds, problems);
    book.before().forEach(n -> conditions.check(n.when()));
    conditions.check(book.limits().longRestWhen());
    conditions.check(book.limits().fewTasksWhen());
    conditions.check(book.limits().quietWhen());
    basis(book.basis(), book.where());
    stops();
    findings.addInstance(problems);
    Map<String, Where> keys = new HashMap<>();
    for (Task task : book.tasks()) {
      problems = new ArrayList<>();
      Where first = keys.putIfAbsent(task.key(), task.where());
      if (first != null) {
        report(
            task.where().child("id"),
            "duplicate-id",
            "The task \"" + task.key() + "\" stands here for the second time.",
            "It stands in " + first + " already.");
      }
      if (!doubt.about(task.where())) {
        task(task);
      }
      findings.addInstance(problems);
    }
  }

  private void stops() {
    Set<StopSign> signs = EnumSet.noneOf(StopSign.class);
    for (TaskBook.Stop stop : book.stops().all()) {
      if (!signs.add(stop.sign())) {
        report(
            stop.where().child("id"),
            "duplicate-id",
            "The stop \"" + stop.id() + "\" stands here for the second time.",
            "Choose another id.");
      }
    }
    for (StopSign sign : StopSign.values()) {
      if (!signs.contains(sign)) {
        report(
            book.where().child("stops"),
            "missing-stop",
            "The stop \"" + sign.code() + "\" is missing.",
            "Each of the ten ends every task, practice and trial; say how it is put.");
      }
    }
  }

  private void task(Task task) {
    ConditionCheck conditions = new ConditionCheck(kinds, problems);
    task.before().forEach(n -> conditions.check(n.when()));
    basis(task.basis(), task.where());
    Map<String, FactType> measures = measures(task);
    ConditionCheck counted = new ConditionCheck(new FactKinds(measures), problems);
    task.readings().forEach(r -> counted.check(r.when()));
    endsWithAlways(
        task.readings().stream().map(Task.Reading::when).toList(), task.where().child("readings"));
    for (Task.Result result : task.results()) {
      result.cases().forEach(c -> counted.check(c.when()));
      result(task, result, measures);
    }
  }

  /** What is counted, as facts of its own. */
  private Map<String, FactType> measures(Task task) {
    Map<String, FactType> types = new LinkedHashMap<>();
    for (Task.Measure measure : task.measures()) {
      if (types.containsKey(measure.id())) {
        report(
            measure.where().child("id"),
            "duplicate-id",
            "\"" + measure.id() + "\" is counted twice in this task.",
            "Choose another id.");
      }
      if (measure.kind() == Task.Kind.DROP
          && (measure.of().size() != 2 || !types.keySet().containsAll(measure.of()))) {
        report(
            measure.where(),
            "term-shape",
            "A drop is worked out from two counts that stand before it.",
            "Name both in \"of\".");
      }
      types.put(measure.id(), type(measure));
    }
    return types;
  }

  private static FactType type(Task.Measure measure) {
    List<Option> options =
        measure.options().stream()
            .map(
                o ->
                    new Option(
                        "", o.code(), o.words(), OptionalDouble.empty(), false, measure.where()))
            .toList();
    return switch (measure.kind()) {
      case COUNT, DROP -> new FactType.Amount(measure.minimum(), measure.maximum(), 0, "");
      case YES_NO -> new FactType.YesNo();
      case CHOICE -> new FactType.OneOf(options);
      case SEVERAL -> new FactType.SeveralOf(options);
    };
  }

  private void result(Task task, Task.Result result, Map<String, FactType> measures) {
    Where where = result.where();
    FactType type = kinds.fact(result.fact()).orElse(null);
    if (type == null) {
      if (kinds.complete()) {
        report(
            where.child("fact"),
            "unknown-fact",
            "\"" + result.fact() + "\" is not asked in this bank.",
            Hint.didYouMean(result.fact(), kinds.asked()));
      }
      return;
    }
    if (!result.measure().isEmpty() && !measures.containsKey(result.measure())) {
      report(
          where.child("measure"),
          "unknown-fact",
          "\"" + result.measure() + "\" is not counted in this task.",
          Hint.didYouMean(result.measure(), measures.keySet()));
    } else if (!result.measure().isEmpty()) {
      taken(result, type, task.measure(result.measure()).orElseThrow());
    } else {
      result.cases().forEach(c -> suits(c.value(), result.fact(), type));
      endsWithAlways(result.cases().stream().map(Task.Case::when).toList(), where.child("cases"));
    }
  }

  /** A measure taken over as it is must suit the question. */
  private void taken(Task.Result result, FactType type, Task.Measure measure) {
    boolean suits =
        switch (measure.kind()) {
          case COUNT, DROP ->
              type instanceof FactType.Amount amount
                  && measure.minimum() * result.times() >= amount.minimum()
                  && measure.maximum() * result.times() <= amount.maximum();
          case YES_NO -> type instanceof FactType.YesNo;
          case CHOICE ->
              type instanceof FactType.OneOf
                  && measure.options().stream().allMatch(o -> type.option(o.code()).isPresent());
          case SEVERAL ->
              type instanceof FactType.SeveralOf
                  && measure.options().stream().allMatch(o -> type.option(o.code()).isPresent());
        };
    if (!suits) {
      report(
          result.where(),
          "unknown-value",
          "What is counted can be something that \"" + result.fact() + "\" has no answer for.",
          "Compare their ranges or options.");
    }
  }

  private void suits(Condition.Operand value, String fact, FactType type) {
    boolean suits =
        type instanceof FactType.YesNo
            ? value instanceof Condition.Operand.Flag
            : type instanceof FactType.OneOf
                ? value instanceof Condition.Operand.Code code
                    && type.option(code.value()).isPresent()
                : type instanceof FactType.Amount amount
                    && value instanceof Condition.Operand.Number number
                    && number.value() >= amount.minimum()
                    && number.value() <= amount.maximum();
    if (!suits) {
      report(value.where(), "unknown-value", "This is not an answer of \"" + fact + "\".", "");
    }
  }

  private void endsWithAlways(List<Condition> conditions, Where where) {
    boolean ends =
        !conditions.isEmpty() && conditions.get(conditions.size() - 1) instanceof Condition.Always;
    if (!ends) {
      report(
          where,
          "open-end",
          "Something could be counted that none of these speaks of.",
          "Make the last one hold \"always\".");
    }
  }

  private void basis(List<String> basis, Where where) {
    List<String> known = new ArrayList<>(NO_SOURCE);
    bank.sources().forEach(s -> known.add(s.id()));
    Names names = new Names(doubt, problems);
    if (basis.isEmpty()) {
      report(
          where.child("basis"),
          "missing",
          "There is no basis for this.",
          "Name a source, or say \"practice estimate\".");
    }
    basis.forEach(
        b ->
            names.known(
                b,
                where.child("basis"),
                Catalogue.SOURCES,
                known,
                "unknown-source",
                "a source of this bank"));
  }

  private void report(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
