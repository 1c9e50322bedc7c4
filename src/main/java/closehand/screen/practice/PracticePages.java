package closehand.screen.practice;

import closehand.bank.StopSign;
import closehand.bank.Stops;
import closehand.measure.practice.ButtonCheck;
import closehand.measure.practice.CheckWords;
import closehand.measure.practice.PracticeRun;
import closehand.measure.practice.Sheet;
import closehand.measure.practice.StopReason;
import closehand.screen.practice.Choice.Doing;
import java.util.List;
import java.util.Optional;

/** The pages of practice, one for each phase. */
final class PracticePages {
  private static final String PRACTICE = "Practice";
  static final String STOP_LINE = "Stop: pain, or anything else that is wrong";

  private PracticePages() {}

  static Page of(Phase phase, PracticeDesk desk) {
    if (phase instanceof Phase.First) {
      return first(desk);
    }
    if (phase instanceof Phase.Checking checking) {
      return checking(checking.check());
    }
    if (phase instanceof Phase.CheckPaused paused) {
      return checkPaused(paused.check());
    }
    if (phase instanceof Phase.CheckStopping stopping) {
      return stop(stopping.body(), desk.stops());
    }
    if (phase instanceof Phase.Checked checked) {
      return checked(checked.check());
    }
    if (phase instanceof Phase.Running running) {
      return running(running.run());
    }
    if (phase instanceof Phase.Stopping stopping) {
      return stop(stopping.body(), desk.stops());
    }
    if (phase instanceof Phase.Told told) {
      return told(told, desk.stops());
    }
    return new Page.Builder(PRACTICE).say("Practice is over.").menu();
  }

  private static Page first(PracticeDesk desk) {
    Page.Builder page = new Page.Builder(PRACTICE).paragraphs(desk.first());
    page.offer(1, "Begin with the button check", Doing.BEGIN_CHECK);
    if (!desk.known().isEmpty()) {
      page.offer(2, "Nothing has changed since the last check: go on to practice", Doing.USE_KNOWN);
    }
    return page.offer(0, "Leave", Doing.LEAVE).menu();
  }

  private static Page checking(ButtonCheck check) {
    ButtonCheck.Wanted asked = check.asked();
    return new Page.Builder(
            "Button check: input " + (check.at() + 1) + " of " + check.wanted().size())
        .say("Press once, and let go:")
        .gap()
        .strong(asked.name() + ", with your " + asked.part())
        .gap()
        .say("There is no hurry. If nothing comes, press Backspace on the keyboard.")
        .status(check.said())
        .keysBelongToInputs();
  }

  private static Page checkPaused(ButtonCheck check) {
    Page.Builder page = new Page.Builder("Button check: paused");
    if (!check.done()) {
      page.say("Asked for: " + check.asked().name() + ".").gap();
      page.offer(1, "Nothing comes from this input", Doing.NOTHING_CAME);
    }
    if (check.at() > 0) {
      page.offer(2, "The one before once more", Doing.ONE_BACK);
    }
    page.offer(3, "Go on", Doing.GO_ON_CHECKING);
    page.offer(4, "End the check with what has come so far", Doing.END_CHECK);
    return page.offer(9, "Stop: pain, or enough for now", Doing.ASK_STOP).menu();
  }

  private static Page checked(ButtonCheck check) {
    Page.Builder page = new Page.Builder("What the button check found");
    page.paragraphs(CheckWords.of(check));
    if (!check.signals().isEmpty()) {
      page.offer(1, "Go on to practice with what arrives", Doing.BEGIN_RUN);
    }
    page.offer(2, "Check again", Doing.BEGIN_CHECK);
    return page.offer(0, "Leave", Doing.LEAVE).menu();
  }

  private static Page running(PracticeRun run) {
    return switch (run.stage()) {
      case ASKING -> pain(run.body().painBefore().isEmpty(), run.said());
      case READY, RESTING, PAUSED -> ready(run);
      case BETWEEN -> between(run);
      case PROMPT -> prompt(run);
      case STOPPED, DONE -> new Page.Builder(PRACTICE).say("One moment.").menu();
    };
  }

  private static String round(PracticeRun run) {
    return "Round " + (run.at().round() + 1) + " of " + run.rounds().size();
  }

