package closehand.screen;

import closehand.bank.FactType;
import closehand.interview.Answer;
import closehand.interview.Entry;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Prompt;
import closehand.interview.Wording;
import closehand.screen.view.Block;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The question at hand.
 *
 * @param prompt the question
 * @param names what a list of names may hold; empty where any words will do
 * @param grid the places of this hand, where the question asks the same of every finger
 * @param page which page of the answers, from 0
 * @param picks what has been picked, where several may be
 * @param line the line being typed, where one is
 */
record QuestionScreen(
    Prompt prompt,
    Map<String, String> names,
    List<Cell> grid,
    int page,
    List<String> picks,
    Optional<Draft> line)
    implements Screen {
  QuestionScreen {
    grid = List.copyOf(grid);
    picks = List.copyOf(picks);
  }

  static QuestionScreen of(Talk talk, Prompt prompt) {
    Interview interview = talk.interview();
    FactType type = prompt.field().type();
    Map<String, String> names = talk.advisor().names(interview, prompt.field());
    Optional<Draft> line = Optional.empty();
    if (type instanceof FactType.Amount amount) {
      line = Optional.of(Draft.figures(amount));
    } else if (names.isEmpty()
        && (type instanceof FactType.Words || type instanceof FactType.WordList)) {
      line = Optional.of(Draft.words());
    }
    return new QuestionScreen(
        prompt, names, Grid.around(interview, prompt), 0, Picks.earlier(prompt), line);
  }

  @Override
  public Shown shown(ScreenModel model) {
    Shown.Builder screen = new Shown.Builder(prompt.position());
    again(screen);
    screen.add(Block.strong(prompt.questionText())).gap();
    if (!grid.isEmpty()) {
      Grid.show(screen, grid, prompt.field().fact());
      screen.gap();
    }
    if (!prompt.fieldText().equals(prompt.questionText())) {
      screen.say(prompt.fieldText()).gap();
    }
    earlier(screen);
    Answers.show(screen, this);
    if (!model.settings().shared()) {
      Help.beside(screen, prompt);
    }
    return screen.build();
  }

  private void again(Shown.Builder screen) {
    switch (prompt.again()) {
      case NO -> {}
      case BEFORE_TASKS -> screen.say("We ask this again before you try something with your body.");
      case AFTER_TASKS -> screen.say("We ask this again now that the tasks are done.");
      case AFTER_BREAK -> screen.say("Welcome back. We ask this again after every break.");
      case REVIEW -> screen.say("We ask this again at every review.");
    }
  }

  /** The answer there is, unless a mark in the list of answers says so already. */
  private void earlier(Shown.Builder screen) {
    if (prompt.earlier().isEmpty()) {
      return;
    }
    Answer answer = prompt.earlier().get().answer();
    String words = Wording.of(prompt.field(), answer);
    boolean listed = line.isEmpty() && answer.given().isPresent();
    if (prompt.again() != Prompt.Again.NO) {
      screen.say("Your answer before: " + words + ". Please answer again.").gap();
    } else if (!listed) {
      screen.say("Your answer so far: " + words + ".").gap();
    }
  }

  /** Whether an answer stands that may simply stay. */
  boolean mayKeep() {
    return prompt.earlier().isPresent() && prompt.again() == Prompt.Again.NO;
  }

  @Override
  public Act back() {
    return new Act.Send(new Message.Back());
  }

  @Override
  public Optional<Draft> draft() {
    return line;
  }

  @Override
  public Screen typing(Draft draft) {
    return line(draft);
  }

  QuestionScreen line(Draft draft) {
    return new QuestionScreen(prompt, names, grid, page, picks, Optional.of(draft));
  }

  QuestionScreen picking(List<String> next) {
    return new QuestionScreen(prompt, names, grid, page, next, line);
  }

  QuestionScreen turned(int next) {
    return new QuestionScreen(prompt, names, grid, next, picks, line);
  }

  @Override
  public Act accept(ScreenModel model) {
    String typed = line.orElseThrow().text();
    if (typed.isBlank() && mayKeep()) {
      return new Act.Send(new Message.Onward());
    }
    String answer = typed.startsWith("=") ? typed.substring(1) : typed;
    Entry read = Entry.read(prompt.field().type(), answer);
    return read instanceof Entry.Read value
        ? new Act.Give(value.value())
        : new Act.Say(((Entry.Refused) read).sentence());
  }
}
