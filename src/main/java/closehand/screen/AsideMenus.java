package closehand.screen;

import closehand.interview.Answer;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.StillOpen;
import closehand.interview.Value;
import closehand.interview.WellKnown;
import closehand.screen.view.Block;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What can be done beside answering. */
final class AsideMenus {
  private static final int STOP = 9;

  /** Who may see the answers; one of its codes says that nothing is to be kept. */
  private static final String SHARE = "consent.share";

  private AsideMenus() {}

  static Shown of(Menu menu, ScreenModel model) {
    return switch (menu.kind()) {
      case SKIP -> skip();
      case MORE -> more(model);
      case STOP -> stop(model);
      case FINISHED -> finished(model);
      case DELETE -> delete();
      case WRITTEN_DOWN -> writtenDown();
      default -> leave(model);
    };
  }

  private static Shown skip() {
    Shown.Builder skip = new Shown.Builder("Skip, or more");
    skip.add(Block.strong("None of these is ever taken for a no.")).gap();
    skip.offer(1, "I don't know", new Act.Absent(Answer.Reason.UNKNOWN));
    skip.offer(2, "I'd rather not say", new Act.Absent(Answer.Reason.DECLINED));
    skip.offer(3, "Does not apply to me", new Act.Absent(Answer.Reason.NOT_APPLICABLE));
    skip.offer(4, "Ask me later", new Act.Absent(Answer.Reason.LATER));
    skip.gap();
    skip.offer(5, "Back to the question before", new Act.Send(new Message.Back()));
    skip.offer(6, "All answers, and the way to any question", new Act.Do(Command.OVERVIEW));
    skip.offer(
        7, "More: so far, page, note, people, settings", new Act.Swap(Menu.of(Menu.Kind.MORE)));
    skip.offer(8, "Why we ask this, and help", new Act.Do(Command.HELP));
    return end(skip).build();
  }

  private static Shown more(ScreenModel model) {
    Shown.Builder more = new Shown.Builder("More");
    more.add(Block.strong("What would you like to do?")).gap();
    more.offer(1, "What the answers so far point to", new Act.Do(Command.SO_FAR));
    more.offer(2, "The page as it stands", new Act.Do(Command.PAGE));
    more.offer(3, "Add a note to the answer", new Act.Do(Command.NOTE));
    more.offer(4, "Who answers, and how it is known", new Act.Do(Command.WHO));
    more.offer(5, "Who asks, how long, lower a stop", new Act.Do(Command.ASKER));
    more.offer(6, "Take back the last change", new Act.Undo());
    more.offer(7, "Settings and shared view", new Act.Do(Command.SETTINGS));
    // Where a task belongs to the question, leaving is one step further, behind stop.
    boolean task = model.talk().flatMap(Talk::task).isPresent();
    more.offer(
        8,
        task ? "Measure what is asked, step by step" : leaving(model),
        new Act.Do(task ? Command.MEASURE : Command.LEAVE));
    return end(more).build();
  }

  private static Shown.Builder end(Shown.Builder menu) {
    menu.offer(STOP, "Stop: pain or feeling unwell", new Act.Do(Command.STOP));
    return menu.offer(0, "Back to the question", new Act.Return());
  }

  private static Shown stop(ScreenModel model) {
    Interview interview = model.talk().orElseThrow().interview();
    Shown.Builder stop = new Shown.Builder("Stop");
    stop.add(Block.strong("Let us stop here. Stop what you are doing, and rest."));
    stop.say("Nothing is lost, and there is no hurry.");
    stop.add(
        Block.warning(
            "Emergency: call the emergency number now if something sudden happens. Such signs are a"
                + " drooping face, trouble speaking, chest pain or a fit."));
    stop.gap();
    // What waits to be read stays below; nothing here leads past it.
    boolean waits = model.layers().stream().anyMatch(l -> l.screen() instanceof NoticeScreen);
    waits = waits || model.waits();
    if (!waits && interview.questionnaire().fieldsByFact().containsKey(WellKnown.PAIN_NOW)) {
      stop.offer(
          1,
          "Say how strong the pain is now",
          new Act.Send(new Message.JumpTo(WellKnown.PAIN_NOW)));
    }
    if (!waits && interview.current().isPresent()) {
      stop.offer(2, "Put this question off", new Act.Absent(Answer.Reason.LATER));
    }
    stop.offer(3, leaving(model), new Act.Do(Command.LEAVE));
    return stop.offer(0, "Go on where we were", new Act.Close()).build();
  }