  static Page pain(boolean before, String said) {
    Page.Builder page = new Page.Builder(before ? "Before the first round" : "After the round");
    page.strong("How much does it hurt now? 0 is not at all, 10 the worst.").gap();
    for (int pain = 0; pain < 9; pain++) {
      page.offer(pain, pain == 0 ? "Not at all" : Integer.toString(pain), Doing.PAIN);
    }
    return page.offer(9, "9 or 10, or it is sharp", Doing.PAIN).status(said).menu();
  }

  private static Page ready(PracticeRun run) {
    Page.Builder page = new Page.Builder(round(run));
    switch (run.stage()) {
      case RESTING -> page.say("Rest now: half a minute at least, as long as you like.");
      case PAUSED -> page.say("Paused. Nothing is counted until you go on.");
      default ->
          page.say(
              "A name will come up. Press its input, in your own time; speed is not asked for."
                  + " Between two names, any key pauses.");
    }
    if (run.at().round() == 0 && run.stage() == PracticeRun.Stage.READY) {
      page.say("The first round is for warming up and is not counted.");
    }
    if (!run.said().isBlank()) {
      page.gap().warn("Please note: " + run.said());
    }
    page.gap();
    page.offer(1, run.stage() == PracticeRun.Stage.PAUSED ? "Go on" : "Begin", Doing.GO_ON);
    return page.offer(9, STOP_LINE, Doing.ASK_STOP).menu();
  }

  private static Page between(PracticeRun run) {
    return new Page.Builder(round(run))
        .say("Wait for the next name. Any key pauses.")
        .status(run.said())
        .keysBelongToInputs();
  }

  private static Page prompt(PracticeRun run) {
    Page.Builder page = new Page.Builder(round(run)).say("Press:").gap();
    List<String> actions = run.cue().actions();
    for (int i = run.at().step(); i < actions.size(); i++) {
      Sheet.Job job = run.sheet().job(actions.get(i));
      String held = job.held().map(h -> "hold " + h + " and press: ").orElse("");
      page.strong((i > 0 ? "then: " : "") + held + job.name());
    }
    return page.keysBelongToInputs();
  }

  /** What it is; with {@code body} the signs of the body in a list of their own. */
  static Page stop(boolean body, Stops stops) {
    return body ? body(stops) : stopping(stops);
  }

  private static Page stopping(Stops stops) {
    return new Page.Builder("Stopped for the moment")
        .say("Nothing is counted now. What is it?")
        .gap()
        .offer(1, "Only a rest: go on when I am ready", Doing.GO_ON)
        .offer(2, stops.words(StopSign.PAIN), Doing.STOP_PAIN)
        .offer(3, "Another sign of my body", Doing.ASK_BODY)
        .offer(4, stops.words(StopSign.WISH), Doing.STOP_WISH)
        .offer(5, stops.words(StopSign.DISTRESS), Doing.STOP_DISTRESS)
        .offer(6, stops.words(StopSign.ALONE), Doing.STOP_ALONE)
        .menu();
  }

  private static Page body(Stops stops) {
    return new Page.Builder("Another sign of my body")
        .offer(1, stops.words(StopSign.NUMB), Doing.STOP_NUMB)
        .offer(2, stops.words(StopSign.FAINT), Doing.STOP_FAINT)
        .offer(3, stops.words(StopSign.CHEST), Doing.STOP_CHEST)
        .offer(4, stops.words(StopSign.SPASM), Doing.STOP_SPASM)
        .offer(5, stops.words(StopSign.SKIN), Doing.STOP_SKIN)
        .offer(6, stops.words(StopSign.BALANCE), Doing.STOP_BALANCE)
        .offer(0, "Back", Doing.ASK_STOP)
        .menu();
  }

  private static Page told(Phase.Told told, Stops stops) {
    Page.Builder page = new Page.Builder("What came of it");
    Optional<StopReason> stop = told.run().stop();
    stop.ifPresent(reason -> StopWords.of(reason, stops).forEach(line -> page.warn(line).gap()));
    page.paragraphs(told.outcome().lines());
    if (!told.outcome().offer().isEmpty()) {
      page.strong("One change that practice speaks for:").gap();
      page.paragraphs(told.outcome().offer());
      page.offer(1, "Take this change", Doing.TAKE);
      page.offer(2, "Keep it as it was", Doing.KEEP);
    }
    return page.offer(0, "Leave", Doing.LEAVE).menu();
  }
}
