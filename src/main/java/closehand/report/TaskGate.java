package closehand.report;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Question;
import closehand.bank.Task;
import closehand.bank.TaskBook;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Measured;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.interview.Value;
import closehand.interview.WellKnown;
import closehand.measure.task.TaskSetup;
import closehand.rules.Conditions;
import closehand.rules.Outcome;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Whether a measured task may begin, from the answers as they stand and from what was done on the
 * day. It is asked anew for every task, so that no jump, no case opened again and no edited file
 * leads around it.
 */
public final class TaskGate {
  private static final String QUESTIONS_FIRST = "The questions before a task come first.";

  /** Less timed work than this is not worth beginning. */
  private static final int LEAST_SECONDS = 60;

  private final Bank bank;
  private final TaskBook book;
  private final Map<Condition, Integer> places = new LinkedHashMap<>();
  private final Conditions conditions;

  private TaskGate(Bank bank, TaskBook book) {
    this.bank = bank;
    this.book = book;
    add(book.limits().longRestWhen());
    add(book.limits().fewTasksWhen());
    book.before().forEach(n -> add(n.when()));
    book.tasks().forEach(t -> t.before().forEach(n -> add(n.when())));
    this.conditions = Conditions.of(bank, List.copyOf(places.keySet()));
  }

  private void add(Condition condition) {
    places.putIfAbsent(condition, places.size());
  }

  /** The gate of a bank's tasks; none for a bank that measures nothing. */
  public static Optional<TaskGate> of(Bank bank) {
    return bank.tasks().map(book -> new TaskGate(bank, book));
  }

  /** The tasks and what holds for all of them. */
  public TaskBook book() {
    return book;
  }

  /**
   * What the world around the interview knows.
   *
   * @param measured every task of the case that was measured on this day, in order
   * @param secondsSinceLast seconds since the last of them ended; empty if there was none
   * @param partOfDay such as {@code morning}
   * @param minutesIn minutes since the sitting began
   * @param diary what was done with the case on which day, practice and pointing with it
   * @param isoDate the day
   */
  public record Day(
      List<Measured> measured,
      Optional<Long> secondsSinceLast,
      String partOfDay,
      int minutesIn,
      Diary diary,
      String isoDate) {
    /** A day on which nothing was measured and nothing is known. */
    public static final Day NEW = new Day(List.of(), Optional.empty(), "some time of day", 0);

    public Day {
      measured = List.copyOf(measured);
    }

    /** A day on which nothing but these tasks was done. */
    public Day(
        List<Measured> measured, Optional<Long> secondsSinceLast, String partOfDay, int minutesIn) {
      this(measured, secondsSinceLast, partOfDay, minutesIn, Diary.EMPTY, "");
    }

    private int otherTimes() {
      return diary.times(isoDate, Diary.What.PRACTICE, Diary.What.POINTING);
    }

    private int otherSeconds() {
      return diary.timedSeconds(isoDate, Diary.What.PRACTICE, Diary.What.POINTING);
    }
  }

  /** The tasks whose first question applies at the moment, in order of the bank. */
  public List<Task> applying(Interview interview) {
    Set<String> applying = new HashSet<>();
    interview
        .overview()
        .parts()
        .forEach(p -> p.rows().forEach(r -> applying.add(r.field().fact())));
    return book.tasks().stream().filter(t -> applying.contains(t.fact())).toList();
  }

  /**
   * What a run of this task begins with.
   *
   * @param interview the interview, standing where the task is due
   * @param keysCanBeTimed whether the edge stamps single keys as they arrive
   */
  public TaskSetup setup(Interview interview, Task task, Day day, boolean keysCanBeTimed) {
    List<Outcome> outcomes = conditions.in(interview.answers());
    Answers answers = interview.effective();
    return new TaskSetup(
        task,
        book,
        isOnCall(answers),
        interview.asker(),
        refusals(interview, task, day, outcomes),
        pain(answers),
        seconds(day),
        rest(day, outcomes),
        day.partOfDay(),
        day.minutesIn(),
        keysCanBeTimed);
  }

