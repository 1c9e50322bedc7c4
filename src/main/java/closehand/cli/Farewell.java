package closehand.cli;

import closehand.interview.Interview;
import closehand.interview.Value;
import closehand.line.Console;
import java.io.IOException;
import java.util.List;

/**
 * The end of a sitting: the pages are written, and it is said where they are.
 *
 * @param surroundings the world around
 * @param cases where cases are kept
 * @param pages what makes pages
 * @param name the case
 */
record Farewell(Surroundings surroundings, Cases cases, Pages pages, String name) {
  /** Who may see the answers: what a player agreed to decides which pages are written. */
  private static final String SHARE = "consent.share";

  /** Writes the pages and says where they are, and how to go on. */
  void say(Console console, Interview interview) {
    write(interview).forEach(console::say);
    console.say(
        "To go on: closehand interview "
            + name
            + ". To print the page: closehand summary "
            + name
            + ".");
  }

  /** Writes the pages; tells where they are, or that they could not be written. */
  List<String> write(Interview interview) {
    PageFiles files = new PageFiles(cases, name);
    boolean clinician = shares(interview, "clinician") || shares(interview, "team");
    try {
      files.write(pages.input(interview, name, surroundings.today()), clinician);
      return List.of(
          "Everything is kept. The page for the player: " + files.player() + ".",
          clinician
              ? "The page for the clinician: " + files.clinician() + "."
              : "No page for a clinician was written, since sharing with one was not agreed.");
    } catch (IOException e) {
      return List.of("Everything is kept, but the pages could not be written.");
    }
  }

  /** Whether the player agreed that these may see the answers. */
  static boolean shares(Interview interview, String whom) {
    return interview
        .answers()
        .value(SHARE)
        .filter(v -> v instanceof Value.Codes c && c.codes().contains(whom))
        .isPresent();
  }
}
