package closehand.screen;

import closehand.bank.FactType;
import closehand.bank.Option;
import closehand.interview.Answer;
import closehand.interview.Message;
import closehand.interview.Value;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The part of a question screen that takes the answer. The digits of answers never change. */
final class Answers {
  static final int SKIP = 0;
  static final int STOP = 9;
  private static final int MORE = 8;
  private static final int EIGHT = 8;
  private static final int PICKS_IN_ONE = 7;
  private static final int PICKS_ON_PAGE = 6;
  private static final int MOST_SHOWN = 40;

  private Answers() {}

  static void show(Shown.Builder screen, QuestionScreen question) {
    FactType type = question.prompt().field().type();
    List<Picks.Entry> entries = Picks.entries(type, question.names());
    if (type instanceof FactType.Amount amount) {
      number(screen, question, amount);
    } else if (!entries.isEmpty()) {
      several(screen, question, entries);
    } else if (question.line().isPresent()) {
      words(screen, question);
    } else {
      one(screen, question);
    }
  }

  /** One answer out of a list, on pages of seven where there are more than eight. */
  private static void one(Shown.Builder screen, QuestionScreen question) {
    List<Value> values = new ArrayList<>();
    FactType type = question.prompt().field().type();
    if (type instanceof FactType.YesNo) {
      values.add(new Value.Flag(true));
      values.add(new Value.Flag(false));
    }
    for (Option option : type.choices()) {
      values.add(new Value.Code(option.code()));
    }
    Optional<Value> before =
        question.mayKeep()
            ? question.prompt().earlier().map(r -> r.answer()).flatMap(Answer::given)
            : Optional.empty();
    int perPage = values.size() > EIGHT ? Pages.OF_SEVEN : EIGHT;
    int digit = 0;
    for (Value value : Pages.entries(values, question.page(), perPage)) {
      boolean chosen = before.equals(Optional.of(value));
      screen.offer(
          new Offer(
              ++digit, Wording.of(type, value), chosen ? "(chosen)" : "", new Act.Give(value)));
      if (chosen) {
        screen.beginHere();
      }
    }
    Pages.turn(
        screen,
        MORE,
        values.size(),
        question.page(),
        perPage,
        next -> new Act.Swap(question.turned(next)));
    foot(screen, true);
  }

  /** Any number of answers; 8 is done, and 7 turns the page where there are more than seven. */
  private static void several(
      Shown.Builder screen, QuestionScreen question, List<Picks.Entry> entries) {
    FactType type = question.prompt().field().type();
    int perPage = entries.size() > PICKS_IN_ONE ? PICKS_ON_PAGE : PICKS_IN_ONE;
    screen.say("Choose as many as fit, then 8.").gap();
    int digit = 0;
    for (Picks.Entry entry : Pages.entries(entries, question.page(), perPage)) {
      List<String> next = Picks.toggled(entries, question.picks(), entry.code());
      boolean chosen = question.picks().contains(entry.code());
      screen.offer(
          new Offer(
              ++digit,
              entry.words(),
              chosen ? "(chosen)" : "",
              new Act.Turn(question.picking(next))));
    }
    Pages.turn(
        screen,
        PICKS_ON_PAGE + 1,
        entries.size(),
        question.page(),
        perPage,
        next -> new Act.Swap(question.turned(next)));
    screen.offer(8, done(type, question, entries), taken(type, question, entries));
    foot(screen, true);
  }

  private static String done(FactType type, QuestionScreen question, List<Picks.Entry> entries) {
    int count = question.picks().size();
    if (count == 0) {
      return Picks.mayBeEmpty(type, entries) ? "Done: none of these" : "Done";
    }
    return count == 1 ? "Done: keep 1 answer" : "Done: keep " + count + " answers";
  }

  private static Act taken(FactType type, QuestionScreen question, List<Picks.Entry> entries) {
    boolean enough = !question.picks().isEmpty() || Picks.mayBeEmpty(type, entries);
    return enough
        ? new Act.Give(Picks.value(type, question.picks()))
        : new Act.Say("Nothing is chosen yet. Choose one or more, or 0 to skip.");
  }

  private static void number(
      Shown.Builder screen, QuestionScreen question, FactType.Amount amount) {
    Draft draft = question.line().orElseThrow();
    screen.say(Wording.accepted(amount) + " Then Enter. " + withDigitsAlone(draft.width()));
    screen.gap();
    screen.field("Number: ", draft.text());
    screen.gap();
    if (question.mayKeep()) {
      screen.offer(Offer.plain("Keep the answer and go on", new Act.Send(new Message.Onward())));
    }
    goOnWith(question, draft)
        .ifPresent(typed -> screen.offer(Offer.plain(goOnWith(typed), new Act.Turn(typed))));
    screen.offer(
        Offer.plain("Choose the figures from a list", new Act.Show(BoardScreen.figures(draft))));
    foot(screen, false);
  }

  private static String withDigitsAlone(int width) {
    return width == 1
        ? "With digits alone, 1 figure is enough."
        : "With digits alone, type " + width + " figures, such as " + "0".repeat(width - 1) + "7.";
  }

  private static void words(Shown.Builder screen, QuestionScreen question) {
    Draft draft = question.line().orElseThrow();
    boolean digits = draft.isEmpty();
    screen.say(
        question.prompt().field().type() instanceof FactType.WordList
            ? "Type your words, with commas between them, then Enter."
            : "Type your words, then Enter.");
    screen.gap();
    screen.field("Words: ", draft.text());
    screen.gap();
    screen.offer(
        digits ? 1 : -1,
        "Choose the letters from a list",
        new Act.Show(BoardScreen.letters(draft)));
    if (question.mayKeep()) {
      screen.offer(
          digits ? 2 : -1, "Keep the answer and go on", new Act.Send(new Message.Onward()));
    }
    goOnWith(question, draft)
        .ifPresent(
            typed ->
                screen.offer(question.mayKeep() ? 3 : 2, goOnWith(typed), new Act.Turn(typed)));
    foot(screen, digits);
  }

  /** The question with what was half typed here before; nothing once something is typed anew. */
  private static Optional<QuestionScreen> goOnWith(QuestionScreen question, Draft draft) {
    return draft.isEmpty()
        ? question.prompt().halfTyped().map(text -> question.line(draft.with(text)))
        : Optional.empty();
  }

  private static String goOnWith(QuestionScreen typed) {
    String text = typed.line().orElseThrow().text();
    int most =
        text.offsetByCodePoints(0, Math.min(MOST_SHOWN, text.codePointCount(0, text.length())));
    String more = most < text.length() ? " ..." : "";
    return "Go on with what was half typed: " + text.substring(0, most) + more;
  }

  private static void foot(Shown.Builder screen, boolean digits) {
    screen.gap();
    screen.offer(digits ? SKIP : -1, "Skip, or more", new Act.Show(Menu.of(Menu.Kind.SKIP)));
    screen.offer(digits ? STOP : -1, "Stop: pain or feeling unwell", new Act.Do(Command.STOP));
  }

  /** The skip and stop lines for screens that belong to a question. */
  static void end(Shown.Builder screen) {
    foot(screen, true);
  }
}
