package closehand.screen.trial;

import closehand.bank.StopSign;
import closehand.bank.Stops;
import closehand.measure.trial.SideBySide;
import closehand.measure.trial.Step;
import closehand.measure.trial.TrialWords;
import closehand.report.ComparisonText;
import closehand.report.Glyphs;
import closehand.screen.frame.Role;
import closehand.screen.view.Block;
import java.util.List;

/** The pages of a trial. */
final class TrialPages {
  static final int NOTHING = 0;
  static final int STOP = 9;
  private static final int MORE = 8;
  private static final int ON_PAGE = 7;
  private static final int MOST_OF_TEN = 10;
  private static final int[] MINUTES = {1, 2, 3, 5, 8, 10, 12, 15, 20, 30, 45, 60};
  private static final String STOP_WORDS = "Stop: pain, or I have had enough";

  private TrialPages() {}

  /**
   * The page in sight.
   *
   * @param status what is said at the foot
   * @param glyphs the characters that can be shown
   */
  static TrialPage of(State state, List<String> status, Glyphs glyphs) {
    TrialPage.Builder page =
        switch (state.page()) {
          case CONSENT -> consent(state);
          case COMPARED -> compared(state, glyphs);
          case SIGNS -> signs(state.part(), state.dialogue().stops());
          case LETTERS, LETTER -> Letters.of(state);
          case DAY -> day(state);
          case CHECK -> check(state);
          case OTHER -> other(state);
          case HELP -> help(state);
          default -> state.step().isPresent() ? question(state) : whole(state);
        };
    return page.build(status);
  }

  private static TrialPage.Builder consent(State state) {
    TrialPage.Builder page =
        new TrialPage.Builder("A trial")
            .strong("Are you happy to try something now?")
            .say(
                "You lead. 9 stops, and nobody asks why. Agree first on a word or a sign that means stop. Have a phone or"
                    + " call button in reach, and somebody who knows.")
            .gap()
            .offer(1, "Yes", Doing.go(State.Page.QUESTION))
            .offer(2, "Not now", new Doing.Leave());
    return comparison(page, state, 3, 0);
  }

  /** The way to two set-ups side by side, where two were tried. */
  private static TrialPage.Builder comparison(
      TrialPage.Builder page, State state, int digit, int from) {
    return SideBySide.ofLastTwo(state.trials()).isPresent()
        ? page.offer(
            digit,
            "Two set-ups side by side, trial by trial",
            new Doing.Go(State.Page.COMPARED, from))
        : page;
  }

  private static TrialPage.Builder compared(State state, Glyphs glyphs) {
    TrialPage.Builder page = new TrialPage.Builder("Side by side");
    SideBySide.ofLastTwo(state.trials())
        .ifPresent(
            both ->
                ComparisonText.of(both, state.trials(), glyphs)
                    .lines()
                    .forEach(line -> page.add(Block.laid(line, Role.PLAIN))));
    return page.gap().offer(NOTHING, "Back", Doing.go(state.home()));
  }

  private static TrialPage.Builder question(State state) {
    TrialWords.Put put = state.dialogue().put().orElseThrow();
    TrialPage.Builder page = new TrialPage.Builder("A trial");
    state.dialogue().said().forEach(s -> page.add(Block.warning(s)).gap());
    page.strong(put.question()).gap();
    return switch (state.kind()) {
      case CHOICE -> choice(page, state, put);
      case NUMBER -> number(page, state);
      case WORDS -> words(page, state, put);
    };
  }

  private static TrialPage.Builder choice(TrialPage.Builder page, State state, TrialWords.Put put) {
    Step.Kind kind = state.step().orElseThrow().kind();
    if (kind == Step.Kind.SIGN) {
      put.choices().forEach(page::say);
      page.gap().offer(1, "None of these", new Doing.Answer("0"));
      page.offer(2, "One of these came", Doing.go(State.Page.SIGNS));
    } else if (kind == Step.Kind.LOAN) {
      page.offer(1, "Nothing is on loan", new Doing.Answer(""));
      page.offer(2, "Yes: the day it goes back", Doing.go(State.Page.DAY));
    } else {
      for (int i = 1; i <= put.choices().size(); i++) {
        page.offer(i, put.choices().get(i - 1), new Doing.Answer(Integer.toString(i)));
      }
      if (kind != Step.Kind.PLACE) {
        page.offer(NOTHING, "Leave it out", new Doing.Answer(""));
      }
    }
    return foot(page);
  }

  private static TrialPage.Builder number(TrialPage.Builder page, State state) {
    int most = state.isMinutes() ? 999 : 99;
    page.field("Number: ", state.typed());
    page.say(
        "Type it, then Enter; or fill the line: "
            + (state.isMinutes() ? "012" : "03")
            + ". "
            + most
            + " is for stop, leave out, back. Or take one:");
    if (state.isMinutes()) {
      for (int minutes : MINUTES) {
        page.offer(
            -1,
            minutes + (minutes == 1 ? " minute" : " minutes"),
            new Doing.Answer(Integer.toString(minutes)));
      }
    } else {
      for (int value = 0; value <= MOST_OF_TEN; value++) {
        page.offer(-1, Integer.toString(value), new Doing.Answer(Integer.toString(value)));
      }
    }
    page.gap().offer(-1, "Leave it out", new Doing.Answer(""));
    return page.offer(-1, STOP_WORDS, Doing.go(State.Page.SIGNS));
  }

