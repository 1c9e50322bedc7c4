package closehand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How to begin: few actions, slowly more, one change at a time. */
final class StartLines {
  private static final int FEWEST_JOBS = 3;

  private StartLines() {}

  /**
   * How to begin. Three to six actions and about two more a week are common practice; so is a first
   * try of 10 to 15 minutes.
   */
  static List<Piece> of(PageInput input, Room room) {
    List<String> sentences = new ArrayList<>();
    sentences.add("Choose the " + number(input) + " actions you need most, and start with those.");
    List<String> learn = Sayings.lastFirst(input.together(), "learn");
    if (learn.isEmpty()) {
      sentences.add(more(input));
    }
    learn.stream().limit(room.sayings()).forEach(sentences::add);
    sentences.add("Change one thing at a time, so that you can tell what helped.");
    sentences.add("Make the first try 10 to 15 minutes. Check again the next day.");
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("How to start"));
    pieces.add(Paragraph.of(String.join(" ", sentences)));
    List<String> setup =
        Sayings.on(input.together(), "setup").stream().limit(room.sayings()).toList();
    if (!setup.isEmpty()) {
      pieces.add(Paragraph.of("Setting up: " + String.join(" ", setup)));
    }
    return pieces;
  }

  private static String number(PageInput input) {
    OptionalDouble jobs = input.facts().number("cog.jobs");
    boolean few =
        input.facts().is("cog.jobs", Integer.toString(FEWEST_JOBS))
            || (jobs.isPresent() && jobs.getAsDouble() <= FEWEST_JOBS);
    return few ? "3" : "3 to 6";
  }

  private static String more(PageInput input) {
    return input.warns("C-PEM")
        ? "Add an action only when you feel ready."
        : "When they feel easy, add about two a week.";
  }
}
