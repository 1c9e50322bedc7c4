package closehand.cli;

import closehand.interview.Interview;
import closehand.line.LineFace;
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
    wanted.sayWhoSeesTheFolder(surroundings);
    Optional<Integer> shown = new ScreenCommand(surroundings, wanted).start();
    if (shown.isPresent()) {
      return shown.get();
    }
    Glyphs glyphs = wanted.ascii || surroundings.plainAscii() ? Glyphs.ASCII : Glyphs.UNICODE;
    PlainConsole console = new PlainConsole(surroundings, surroundings.input(), glyphs, false);
    // Who began line by line goes on so.
    wanted.line = true;
    wanted.lineWasSaid = true;
    return choose(console, glyphs);
  }

  /** Asks until something is begun or somebody leaves; the numbers are those of the full screen. */
  private int choose(PlainConsole console, Glyphs glyphs) throws IOException {
    List<String> names = Cases.in(wanted.home, surroundings).store().names();
    console.say(
        "Closehand. A guided interview about game controls that fit. What would you like to do?");
    while (true) {
      say(console, names);
      Optional<String> typed = console.ask("Number: ").map(String::strip);
      if (typed.isEmpty() || typed.get().equalsIgnoreCase("q")) {
        return ExitCode.DONE;
      }
      boolean cases = typed.get().equals("2") && !names.isEmpty();
      Optional<String> name = cases ? which(console, names) : typed.filter(names::contains);
      if (typed.get().equals("1") || name.isPresent()) {
        wanted.caseName = name;
        return new InterviewCommand(surroundings, wanted, Optional.of(console)).run();
      }
      if (typed.get().equals("3")) {
        return example(console, glyphs);
      }
      if (typed.get().equals("4")) {
        new CheckCommand(surroundings).run(wanted.bank, CheckCommand.Wanted.NOTHING);
      } else if (typed.get().equals("5")) {
        new LineSettings(console, SettingsFile.in(surroundings)).change();
      } else if (!cases) {
        console.say("Please type one of these numbers, or q to leave.");
      }
    }
  }

  private static void say(PlainConsole console, List<String> names) {
    console.item("1", "start a new interview");
    if (!names.isEmpty()) {
      String some = names.size() == 1 ? "1 case" : names.size() + " cases";
      console.item("2", "go on with a saved case (" + some + ")");
    }
    console.item("3", "try it with an invented player");
    console.item("4", "check the question bank");
    console.item("5", "settings of the full screen");
    console.item("q", "leave");
    console.say("closehand --help lists the other commands, such as summary and check.");
  }

  /** Which saved case; nothing where somebody goes back. */
  private static Optional<String> which(PlainConsole console, List<String> names) {
    console.say("Which case? Its number or its name; Enter goes back.");
    while (true) {
      int number = 0;
      for (String name : names) {
        console.item(Integer.toString(++number), name);
      }
      String typed = console.ask("Case: ").map(String::strip).orElse("");
      boolean counted = typed.matches("[1-9][0-9]{0,3}") && Integer.parseInt(typed) <= number;
      if (typed.isEmpty() || names.contains(typed) || counted) {
        return counted
            ? Optional.of(names.get(Integer.parseInt(typed) - 1))
            : Optional.of(typed).filter(names::contains);
      }
      console.say("Please type one of these numbers or names, or press Enter.");
    }
  }

  private int example(PlainConsole console, Glyphs glyphs) throws IOException {
    BankSource.Loaded loaded = BankSource.load(wanted.bank);
    Commands.report(loaded.problems(), surroundings);
    if (loaded.bank().isEmpty()) {
      return ExitCode.BAD_DATA;
    }
    Optional<Interview> interview = Example.interview(loaded.bank().get());
    if (interview.isEmpty()) {
      console.say(Example.UNFIT);
      return ExitCode.BAD_DATA;
    }
    Pages pages = new Pages(loaded.bank().get());
    CaseDesk desk = new CaseDesk(pages, new Example.NotKept(), glyphs, surroundings.clock());
    Example.FIRST.forEach(console::say);
    new LineFace(console, desk, interview.get()).run();
    console.say(Example.LAST);
    surroundings.output().flush();
    return ExitCode.DONE;
  }
}