  private static TrialPage.Builder words(TrialPage.Builder page, State state, TrialWords.Put put) {
    boolean digits = state.typed().isEmpty();
    int known = Math.min(put.choices().size(), ON_PAGE - 1);
    for (int i = 1; i <= known; i++) {
      page.offer(digits ? i : -1, put.choices().get(i - 1), new Doing.Answer(Integer.toString(i)));
    }
    page.field("Words: ", state.typed());
    page.offer(
        digits ? ON_PAGE : -1, "Choose the letters from a list", Doing.go(State.Page.LETTERS));
    if (put.hint().contains("Enter")) {
      page.offer(digits ? NOTHING : -1, nothing(state.step().orElseThrow()), new Doing.Answer(""));
    }
    return digits ? foot(page) : page.offer(-1, STOP_WORDS, Doing.go(State.Page.SIGNS));
  }

  /** What taking no words means. */
  private static String nothing(Step step) {
    return switch (step.kind()) {
      case NOTES -> "Nothing to note";
      case ACTION -> step.index() == 0 ? "The same as last time" : "These are all";
      default -> "The same as last time";
    };
  }

  private static TrialPage.Builder foot(TrialPage.Builder page) {
    return page.gap().offer(STOP, STOP_WORDS, Doing.go(State.Page.SIGNS));
  }

  private static TrialPage.Builder day(State state) {
    return new TrialPage.Builder("On loan")
        .strong("On which day does it go back?")
        .say("Type year, month and day in eight figures, such as 20270131.")
        .gap()
        .field("Day: ", state.typed())
        .offer(-1, "Nothing is on loan", new Doing.Answer(""))
        .offer(-1, "Back", Doing.go(State.Page.QUESTION));
  }

  private static TrialPage.Builder check(State state) {
    return new TrialPage.Builder("Is this right?")
        .strong(state.asRead())
        .gap()
        .offer(1, "Yes", new Doing.Accept())
        .offer(2, "No, type it again", new Doing.Go(State.Page.QUESTION, 1))
        .offer(STOP, STOP_WORDS, Doing.go(State.Page.SIGNS));
  }

  private static TrialPage.Builder other(State state) {
    return new TrialPage.Builder("Something else")
        .strong(state.dialogue().put().orElseThrow().question())
        .gap()
        .offer(1, "Leave it out", new Doing.Answer(""))
        .offer(2, "Type it again", new Doing.Go(State.Page.QUESTION, 1))
        .offer(3, "Back to the question before", new Doing.Before())
        .offer(4, "Leave; everything is kept", new Doing.Leave())
        .offer(STOP, STOP_WORDS, Doing.go(State.Page.SIGNS));
  }

  private static TrialPage.Builder signs(int part, Stops stops) {
    TrialPage.Builder page =
        new TrialPage.Builder("Stop").strong("Stop, let go and rest. What came?").gap();
    StopSign[] all = StopSign.values();
    int from = part * ON_PAGE;
    for (int i = from; i < Math.min(all.length, from + ON_PAGE); i++) {
      page.offer(i - from + 1, stops.words(all[i]), new Doing.Halt(all[i]));
    }
    int parts = (all.length + ON_PAGE - 1) / ON_PAGE;
    page.offer(MORE, "Other signs", new Doing.Go(State.Page.SIGNS, (part + 1) % parts));
    return page.offer(NOTHING, "It was a slip: go on", Doing.go(State.Page.QUESTION));
  }

  private static TrialPage.Builder help(State state) {
    TrialPage.Builder page = new TrialPage.Builder("Help");
    state.dialogue().put().ifPresent(p -> page.strong("Why we ask this").say(p.why()).gap());
    return page.strong("Keys")
        .say(
            "Space goes on to the next line and Enter takes it; these two are enough. The digits are enough too. 9 is"
                + " stop, except where a number is typed; there the last line is stop. Backspace goes back. Ctrl-C"
                + " leaves, and everything is kept.")
        .gap()
        .offer(NOTHING, "Back", Doing.go(State.Page.QUESTION))
        .offer(STOP, STOP_WORDS, Doing.go(State.Page.SIGNS));
  }

  private static TrialPage.Builder whole(State state) {
    TrialPage.Builder page = new TrialPage.Builder("A trial");
    state.dialogue().said().forEach(s -> page.add(Block.warning(s)).gap());
    page.strong("Thank you. That was the whole trial.")
        .say(
            "Ask in 24 to 48 hours how it was: pain that is still there, numbness, swelling, a skin mark or a crash"
                + " means ease off, and more than a day of it means medical advice.")
        .gap()
        .offer(1, "Leave", new Doing.Leave());
    return comparison(page, state, 2, 1);
  }
}
