package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.Answers;
import closehand.interview.Value;
import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The requirements of an accessible screen, each test under the number it has in docs. */
class RequirementsTest {
  static Stream<Scenes.Scene> scenes() {
    return Scenes.all().stream();
  }

  private static ScreenModel at(String from, String keys) {
    return new Scenes.Scene("", from, keys).at(ScreenSize.USUAL, Glyphs.UNICODE);
  }

  private static String text(ScreenModel model) {
    return String.join("\n", model.frame().text());
  }

  private static Answers answers(ScreenModel model) {
    return model.talk().orElseThrow().interview().answers();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void a9NothingIsToldByTheLookAlone(Scenes.Scene scene) {
    ScreenModel model = scene.at(new ScreenSize(80, 43), Glyphs.UNICODE);
    List<String> text = model.frame().text();
    long marked = text.stream().filter(row -> row.startsWith(" > ")).count();
    assertEquals(1, marked, () -> String.join("\n", text));
    for (Offer offer : model.shown().offers()) {
      if (!offer.word().isEmpty()) {
        assertTrue(text(model).contains(offer.word()), text(model));
      }
    }
    if (model.said().refusal()) {
      assertTrue(text(model).contains("Please note: "), text(model));
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void a10TheCursorStandsOnTheMarkOrWhereIsTyped(Scenes.Scene scene) {
    for (ScreenSize size : GoldenScreensTest.SIZES) {
      Frame frame = scene.at(size, Glyphs.UNICODE).frame();
      String row = frame.text().get(frame.cursor().row());
      assertTrue(row.stripLeading().startsWith("> ") || row.endsWith("_"), row);
    }
  }

  @Test
  void a12EveryCommandIsOneCharacterAndEveryOneCanBeReachedByDigits() {
    List<Character> letters = new ArrayList<>();
    for (Command command : Command.values()) {
      letters.add(command.letter());
      assertTrue(reachable(command), command + " cannot be reached by digits");
    }
    assertEquals(letters.size(), letters.stream().distinct().count());
  }

  /** Whether a command, or what it does, is offered behind a digit within four steps. */
  private static boolean reachable(Command command) {
    // Measuring is offered where a task belongs to the question.
    String from = command == Command.MEASURE ? "0 stick.L" : "0 CON-03";
    List<ScreenModel> models = new ArrayList<>(List.of(at(from, "")));
    for (int depth = 0; depth < 4; depth++) {
      List<ScreenModel> next = new ArrayList<>();
      for (ScreenModel model : models) {
        for (Offer offer : model.shown().offers()) {
          if (offer.digit() >= 0 && does(offer.act(), command)) {
            return true;
          }
          if (offer.digit() >= 0
              && (offer.act() instanceof Act.Show
                  || offer.act() instanceof Act.Swap
                  || offer.act() instanceof Act.Do)) {
            next.add(model.after(Key.of((char) ('0' + offer.digit()))).model());
          }
        }
      }
      models = next;
    }
    return false;
  }

  private static boolean does(Act act, Command command) {
    return switch (command) {
      case UNKNOWN, DECLINE, NOT_APPLICABLE, LATER -> act instanceof Act.Absent;
      case BACK ->
          act instanceof Act.Send send
              && send.message() instanceof closehand.interview.Message.Back;
      case UNDO -> act instanceof Act.Undo;
      case JUMP -> act.equals(new Act.Do(Command.OVERVIEW));
      case SHARED -> act instanceof Act.Adjust adjust && adjust.settings().shared();
      default -> act.equals(new Act.Do(command));
    };
  }

  @Test
  void a14AnswersMayNeedEnter() {
    ScreenModel model = at("0 CON-03", "t20E");
    assertTrue(model.settings().needsEnter());
    Answers before = answers(model);
    model = Scenes.step(model, Key.of('1'));
    assertEquals(before, answers(model));
    assertTrue(text(model).contains("> 1  Under 13"), text(model));
    model = Scenes.step(model, Key.Named.ENTER);
    assertEquals(Optional.of(new Value.Code("u13")), answers(model).value("age.band"));
  }

  @Test
  void a14LettersCanBeChangedAndSwitchedOff() {
    // The letter for going back becomes m; the help says so.
    ScreenModel model = at("0 CON-03", "t41m00");
    assertEquals('m', model.settings().letter(Command.BACK));
    String at = model.talk().orElseThrow().interview().at().orElseThrow();
    ScreenModel back = Scenes.step(model, Key.of('m'));
    assertNotEquals(at, back.talk().orElseThrow().interview().at().orElseThrow());
    ScreenModel off = at("0 CON-03", "t30");
    assertTrue(text(Scenes.step(off, Key.of('q'))).contains("no meaning"));
  }

  @Test
  void a15ADroppedKeyIsToldAndChangesNothing() {
    ScreenModel model = at("0 CON-03", "");
    ScreenModel.Step step = model.after(new Key.Dropped(Key.Dropped.Why.HELD));
    assertTrue(text(step.model()).contains("counts once"), text(step.model()));
    assertEquals(List.of(), step.effects());
    assertEquals(answers(model), answers(step.model()));
    assertEquals(0, at("0 CON-03", "t555").settings().holdMillis(), "the hold guard can be off");
  }

  @Test
  void a16StopIsOnEveryQuestionAlsoWhereATaskIsTimed() {
    for (String from : List.of("0 CON-03", "0 END-02", "0 GOA-01", "0 DIG-09")) {
      ScreenModel model = at(from, "");
      assertTrue(
          model.shown().offers().stream().anyMatch(o -> o.words().startsWith("Stop: pain")), from);
    }
    ScreenModel stopped = at("0 CON-03", "9");
    assertTrue(text(stopped).contains("Let us stop here"), text(stopped));
    assertEquals(answers(at("0 CON-03", "")), answers(stopped));
  }

  @Test
  void a16AfterAStopTheMarkStandsWhereItWas() {
    for (String away : List.of("9", "0", "0S")) {
      ScreenModel model = Scenes.step(at("0 CON-03", ""), Key.Named.DOWN);
      int before = Moved.chosen(model);
      for (char key : (away + "0").toCharArray()) {
        model = Scenes.step(model, Scenes.key(key));
      }
      assertTrue(model.top().screen() instanceof QuestionScreen, text(model));
      assertEquals(before, Moved.chosen(model), away);
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void a17TheSameModelIsAlwaysTheSameFrame(Scenes.Scene scene) {
    ScreenModel model = scene.at(ScreenSize.USUAL, Glyphs.UNICODE);
    assertEquals(model.frame(), model.frame());
  }

  @Test
  void a18EverythingCanBeTakenBack() {
    ScreenModel model = at("begun", "");
    List<Answers> states = new ArrayList<>();
    for (char key : "11".toCharArray()) {
      states.add(answers(model));
      model = Scenes.step(model, Key.of(key));
    }
    for (int i = states.size() - 1; i >= 0; i--) {
      model = Scenes.step(model, Key.of('u'));
      assertEquals(states.get(i), answers(model));
    }
    assertTrue(text(Scenes.step(model, Key.of('u'))).contains("nothing to take back"));
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void a18NoKeyDeletesOrLeavesAtOnce(Scenes.Scene scene) {
    ScreenModel model = scene.at(ScreenSize.USUAL, Glyphs.UNICODE);
    boolean asked =
        model.top().screen() instanceof Menu menu
            && (menu.kind() == Menu.Kind.LEAVE
                || menu.kind() == Menu.Kind.DELETE
                || menu.kind() == Menu.Kind.START);
    boolean ends = model.top().screen() instanceof NoticeScreen notice && notice.ends();
    for (char key = ' '; key <= '~'; key++) {
      for (Effect effect : model.after(Key.of(key)).effects()) {
        assertTrue(!(effect instanceof Effect.Delete) || asked, "key " + key);
        assertTrue(!(effect instanceof Effect.Leave) || asked || ends, "key " + key);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void a19HelpIsBehindTheSameKeyInTheSamePlace(Scenes.Scene scene) {
    ScreenModel model = scene.at(ScreenSize.USUAL, Glyphs.UNICODE);
    List<String> text = model.frame().text();
    if (scene.name().equals("one-moment")) {
      assertEquals("", text.get(text.size() - 1), "no key does anything, so none is named");
      return;
    }
    // A passphrase may hold any character; while one is typed, help is F1, as everywhere besides.
    boolean spelling = model.top().screen() instanceof SecretScreen secret && secret.spells();
    String first = spelling ? " F1 help" : " ? help";
    assertTrue(text.get(text.size() - 1).startsWith(first), text(model));
    ScreenModel help = Scenes.step(model, spelling ? Key.Named.HELP : Key.of('?'));
    assertTrue(text(help).contains("Help"), text(help));
    assertTrue(text(Scenes.step(model, Key.Named.HELP)).contains("Help"));
    if (!text(model).startsWith(" Help")) {
      ScreenModel again = Scenes.step(help, Key.Named.BACKSPACE);
      assertEquals(model.top().screen(), again.top().screen());
    }
  }

  @Test
  void a20AnErrorNamesWhatIsAcceptedAndTheCursorStays() {
    ScreenModel model = at("0 END-01", "9999");
    ScreenModel refused = at("0 END-02", "99");
    assertTrue(text(refused).contains("Please note: Please give a whole number from 0 to 10."));
    assertTrue(
        refused.frame().text().get(refused.frame().cursor().row()).contains("Number: _"),
        text(refused));
    assertEquals(answers(at("0 END-01", "")), answers(model));
    for (ScreenSize size : GoldenScreensTest.SIZES) {
      Frame frame = new Scenes.Scene("", "0 END-02", "99").at(size, Glyphs.UNICODE).frame();
      String seen = String.join(" ", frame.text());
      assertTrue(seen.contains("Please note") && seen.contains("Number: _"), size + seen);
    }
  }

  @Test
  void aPastedTextNeverAnswers() {
    ScreenModel model = at("0 CON-03", "");
    ScreenModel pasted = Scenes.step(model, new Key.Pasted("1\n2\n9"));
    assertEquals(answers(model), answers(pasted));
    assertTrue(text(pasted).contains("not taken as an answer"), text(pasted));
    ScreenModel words = Scenes.step(at("0 GOA-01", ""), new Key.Pasted("Football\nwith friends"));
    assertTrue(text(words).contains("Football with friends"), text(words));
    assertEquals(answers(at("0 GOA-01", "")), answers(words));
  }

  @Test
  void anUnknownKeyDoesNothing() {
    ScreenModel model = at("0 CON-03", "");
    ScreenModel.Step step = model.after(new Key.Unknown("Escape [ 3 4 ~"));
    assertEquals(List.of(), step.effects());
    assertEquals(model.top(), step.model().top());
  }

  @Test
  void aStopIsLoweredByAClinicianAlone() {
    ScreenModel volunteer = at("0 SAF-01", "3");
    ScreenModel refused = Scenes.step(volunteer, Key.of('3'));
    assertTrue(text(refused).contains("Only a clinician"), text(refused));

    ScreenModel clinician = at("stopped", "31");
    for (char key : "Dr Ash, doctor".toCharArray()) {
      clinician = Scenes.step(clinician, Key.of(key));
    }
    clinician = Scenes.step(clinician, Key.Named.ENTER);
    ScreenModel empty = Scenes.step(clinician, Key.Named.ENTER);
    assertTrue(text(empty).contains("with a name and a reason"), text(empty));
    for (char key : "seen today".toCharArray()) {
      clinician = Scenes.step(clinician, Key.of(key));
    }
    clinician = Scenes.step(clinician, Key.Named.ENTER);
    List<Answers.Lowered> lowered = answers(clinician).lowered();
    assertEquals(1, lowered.size(), text(clinician));
    assertEquals("Dr Ash, doctor", lowered.get(0).by());
    assertEquals("seen today", lowered.get(0).reason());
    assertEquals("2026-11-25", lowered.get(0).date());
  }

  @Test
  void theSharedViewHidesWhatIsForTheInterviewer() {
    ScreenModel wide =
        new Scenes.Scene("", "0 CON-03", "").at(new ScreenSize(132, 43), Glyphs.UNICODE);
    assertTrue(text(wide).contains("How to see it for yourself"));
    assertTrue(text(wide).contains("So far:"));
    ScreenModel shared = Scenes.step(wide, Key.of('v'));
    assertFalse(text(shared).contains("How to see it for yourself"), text(shared));
    assertFalse(text(shared).contains("So far:"), text(shared));
    assertFalse(text(Scenes.step(shared, Key.of('s'))).contains("["));
    assertFalse(text(Scenes.step(shared, Key.of('o'))).contains("clinician"));
  }

  @Test
  void aGridIsFilledWithTheKeyboardAloneInAnyOrder() {
    ScreenModel model = at("0 digit.L.press.M", "");
    ScreenModel left = Scenes.step(model, Key.Named.LEFT);
    assertEquals(Optional.of("digit.L.press.I"), left.talk().orElseThrow().interview().at());
    ScreenModel right = Scenes.step(Scenes.step(left, Key.Named.RIGHT), Key.Named.RIGHT);
    assertEquals(Optional.of("digit.L.press.R"), right.talk().orElseThrow().interview().at());
    ScreenModel given = Scenes.step(right, Key.of('1'));
    assertEquals(Optional.of(new Value.Code("0")), answers(given).value("digit.L.press.R"));
  }

  @Test
  void afterACorrectionOutOfAllAnswersItGoesOnWhereItWas() {
    ScreenModel there = at("0 games.1.mode", "o88188");
    for (String answer : List.of("1", "01")) {
      ScreenModel cell = Scenes.step(there, Key.of('2'));
      assertEquals(Optional.of("digit.L.press.T"), cell.talk().orElseThrow().interview().at());
      for (char key : answer.toCharArray()) {
        cell = Scenes.step(cell, Key.of(key));
      }
      while (cell.top().screen() instanceof NoticeScreen) {
        cell = cell.closing();
      }
      assertEquals(Optional.of("games.1.mode"), cell.talk().orElseThrow().interview().at());
      ScreenModel on = Scenes.step(cell, Key.of('2'));
      assertNotEquals(Optional.of("games.1.mode"), on.talk().orElseThrow().interview().at());
    }
    ScreenModel back = Scenes.step(Scenes.step(there, Key.of('2')), Key.Named.BACKSPACE);
    assertEquals(Optional.of("games.1.mode"), back.talk().orElseThrow().interview().at());
  }

  @Test
  void takingBackAndGoingBackKeepThePlaceOfWhatIsRead() {
    ScreenModel plan = at("0 games.1.mode", "1g");
    assertEquals(plan.top(), Scenes.step(plan, Key.of('u')).top());
    assertEquals(answers(plan), answers(Scenes.step(plan, Key.of('u'))));
    ScreenModel back = Scenes.step(plan, Key.of('b'));
    assertTrue(back.top().screen() instanceof QuestionScreen, text(back));
    assertEquals(answers(plan), answers(Scenes.step(Scenes.step(plan, Key.of('b')), Key.of('?'))));
  }

  @Test
  void whatWaitsToBeReadIsSaidWhereItIsInSightAndElsewhereHowToComeThere() {
    ScreenModel notice = at("stopped", "");
    assertTrue(text(Scenes.step(notice, Key.of('o'))).contains("Please read this first"));
    ScreenModel plan = Scenes.step(Scenes.step(notice, Key.of('s')), Key.of('o'));
    assertFalse(text(plan).contains("Please read this first"), text(plan));
    assertTrue(text(plan).contains("Something waits to be read first."), text(plan));
  }

  @Test
  void a18WordsShownOnceDoNotGoAwayOnOneKey() {
    List<Key> keys = new ArrayList<>(List.of(Key.Named.BACKSPACE, Key.Named.ESCAPE));
    for (char key = '!'; key <= '~'; key++) {
      keys.add(Key.of(key));
    }
    keys.add(Key.Named.ENTER);
    for (Key key : keys) {
      ScreenModel once = Scenes.step(at("sealed", ""), key);
      assertTrue(once.waits(), "gone after " + key);
      assertTrue(Scenes.step(once, Key.Named.ENTER).waits(), "gone after Enter and " + key);
    }
    assertTrue(text(at("sealed", "01")).contains("The passphrase of this case"));
    ScreenModel gone = at("sealed", "02");
    assertTrue(gone.top().screen() instanceof QuestionScreen, text(gone));
  }

  @ParameterizedTest
  @ValueSource(strings = {"stopped", "care", "sealed"})
  void noLetterAnswersOrPassesByWhatIsNotRead(String from) {
    ScreenModel notice = at(from, "");
    for (char key : "bojkdxlnwaz".toCharArray()) {
      ScreenModel after = Scenes.step(notice, Key.of(key));
      assertEquals(answers(notice), answers(after), "key " + key);
      assertTrue(after.waits(), "key " + key + text(after));
      for (char digit = '0'; key == 'z' && digit <= '9'; digit++) {
        ScreenModel stopped = Scenes.step(after, Key.of(digit));
        assertTrue(stopped.waits(), "stop, then " + digit + text(stopped));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"o", "?", "s", "p", "e", "t", "n", "q"})
  void aLetterDoesNotAnswerAQuestionThatIsNotInSight(String way) {
    ScreenModel away = at("0 CON-03", way);
    for (char key : "kdxl".toCharArray()) {
      assertEquals(answers(away), answers(Scenes.step(away, Key.of(key))), way + key);
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void a16NineIsStopWhereverNothingIsTyped(Scenes.Scene scene) {
    ScreenModel model = scene.at(ScreenSize.USUAL, Glyphs.UNICODE);
    boolean typing = model.top().screen().draft().filter(d -> !d.isEmpty()).isPresent();
    boolean taken = model.shown().offers().stream().anyMatch(o -> o.digit() == 9);
    boolean figures =
        model.top().screen().draft().filter(d -> d.kind() == Draft.Kind.FIGURES).isPresent();
    if (model.talk().isPresent() && !typing && !taken && !figures) {
      assertTrue(text(Scenes.step(model, Key.of('9'))).contains("Let us stop here"), text(model));
    }
  }
}
