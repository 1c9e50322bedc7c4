package closehand.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** From an interview to practice or a trial of the same case, and back. */
final class GoingOn {
  private final Surroundings surroundings;
  private final InterviewCommand.Wanted wanted;

  /** What somebody goes on to. */
  enum To {
    PRACTICE("practise"),
    TRIAL("trial");

    private final String command;

    To(String command) {
      this.command = command;
    }
  }

  GoingOn(Surroundings surroundings, InterviewCommand.Wanted wanted) {
    this.surroundings = surroundings;
    this.wanted = wanted;
  }

  /**
   * Runs it; the exit code. The case is closed by now. Line by line the interview follows at once;
   * after a full screen what was said last must stay in sight, so it is only said how to go on.
   */
  int run(To to, String name, boolean lines) throws IOException {
    List<String> words = new ArrayList<>(List.of(to.command, name));
    wanted.home.ifPresent(home -> words.addAll(List.of("--home", home.toString())));
    wanted.bank.ifPresent(bank -> words.addAll(List.of("--bank", bank.toString())));
    if (wanted.ascii) {
      words.add("--ascii");
    }
    if (wanted.line) {
      words.add("--line");
    }
    int code = Closehand.run(words.toArray(new String[0]), surroundings);
    if (!lines) {
      surroundings.output().println("The interview goes on with: closehand interview " + name);
      surroundings.output().flush();
    }
    if (!lines || code != ExitCode.DONE && code != ExitCode.UNFINISHED) {
      return code;
    }
    wanted.caseName = Optional.of(name);
    wanted.measure = Optional.empty();
    wanted.review = false;
    return new InterviewCommand(surroundings, wanted).run();
  }
}
