package closehand.line;

import closehand.bank.Task;
import closehand.bank.TaskBook;
import closehand.interview.Interview;
import closehand.interview.Measured;
import closehand.interview.Message;
import closehand.interview.Prompt;
import closehand.report.Desk;
import closehand.report.TaskGate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Measured tasks within an interview: which one, when it is due, and what came of it. */
final class Tasks {
  private static final int MOST_NAMES = 3;

  private final Console console;
  private final Desk desk;
  private Optional<String> wanted = Optional.empty();
  private boolean measuring;

  Tasks(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  /**
   * From here on only tasks are wanted, with the questions around them.
   *
   * @param key a task such as {@code T1.L.I} or {@code T1}; empty to choose
   */
  void measure(String key) {
    measuring = true;
    wanted = Optional.of(key).filter(k -> !k.isBlank());
  }

  /** The task that answers the question asked now, if there is one. */
  Optional<Task> forPrompt(Prompt prompt) {
    return desk.taskBook().flatMap(book -> book.taskFor(prompt.field().fact()));
  }

  /** Takes up the task that answers the question asked now; says so if there is none. */
  Optional<Message> takeUp(Interview interview, Prompt prompt) {
    Optional<Task> task = forPrompt(prompt);
    if (task.isEmpty()) {
      console.say("No task belongs to this question.");
    } else if (console.scripted()) {
      console.say("A task needs somebody at the keyboard.");
      return Optional.empty();
    }
    return task.flatMap(t -> takeUp(interview, t));
  }

  private Optional<Message> takeUp(Interview interview, Task task) {
    return desk.tasks().map(gate -> gate.takeUp(interview, task));
  }

  /** What is to be told to the interview before its next question, if anything. */
  Optional<Message> next(Interview interview, Optional<Prompt> prompt) {
    Optional<Message> ended = interview.taskDue().flatMap(fact -> run(interview, fact));
    if (ended.isPresent()) {
      return ended;
    }
    boolean between = prompt.map(p -> p.again() == Prompt.Again.NO).orElse(true);
    if (!measuring || !between) {
      return Optional.empty();
    }
    Optional<Message> chosen = choose(interview).flatMap(t -> takeUp(interview, t));
    measuring = chosen.isPresent();
    return chosen;
  }

  private Optional<Message> run(Interview interview, String fact) {
    Optional<TaskGate> gate = desk.tasks();
    Optional<Task> task = desk.taskBook().flatMap(book -> book.taskFor(fact));
    if (gate.isEmpty() || task.isEmpty()) {
      return Optional.empty();
    }
    Message.EndTask ended =
        new TaskFace(console, gate.get().setup(interview, task.get(), desk.day(interview), true))
            .run();
    if (ended.measured().ending() == Measured.Ending.DONE) {
      console.say("Noted as measured.");
    }
    return Optional.of(ended);
  }

  private Optional<Task> choose(Interview interview) {
    Optional<TaskGate> gate = desk.tasks();
    if (gate.isEmpty() || console.scripted()) {
      console.say(
          gate.isEmpty()
              ? "This question bank has no tasks."
              : "A task needs somebody at the keyboard.");
      return Optional.empty();
    }
    List<Task> applying = gate.get().applying(interview);
    Optional<String> key = wanted;
    wanted = Optional.empty();
    if (key.isPresent()) {
      Optional<Task> named = named(gate.get().book(), applying, key.get());
      if (named.isPresent()) {
        return named;
      }
    }
    if (applying.isEmpty()) {
      console.say("No task fits the answers so far. The interview comes first.");
      return Optional.empty();
    }
    console.gap();
    TaskGate.Day day = desk.day(interview);
    List<Task> ready =
        applying.stream().filter(t -> gate.get().waits(interview, t, day).isEmpty()).toList();
    notNow(gate.get(), interview, applying, day);
    if (ready.isEmpty()) {
      console.say("No task can begin now.");
      return Optional.empty();
    }
    console.say("Which task? Enter alone ends.");
    return pick(ready.stream().map(Tasks::title).toList())
        .flatMap(title -> place(ready.stream().filter(t -> title(t).equals(title)).toList()));
  }

  /** Tasks that cannot begin, put together by the reason. */
  private void notNow(TaskGate gate, Interview interview, List<Task> applying, TaskGate.Day day) {
    Map<String, Set<String>> why = new LinkedHashMap<>();
    for (Task task : applying) {
      gate.waits(interview, task, day).stream()
          .findFirst()
          .ifPresent(
              w -> why.computeIfAbsent(w, k -> new LinkedHashSet<>()).add(task.words().name()));
    }
    why.forEach((reason, names) -> console.say("Not now: " + names(names) + ". " + reason));
  }

  /** A few names, and how many more there are. */
  private static String names(Set<String> all) {
    List<String> first = all.stream().limit(MOST_NAMES).toList();
    int more = all.size() - first.size();
    return String.join("; ", first) + (more > 0 ? "; and " + more + " more" : "");
  }

  private Optional<Task> named(TaskBook book, List<Task> applying, String key) {
    List<Task> some =
        applying.stream()
            .filter(t -> t.key().equalsIgnoreCase(key) || t.id().equalsIgnoreCase(key))
            .toList();
    if (!some.isEmpty()) {
      return place(some);
    }
    boolean known =
        book.tasks().stream()
            .anyMatch(t -> t.key().equalsIgnoreCase(key) || t.id().equalsIgnoreCase(key));
    console.say(
        known
            ? "That task does not fit the answers so far."
            : "There is no task of that name. Names are T1 to T13, with a place such as T1.L.I.");
    return Optional.empty();
  }

  private Optional<Task> place(List<Task> some) {
    if (some.size() == 1) {
      return Optional.of(some.get(0));
    }
    console.say("With which part?");
    List<String> places = some.stream().map(t -> where(t)).toList();
    return pick(places).map(place -> some.get(places.indexOf(place)));
  }

  private Optional<String> pick(List<String> words) {
    Set<String> each = new LinkedHashSet<>(words);
    return Choice.of(
        console, Optional.empty(), new ArrayList<>(each).toArray(new String[0]), w -> w);
  }

  private static String title(Task task) {
    String name = task.words().name();
    int comma = name.indexOf(',');
    return comma < 0 ? name : name.substring(0, comma);
  }

  private static String where(Task task) {
    String name = task.words().name();
    return name.substring(name.indexOf(',') + 1).strip();
  }

  /** Whether only tasks were wanted and no more are. */
  boolean isDone(boolean wasMeasuring) {
    return wasMeasuring && !measuring;
  }

  /** Whether only tasks are wanted. */
  boolean isMeasuring() {
    return measuring;
  }
}
