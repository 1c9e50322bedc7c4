package closehand.screen;

import closehand.interview.Interview;
import closehand.screen.frame.Role;
import closehand.screen.view.Block;
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
    LINES,
    HELP,
    SO_FAR,
    PAGE
  }

  ReadingScreen {
    lines = List.copyOf(lines);
  }

  static ReadingScreen of(Kind kind) {
    return new ReadingScreen(kind, "", List.of());
  }

  static ReadingScreen lines(String heading, List<String> lines) {
    return new ReadingScreen(Kind.LINES, heading, lines);
  }

  static ReadingScreen first(List<String> lines) {
    return new ReadingScreen(Kind.FIRST, "Before we begin", lines);
  }

  @Override
  public Shown shown(ScreenModel model) {
    return switch (kind) {
      case HELP -> Help.of(model);
      case SO_FAR -> soFar(model);
      case PAGE -> page(model);
      case FIRST -> first();
      case LINES -> closing(text(new Shown.Builder(heading), lines));
    };
  }

  private Shown first() {
    Shown.Builder screen = new Shown.Builder(heading);
    lines.forEach(line -> screen.say(line).gap());
    return screen.offer(1, "Go on", new Act.Close()).build();
  }

  private static Shown soFar(ScreenModel model) {
    Talk talk = model.talk().orElseThrow();
    List<String> lines = talk.consultation().suggestions().lines();
    // Codes of rules and approaches are for those who check the rules, not for reading along.
    boolean shared = model.settings().shared();
    String text = String.join("\n", lines);
    Shown.Builder screen = new Shown.Builder("What the answers so far point to");
    text(screen, shared ? List.of(CODES.matcher(text).replaceAll("").split("\n", -1)) : lines);
    screen.gap();
    screen.offer(1, "Why one control stands as it does", new Act.Do(Command.EXPLAIN));
    screen.offer(2, "The page as it stands", new Act.Do(Command.PAGE));
    return screen.offer(0, "Back", new Act.Close()).build();
  }

  private static Shown page(ScreenModel model) {
    Talk talk = model.talk().orElseThrow();
    Interview interview = talk.interview();
    Shown.Builder screen = new Shown.Builder("The page as it stands");
    text(screen, talk.advisor().page(interview)).gap();
    screen.offer(1, "Write the page to a file now", new Act.Run(new Effect.WritePages(interview)));
    return screen.offer(0, "Back", new Act.Close()).build();
  }

  private static Shown.Builder text(Shown.Builder screen, List<String> lines) {
    lines.forEach(line -> screen.add(new Block.Laid(line, role(line))));
    return screen;
  }

  private static Role role(String line) {
    String bare = line.strip();
    boolean warns =
        bare.startsWith("Stop.") || bare.startsWith("Take care") || bare.startsWith("STOP");
    return warns ? Role.WARNING : Role.PLAIN;
  }

  private static Shown closing(Shown.Builder screen) {
    return screen.gap().offer(0, "Back", new Act.Close()).build();
  }
}
