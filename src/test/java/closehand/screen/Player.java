package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.FactType;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Value;
import closehand.interview.Wording;
import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Somebody at the screen. Looks only at what a person could see and presses keys; fails where a key
 * does not do what the screen promises.
 */
final class Player {
  private static final int PATIENCE = 3000;

  private final CoreDesk desk = new CoreDesk();
  private ScreenModel model;
  private final Means means;
  private final StringBuilder typed = new StringBuilder();
  private final List<Integer> calm = new ArrayList<>();
  private int keys;

  /** Which keys the person uses. */
  enum Means {
    /** Space and Enter and nothing else. */
    TWO_KEYS,
    /** The ten digits and nothing else. */
    DIGITS
  }

  Player(Means means, ScreenSize size) {
    this.means = means;
    this.model = ScreenModel.start(size, Glyphs.UNICODE, Settings.USUAL, List.of());
  }

  Player(Means means, ScreenSize size, Interview interview) {
    this(means, size);
    model = model.holding(desk, interview, List.of());
  }

  CoreDesk desk() {
    return desk;
  }

  ScreenModel model() {
    return model;
  }

  /** The characters typed so far. */
  String typed() {
    return typed.toString();
  }

  /** After how many characters a question was at its start. */
  List<Integer> calm() {
    return calm;
  }

  int keys() {
    return keys;
  }

  Interview interview() {
    return model.talk().orElseThrow().interview();
  }

  Optional<Effect.Ending> press(Key key) {
    if (++keys > 40 * PATIENCE) {
      throw new AssertionError("the interview does not end: " + model.frame().text());
    }
    if (key instanceof Key.Typed character) {
      typed.append(character.text());
    }
    ScreenModel.Step step = model.after(key);
    model = step.model();
    Optional<Effect.Ending> ending = Optional.empty();
    for (Effect effect : step.effects()) {
      if (effect instanceof Effect.Keep keep) {
        model = model.kept(desk.keep(keep.interview()));
      } else if (effect instanceof Effect.Begin begin) {
        model =
            model.holding(
                desk,
                Interview.begin(CoreDesk.BANK.questionnaire(), begin.route(), begin.asker()),
                List.of());
      } else if (effect instanceof Effect.Leave leave) {
        ending = Optional.of(leave.ending());
      }
    }
    return ending;
  }

  /** Takes the first offer that this fits, with the means there are. */
  Optional<Effect.Ending> take(Predicate<Offer> wanted) {
    List<Offer> offers = model.shown().offers();
    for (int i = 0; i < offers.size(); i++) {
      if (wanted.test(offers.get(i))) {
        return means == Means.DIGITS ? byDigit(offers.get(i)) : byTwoKeys(i);
      }
    }
    throw new AssertionError("not offered: " + model.frame().text());
  }

  private Optional<Effect.Ending> byDigit(Offer offer) {
    if (offer.digit() < 0) {
      throw new AssertionError("no digit for: " + offer.words());
    }
    Key key = Key.of((char) ('0' + offer.digit()));
    Optional<Effect.Ending> ending = press(key);
    for (int tries = 0; Moved.isHeldBack(model) && tries < PATIENCE; tries++) {
      ending = press(key);
    }
    return ending;
  }

  private Optional<Effect.Ending> byTwoKeys(int wanted) {
    int tries = 0;
    while (Moved.chosen(model) != wanted || Moved.unread(model)) {
      assertEquals(Optional.empty(), press(Key.Named.SPACE));
      if (++tries > PATIENCE) {
        throw new AssertionError("not reached: " + model.frame().text());
      }
    }
    return press(Key.Named.ENTER);
  }

  Frame frame() {
    return model.frame();
  }

  /** Answers everything as in the file, reading what stands in between, until the last question. */
  void answer(Answers wanted) {
    int steps = 0;
    while (!interview().finished() || !(model.top().screen() instanceof Menu)) {
      if (++steps > PATIENCE) {
        throw new AssertionError("the interview does not end: " + model.frame().text());
      }
      if (model.top().screen() instanceof NoticeScreen) {
        take(o -> o.act() instanceof Act.Close);
      } else {
        QuestionScreen question = (QuestionScreen) model.top().screen();
        if (Moved.isAtItsStart(model)) {
          calm.add(typed.length());
        }
        Optional<Value> value = wanted.value(question.prompt().field().fact());
        if (value.isPresent()) {
          give(question, value.get());
        } else {
          later(question);
        }
      }
    }
  }

