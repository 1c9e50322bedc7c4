package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.line.Console;
import closehand.line.LineFace;
import closehand.report.Glyphs;
import closehand.screen.frame.ScreenSize;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A1: whatever can be said to an interview can be said on both faces, with the same result. */
class SameMessagesTest {
  /** Sent by the program itself: a case is opened, tasks are held, the briefest route goes on. */
  private static final Set<Class<?>> NOT_TYPED =
      Set.of(Message.Hold.class, Message.Resume.class, Message.Review.class, Message.Steer.class);

  /**
   * A message and its ways in.
   *
   * @param message what is said
   * @param question where it is said
   * @param lines what is typed on the line face
   * @param keys what is pressed on the full screen
   */
  record Way(Class<? extends Message> message, String question, List<String> lines, String keys) {
    @Override
    public String toString() {
      return message.getSimpleName() + " at " + question;
    }
  }

  static Stream<Way> ways() {
    return Stream.of(
        new Way(Message.Give.class, "CON-03", List.of("2"), "2"),
        new Way(Message.Give.class, "END-02", List.of("3"), "3E"),
        new Way(Message.Give.class, "comm.mode", List.of("1 3"), "138"),
        new Way(Message.Give.class, "GOA-01", List.of("=Chess"), "ChessE"),
        new Way(Message.NoAnswer.class, "SAF-05", List.of("k"), "01"),
        new Way(Message.NoAnswer.class, "GOA-04", List.of("d"), "d"),
        new Way(Message.NoAnswer.class, "GOA-04", List.of("x"), "03"),
        new Way(Message.NoAnswer.class, "GOA-04", List.of("l"), "l"),
        new Way(Message.GiveFor.class, "digit.L.press.T", List.of("5 5 4 4 3"), "55443"),
        new Way(Message.Note.class, "SAF-05", List.of("1", "+late"), "1nlateE"),
        new Way(Message.Back.class, "CON-03", List.of("2", "b"), "2B"),
        new Way(Message.JumpTo.class, "CON-03", List.of("j SAF-01"), "o21"),
        new Way(Message.Onward.class, "END-02", List.of("3", "b", ""), "3EBSE"),
        new Way(Message.TakeRoute.class, "CON-03", List.of("a", "3"), "a6"),
        new Way(Message.Conduct.class, "CON-03", List.of("a", "1", "1"), "a1"),
        new Way(Message.TakeUpTask.class, "digit.L.keys", List.of("t"), "m"));
  }

  @ParameterizedTest
  @MethodSource("ways")
  void bothFacesComeToTheSame(Way way) {
    Interview start = start(way.question());
    Interview line = line(start, way.lines());
    Interview screen = screen(start, way.keys());
    assertNotEquals(state(start), state(line), "something changed");
    assertEquals(state(line), state(screen));
  }

  private static Interview start(String question) {
    Answers answers = question.startsWith("digit") ? withHands() : Answers.NONE;
    return Interview.reopen(
            CoreDesk.BANK.questionnaire(),
            answers,
            Interview.Route.CORE,
            Provenance.By.VOLUNTEER,
            Optional.empty())
        .after(new Message.JumpTo(question));
  }

  /** The first invented player, but for the presses of the left hand. */
  private static Answers withHands() {
    Answers answers = CoreDesk.goldCase(0);
    for (String digit : List.of("T", "I", "M", "R", "L")) {
      answers = answers.without("digit.L.press." + digit);
    }
    return answers;
  }

  /** What a message can change, apart from what is remembered for going back. */
  private static List<Object> state(Interview interview) {
    return List.of(
        interview.answers(), interview.at(), interview.asker(), interview.route().code());
  }

  private static Interview screen(Interview start, String keys) {
    ScreenModel model =
        ScreenModel.start(new ScreenSize(80, 24), Glyphs.ASCII, Settings.USUAL, List.of())
            .holding(new CoreDesk(), start, List.of());
    model = past(model);
    for (char key : keys.toCharArray()) {
      model = past(Scenes.step(model, Scenes.key(key)));
    }
    return model.talk().orElseThrow().interview();
  }

  private static ScreenModel past(ScreenModel model) {
    ScreenModel next = model;
    while (next.top().screen() instanceof NoticeScreen) {
      next = next.closing();
    }
    return next;
  }

  private static Interview line(Interview start, List<String> lines) {
    LineFace face = new LineFace(new Lines(lines), new CoreDesk(), start);
    face.run();
    return face.interview();
  }

  @Test
  void everyMessageHasAWayIn() {
    Set<String> all = new TreeSet<>();
    Arrays.stream(Message.class.getPermittedSubclasses())
        .filter(c -> !NOT_TYPED.contains(c))
        .forEach(c -> all.add(c.getSimpleName()));
    Set<String> known = new TreeSet<>();
    ways().forEach(w -> known.add(w.message().getSimpleName()));
    known.add("EndTask"); // Told in TaskFaceTest and TaskOnScreenTest.
    known.add("HalfTyped"); // A terminal hands a line over whole; told in ScreenSessionTest.
    known.add("Lower"); // Told as a story of its own in RequirementsTest.
    assertEquals(all, known);
  }

  /** Types these lines, one a question, and reads on where Enter is enough. */
  private static final class Lines implements Console {
    private final Deque<String> lines;

    Lines(List<String> lines) {
      this.lines = new ArrayDeque<>(lines);
    }

    @Override
    public Optional<String> ask(String prompt) {
      return prompt.startsWith("Press Enter") ? Optional.of("") : Optional.ofNullable(lines.poll());
    }

    @Override
    public void say(String paragraph) {}

    @Override
    public void item(String mark, String text) {}

    @Override
    public void lines(List<String> some) {}

    @Override
    public void gap() {}

    @Override
    public boolean scripted() {
      return false;
    }

    @Override
    public int lineNumber() {
      return 0;
    }
  }
}
