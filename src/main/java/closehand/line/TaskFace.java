package closehand.line;

import closehand.bank.TaskBook;
import closehand.interview.Message;
import closehand.measure.task.Spoilt;
import closehand.measure.task.TaskMessage;
import closehand.measure.task.TaskRun;
import closehand.measure.task.TaskSetup;
import closehand.measure.task.TaskWords;
import closehand.measure.task.TaskWords.Wants;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Runs one measured task line by line. It says when a go starts and when it ends, and nothing in
 * between; where taps are counted, each Enter is stamped when it arrives.
 */
final class TaskFace {
  private static final String STOPS = "p stops for pain, s for anything else; q leaves the task.";

  private final Console console;
  private TaskRun run;

  TaskFace(Console console, TaskSetup setup) {
    this.console = console;
    this.run = TaskRun.begin(setup, console.nanos());
  }

  /** Runs it to its end; tells what came of it. */
  Message.EndTask run() {
    Optional<Message.EndTask> ended = Optional.empty();
    while (!run.isOver()) {
      TaskWords.Said said = TaskWords.of(run);
      say(said);
      ended = run.ended();
      if (said.wants() == Wants.QUIET) {
        going();
      } else {
        ask(said, ended.isPresent());
      }
    }
    if (ended.isEmpty()) {
      TaskWords.of(run).paragraphs().forEach(console::say);
    }
    return ended.or(() -> run.ended()).orElseThrow();
  }

  private void say(TaskWords.Said said) {
    console.gap();
    said.paragraphs().forEach(console::say);
    if (said.wants() != Wants.YES_NO) {
      int number = 0;
      for (String choice : said.choices()) {
        number++;
        console.item(Integer.toString(number), choice);
      }
    }
    if (said.wants() != Wants.QUIET) {
      console.say(said.hint());
    } else if (run.keys()) {
      console.say("Tap the Enter key. Any other line stops.");
    } else {
      console.say(
          run.endsAt().isPresent()
              ? "We say when it is over. Enter, or any line, stops."
              : "Enter when it is over. Any other line stops.");
    }
  }

  private void ask(TaskWords.Said said, boolean ended) {
    if (!ended) {
      console.say(STOPS);
    }
    Optional<String> line = console.ask("> ").map(String::strip);
    if (line.isEmpty()) {
      run = run.after(new TaskMessage.Spoil(Spoilt.DISCONNECTED)).after(next());
      return;
    }
    String typed = line.get().toLowerCase(Locale.ROOT);
    if (ended) {
      run = run.after(next());
      return;
    }
    switch (typed) {
      case "p" -> run = run.after(new TaskMessage.Pain());
      case "s" -> stop(typed);
      case "q" -> run = run.after(new TaskMessage.Leave());
      default -> {
        Optional<TaskMessage> message = message(said, typed);
        if (StopTyped.in(typed)) {
          stop(typed);
        } else if (message.isEmpty()) {
          console.say("That does not fit here. " + said.hint());
        } else {
          run = run.after(message.get());
        }
      }
    }
  }

  private TaskMessage next() {
    return new TaskMessage.Next(console.nanos());
  }

  private static TaskBook.Stop usual(List<TaskBook.Stop> stops, String line) {
    String id = StopTyped.ofPain(line) ? TaskMessage.Stop.PAIN : TaskMessage.Stop.SIGNAL;
    return stops.stream().filter(s -> s.id().equals(id)).findFirst().orElse(stops.get(0));
  }

  private void stop(String line) {
    List<TaskBook.Stop> stops = run.setup().book().stops().all();
    console.say("Stopped. What was it?");
    // Whoever does not say what it was has stopped all the same.
    Choice.of(
            console,
            Optional.of(usual(stops, line)),
            stops.toArray(new TaskBook.Stop[0]),
            TaskBook.Stop::words)
        .map(s -> new TaskMessage.Stop(s.id()))
        .ifPresent(s -> run = run.after(s));
  }

  private Optional<TaskMessage> message(TaskWords.Said said, String typed) {
    return switch (said.wants()) {
      case NEXT -> typed.isEmpty() ? Optional.of(next()) : Optional.empty();
      case YES_NO -> yesNo(typed);
      case PICK ->
          number(typed)
              .filter(n -> n >= 1 && n <= said.choices().size())
              .map(n -> new TaskMessage.Pick(n - 1));
      case PICKS -> picks(typed, said.choices().size());
      case NUMBER ->
          typed.equals("k")
              ? Optional.of(new TaskMessage.NotKnown())
              : number(typed).map(TaskMessage.Number::new);
      case QUIET, END -> Optional.empty();
    };
  }

  private static Optional<TaskMessage> yesNo(String typed) {
    return switch (typed) {
      case "y", "yes", "1" -> Optional.of(new TaskMessage.Say(true));
      case "n", "no", "2" -> Optional.of(new TaskMessage.Say(false));
      default -> Optional.empty();
    };
  }

  private static Optional<TaskMessage> picks(String typed, int most) {
    List<Integer> picks = new ArrayList<>();
    if (!typed.equals("none")) {
      for (String part : typed.split("[ ,]+", -1)) {
        Optional<Integer> number = number(part).filter(n -> n >= 1 && n <= most);
        if (number.isEmpty()) {
          return Optional.empty();
        }
        picks.add(number.get() - 1);
      }
    }
    return Optional.of(new TaskMessage.Picks(picks));
  }

  private static Optional<Integer> number(String typed) {
    return !typed.isEmpty()
            && typed.length() <= 3
            && typed.chars().allMatch(c -> c >= '0' && c <= '9')
        ? Optional.of(Integer.parseInt(typed))
        : Optional.empty();
  }

  /** A go: waits quietly until its time is up, or until somebody says that it is over. */
  private void going() {
    console.forgetTyped();
    while (run.isGoing()) {
      Console.Heard heard = console.askUntil(run.endsAt());
      if (heard instanceof Console.Heard.Line line) {
        run =
            run.after(
                line.text().isBlank()
                    ? new TaskMessage.Next(line.at())
                    : new TaskMessage.Halt(line.at()));
      } else if (heard instanceof Console.Heard.TimeUp up) {
        run = run.after(new TaskMessage.Clock(up.at()));
      } else {
        run = run.after(new TaskMessage.Spoil(Spoilt.DISCONNECTED));
      }
    }
  }
}
