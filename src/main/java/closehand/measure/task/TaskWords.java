package closehand.measure.task;

import closehand.bank.Task;
import closehand.bank.TaskBook;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a run says at each step, in the same words on every face. */
public final class TaskWords {
  private static final String MEDICAL =
      "This is a check of what fits you, not medical advice. Your health team's advice comes first.";

  private final TaskRun run;
  private final Task task;
  private final TaskBook book;
  private final List<String> said = new ArrayList<>();

  /**
   * What is said, and what is asked for.
   *
   * @param paragraphs what is said
   * @param choices what can be picked, if anything
   * @param wants what kind of answer is asked for
   * @param hint what can be done, in a few words
   * @param most the largest number that fits, where a number is asked for
   */
  public record Said(
      List<String> paragraphs,
      List<String> choices,
      Wants wants,
      String hint,
      Optional<Integer> most) {
    Said(List<String> paragraphs, List<String> choices, Wants wants, String hint) {
      this(paragraphs, choices, wants, hint, Optional.empty());
    }

    public Said {
      paragraphs = List.copyOf(paragraphs);
      choices = List.copyOf(choices);
    }
  }

  /** What kind of answer is asked for. */
  public enum Wants {
    /** Only that somebody goes on. */
    NEXT,
    YES_NO,
    PICK,
    PICKS,
    NUMBER,
    /** Nothing: a go is on. */
    QUIET,
    /** Nothing more. */
    END
  }

  private TaskWords(TaskRun run) {
    this.run = run;
    this.task = run.setup().task();
    this.book = run.setup().book();
  }

  /** What the run says where it stands. */
  public static Said of(TaskRun run) {
    return new TaskWords(run).words();
  }

  private Said words() {
    Step step = run.step();
    if (step instanceof Step.Refused) {
      said.add(task.words().name() + ". Not now.");
      said.addAll(run.setup().refusals());
      return next("Enter goes back.");
    }
    if (step instanceof Step.Told) {
      return told();
    }
    if (step instanceof Step.Assured assured) {
      said.add(run.setup().assurances().get(assured.number()).ask());
      return yesNo();
    }
    if (step instanceof Step.First first) {
      said.add(run.setup().assurances().get(first.number()).otherwise());
      return next("Enter when that is done.");
    }
    if (step instanceof Step.Posture) {
      said.add("How do you sit or lie now?");
      return pick(words(book.postures()));
    }
    if (step instanceof Step.Support) {
      said.add("What carries your arm and feet now?");
      return pick(words(book.supports()));
    }
    if (step instanceof Step.Method) {
      said.add(
          "Who counts? A held key can look like taps: let this keyboard count only if key repeat is switched off,"
              + " or if the key is always let go quickly.");
      return pick(List.of("somebody who watches counts", "this keyboard counts"));
    }
    return step instanceof Step.Resting resting ? resting(resting) : later(step);
  }

  private Said told() {
    said.add(task.words().name() + ".");
    said.add(task.words().what());
    said.add("Why: " + task.words().why());
    said.add(
        run.setup().onCall()
            ? "On a call: " + task.words().video()
            : "In the room: " + task.words().room());
    said.add("Sitting or lying: " + task.words().posture());
    said.add(
        "You can stop at any moment, and nothing has to be explained. Stop before it hurts. "
            + (task.go().practice() ? "First one for practice, then " : "It is done ")
            + (task.go().most() == 1 ? "once" : "up to " + task.go().most() + " times")
            + ", with rests.");
    said.add(MEDICAL);
    return next("Enter goes on.");
  }

  private Said resting(Step.Resting resting) {
    int seconds = run.setup().restSeconds();
    said.add(
        resting.early()
            ? "A little rest is still left. Take your time."
            : "Rest comes first, since the last task was a moment ago: "
                + (seconds > 90 ? "about three minutes." : "about a minute.")
                + " Talk, look out of the window, move as you like.");
    return next("Enter after the rest.");
  }

