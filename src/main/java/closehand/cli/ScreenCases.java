package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.casefile.Passphrase;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.line.Console;
import closehand.plan.Planning;
import closehand.report.Glyphs;
import closehand.report.PageInput;
import closehand.report.PlayerPage;
import closehand.screen.CaseBook;
import closehand.screen.Sealing;
import closehand.screen.Settings;
import closehand.screen.Wish;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** What the full-screen face sees of saved cases, the example and the bank. */
final class ScreenCases implements CaseBook, AutoCloseable {
  private static final String UNREADABLE = "This case could not be read.";

  private final Surroundings surroundings;
  private final Cases cases;
  private final Optional<Path> bankFolder;
  private final Glyphs glyphs;
  private final Supplier<Bank> loading;
  private Optional<Pages> pages = Optional.empty();
  private final SettingsFile settings;
  private Optional<StoredCase> open = Optional.empty();
  private Optional<CaseOpening.Found> found = Optional.empty();
  private List<Problem> problems = List.of();
  private volatile Runnable wake = () -> {};
  private UnaryOperator<Interview> conduct = UnaryOperator.identity();

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
  public Optional<String> brokenOff() {
    return cases.brokenOff();
  }

  @Override
  public Opened begin(Provenance.By asker, Interview.Route route, Sealing sealing, char[] own) {
    Listener listener = new Listener(answer(sealing));
    CaseOpening opening = new CaseOpening(typing(own), cases, bank(), listener);
    return opened(opening.fresh(route, asker), listener);
  }

  /** What the line face is answered with when it asks how a case is to be kept. */
  private static String answer(Sealing sealing) {
    return switch (sealing) {
      case DRAWN -> "1";
      case OWN -> "2";
      case NONE -> "3";
    };
  }

  /** The same world, in which this passphrase is typed whenever one is asked for. */
  private Surroundings typing(char[] own) {
    Secrets secrets = prompt -> own.length == 0 ? Optional.empty() : Optional.of(own.clone());
    return silent(new ByteArrayOutputStream(), secrets);
  }

  /** What is done with the interview of every case that is opened from now on. */
  void conducting(UnaryOperator<Interview> next) {
    conduct = next;
  }

  /** Has this run whenever a save failed and when one succeeds again, on a thread of its own. */
  void whenTroubleChanges(Runnable next) {
    wake = next;
  }

  @Override
  public Found find(String name, char[] passphrase) {
    putBack();
    Listener listener = new Listener();
    CaseOpening opening = new CaseOpening(silent(), cases, bank(), listener);
    try {
      CaseOpening.Finding finding =
          opening.find(
              name,
              attempt ->
                  attempt == 1 && passphrase.length > 0
                      ? Optional.of(Passphrase.kept(passphrase))
                      : Optional.empty());
      if (finding instanceof CaseOpening.Finding.Not not) {
        problems = not.problems();
        return refused(not.problems());
      }
      CaseOpening.Found one = ((CaseOpening.Finding.Here) finding).found();
      found = Optional.of(one);
      opening.say(one, !one.held());
      return new Found.Case(listener.heard(), wishes(one));
    } catch (IOException e) {
      return new Found.Refused(List.of(UNREADABLE));
    }
  }

  private static Found refused(List<Problem> problems) {
    return problems.stream().anyMatch(p -> p.code().equals("sealed"))
        ? new Found.Locked()
        : new Found.Refused(problems.stream().map(p -> p.what() + " " + p.mend()).toList());
  }

  private Set<Wish> wishes(CaseOpening.Found one) throws IOException {
    Set<Wish> wishes = EnumSet.of(Wish.LOOK);
    if (!one.held()) {
      wishes.add(Wish.GO_ON);
      if (cases.store().names().contains(one.saved().name())) {
        wishes.add(Wish.DISCARD);
      }
      if (one.reviewable()) {
        wishes.add(Wish.REVIEW);
      }
      if (one.sealable()) {
        wishes.add(Wish.SEAL);
      }
    }
    return wishes;
  }

  /** Why the case that was looked up last could not be opened. */
  List<Problem> problems() {
    return problems;
  }

  @Override
  public void putBack() {
    found.ifPresent(CaseOpening.Found::release);
    found = Optional.empty();
  }

  /** The case that was found, which is at hand from now on or gone. */
  private CaseOpening.Found handedOver() {
    CaseOpening.Found one = found.orElseThrow();
    found = Optional.empty();
    return one;
  }

  @Override
  public Opened take(Wish wish) {
    Listener listener = new Listener();
    CaseOpening opening = new CaseOpening(silent(), cases, bank(), listener);
    try {
      return opened(opening.take(handedOver(), wish == Wish.REVIEW), listener);
    } catch (IOException e) {
      return new Opened(Optional.empty(), List.of(UNREADABLE));
    }
  }