  private static Shown finished(ScreenModel model) {
    Interview interview = model.talk().orElseThrow().interview();
    Shown.Builder end = new Shown.Builder("The last question");
    end.add(Block.strong("That was the last question for now. Thank you."));
    List<String> open = open(interview, model.settings().shared());
    end.say(open.isEmpty() ? "Nothing is open." : "Some questions are still open.");
    end.gap();
    end.offer(1, "The page", new Act.Do(Command.PAGE));
    end.offer(2, "What the answers point to", new Act.Do(Command.SO_FAR));
    end.offer(3, "All answers, and the way to any question", new Act.Do(Command.OVERVIEW));
    end.offer(4, "Back to the question before", new Act.Send(new Message.Back()));
    end.offer(5, "More", new Act.Show(Menu.of(Menu.Kind.MORE)));
    if (!open.isEmpty()) {
      end.offer(
          6, "What is still open, and why", new Act.Show(ReadingScreen.lines("Still open", open)));
    }
    end.offer(7, "The control plan of your games", new Act.Do(Command.PLAN));
    end.offer(8, leaving(model), new Act.Do(Command.LEAVE));
    return end.build();
  }

  /**
   * What is open, a line a question; what is for a clinician only, not where a player reads along.
   */
  private static List<String> open(Interview interview, boolean shared) {
    Set<String> lines = new LinkedHashSet<>();
    for (StillOpen one : interview.open()) {
      if (!shared || one.why() != StillOpen.Why.FOR_CLINICIAN) {
        String name = one.question().shortName().orElse(one.question().text());
        lines.add(name + ". " + one.because());
      }
    }
    return new ArrayList<>(lines);
  }

  private static Shown leave(ScreenModel model) {
    Shown.Builder leave = new Shown.Builder("Leave");
    leave.add(Block.strong("Leave now?"));
    if (model.talk().isEmpty()) {
      leave.gap();
      leave.offer(1, "Leave", new Act.Run(new Effect.Leave(Effect.Ending.LEFT)));
      return leave.offer(0, "Stay here", new Act.Close()).build();
    }
    Interview interview = model.talk().get().interview();
    Effect.Ending ending = interview.finished() ? Effect.Ending.FINISHED : Effect.Ending.LEFT;
    boolean kept = isKept(model);
    boolean forget =
        kept
            && interview
                .answers()
                .value(SHARE)
                .filter(v -> v instanceof Value.Codes c && c.codes().contains("thisSession"))
                .isPresent();
    leave.say(
        !kept
            ? "This player is invented. Nothing you did here is kept."
            : forget
                ? "You chose to keep this for this session only."
                : "Everything is kept. You can go on at any time.");
    leave.gap();
    leave.offer(
        1,
        forget ? "Leave, and keep it all the same" : leaving(model),
        new Act.Run(new Effect.Leave(ending)));
    if (forget) {
      leave.offer(2, "Leave, and delete everything kept", new Act.Show(Menu.of(Menu.Kind.DELETE)));
    } else {
      leave.offer(
          2, "Practise the plan now", new Act.Run(new Effect.Leave(Effect.Ending.TO_PRACTICE)));
      leave.offer(
          3,
          "Try a set-up now, and note it",
          new Act.Run(new Effect.Leave(Effect.Ending.TO_TRIAL)));
    }
    return leave.offer(0, "Stay here", new Act.Close()).build();
  }

  private static boolean isKept(ScreenModel model) {
    return model.talk().map(t -> t.advisor().isKept()).orElse(true);
  }

  private static String leaving(ScreenModel model) {
    return isKept(model) ? "Leave; everything is kept" : "Leave; nothing is kept";
  }

  private static Shown writtenDown() {
    Shown.Builder written = new Shown.Builder("The passphrase");
    written.add(Block.strong("Are the six words written down?"));
    written.say("They are kept nowhere and cannot be shown later.").gap();
    written.offer(1, "No, show them again", new Act.Close());
    return written.offer(2, "Yes, go on", new Act.Return()).build();
  }

  private static Shown delete() {
    Shown.Builder delete = new Shown.Builder("Delete everything");
    delete.add(Block.strong("Delete everything kept of this case? It cannot be brought back."));
    delete.gap();
    delete.offer(1, "No, keep it", new Act.Close());
    return delete.offer(2, "Yes, delete it and leave", new Act.Run(new Effect.Delete())).build();
  }
}
