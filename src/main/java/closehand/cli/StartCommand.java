package closehand.cli;

import closehand.report.Glyphs;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The start without a command: a new interview, a saved case, or the way to an example. */
final class StartCommand {
  private final Surroundings surroundings;
  private final InterviewCommand.Wanted wanted;

  StartCommand(Surroundings surroundings, InterviewCommand.Wanted wanted) {
    this.surroundings = surroundings;
    this.wanted = wanted;
  }

  int run() throws IOException {
    if (!surroundings.typed()) {
      return new InterviewCommand(surroundings, wanted).run();
    }
    Optional<Integer> shown = new ScreenCommand(surroundings, wanted).start();
    if (shown.isPresent()) {
      return shown.get();
    }
    Glyphs glyphs = wanted.ascii || surroundings.plainAscii() ? Glyphs.ASCII : Glyphs.UNICODE;
    PlainConsole console = new PlainConsole(surroundings, surroundings.input(), glyphs, false);
    List<String> names = Cases.in(wanted.home, surroundings).store().names();
    console.say(
        "Closehand. A guided interview about game controls that fit. What would you like to do?");
    console.item("1", "start a new interview");
    for (int i = 0; i < names.size(); i++) {
      console.item(Integer.toString(i + 2), "go on with the case " + names.get(i));
    }
    console.item("q", "leave");
    console.say("closehand --help lists the other commands, such as summary and check.");
    Optional<String> typed = console.ask("Number: ").map(String::strip);
    return typed.isEmpty() || typed.get().equalsIgnoreCase("q")
        ? ExitCode.DONE
        : follow(console, typed.get(), names);
  }

  private int follow(PlainConsole console, String typed, List<String> names) throws IOException {
    // Who began line by line goes on so.
    wanted.line = true;
    wanted.lineWasSaid = true;
    for (int i = 0; i < names.size(); i++) {
      if (typed.equals(Integer.toString(i + 2)) || typed.equals(names.get(i))) {
        wanted.caseName = Optional.of(names.get(i));
        return new InterviewCommand(surroundings, wanted).run();
      }
    }
    if (typed.equals("1")) {
      return new InterviewCommand(surroundings, wanted).run();
    }
    console.say("That is none of the numbers. Nothing was started.");
    return ExitCode.USAGE;
  }
}