  /**
   * What must hold before anything is measured, practised or tried, and does not or is not known:
   * one sentence each, with the questions that settle it.
   */
  public List<String> unmet(Answers answers) {
    return unmet(answers, Set.of());
  }

  /**
   * The same but for what is asked anew right after.
   *
   * @param anew facts whose answers of now say nothing
   */
  public List<String> unmet(Answers answers, Set<String> anew) {
    List<Outcome> outcomes = conditions.in(answers);
    return book.before().stream()
        .filter(n -> !isOnlyAbout(anew, n.when()))
        .filter(n -> (outcome(n.when(), outcomes) == Outcome.TRUE) != n.wanted())
        .map(n -> n.say() + " (Question " + String.join(", ", questions(n.when())) + ".)")
        .toList();
  }

  private static boolean isOnlyAbout(Set<String> anew, Condition condition) {
    List<String> facts = ConditionFacts.of(condition);
    return !facts.isEmpty() && anew.containsAll(facts);
  }

  private List<String> questions(Condition condition) {
    return ConditionFacts.of(condition).stream()
        .flatMap(fact -> bank.questionnaire().questionOf(fact).stream())
        .map(Question::id)
        .distinct()
        .toList();
  }

  /** What takes up a task, with what is to be said should tasks of its kind be on hold. */
  public Message.TakeUpTask takeUp(Interview interview, Task task) {
    List<String> unmet = unmet(interview.answers());
    return new Message.TakeUpTask(
        task.fact(),
        task.kinds(),
        task.forClinician(),
        unmet.isEmpty()
            ? "A stop, a caution or an open safety question stands."
            : String.join(" ", unmet));
  }

  /** Anything but a plain "in one room" is taken for a call. */
  private static boolean isOnCall(Answers answers) {
    return answers
        .value(WellKnown.SESSION_MODE)
        .filter(v -> v.equals(new Value.Code(WellKnown.ROOM)))
        .isEmpty();
  }

  private static Optional<Double> pain(Answers answers) {
    return answers
        .value(WellKnown.PAIN_NOW)
        .filter(v -> v instanceof Value.Number)
        .map(v -> ((Value.Number) v).value());
  }

  private Outcome outcome(Condition condition, List<Outcome> outcomes) {
    return outcomes.get(places.getOrDefault(condition, -1));
  }

  /**
   * Why a task cannot begin today, before anything is asked anew; empty where it can. Pain is left
   * out, since it is asked first.
   */
  public List<String> waits(Interview interview, Task task, Day day) {
    List<String> refusals =
        new ArrayList<>(refusals(interview, task, day, conditions.in(interview.answers())));
    refusals.remove(QUESTIONS_FIRST);
    Set<String> anew = new HashSet<>();
    interview.askedAgain().forEach(f -> anew.add(f.fact()));
    book.before().stream()
        .filter(n -> isOnlyAbout(anew, n.when()))
        .forEach(n -> refusals.remove(n.say()));
    return refusals;
  }

  private List<String> refusals(Interview interview, Task task, Day day, List<Outcome> outcomes) {
    List<String> refusals = new ArrayList<>();
    if (interview.asker() == Provenance.By.PLAYER) {
      refusals.add("A second person runs this with you. Please ask somebody to sit with you.");
    }
    if (task.forClinician() && interview.asker() != Provenance.By.CLINICIAN) {
      refusals.add("Only a clinician may run this.");
    }
    interview.tasksStopped().ifPresent(refusals::add);
    if (task.kinds().stream().anyMatch(interview.held()::contains)) {
      refusals.add(
          "Tasks of this kind are on hold: a stop, a caution or an open safety question stands.");
    }
    if (refusals.isEmpty() && !interview.taskDue().equals(Optional.of(task.fact()))) {
      refusals.add(QUESTIONS_FIRST);
    }
    for (List<Task.Need> needs : List.of(book.before(), task.before())) {
      for (Task.Need need : needs) {
        boolean holds = outcome(need.when(), outcomes) == Outcome.TRUE;
        if (holds != need.wanted()) {
          refusals.add(need.say());
        }
      }
    }
    refusals.addAll(limits(task, day, outcomes));
    return refusals.stream().distinct().toList();
  }

