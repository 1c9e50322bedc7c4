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
  private static final int MINUTE = 60;

  private final Bank bank;
  private final ConditionWords conditions;

  TaskPaperWords(Bank bank, ConditionWords conditions) {
    this.bank = bank;
    this.conditions = conditions;
  }

  /** What holds for all tasks, how each stop is put, and each task; nothing for a bank without. */
  PaperPart part() {
    PaperPart part = new PaperPart("tasks", "Measured tasks", "");
    bank.tasks().ifPresent(book -> all(book, part));
    return part;
  }

  private void all(TaskBook book, PaperPart words) {
    words.add("Limits of tasks", limits(book.limits()));
    words.add("Before every task", needs(book.before()));
    words.add("Ways to sit or lie", choices(book.postures()) + ".");
    words.add("What carries arms and feet", choices(book.supports()) + ".");
    words.add("Basis of the tasks", ApproachPaperWords.basis(book.basis()));
    List<String> asked =
        book.assurances().stream()
            .map(a -> a.ask() + (a.onCallOnly() ? " (over a call only)" : "") + " " + a.otherwise())
            .toList();
    words.add("Asked right before", String.join(" ", asked));
    for (TaskBook.Stop stop : book.stops().all()) {
      words.add(
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
    alike.values().forEach(some -> words.add(name(some), task(some)));
  }

  private static String choices(List<Task.Choice> choices) {
    return String.join("; ", choices.stream().map(c -> c.words() + " [" + c.code() + "]").toList());
  }

  private String limits(TaskBook.Limits limits) {
    int seconds = limits.timedSecondsADay();
    return (seconds % MINUTE == 0 ? seconds / MINUTE + " minutes" : seconds + " seconds")
        + " of timed work a day, practice and pointing with it; "
        + limits.restSeconds()
        + " seconds of rest between two, or "
        + limits.longRestSeconds()
        + " where "
        + conditions.of(limits.longRestWhen())
        + "; "
        + limits.tasksADay()
        + " a day where perhaps "
        + conditions.of(limits.fewTasksWhen())
        + "; "
        + limits.digitsAHand()
        + " fingers of a hand; a spasm is waited for "
        + limits.spasmSeconds()
        + " seconds; "
        + limits.failedInARow()
        + " goes in a row without a count end it, and so does pain up by "
        + limits.painRise()
        + " or at "
        + limits.painAt()
        + "; no time is shown where "
        + conditions.of(limits.quietWhen())
        + ".";
  }

  /** One task stands for all that are made out of it, for each side, finger or place. */
  private static String name(List<Task> some) {
    Task first = some.get(0);
    return "Task "
        + first.key()
        + (some.size() > 1 ? " (and for " + (some.size() - 1) + " other places)" : "");
  }

  private List<String> task(List<Task> some) {
    Task task = some.get(0);
    Task.Words words = task.words();
    List<String> parts = new ArrayList<>();
    parts.add(Phrases.sentence(words.name()) + " " + words.what());
    if (some.size() > 1) {
      List<String> others = some.stream().skip(1).map(t -> t.place() + called(task, t)).toList();
      parts.add("The same for: " + String.join(", ", others) + ".");
    }
    parts.add("Why: " + words.why());
    parts.add("In the room: " + words.room());
    parts.add("Over a call: " + words.video());
    parts.add("How to sit or lie: " + words.posture());
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
    task.results().forEach(r -> parts.add("Answers " + result(r)));
    task.readings().forEach(r -> parts.add("Where " + counted(r.when()) + ": " + r.say()));
    parts.add("Basis: " + String.join(", ", task.basis()) + ".");
    return parts;
  }

  /** What the same task is called at another place, where that is more than the place. */
  private static String called(Task first, Task other) {
    return other.words().name().equals(first.words().name())
        ? ""
        : " (" + Phrases.bare(other.words().name()) + ")";
  }

  private static String result(Task.Result result) {
    if (!result.measure().isEmpty()) {
      String times = result.times() == 1 ? "" : result.times() + " times ";
      return result.fact() + " with " + times + result.measure() + ".";
    }
    List<String> cases =
        result.cases().stream()
            .map(c -> "with " + operand(c.value()) + " where " + counted(c.when()))
            .toList();
    return result.fact() + ", the first that holds: " + String.join("; ", cases) + ".";
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
        + (go.seconds() > 0 ? ", each of " + go.seconds() + " seconds" : ", each until it is done")
        + ", taken to last at most "
        + go.atMostSeconds()
        + " seconds. "
        + (go.keys() ? "Taps on a key can be counted. " : "")
        + "At the start: "
        + go.start()
        + " At the end: "
        + go.stop();
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
        switch (measure.kind()) {
          case COUNT -> measure.minimum() + " to " + measure.maximum() + " " + measure.unit();
          case YES_NO -> "yes or no";
          case CHOICE -> "one of " + choices(measure.options());
          case SEVERAL -> "any of " + choices(measure.options());
          case DROP -> "by how much the second lies below the first of " + measure.of();
        };
    String taps =
        switch (measure.taps()) {
          case NONE -> "";
          case ALL -> "; on a key, all taps";
          case FIRST_TEN_SECONDS -> "; on a key, the taps of the first ten seconds";
          case LAST_TEN_SECONDS -> "; on a key, the taps of the last ten seconds";
        };
    return "Noted as "
        + measure.id()
        + (measure.eachGo() ? " after each go (" : " once at the end (")
        + who
        + taps
        + "): "
        + Phrases.joined(measure.ask(), range.strip())
        + ".";
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
    if (condition instanceof Condition.AtLeast atLeast) {
      return "at least "
          + atLeast.count()
          + " of: "
          + String.join("; ", atLeast.parts().stream().map(TaskPaperWords::counted).toList());
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
