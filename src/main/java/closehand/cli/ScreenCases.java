package closehand.cli;

import closehand.bank.Bank;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.line.Console;
import closehand.report.Glyphs;
import closehand.screen.CaseBook;
import closehand.screen.Settings;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What the full-screen face sees of saved cases, the example and the bank. */
final class ScreenCases implements CaseBook, AutoCloseable {
  private static final String EXAMPLE = "/examples/quiet-heron/answers.json";

  private final Surroundings surroundings;
  private final Cases cases;
  private final Optional<Path> bankFolder;
  private final Glyphs glyphs;
  private final Supplier<Bank> loading;
  private Optional<Pages> pages = Optional.empty();
  private final SettingsFile settings;
  private Optional<StoredCase> open = Optional.empty();

  ScreenCases(
      Surroundings surroundings,
      Cases cases,
      Optional<Path> bankFolder,
      Supplier<Bank> loading,
      Glyphs glyphs) {
    this.surroundings = surroundings;
    this.cases = cases;
    this.bankFolder = bankFolder;
    this.loading = loading;
    this.glyphs = glyphs;
    this.settings = SettingsFile.in(surroundings);
  }

  /** What makes pages; waits for the bank the first time. */
  Pages pages() {
    if (pages.isEmpty()) {
      pages = Optional.of(new Pages(loading.get()));
    }
    return pages.get();
  }

  private Bank bank() {
    return pages().bank();
  }

  /** The case at hand, where one is that can be kept. */
  Optional<StoredCase> stored() {
    return open;
  }

  @Override
  public List<String> names() {
    try {
      return cases.store().names();
    } catch (IOException e) {
      return List.of();
    }
  }

  @Override
  public Opened begin(Provenance.By asker, Interview.Route route, boolean sealed) {
    Listener listener = new Listener(sealed ? "1" : "3");
    CaseOpening opening = new CaseOpening(surroundings, cases, bank(), listener);
    return opened(opening.fresh(route, asker), listener);
  }

  @Override
  public Opened open(String name) {
    Listener listener = new Listener("1");
    ByteArrayOutputStream refusals = new ByteArrayOutputStream();
    try {
      CaseOpening opening = new CaseOpening(silent(refusals), cases, bank(), listener);
      CaseOpening.Outcome outcome = opening.again(name, false);
      if (outcome instanceof CaseOpening.Outcome.Ended && refusals.size() > 0) {
        listener.lines(text(refusals));
        listener.say("A case that needs a passphrase is opened with: closehand interview " + name);
      }
      return opened(outcome, listener);
    } catch (IOException e) {
      return new Opened(Optional.empty(), List.of("This case could not be read."));
    }
  }

  /** A case that was opened before the screen was taken over. */
  Opened take(StoredCase stored, Interview interview) {
    return opened(new CaseOpening.Outcome.Ready(stored, interview), new Listener());
  }

  private Opened opened(CaseOpening.Outcome outcome, Listener listener) {
    if (outcome instanceof CaseOpening.Outcome.Ready ready) {
      putAway();
      open = Optional.of(ready.kept());
      CaseDesk desk = new CaseDesk(pages(), ready.kept().soon(), glyphs, surroundings.clock());
      return new Opened(Optional.of(new Holding(desk, ready.interview())), listener.heard());
    }
    List<String> heard = listener.heard();
    return new Opened(
        Optional.empty(), heard.isEmpty() ? List.of("This case could not be opened.") : heard);
  }

  /** Another case, or the example, takes the place of the one at hand. */
  private void putAway() {
    try {
      close();
    } catch (IOException e) {
      // Its answers are written; only its lock file may stay behind, which keeps nobody out.
    }
    open = Optional.empty();
  }

  @Override
  public Opened example() {
    putAway();
    Optional<Answers> answers = exampleAnswers();
    if (answers.isEmpty()) {
      return new Opened(Optional.empty(), List.of("The example does not fit this question bank."));
    }
    Interview interview =
        Interview.reopen(
                bank().questionnaire(),
                answers.get(),
                Interview.Route.CORE,
                Provenance.By.VOLUNTEER,
                Optional.empty())
            .after(new Message.Resume());
    CaseDesk desk = new CaseDesk(pages(), new NotKept(), glyphs, surroundings.clock());
    return new Opened(
        Optional.of(new Holding(desk, interview)),
        List.of(
            "This player is invented. Nothing you do here is kept.",
            "Most questions are answered already. Look at what the answers point to, at the page,"
                + " and at all answers; change some and see what follows."));
  }

  private Optional<Answers> exampleAnswers() {
    try (InputStream in = ScreenCases.class.getResourceAsStream(EXAMPLE)) {
      return in == null
          ? Optional.empty()
          : AnswersSource.match(bank(), AnswersSource.read("-", in)).answers();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  @Override
  public List<String> check() {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    try {
      new CheckCommand(silent(said)).run(bankFolder, CheckCommand.Wanted.NOTHING);
    } catch (IOException e) {
      return List.of("The bank could not be read.");
    }
    return text(said);
  }

  /** The same world, without a terminal: what would be printed is taken down. */
  private Surroundings silent(ByteArrayOutputStream said) {
    PrintStream printer = new PrintStream(said, true, StandardCharsets.UTF_8);
    return new Surroundings(
        InputStream.nullInputStream(),
        printer,
        printer,
        surroundings.environment(),
        surroundings.clock(),
        false,
        StandardCharsets.UTF_8);
  }

  private static List<String> text(ByteArrayOutputStream said) {
    return List.of(said.toString(StandardCharsets.UTF_8).strip().split("\n", -1));
  }

  @Override
  public List<String> writePages(Interview interview) {
    return open.map(c -> leaving(c, new Listener()).write(interview))
        .orElse(List.of("Nothing is written of the example."));
  }

  /** What ends a sitting with this case. */
  Leaving leaving(StoredCase stored, Console console) {
    CaseDesk desk = new CaseDesk(pages(), stored, glyphs, surroundings.clock());
    return new Leaving(surroundings, console, pages(), stored, desk);
  }

  @Override
  public List<String> keep(Settings next) {
    return settings.write(next);
  }

  @Override
  public void close() throws IOException {
    if (open.isPresent()) {
      open.get().close();
    }
  }

  /** The example: nothing of it is kept. */
  private static final class NotKept implements Kept {
    @Override
    public String name() {
      return "example";
    }

    @Override
    public void save(Interview interview) {}

    @Override
    public String trouble(IOException e) {
      return "Nothing is kept of the example.";
    }

    @Override
    public void delete() {}
  }
}
