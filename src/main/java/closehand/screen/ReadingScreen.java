package closehand.screen;

import closehand.interview.Interview;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Something to read.
 *
 * @param kind what it is
 * @param heading its heading, where it is text from outside
 * @param lines the text from outside
 */
record ReadingScreen(Kind kind, String heading, List<String> lines) implements Screen {
  private static final Pattern CODES = Pattern.compile("\\s*\\[[^\\]]*]");

  enum Kind {
    FIRST,
    SEALED,
    ENOUGH,
    LINES,
    HELP,
    SO_FAR,
    PLAN,
    LOAD,
    PAGE,
    MOMENT
  }

  ReadingScreen {
    lines = List.copyOf(lines);
  }

  static ReadingScreen help() {
    return new ReadingScreen(Kind.HELP, "", List.of());
  }

  static ReadingScreen lines(String heading, List<String> lines) {
    return new ReadingScreen(Kind.LINES, heading, lines);
  }

  static ReadingScreen first(List<String> lines) {
    return new ReadingScreen(Kind.FIRST, "Before we begin", lines);
  }

  /** What is read first of a case that was sealed just now, with its words. */
  static ReadingScreen sealed(List<String> lines) {
    return new ReadingScreen(Kind.SEALED, "Before we begin", lines);
  }

  /** What is read when enough is known on the briefest route. */
  static ReadingScreen enough(List<String> lines) {
    return new ReadingScreen(Kind.ENOUGH, "Enough is known", lines);
  }

  @Override
  public Shown shown(ScreenModel model) {
    return switch (kind) {
      case HELP -> Help.of(model);
      case SO_FAR -> soFar(model.settings().shared());
      case PAGE -> page(model);
      case PLAN -> plan(model);
      case LOAD -> closing(text(new Shown.Builder(heading), lines));
      case MOMENT -> moment();
      case FIRST -> first(new Act.Close());
      case SEALED -> first(back());
      case ENOUGH -> enough();
      case LINES -> closing(text(new Shown.Builder(heading), lines));
    };
  }

  @Override
  public boolean isReadFirst() {
    return kind == Kind.FIRST || kind == Kind.SEALED || kind == Kind.ENOUGH;
  }

  /** Words that are shown once do not go away on one key. */
  @Override
  public Act back() {
    return kind == Kind.SEALED ? new Act.Show(Menu.of(Menu.Kind.WRITTEN_DOWN)) : new Act.Close();
  }

  private Shown first(Act on) {
    Shown.Builder screen = new Shown.Builder(heading);
    lines.forEach(line -> screen.say(line).gap());
    return screen.offer(0, "Go on", on).build();
  }

  /** The suggestions as they stand when the screen comes up. */
  static ReadingScreen soFar(Talk talk) {
    return new ReadingScreen(
        Kind.SO_FAR, "What the answers so far point to", talk.consultation().suggestions().lines());
  }

  /** Which action goes on which input. */
  static ReadingScreen plan(List<String> lines) {
    return new ReadingScreen(Kind.PLAN, "The control plan of your games", lines);
  }

  /** What the plan asks of the body, in full. */
  static ReadingScreen load(List<String> lines) {
    return new ReadingScreen(Kind.LOAD, "What the plan asks of your body", lines);
  }

  /** What stands while something takes its time. */
  static ReadingScreen moment(String sentence) {
    return new ReadingScreen(Kind.MOMENT, "One moment", List.of(sentence));
  }

  private Shown moment() {
    Shown.Builder screen = new Shown.Builder(heading);
    screen.offer(Offer.plain("Please wait", new Act.Say("One moment."))).gap();
    lines.forEach(screen::say);
    return screen.say("Keys pressed meanwhile do not count.").build();
  }

  private Shown plan(ScreenModel model) {
    Interview interview = model.talk().orElseThrow().interview();
    Shown.Builder screen = text(new Shown.Builder(heading), lines).gap();
    screen.offer(
        1,
        "What the plan asks of your body, with limits and sources",
        new Act.Run(new Effect.WorkOutPlan(interview, true)));
    screen.offer(
        2,
        "Change it by hand: move an action, change what a game asks",
        new Act.Run(new Effect.BeginByHand(interview)));
    return screen.offer(0, "Back", new Act.Close()).build();
  }

  /** The player's page as it stands when the screen comes up. */
  static ReadingScreen page(Talk talk) {
    return new ReadingScreen(
        Kind.PAGE, "The page as it stands", talk.advisor().page(talk.interview()));
  }

  private Shown enough() {
    Shown.Builder screen = text(new Shown.Builder(heading), lines).gap();
    screen.offer(1, "End here, with the page", new Act.Swap(Menu.of(Menu.Kind.FINISHED)));
    return screen.offer(2, "Go on with the short interview", new Act.GoOn()).build();
  }

  /** The same without codes. */
  static List<String> bare(List<String> coded) {
    return List.of(CODES.matcher(String.join("\n", coded)).replaceAll("").split("\n", -1));
  }

  private Shown soFar(boolean shared) {
    // Codes of rules and approaches are for those who check the rules, not for reading along.
    Shown.Builder screen = new Shown.Builder(heading);
    text(screen, shared ? bare(lines) : lines).gap();
    screen.offer(1, "Why one control stands as it does", new Act.Do(Command.EXPLAIN));
    screen.offer(2, "The page as it stands", new Act.Do(Command.PAGE));
    screen.offer(3, "The control plan of your games", new Act.Do(Command.PLAN));
    return screen.offer(0, "Back", new Act.Close()).build();
  }

  private Shown page(ScreenModel model) {
    Interview interview = model.talk().orElseThrow().interview();
    Shown.Builder screen = new Shown.Builder(heading);
    text(screen, lines).gap();
    screen.offer(1, "Write the page to a file now", new Act.Run(new Effect.WritePages(interview)));
    return screen.offer(0, "Back", new Act.Close()).build();
  }

  private static Shown.Builder text(Shown.Builder screen, List<String> lines) {
    Paragraphs.of(lines).forEach(screen::add);
    return screen;
  }

  private static Shown closing(Shown.Builder screen) {
    return screen.gap().offer(0, "Back", new Act.Close()).build();
  }
}
