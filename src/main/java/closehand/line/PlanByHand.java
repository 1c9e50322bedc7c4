package closehand.line;

import closehand.interview.Interview;
import closehand.report.ByHand;
import closehand.report.ByHandPage;
import closehand.report.Desk;
import java.util.List;
import java.util.Optional;

/** A control plan changed by hand, one numbered page after the other. */
final class PlanByHand {
  private final Console console;
  private final Desk desk;

  PlanByHand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  /** Goes on until somebody goes back from the first page, or nothing more is typed. */
  void change(Interview interview) {
    console.say("One moment, the plan is being worked out.");
    Optional<ByHand> begun = desk.byHand(interview);
    if (begun.isEmpty()) {
      console.say("A plan comes after medical review, as the suggestions do.");
      return;
    }
    ByHand now = begun.get();
    while (!now.left()) {
      show(now.page());
      boolean words = !now.page().asked().isEmpty();
      Optional<String> typed = console.ask(words ? now.page().asked() : "Number: ");
      if (typed.isEmpty()) {
        return;
      }
      now = after(now, typed.get().strip(), interview);
    }
  }

  private void show(ByHandPage page) {
    console.gap();
    console.say(page.heading().endsWith("?") ? page.heading() : page.heading() + ".");
    console.lines(page.lines());
    for (ByHandPage.Choice choice : page.choices()) {
      console.item(Integer.toString(choice.digit()), choice.words());
    }
  }

  /** Enter alone goes back, so that nobody is caught on a page. */
  private ByHand after(ByHand before, String typed, Interview interview) {
    String line = typed.isEmpty() ? "0" : typed;
    boolean digit = line.matches("[0-9]");
    if (!before.page().asked().isEmpty() && !line.equals("0")) {
      ByHand named = before.typed(line);
      if (named == before) {
        console.say("A name has a few words, at most 40 letters. 0 goes back.");
      }
      return kept(before, named, interview);
    }
    int chosen = digit ? Integer.parseInt(line) : -1;
    if (before.page().choices().stream().noneMatch(c -> c.digit() == chosen)) {
      console.say("Type one of the numbers; 0 goes back.");
      return before;
    }
    if (before.takesTime(chosen)) {
      console.say("One moment.");
    }
    return kept(before, before.take(chosen), interview);
  }

  private ByHand kept(ByHand before, ByHand after, Interview interview) {
    if (!after.changes().equals(before.changes())) {
      List<String> trouble = desk.keep(interview, after.changes());
      trouble.forEach(console::say);
    }
    return after;
  }
}