  private void later(QuestionScreen question) {
    if (question.prompt().field().type() instanceof FactType.Amount && means == Means.DIGITS) {
      // Any number that fills the line brings the question whether it is right, with a way out.
      fill(question, ((FactType.Amount) question.prompt().field().type()).minimum());
    }
    take(o -> o.act() instanceof Act.Show show && show.screen().equals(Menu.of(Menu.Kind.SKIP)));
    take(o -> o.words().equals("Ask me later"));
  }

  private void give(QuestionScreen question, Value value) {
    FactType type = question.prompt().field().type();
    if (value instanceof Value.Number number) {
      number(question, number.value());
    } else if (value instanceof Value.Text text) {
      words(text.words());
    } else if (value instanceof Value.Texts texts && question.line().isPresent()) {
      words(String.join(", ", texts.words()));
    } else if (value instanceof Value.Codes codes) {
      List<String> none =
          type.choices().stream().filter(o -> o.exclusive()).map(o -> o.code()).toList();
      pick(codes.codes().isEmpty() ? none : codes.codes());
    } else if (value instanceof Value.Texts texts) {
      pick(texts.words());
    } else {
      turnTo(o -> o.act().equals(new Act.Give(value)), Wording.of(type, value));
      take(o -> o.act().equals(new Act.Give(value)));
    }
  }

  /** Turns the pages of a long list until this is on the page. */
  private void turnTo(Predicate<Offer> wanted, String what) {
    int turned = 0;
    while (model.shown().offers().stream().noneMatch(wanted)) {
      if (++turned > 9) {
        throw new AssertionError("not on any page: " + what);
      }
      take(o -> o.words().startsWith("More: page"));
    }
  }

  private void pick(List<String> codes) {
    for (String code : codes) {
      Predicate<Offer> wanted =
          o ->
              o.act() instanceof Act.Turn turn
                  && turn.screen() instanceof QuestionScreen next
                  && next.picks().contains(code)
                  && !((QuestionScreen) model.top().screen()).picks().contains(code);
      turnTo(wanted, code);
      take(wanted);
    }
    take(o -> o.words().startsWith("Done"));
  }

  private void number(QuestionScreen question, double value) {
    if (means == Means.DIGITS) {
      fill(question, value);
      take(o -> o.words().equals("Yes, keep it"));
      return;
    }
    take(o -> o.words().equals("Choose the figures from a list"));
    for (char c : Wording.number(value).toCharArray()) {
      take(o -> o.words().equals(c == '.' ? "point" : "figure " + c));
    }
    take(o -> o.words().equals("Done"));
  }

  private void fill(QuestionScreen question, double value) {
    Draft draft = question.draft().orElseThrow();
    String[] parts = Wording.number(value).split("\\.", -1);
    String whole = "0".repeat(draft.figures() - parts[0].length()) + parts[0];
    String after = parts.length > 1 ? parts[1] : "";
    String figures = whole + after + "0".repeat(draft.decimals() - after.length());
    figures.chars().forEach(c -> press(Key.of((char) c)));
  }

  private void words(String words) {
    take(o -> o.words().equals("Choose the letters from a list"));
    for (char c : words.toLowerCase(java.util.Locale.ROOT).toCharArray()) {
      String letter = String.valueOf(c);
      Optional<List<String>> group =
          BoardScreen.GROUPS.stream().filter(g -> g.contains(letter)).findFirst();
      if (group.isPresent()) {
        int at = BoardScreen.GROUPS.indexOf(group.get());
        take(
            o ->
                o.act() instanceof Act.Swap s
                    && s.screen() instanceof BoardScreen b
                    && b.group() == at);
        take(o -> o.words().equals(letter.equals(" ") ? "space" : letter));
      }
    }
    take(o -> o.words().equals("Done"));
  }
}