  private Said later(Step step) {
    if (step instanceof Step.Ready ready) {
      return ready(ready);
    }
    if (step instanceof Step.Going) {
      said.add(task.go().start());
      return new Said(
          said,
          List.of(),
          Wants.QUIET,
          run.keys()
              ? "Tap one key. Any other key stops."
              : task.go().seconds() > 0
                  ? "We say when it is over. Any key stops."
                  : "Enter when it is over. Any other key stops.");
    }
    if (step instanceof Step.Why) {
      said.add("Stopped. What was it?");
      List<String> choices =
          new ArrayList<>(book.stops().all().stream().map(TaskBook.Stop::words).toList());
      choices.add("None of these: this go does not count, we go on");
      return pick(choices);
    }
    if (step instanceof Step.Settling) {
      said.add(
          "Wait for up to "
              + book.limits().spasmSeconds()
              + " seconds, in a position that eases it. Has it settled?");
      return yesNo();
    }
    if (step instanceof Step.NotCounted done) {
      said.add(task.go().seconds() > 0 ? task.go().stop() : "Stop there.");
      said.add(
          done.cause().words() + " This go does not count. Nothing of it is kept as a result.");
      return next("Enter goes on.");
    }
    return asked(step);
  }

  private Said ready(Step.Ready ready) {
    int next = run.counted() + 1;
    said.add(
        ready.practice()
            ? "One for practice. It is not counted."
            : next == 1
                ? "Now the first one that counts. No hurry, and no need to do it as fast as you can."
                : "The next one, number " + next + " of up to " + task.go().most() + ".");
    if (task.go().seconds() > 0) {
      said.add("It ends by itself. Nothing counts down.");
    }
    return next("Enter begins, when you are ready.");
  }

  private Said asked(Step step) {
    if (step instanceof Step.Counting counting) {
      if (counting.number() == 0) {
        said.add(task.go().stop());
      }
      List<Task.Measure> measures =
          task.measures().stream()
              .filter(m -> m.eachGo() && m.kind() != Task.Kind.DROP)
              .filter(m -> !run.keys() || m.taps() == Task.Taps.NONE)
              .toList();
      return measure(measures.get(counting.number()));
    }
    if (step instanceof Step.Once once) {
      return measure(task.measures().stream().filter(m -> !m.eachGo()).toList().get(once.number()));
    }
    if (step instanceof Step.PainNow) {
      if (run.keys() || lastWasPractice()) {
        said.add(task.go().stop());
      }
      said.add("Rest for as long as you like. How strong is your pain now, from 0 to 10?");
      return new Said(
          said,
          List.of(),
          Wants.NUMBER,
          "A number from 0 to 10; k if you are not sure.",
          Optional.of(10));
    }
    if (step instanceof Step.Another) {
      said.add(
          "Would you like another one? The middle of them is kept. Enough is a good answer too.");
      return yesNo();
    }
    return end(step);
  }

  private boolean lastWasPractice() {
    return !run.goes().isEmpty() && run.goes().get(run.goes().size() - 1).practice();
  }

  private Said end(Step step) {
    if (step instanceof Step.Result) {
      said.add(task.words().name() + ": " + String.join("; ", values()) + ".");
      said.add(run.result().reading());
      said.add("Kept: " + circumstances(run) + ".");
      if (provisional()) {
        said.add(
            "This was not in the posture or support of play, or was seen over a call, so it is a first idea only.");
      }
      if (run.timeIsUp()) {
        said.add("That is all the timed work for today.");
      }
      return next("Enter goes on.");
    }
    Optional<TaskBook.Stop> stop = run.stop();
    if (stop.isPresent()) {
      said.add("We stop here: " + lower(stop.get().words()) + ".");
      said.addAll(stop.get().then());
      said.add(
          "This is not done again today. "
              + (stop.get().endsTasks() ? "No other task follows in this sitting. " : "")
              + "Rest now. Then we ask a few things again.");
      return next("Enter goes on.");
    }
    said.add(
        run.timeIsUp()
            ? "That is all the timed work for today."
            : "The task is left without a result.");
    return new Said(said, List.of(), Wants.END, "");
  }

