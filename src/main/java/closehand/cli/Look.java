package closehand.cli;

import closehand.line.Console;
import closehand.report.ClinicianPage;
import closehand.report.Glyphs;
import closehand.report.PageInput;
import closehand.report.PlayerPage;
import java.util.List;
import java.util.Optional;

/** Looks at a case without changing it: its two pages. */
final class Look {
  private Look() {}

  /**
   * Shows pages until somebody leaves; gives the exit code.
   *
   * @param clinician whether a clinician may see every answer here
   */
  static int at(Console console, PageInput input, boolean clinician) {
    if (!clinician) {
      console.say("The page for a clinician is not here: sharing with one was not agreed.");
    }
    while (true) {
      console.item("1", "the page for the player");
      if (clinician) {
        console.item("2", "the page for the clinician, with every answer");
      }
      console.item("q", "leave");
      Optional<String> typed = console.ask("Number: ").map(String::strip);
      if (typed.isEmpty() || typed.get().isEmpty() || typed.get().equalsIgnoreCase("q")) {
        return ExitCode.DONE;
      }
      if (typed.get().equals("1")) {
        console.lines(lines(PlayerPage.of(input, Glyphs.UNICODE)));
      } else if (clinician && typed.get().equals("2")) {
        console.lines(lines(ClinicianPage.of(input, Glyphs.UNICODE)));
      } else {
        console.say(clinician ? "Type 1, 2 or q." : "Type 1 or q.");
      }
    }
  }

  private static List<String> lines(String page) {
    return List.of(page.split("\n", -1));
  }
}
