package closehand.cli;

import closehand.bank.Bank;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** Says whether a question bank is sound, and lists everything that is not. */
final class CheckCommand {
  private final Surroundings surroundings;

  CheckCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /** 0 without a finding, 65 with one or more. */
  int run(Optional<Path> folder) throws IOException {
    BankSource.Loaded loaded = BankSource.check(folder);
    loaded.problems().forEach(p -> surroundings.output().println(Words.clean(p.toString())));
    if (!loaded.problems().isEmpty()) {
      int count = loaded.problems().size();
      surroundings.output().println(count + (count == 1 ? " finding." : " findings."));
      return ExitCode.BAD_DATA;
    }
    Bank bank = loaded.bank().orElseThrow();
    surroundings
        .output()
        .println(
            "The bank is sound: "
                + bank.questionnaire().questions().size()
                + " questions, "
                + bank.rules().stream().map(r -> r.id()).distinct().count()
                + " rules, "
                + bank.approaches().size()
                + " approaches, "
                + bank.games().size()
                + " kinds of game. Every example of every rule comes out as written.");
    return ExitCode.DONE;
  }
}