  private boolean provisional() {
    return run.setup().onCall()
        || run.posture().equals("leaning")
        || run.posture().equals("otherwise")
        || run.support().equals("none");
  }

  private List<String> values() {
    List<String> parts = new ArrayList<>();
    Counted counted = run.result();
    for (Task.Measure measure : task.measures()) {
      Value value = counted.values().get(measure.id());
      if (value != null) {
        parts.add(value(measure, value));
      }
    }
    return parts;
  }

  private static String value(Task.Measure measure, Value value) {
    if (value instanceof Value.Number number) {
      return Long.toString((long) number.value())
          + (measure.unit().isEmpty() ? "" : " " + measure.unit());
    }
    if (value instanceof Value.Flag flag) {
      return lower(measure.ask().replace("?", "")) + ": " + (flag.value() ? "yes" : "no");
    }
    List<String> words = new ArrayList<>();
    for (Task.Choice choice : measure.options()) {
      boolean picked =
          value instanceof Value.Code code
              ? code.code().equals(choice.code())
              : value instanceof Value.Codes codes && codes.codes().contains(choice.code());
      if (picked) {
        words.add(value instanceof Value.Code ? choice.words() : choice.code());
      }
    }
    return words.isEmpty() ? "none" : String.join(", ", words);
  }

  private Said measure(Task.Measure measure) {
    said.add(measure.ask());
    return switch (measure.kind()) {
      case COUNT, DROP ->
          new Said(
              said,
              List.of(),
              Wants.NUMBER,
              "A number from "
                  + measure.minimum()
                  + " to "
                  + measure.maximum()
                  + "; k if it was not counted.",
              Optional.of(measure.maximum()));
      case YES_NO -> yesNo();
      case CHOICE -> pick(words(measure.options()));
      case SEVERAL ->
          new Said(
              said,
              words(measure.options()),
              Wants.PICKS,
              "Numbers with spaces between them, or none.");
    };
  }

  /** Circumstances in words, for a result and for the note beside an answer. */
  static String circumstances(TaskRun run) {
    TaskSetup setup = run.setup();
    List<String> parts = new ArrayList<>();
    parts.add(setup.task().words().name());
    int counted = run.counted();
    parts.add(counted == 1 ? "one go" : "the middle of " + counted + " goes");
    parts.add(run.keys() ? "counted by the keyboard" : "counted by somebody watching");
    parts.add(word(setup.book().postures(), run.posture()));
    parts.add(word(setup.book().supports(), run.support()));
    parts.add(setup.partOfDay());
    parts.add(
        setup.minutesIn() == 1
            ? "1 minute into the session"
            : setup.minutesIn() + " minutes into the session");
    parts.add(setup.onCall() ? "over a call" : "in one room");
    parts.removeIf(String::isEmpty);
    long spoilt = run.goes().stream().filter(g -> !g.discarded().isEmpty()).count();
    if (spoilt > 0) {
      parts.add(spoilt == 1 ? "one go did not count" : spoilt + " goes did not count");
    }
    return String.join(", ", parts);
  }

  private static String word(List<Task.Choice> choices, String code) {
    return choices.stream()
        .filter(c -> c.code().equals(code))
        .map(Task.Choice::words)
        .findFirst()
        .orElse("");
  }

  /** A sentence's first letter small, so that it can go on after a colon. */
  static String lower(String sentence) {
    return sentence.isEmpty()
        ? sentence
        : sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }

  private static List<String> words(List<Task.Choice> choices) {
    return choices.stream().map(Task.Choice::words).toList();
  }

  private Said next(String hint) {
    return new Said(said, List.of(), Wants.NEXT, hint);
  }

  private Said yesNo() {
    return new Said(said, List.of("yes", "no"), Wants.YES_NO, "y for yes, n for no.");
  }

  private Said pick(List<String> choices) {
    return new Said(said, choices, Wants.PICK, "Type a number.");
  }
}
