package closehand.cli;

import closehand.casefile.Holder;
import closehand.interview.CaseRecord;
import closehand.interview.Interview;
import closehand.interview.Progress;
import closehand.interview.Prompt;
import closehand.interview.SavedCase;
import closehand.line.Console;
import java.io.IOException;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Says where a saved case was left and asks what is to be done with it. */
final class Recovery {
  private final Console console;
  private final Clock clock;
  private final Cases cases;

  Recovery(Console console, Clock clock, Cases cases) {
    this.console = console;
    this.clock = clock;
    this.cases = cases;
  }

  /** What somebody wants with a saved case. */
  enum Wish {
    GO_ON,
    LOOK,
    DISCARD,
    REVIEW,
    SEAL,
    LEAVE
  }

  /** Says whose case it is, where and when it was left, and with which bank. */
  void say(SavedCase saved, Interview interview, boolean asking) {
    console.say(
        "Case "
            + saved.name()
            + ", left "
            + place(interview)
            + ", "
            + Moment.words(saved.saved(), clock)
            + ", bank "
            + saved.bank().version()
            + (asking ? ": go on?" : "."));
    console.say(interview.progress().words() + further(interview));
  }

  /** Why more can be answered than the number of the question at which it was left. */
  private static String further(Interview interview) {
    Progress progress = interview.progress();
    int number =
        interview.current().map(p -> progress.questions().indexOf(p.question().id())).orElse(-1)
            + 1;
    return number > 0 && interview.route() != Interview.Route.BRIEF && progress.answered() >= number
        ? " It was left at number "
            + number
            + ", and questions after that one are answered already."
        : "";
  }

  private static String place(Interview interview) {
    Optional<String> position = interview.current().map(Prompt::position);
    return position
        .map(p -> "at " + p.substring(0, 1).toLowerCase(Locale.ROOT) + p.substring(1))
        .map(p -> p.contains(", part") ? p.substring(0, p.indexOf(", part")) : p)
        .orElse("with every question put");
  }

  /** Says on which days somebody should look at the case again, and whether they have passed. */
  void sayDays(CaseRecord record, String today) {
    record
        .reviewOn()
        .ifPresent(
            day ->
                console.say(
                    (day.compareTo(today) < 0 ? "A review was due on " : "Next review: ")
                        + Moment.day(day)
                        + "."));
    record
        .keepUntil()
        .ifPresent(
            day ->
                console.say(
                    day.compareTo(today) < 0
                        ? "It was to be kept until "
                            + Moment.day(day)
                            + ". Is it still needed? Nothing is removed by itself; closehand forget removes it."
                        : "Kept until " + Moment.day(day) + ", when somebody decides again."));
  }

  /** Says who has the case open. */
  void sayHeld(Holder holder) {
    String who = holder.who().isEmpty() ? "" : " by " + holder.who();
    String process = holder.process() == 0 ? "" : ", process " + holder.process();
    String since = holder.since().isEmpty() ? "" : ", since " + Moment.words(holder.since(), clock);
    console.say(
        "This case is open in another window"
            + who
            + process
            + since
            + ". You can look at it here, but not change it.");
  }

  /**
   * Says which answers no longer fit, by the ids of their questions.
   *
   * @param dropped the ids
   */
  void sayDropped(List<String> dropped) {
    console.say(
        "This case was made with another version of the questions. These answers no longer fit and are left out: "
            + String.join(", ", dropped)
            + ". If you go on, the case as it was is kept beside it.");
  }

  /**
   * Asks whether to go on; discarding is asked a second time. What is offered is numbered from 1
   * without a gap.
   */
  Wish ask(String name, boolean reviewable, boolean sealable) throws IOException {
    Map<Wish, String> offered = new LinkedHashMap<>();
    offered.put(Wish.GO_ON, "go on (or press Enter)");
    offered.put(Wish.LOOK, "only look at it");
    if (cases.store().names().contains(name)) {
      offered.put(Wish.DISCARD, "discard it");
    }
    if (reviewable) {
      offered.put(
          Wish.REVIEW, "review it: what has changed, warning signs and pain are asked again");
    }
    if (sealable) {
      offered.put(Wish.SEAL, "seal it with a passphrase from now on, and go on");
    }
    List<Wish> wishes = List.copyOf(offered.keySet());
    while (true) {
      int number = 0;
      for (String words : offered.values()) {
        number++;
        console.item(Integer.toString(number), words);
      }
      console.item("q", "leave");
      Optional<Wish> wish =
          console
              .ask("Number: ")
              .map(typed -> wish(typed.strip(), wishes))
              .orElse(Optional.of(Wish.LEAVE));
      if (wish.isEmpty()) {
        console.say("Please type one of these numbers, or q to leave.");
      } else if (wish.get() != Wish.DISCARD || discarded(name)) {
        return wish.get();
      }
    }
  }

  private static Optional<Wish> wish(String typed, List<Wish> offered) {
    if (typed.isEmpty()) {
      return Optional.of(Wish.GO_ON);
    }
    if (typed.equalsIgnoreCase("q")) {
      return Optional.of(Wish.LEAVE);
    }
    boolean number = typed.matches("[1-9]") && Integer.parseInt(typed) <= offered.size();
    return number ? Optional.of(offered.get(Integer.parseInt(typed) - 1)) : Optional.empty();
  }

  private boolean discarded(String name) throws IOException {
    console.say(
        "Everything kept of this case on this machine would be removed, and nothing brings it back."
            + " Type its name to remove it, or press Enter to keep it.");
    String typed = console.ask("> ").map(String::strip).orElse("");
    if (!typed.equals(name)) {
      console.say("It is kept.");
      return false;
    }
    discard(name);
    return true;
  }

  /** Removes everything kept of a case, and says so. */
  void discard(String name) throws IOException {
    new PageFiles(cases, name).delete();
    cases.store().delete(name);
    console.say("It is removed. A copy may remain on the disk until it is written over.");
  }
}
