package closehand.report;

import java.util.ArrayList;
import java.util.List;

/** How to begin: few actions, slowly more, one change at a time. */
final class StartLines {
  private static final String CHANGES = ", or when your health, kit, seat or game changes.";

  private StartLines() {}

  /**
   * How to begin. Three to six actions and about two more a week are common practice; so are a
   * first try of 10 to 15 minutes, a check the next day and a new look after half a year.
   */
  static List<Piece> of(PageInput input, Room room) {
    List<String> sentences = new ArrayList<>();
    String few = input.facts().is("cog.jobs", "3") ? "3" : "3 to 6";
    sentences.add("Start with the " + few + " actions you need most.");
    List<String> learn =
        Sayings.lastFirst(input.together(), "learn").stream().limit(room.sayings()).toList();
    sentences.addAll(learn.isEmpty() ? List.of(more(input)) : learn);
    sentences.add(
        "Change one thing at a time"
            + (room.tightest() ? "." : ", so that you can tell what helped."));
    sentences.add(PlayLimit.of(input).firstTry() + " The next day, check how you feel.");
    sentences.add(
        "Go through this page again "
            + review(input)
            + (room.tightest() ? ", or when something changes." : CHANGES));
    return List.of(new Gap(), Paragraph.headed("How to start.", String.join(" ", sentences)));
  }

  private static String more(PageInput input) {
    return input.warns("C-PEM")
        ? "Add an action only when you feel ready."
        : "When they feel easy, add about two a week.";
  }

  private static String review(PageInput input) {
    if (input.facts().is("cond.course", "recovering")) {
      return "in 6 to 8 weeks";
    }
    boolean slowly = input.facts().is("cond.course", "slowChange");
    return input.warns("C-PROG") && !slowly ? "in 3 months" : "in 6 months";
  }
}
