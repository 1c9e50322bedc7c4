package closehand.screen;

import closehand.interview.Message;
import closehand.screen.view.Block;
import java.util.Optional;

/**
 * A line of words outside the questions.
 *
 * @param kind what it is for
 * @param code the stop that is lowered, where one is
 * @param name who lowers it, once that was typed
 * @param line the line being typed
 */
record TextScreen(Kind kind, String code, String name, Draft line) implements Screen {
  enum Kind {
    NOTE,
    NAME,
    REASON
  }

  static TextScreen note() {
    return new TextScreen(Kind.NOTE, "", "", Draft.words());
  }

  static TextScreen nameFor(String code) {
    return new TextScreen(Kind.NAME, code, "", Draft.words());
  }

  @Override
  public Shown shown(ScreenModel model) {
    Shown.Builder screen = new Shown.Builder(heading());
    screen.add(Block.strong(asked()));
    screen.gap().field("Words: ", line.text()).gap();
    boolean digits = line.isEmpty();
    screen.offer(
        digits ? 1 : -1, "Choose the letters from a list", new Act.Show(BoardScreen.letters(line)));
    return screen.offer(digits ? 0 : -1, "Back, and change nothing", new Act.Return()).build();
  }

  private String heading() {
    return kind == Kind.NOTE ? "A note" : "Lower " + code;
  }

  private String asked() {
    return switch (kind) {
      case NOTE -> "Your note beside the answer. An empty note takes it off.";
      case NAME -> "Your name and profession.";
      case REASON -> "Your reason.";
    };
  }

  @Override
  public Optional<Draft> draft() {
    return Optional.of(line);
  }

  @Override
  public Screen typing(Draft draft) {
    return new TextScreen(kind, code, name, draft);
  }

  @Override
  public Act accept(ScreenModel model) {
    String words = line.text().strip();
    if (kind == Kind.NOTE) {
      return new Act.Send(new Message.Note(words));
    }
    if (words.isEmpty()) {
      return new Act.Say("It is only lowered with a name and a reason.");
    }
    if (kind == Kind.NAME) {
      return new Act.Swap(new TextScreen(Kind.REASON, code, words, Draft.words()));
    }
    String today = model.talk().orElseThrow().advisor().today();
    return new Act.Send(
        new Message.Lower(new closehand.interview.Answers.Lowered(code, name, today, words)));
  }
}
