package closehand.report;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Condition.Operand;
import closehand.bank.Task;
import closehand.bank.TaskBook;
import closehand.bank.TaskKind;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The measured tasks of a bank in words, by name: printed, and what two banks are compared by. */
final class TaskPaperWords {
  private final Bank bank;
  private final ConditionWords conditions;

  TaskPaperWords(Bank bank, Glyphs glyphs) {
    this.bank = bank;
    this.conditions = new ConditionWords(bank, glyphs);
  }

  /** What holds for all tasks, how each stop is put, and each task; none for a bank without. */
  Map<String, String> tasks() {
    Map<String, String> words = new LinkedHashMap<>();
    bank.tasks().ifPresent(book -> all(book, words));
    return words;
  }

  private void all(TaskBook book, Map<String, String> words) {
    words.put("Limits of tasks", limits(book.limits()));
    words.put("Before every task", needs(book.before()));
    List<String> asked =
        book.assurances().stream()
            .map(a -> a.ask() + (a.onCallOnly() ? " (over a call only)" : "") + " " + a.otherwise())
            .toList();
    words.put("Asked right before", String.join(" ", asked));
    for (TaskBook.Stop stop : book.stops().all()) {
      words.put(
          "Stop " + stop.id(),
          Phrases.sentence(stop.words())
              + " "
              + String.join(" ", stop.then())
              + (stop.endsTasks() ? " No other task follows in that sitting." : "")
              + (stop.waits() ? " It is waited for once." : ""));
    }
    Map<String, List<Task>> alike = new LinkedHashMap<>();
    for (Task task : book.tasks()) {
      alike.computeIfAbsent(task.where().toString(), w -> new ArrayList<>()).add(task);
    }
    alike.values().forEach(some -> words.put(name(some), task(some.get(0))));
  }

  private static String limits(TaskBook.Limits limits) {
    return limits.timedSecondsADay() / 60
        + " minutes of timed work a day, practice and pointing with it; "
        + limits.restSeconds()
        + " seconds of rest between two, or "
        + limits.longRestSeconds()
        + " with tiredness; "
        + limits.tasksADay()
        + " a day where effort can bring a crash; "
        + limits.digitsAHand()
        + " fingers of a hand; "
        + limits.failedInARow()
        + " goes in a row without a count end it, and so does pain up by "
        + limits.painRise()
        + " or at "
        + limits.painAt()
        + ".";
  }

  /** One task stands for all that are made out of it, for each side, finger or place. */
  private static String name(List<Task> some) {
    Task first = some.get(0);
    return "Task "
        + first.key()
        + (some.size() > 1 ? " (and for " + (some.size() - 1) + " other places)" : "");
  }

  private String task(Task task) {
    Task.Words words = task.words();
    List<String> parts = new ArrayList<>();
    parts.add(Phrases.sentence(words.name()));
    parts.add(words.what());
    parts.add("Why: " + words.why());
    parts.add("In the room: " + words.room());
    parts.add("Over a call: " + words.video());
    parts.add(
        "Kind: "
            + String.join(", ", task.kinds().stream().map(TaskKind::code).sorted().toList())
            + ".");
    if (task.forClinician()) {
      parts.add("Only a clinician may run it.");
    }
    if (!task.before().isEmpty()) {
      parts.add("Before it: " + needs(task.before()));
    }
    parts.add(go(task.go()));
    task.measures().forEach(m -> parts.add(measure(m)));
    parts.add(
        "Answers: "
            + String.join(", ", task.results().stream().map(Task.Result::fact).toList())
            + ".");
    task.readings().forEach(r -> parts.add("Where " + counted(r.when()) + ": " + r.say()));
    parts.add("Basis: " + String.join(", ", task.basis()) + ".");
    return String.join(" ", parts);
  }

  private String needs(List<Task.Need> needs) {
    List<String> all = new ArrayList<>();
    for (Task.Need need : needs) {
      String when = conditions.of(need.when());
      all.add(
          (need.wanted() ? "It is sure that " : "It is not so that ")
              + when
              + ", or: "
              + need.say());
    }
    return String.join(" ", all.stream().map(Phrases::sentence).toList());
  }

  private static String go(Task.Go go) {
    return (go.practice() ? "One go for practice, then up to " : "Up to ")
        + go.most()
        + (go.seconds() > 0
            ? ", each of " + go.seconds() + " seconds."
            : ", each until it is done.");
  }

  private static String measure(Task.Measure measure) {
    String who =
        switch (measure.counting()) {
          case EYE -> "counted by eye";
          case WATCH -> "timed with a watch";
          case MACHINE -> "shown by the player's machine";
          case ASKED -> "asked";
          case WORKED_OUT -> "worked out";
        };
    String range =
        measure.kind() == Task.Kind.COUNT
            ? " " + measure.minimum() + " to " + measure.maximum()
            : measure.options().isEmpty()
                ? ""
                : " "
                    + String.join(
                        " / ", measure.options().stream().map(Task.Choice::words).toList());
    return "Noted as " + measure.id() + " (" + who + "): " + measure.ask() + range + ".";
  }

  /** A condition over what was counted. */
  private static String counted(Condition condition) {
    if (condition instanceof Condition.Test test) {
      return test.fact() + " " + test.operator() + " " + operand(test.value());
    }
    if (condition instanceof Condition.All all) {
      return String.join(" and ", all.parts().stream().map(TaskPaperWords::counted).toList());
    }
    if (condition instanceof Condition.Any any) {
      return String.join(" or ", any.parts().stream().map(TaskPaperWords::counted).toList());
    }
    return condition instanceof Condition.Not not
        ? "not " + counted(not.part())
        : "it is otherwise";
  }

  private static String operand(Operand value) {
    if (value instanceof Operand.Number number) {
      return Wording.number(number.value());
    }
    if (value instanceof Operand.Flag flag) {
      return flag.value() ? "yes" : "no";
    }
    if (value instanceof Operand.Codes codes) {
      return String.join(", ", codes.values().stream().map(Operand.Code::value).toList());
    }
    return value instanceof Operand.Code code ? code.value() : "";
  }
}