  private List<String> limits(Task task, Day day, List<Outcome> outcomes) {
    List<String> refusals = new ArrayList<>();
    List<Measured> done = day.measured().stream().filter(m -> !m.goes().isEmpty()).toList();
    boolean stopped =
        day.measured().stream()
            .anyMatch(
                m ->
                    m.ending() == Measured.Ending.STOPPED
                        && m.task().equals(task.id())
                        && m.place().equals(task.place()));
    if (stopped) {
      refusals.add("This was stopped today. It is not done again today.");
    }
    day.diary().with(day.measured()).why(bank, day.isoDate()).ifPresent(refusals::add);
    tooMany(outcomes, done.size() + day.otherTimes()).ifPresent(refusals::add);
    if (!isMoreOfADigit(task, done) && digits(task, done) >= book.limits().digitsAHand()) {
      refusals.add("At most " + book.limits().digitsAHand() + " fingers of one hand on one day.");
    }
    if (seconds(day) + task.go().atMostSeconds() > book.limits().timedSecondsADay()) {
      refusals.add(usedUp());
    }
    return refusals;
  }

  private Optional<String> tooMany(List<Outcome> outcomes, int times) {
    boolean few = outcome(book.limits().fewTasksWhen(), outcomes) != Outcome.FALSE;
    return few && times >= book.limits().tasksADay()
        ? Optional.of(
            "At most "
                + book.limits().tasksADay()
                + " tasks on one day, practice and pointing with them, where effort can bring a"
                + " crash later. Please go on another day.")
        : Optional.empty();
  }

  private String usedUp() {
    return "The day's "
        + book.limits().timedSecondsADay() / 60
        + " minutes of timed work are used up. Please go on another day.";
  }

  /** Timed work that is left for a day, in seconds: tasks, practice and pointing together. */
  public int secondsLeft(Diary diary, String isoDate) {
    return Math.max(0, book.limits().timedSecondsADay() - diary.timedSeconds(isoDate));
  }

  /** Why no practice or pointing follows on this day, which are timed work as tasks are. */
  public List<String> enoughFor(Answers answers, Diary diary, String isoDate) {
    List<String> refusals = new ArrayList<>();
    tooMany(conditions.in(answers), diary.times(isoDate)).ifPresent(refusals::add);
    if (secondsLeft(diary, isoDate) < LEAST_SECONDS) {
      refusals.add(usedUp());
    }
    return refusals;
  }

  private static boolean isDigit(String place) {
    return place.length() == 3 && place.charAt(1) == '.';
  }

  private static boolean isMoreOfADigit(Task task, List<Measured> done) {
    return !isDigit(task.place()) || done.stream().anyMatch(m -> m.place().equals(task.place()));
  }

  private static long digits(Task task, List<Measured> done) {
    String side = task.place().substring(0, 2);
    return done.stream()
        .map(Measured::place)
        .filter(p -> isDigit(p) && p.startsWith(side))
        .distinct()
        .count();
  }

  private static int seconds(Day day) {
    return day.measured().stream().mapToInt(Measured::timedSeconds).sum() + day.otherSeconds();
  }

  private int rest(Day day, List<Outcome> outcomes) {
    if (day.secondsSinceLast().isEmpty()) {
      return 0;
    }
    boolean longer = outcome(book.limits().longRestWhen(), outcomes) == Outcome.TRUE;
    long due = longer ? book.limits().longRestSeconds() : book.limits().restSeconds();
    return (int) Math.max(0, due - day.secondsSinceLast().get());
  }
}
