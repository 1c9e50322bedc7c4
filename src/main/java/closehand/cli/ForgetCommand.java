package closehand.cli;

import closehand.casefile.CaseLock;
import closehand.casefile.CaseName;
import closehand.casefile.Holder;
import closehand.report.Glyphs;
import java.io.IOException;
import java.util.List;

/** Removes a case: its file, the content before, half-written files and pages. */
final class ForgetCommand {
  private final Surroundings surroundings;
  private final Cases cases;

  ForgetCommand(Surroundings surroundings, Cases cases) {
    this.surroundings = surroundings;
    this.cases = cases;
  }

  int run(String name, boolean sure) throws IOException {
    if (!CaseName.isLawful(name) || !cases.store().names().contains(name)) {
      surroundings.error().println("There is no case called \"" + Words.clean(name) + "\".");
      return ExitCode.NO_INPUT;
    }
    PlainConsole console =
        new PlainConsole(surroundings, surroundings.input(), Glyphs.UNICODE, !surroundings.typed());
    if (!sure && !confirmed(console, name)) {
      console.say("It is kept.");
      surroundings.output().flush();
      return ExitCode.USAGE;
    }
    Holder me =
        new Holder(
            System.getProperty("user.name", ""),
            ProcessHandle.current().pid(),
            Moment.now(surroundings.clock()));
    CaseLock.Taking taking = cases.store().lock(name, me);
    if (taking instanceof CaseLock.Taking.Held held) {
      new Recovery(console, surroundings.clock(), cases).sayHeld(held.holder());
      surroundings.output().flush();
      return ExitCode.CANNOT_CREATE;
    }
    List<String> before = cases.traces().files(name);
    try {
      new PageFiles(cases, name).delete();
      cases.store().delete(name);
    } catch (IOException e) {
      stays(before, name);
      return ExitCode.INPUT_OUTPUT;
    } finally {
      if (taking instanceof CaseLock.Taking.Taken taken) {
        taken.lock().close();
      }
    }
    console.say("The case " + name + " is removed, with its earlier content and its pages.");
    console.say(
        "What this cannot reach: copies you exported, printed, mailed or backed up, and what a disk keeps of"
            + " removed files until it writes over them.");
    surroundings.output().flush();
    return ExitCode.DONE;
  }

  /** Says what is still there of a case that could not be removed. */
  private void stays(List<String> before, String name) throws IOException {
    List<String> after = cases.traces().files(name);
    surroundings
        .error()
        .println(
            after.equals(before)
                ? "Nothing was removed: the files in "
                    + Words.clean(cases.folder().toString())
                    + " cannot be removed now."
                : "Not everything was removed. Still there: " + String.join(", ", after) + ".");
  }

  private static boolean confirmed(PlainConsole console, String name) {
    console.say(
        "Everything kept of the case " + name + " would be removed, and nothing brings it back.");
    return console
        .ask("Type its name to remove it: ")
        .map(l -> l.strip().equals(name))
        .orElse(false);
  }
}