  @Override
  public Opened seal(Sealing sealing, char[] own) {
    Listener listener = new Listener(answer(sealing));
    Surroundings here = typing(own);
    CaseOpening opening = new CaseOpening(here, cases, bank(), listener);
    try {
      CaseOpening.Outcome.Ready ready = opening.take(handedOver(), /* review= */ false);
      new SealOffer(listener, here).later(ready.kept());
      return opened(ready, listener);
    } catch (IOException e) {
      return new Opened(Optional.empty(), List.of(UNREADABLE));
    }
  }

  @Override
  public List<String> look() {
    CaseOpening.Found one = found.orElseThrow();
    PageInput input =
        pages()
            .input(one.interview(), one.saved().name(), surroundings.today())
            .with(one.file().document().limits());
    Case whole =
        new Case(
            one.interview().answers(),
            one.saved().name(),
            Optional.of(one.interview()),
            Optional.of(one.file().document()),
            Map.of());
    Optional<Planning> planning = Pages.planning(input, whole);
    PageInput ranked = Pages.loaded(Pages.ranked(input, planning), planning);
    return List.of(PlayerPage.of(ranked, glyphs).split("\n", -1));
  }

  @Override
  public List<String> discard() {
    String name = found.orElseThrow().saved().name();
    putBack();
    Listener listener = new Listener();
    try {
      new Recovery(listener, surroundings.clock(), cases).discard(name);
    } catch (IOException e) {
      listener.say(Trouble.of(e, cases.folder()));
    }
    return listener.heard();
  }

  @Override
  public Optional<String> unfit(char[] own) {
    char[] kept = Passphrase.kept(own);
    boolean fit = Passphrase.isLongEnough(kept);
    Arrays.fill(kept, ' ');
    return fit
        ? Optional.empty()
        : Optional.of(
            "That is too short to hold against guessing. At least "
                + Passphrase.SHORTEST
                + " characters are needed.");
  }

  private Opened opened(CaseOpening.Outcome outcome, Listener listener) {
    if (outcome instanceof CaseOpening.Outcome.Ready ready) {
      putAway();
      open = Optional.of(ready.kept());
      SavingSoon soon = ready.kept().soon();
      soon.whenTroubleChanges(() -> wake.run());
      CaseDesk desk = new CaseDesk(pages(), soon, glyphs, surroundings.clock());
      Interview interview = conduct.apply(ready.interview());
      return new Opened(Optional.of(new Holding(desk, interview)), listener.heard());
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
    Optional<Interview> interview = Example.interview(bank());
    if (interview.isEmpty()) {
      return new Opened(Optional.empty(), List.of(Example.UNFIT));
    }
    CaseDesk desk = new CaseDesk(pages(), new Example.NotKept(), glyphs, surroundings.clock());
    return new Opened(Optional.of(new Holding(desk, interview.get())), Example.FIRST);
  }

  @Override
  public List<String> check() {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    try {
      new CheckCommand(silent(said, Secrets.NONE)).run(bankFolder, CheckCommand.Wanted.NOTHING);
    } catch (IOException e) {
      return List.of("The bank could not be read.");
    }
    return text(said);
  }

  private Surroundings silent() {
    return silent(new ByteArrayOutputStream(), Secrets.NONE);
  }

  /** The same world, without a terminal: what would be printed is taken down. */
  private Surroundings silent(ByteArrayOutputStream said, Secrets secrets) {
    PrintStream printer = new PrintStream(said, true, StandardCharsets.UTF_8);
    return new Surroundings(
        InputStream.nullInputStream(),
        printer,
        printer,
        surroundings.environment(),
        surroundings.clock(),
        false,
        StandardCharsets.UTF_8,
        secrets);
  }

  private static List<String> text(ByteArrayOutputStream said) {
    return List.of(said.toString(StandardCharsets.UTF_8).strip().split("\n", -1));
  }

  @Override
  public List<String> writePages(Interview interview) {
    return open.map(c -> leaving(c, new Listener()).write(interview))
        .orElse(List.of("Nothing is written of the example."));
  }

  @Override
  public List<String> print(List<String> lines) {
    Optional<Printer> printer = Printer.in(surroundings.environment());
    if (printer.isEmpty()) {
      return List.of("No printer can be reached from here. Please write the words down.");
    }
    return List.of(
        printer.get().print(String.join("\n\n", lines) + "\n")
            ? "Sent to the printer, which may keep a copy for a while. Look that the paper is there."
            : "It could not be printed. Please write the words down.");
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
    putBack();
    if (open.isPresent()) {
      open.get().close();
    }
  }
}
