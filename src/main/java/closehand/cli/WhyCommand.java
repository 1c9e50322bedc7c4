package closehand.cli;

import closehand.interview.Answers;
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

  /** Explains what goes by this name, or the control that leads; where none does, says so. */
  int run(Optional<String> name, boolean unfolded, boolean json) throws IOException {
    CaseLoading loading = new CaseLoading(surroundings, bank.folder(), source);
    Optional<Case> found = loading.load();
    if (found.isEmpty()) {
      return loading.exitCode();
    }
    Pages pages = loading.pages();
    Answers answers = found.get().answers();
    Explaining explaining = new Explaining(pages, bank.glyphs(surroundings));
    Optional<String> wanted = name.isPresent() ? name : explaining.leading(answers);
    if (wanted.isEmpty()) {
      return print(json ? explaining.nothingLeadsJson(answers) : explaining.nothingLeads(answers));
    }
    Optional<Subject> subject = Subject.of(pages.bank(), wanted.get());
    if (subject.isEmpty()) {
      surroundings.error().println(Words.clean(explaining.unknown(wanted.get())));
      return ExitCode.USAGE;
    }
    String text =
        json
            ? explaining.json(answers, subject.get())
            : explaining.text(answers, wanted.get(), unfolded);
    return print(text);
  }

  private int print(String text) {
    surroundings.output().print(text);
    surroundings.output().flush();
    return ExitCode.DONE;
  }
}
