package closehand.screen;

import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.interview.Value;
import closehand.report.ByHand;
import closehand.report.Glyphs;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Every screen there is, each brought up by keys from a place somebody can be in. */
final class Scenes {
  private static final CoreDesk DESK = new CoreDesk();

  private Scenes() {}

  /**
   * A screen and how to get there.
   *
   * @param name what it is called
   * @param from where the keys begin: "start", "begun", or a gold case and a question such as "0
   *     DIG-03"
   * @param keys the keys: themselves, with {@code E} for Enter, {@code S} for Space and {@code B}
   *     for Backspace
   */
  record Scene(String name, String from, String keys) {
    ScreenModel at(ScreenSize size, Glyphs glyphs) {
      ScreenModel model = Scenes.from(from, size, glyphs);
      for (char key : keys.toCharArray()) {
        model = taking(model, key(key));
      }
      return model;
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static List<Scene> all() {
    return List.of(
        new Scene("start", "start", ""),
        new Scene("cases", "start", "2"),
        new Scene("who-asks", "start", "1"),
        new Scene("how-long", "start", "13"),
        new Scene("seal", "start", "131"),
        new Scene("passphrase-new", "start", "1312"),
        new Scene("passphrase-typed", "start", "1312qr"),
        new Scene("passphrase-letters", "start", "13121"),
        new Scene("passphrase", "locked", ""),
        new Scene("saved-case", "saved", ""),
        new Scene("discard", "saved", "3"),
        new Scene("one-moment", "moment", ""),
        new Scene("before-we-begin", "told", ""),
        new Scene("sealed-words", "sealed", ""),
        new Scene("written-down", "sealed", "0"),
        new Scene("question-first", "begun", ""),
        new Scene("question", "0 CON-03", ""),
        new Scene("question-yes-no", "0 voice.chat", ""),
        new Scene("question-several", "0 comm.mode", "13"),
        new Scene("question-many", "0 equip.now", ""),
        new Scene("question-number", "0 END-02", ""),
        new Scene("question-number-typed", "0 END-01", "4"),
        new Scene("question-check-number", "0 END-02", "03"),
        new Scene("question-words", "0 GOA-01", "Football"),
        new Scene("question-refused", "0 END-02", "99"),
        new Scene("question-shared", "0 CON-03", "v"),
        new Scene("question-actions", "0 games.1.must", ""),
        new Scene("grid", "0 digit.L.press.M", ""),
        new Scene("grid-numbers", "4 digit.L.pain.I", ""),
        new Scene("board-letters", "0 GOA-01", "1"),
        new Scene("board-figures", "0 END-01", "SSE4"),
        new Scene("skip", "0 CON-03", "0"),
        new Scene("more", "0 CON-03", "07"),
        new Scene("stop", "0 CON-03", "9"),
        new Scene("conduct", "0 CON-03", "a"),
        new Scene("who-answers", "0 CON-03", "w"),
        new Scene("how-known", "0 CON-03", "w2"),
        new Scene("note", "0 CON-03", "n"),
        new Scene("lower", "stopped", "8888888888883"),
        new Scene("notice-stop", "stopped", ""),
        new Scene("notice-ends", "no consent", ""),
        new Scene("notice-care", "care", ""),
        new Scene("overview", "0 DIG-03", "o"),
        new Scene("overview-part", "0 DIG-03", "oE"),
        new Scene("so-far", "0 games.1.mode", "s"),
        new Scene("so-far-shared", "0 games.1.mode", "vs"),
        new Scene("explain", "0 games.1.mode", "e"),
        new Scene("plan", "0 games.1.mode", "g"),
        new Scene("plan-load", "0 games.1.mode", "g1"),
        new Scene("plan-by-hand", "0 games.1.mode", "g2"),
        new Scene("plan-asked", "0 games.1.mode", "g222"),
        new Scene("plan-named", "0 games.1.mode", "g221Run"),
        new Scene("page", "0 games.1.mode", "p"),
        new Scene("help", "0 DIG-03", "?"),
        new Scene("settings", "0 CON-03", "t"),
        new Scene("letters", "0 CON-03", "t4"),
        new Scene("letter-waited-for", "0 CON-03", "t41"),
        new Scene("leave", "0 CON-03", "q"),
        new Scene("delete", "no consent", "8888888888884"),
        new Scene("finished", "finished", ""));
  }

  static Key key(char key) {
    return switch (key) {
      case 'E' -> Key.Named.ENTER;
      case 'S' -> Key.Named.SPACE;
      case 'B' -> Key.Named.BACKSPACE;
      default -> Key.of(key);
    };
  }

  /** What comes of a key; on a small screen a digit shows its line first, and is pressed again. */
  static ScreenModel taking(ScreenModel model, Key key) {
    ScreenModel next = step(model, key);
    return next.said().sentence().startsWith("The same key again") ? step(next, key) : next;
  }

  /** Plans are worked out once for all sizes. */
  private static final Map<Interview, Optional<ByHand>> BY_HAND = new ConcurrentHashMap<>();

  /** Interviews are led to their places once for all sizes. */
  private static final Map<String, Interview> LED = new ConcurrentHashMap<>();

  static ScreenModel step(ScreenModel model, Key key) {
    ScreenModel.Step step = model.after(key);
    ScreenModel next = step.model();
    for (Effect effect : step.effects()) {
      if (effect instanceof Effect.WorkOutPlan plan) {
        next =
            next.pushing(
                plan.load()
                    ? ReadingScreen.load(DESK.load(plan.interview()))
                    : ReadingScreen.plan(DESK.plan(plan.interview())));
      } else if (effect instanceof Effect.BeginByHand begin) {
        next = ByHandWork.begun(next, BY_HAND.computeIfAbsent(begin.interview(), DESK::byHand));
      } else if (effect instanceof Effect.ChangeByHand change) {
        next =
            ByHandWork.shown(
                next,
                change.at(),
                ByHandWork.after(change),
                DESK,
                next.talk().orElseThrow().interview());
      }
    }
    return next;
  }

  static ScreenModel from(String from, ScreenSize size, Glyphs glyphs) {
    ScreenModel start =
        ScreenModel.start(
            size, glyphs, Settings.USUAL, List.of("amber-otter", "calm-fern", "paper-boat"));
    return switch (from) {
      case "start" -> start;
      case "begun" -> start.holding(DESK, begun(Provenance.By.VOLUNTEER), List.of());
      case "told" ->
          start.holding(
              DESK,
              begun(Provenance.By.VOLUNTEER),
              List.of(
                  "This case is called calm-fern. No name or birth date is needed anywhere.",
                  "Everything is kept on this machine, readable by you alone."));
      case "sealed" ->
          start.sealed(
              DESK,
              begun(Provenance.By.VOLUNTEER),
              List.of(
                  "This case is called calm-fern. No name or birth date is needed anywhere.",
                  "The passphrase of this case:",
                  "babab cecec dididi fofof gugug hahah",
                  "Write it down now. It is shown this once and kept nowhere."));
      case "locked" -> start.pushing(SecretScreen.opening("calm-fern"));
      case "saved" -> start.pushing(new CaseScreen("calm-fern", saved()));
      case "moment" ->
          start.pushing(
              ReadingScreen.moment("The case is being sealed. This takes a few seconds."));
      case "stopped" -> giving(start, Provenance.By.CLINICIAN, "safe.suddenNeuro", "SAF-01", '3');
      case "no consent" -> giving(start, Provenance.By.VOLUNTEER, "consent.state", "CON-01", '3');
      case "care" -> care(start);
      case "finished" -> finished(start);
      default -> gold(start, from);
    };
  }

  private static CaseBook.Found.Case saved() {
    return new CaseBook.Found.Case(
        List.of(
            "Case calm-fern, left at question 12 of about 72, 3 days ago, bank 1.0.0: go on?",
            "11 of about 72 questions answered, 61 still open.",
            "Next review: 25 February 2027."),
        Set.of(Wish.values()));
  }

  private static Interview begun(Provenance.By asker) {
    return Interview.begin(CoreDesk.BANK.questionnaire(), Interview.Route.CORE, asker);
  }

  private static ScreenModel giving(
      ScreenModel start, Provenance.By asker, String fact, String question, char answer) {
    Interview interview = begun(asker).after(new Message.JumpTo(question));
    if (!interview.at().equals(Optional.of(fact))) {
      throw new AssertionError("not at " + fact);
    }
    return taking(start.holding(DESK, interview, List.of()), Key.of(answer));
  }

  private static ScreenModel care(ScreenModel start) {
    Interview interview = begun(Provenance.By.VOLUNTEER).after(new Message.JumpTo("SAF-05"));
    ScreenModel model = taking(start.holding(DESK, interview, List.of()), Key.of('3'));
    Talk talk = model.talk().orElseThrow();
    return model.holding(DESK, talk.interview().after(new Message.JumpTo("GOA-01")), List.of());
  }

  private static ScreenModel finished(ScreenModel start) {
    Interview interview = LED.computeIfAbsent("finished", place -> finished());
    return acknowledged(start.holding(DESK, interview, List.of()));
  }

  private static Interview finished() {
    Interview interview = of(CoreDesk.goldCase(0), Interview.Route.CORE);
    while (interview.current().isPresent()) {
      interview =
          interview.after(new Message.NoAnswer(Answer.Reason.LATER, Provenance.PLAYER_TOLD));
      if (interview.refusal().isPresent()) {
        interview =
            interview.after(new Message.Give(new Value.Code("yes"), Provenance.PLAYER_TOLD));
      }
    }
    return interview;
  }

  private static Interview of(Answers answers, Interview.Route route) {
    return Interview.reopen(
        CoreDesk.BANK.questionnaire(), answers, route, Provenance.By.VOLUNTEER, Optional.empty());
  }

  private static ScreenModel gold(ScreenModel start, String from) {
    Interview interview = LED.computeIfAbsent(from, Scenes::gold);
    return acknowledged(start.holding(DESK, interview, List.of()));
  }

  private static Interview gold(String from) {
    String[] words = from.split(" ", 2);
    Interview interview =
        of(CoreDesk.goldCase(Integer.parseInt(words[0])), Interview.Route.FULL)
            .after(new Message.JumpTo(words[1]));
    if (interview.refusal().isPresent()) {
      throw new AssertionError(from + ": " + interview.refusal().get());
    }
    return interview;
  }

  private static ScreenModel acknowledged(ScreenModel model) {
    ScreenModel next = model;
    while (next.top().screen() instanceof NoticeScreen) {
      next = next.closing();
    }
    return next;
  }
}
