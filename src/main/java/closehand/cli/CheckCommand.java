package closehand.cli;

import closehand.bank.Bank;
import closehand.report.AdvisoryText;
import closehand.report.BankDifference;
import closehand.report.BankPaper;
import closehand.report.Glyphs;
import closehand.report.Wrap;
import closehand.rules.proof.DeepCheck;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** Says whether a question bank is sound, and lists everything that is not. */
final class CheckCommand {
  private final Surroundings surroundings;

  CheckCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /**
   * What to do besides.
   *
   * @param deep whether to look for what is sound but may not be meant
   * @param print whether to print the bank as a paper
   * @param old the bank to compare with, if any
   * @param ascii only plain ASCII characters
   */
  record Wanted(boolean deep, boolean print, Optional<Path> old, boolean ascii) {
    /** Nothing besides. */
    static final Wanted NOTHING = new Wanted(false, false, Optional.empty(), false);
  }

  /** 0 without a finding, 65 with one or more. What a deep check finds does not count. */
  int run(Optional<Path> folder, Wanted wanted) throws IOException {
    BankSource.Loaded loaded = BankSource.check(folder);
    if (!loaded.problems().isEmpty()) {
      return refused(loaded);
    }
    Bank bank = loaded.bank().orElseThrow();
    Glyphs glyphs = wanted.ascii() || surroundings.plainAscii() ? Glyphs.ASCII : Glyphs.UNICODE;
    if (wanted.old().isPresent()) {
      BankSource.Loaded old = BankSource.check(wanted.old());
      if (old.bank().isEmpty()) {
        return refused(old);
      }
      surroundings.output().print(BankDifference.of(old.bank().get(), bank, glyphs));
    }
    if (wanted.print()) {
      surroundings.output().print(BankPaper.of(bank, glyphs));
    }
    if (wanted.deep()) {
      surroundings.output().print(AdvisoryText.of(DeepCheck.of(bank), glyphs));
    }
    if (wanted.old().isEmpty() && !wanted.print()) {
      Wrap.lines("", "", sound(bank)).forEach(surroundings.output()::println);
    }
    surroundings.output().flush();
    return ExitCode.DONE;
  }

  private int refused(BankSource.Loaded loaded) {
    loaded.problems().forEach(p -> surroundings.output().println(Words.clean(p.toString())));
    int count = loaded.problems().size();
    surroundings.output().println(count + (count == 1 ? " finding." : " findings."));
    return ExitCode.BAD_DATA;
  }

  private static String sound(Bank bank) {
    return "The bank is sound: "
        + bank.questionnaire().questions().size()
        + " questions, "
        + bank.rules().stream().map(r -> r.id()).distinct().count()
        + " rules, "
        + bank.approaches().size()
        + " approaches, "
        + bank.games().size()
        + " kinds of game. Every example of every rule comes out as written.";
  }
}
