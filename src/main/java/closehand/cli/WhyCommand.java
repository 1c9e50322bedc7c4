package closehand.cli;

import closehand.json.WhyWriter;
import closehand.rules.why.Explanation;
import closehand.rules.why.Subject;
import java.io.IOException;
import java.util.Optional;

/** Prints why something stands as it does. */
final class WhyCommand {
  private final Surroundings surroundings;
  private final BankOption bank;
  private final AnswersOption source;

  WhyCommand(Surroundings surroundings, BankOption bank, AnswersOption source) {
    this.surroundings = surroundings;
    this.bank = bank;
    this.source = source;
  }

  int run(String name, boolean unfolded, boolean json) throws IOException {
    CaseLoading loading = new CaseLoading(surroundings, bank.folder(), source);
    Optional<Case> found = loading.load();
    if (found.isEmpty()) {
      return loading.exitCode();
    }
    Pages pages = loading.pages();
    Explaining explaining = new Explaining(pages, bank.glyphs(surroundings));
    Optional<Subject> subject = Subject.of(pages.bank(), name);
    if (subject.isEmpty()) {
      surroundings.error().println(Words.clean(explaining.unknown(name)));
      return ExitCode.USAGE;
    }
    Case one = found.get();
    String text =
        json
            ? WhyWriter.write(Explanation.of(pages.rules(), one.answers(), subject.get()))
            : explaining.text(one.answers(), name, unfolded);
    surroundings.output().print(text);
    surroundings.output().flush();
    return ExitCode.DONE;
  }
}
