package closehand.cli;

import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.bank.Field;
import closehand.bank.TaskBook;
import closehand.interview.Interview;
import closehand.interview.Measured;
import closehand.interview.Provenance;
import closehand.interview.Wording;
import closehand.plan.PlanAsk;
import closehand.plan.PlanChanges;
import closehand.plan.Planned;
import closehand.report.ByHand;
import closehand.report.CareNotice;
import closehand.report.Clean;
import closehand.report.Consultation;
import closehand.report.Desk;
import closehand.report.Glyphs;
import closehand.report.LoadText;
import closehand.report.NextStep;
import closehand.report.NextText;
import closehand.report.PageInput;
import closehand.report.PlanText;
import closehand.report.PlayerPage;
import closehand.report.QuietLine;
import closehand.report.StopNotice;
import closehand.report.SuggestionText;
import closehand.report.TaskGate;
import closehand.report.Wrap;
import closehand.rules.Advice;
import closehand.rules.GameActions;
import closehand.rules.Holds;
import closehand.rules.Warning;
import closehand.rules.next.Asking;
import closehand.rules.next.Proposal;
import java.io.IOException;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** What the line face sees of the program: advice in words, saving, the page. */
final class CaseDesk implements Desk {
  private static final int NOON = 12;

  private final Pages pages;
  private final Kept kept;
  private final Glyphs glyphs;
  private final Clock clock;
  private final Instant begun;
  private Optional<TaskGate> tasks = Optional.empty();
  private boolean troubled;

  /** A desk on one fixed day. */
  CaseDesk(Pages pages, Kept kept, Glyphs glyphs, String today) {
    this(
        pages,
        kept,
        glyphs,
        Clock.fixed(
            LocalDate.parse(today).atTime(NOON, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC));
  }

  CaseDesk(Pages pages, Kept kept, Glyphs glyphs, Clock clock) {
    this.pages = pages;
    this.kept = kept;
    this.glyphs = glyphs;
    this.clock = clock;
    this.begun = clock.instant();
  }

  @Override
  public Consultation consult(Interview interview) {
    Advice advice = pages.advise(interview.answers());
    List<Consultation.Notice> notices = new ArrayList<>();
    List<Consultation.Lowerable> lowerable = new ArrayList<>();
    advice.stops().forEach(w -> notices.add(notice(interview, w)));
    advice.cautions().stream()
        .filter(w -> w.cautionClass() == CautionClass.CARE)
        .map(w -> notice(interview, w))
        // A caution that only says that questions have not come up yet is no news.
        .filter(n -> n.facts().stream().anyMatch(f -> interview.answers().answer(f).isPresent()))
        .forEach(notices::add);
    for (List<Warning> some : List.of(advice.stops(), advice.cautions())) {
      some.stream()
          .map(Warning::caution)
          .filter(Caution::lowerable)
          .forEach(c -> lowerable.add(new Consultation.Lowerable(c.code(), c.title())));
    }
    return new Consultation(
        lines(QuietLine.of(advice, interview.progress().open(), glyphs)),
        Holds.of(advice, interview.asker() == Provenance.By.CLINICIAN),
        notices,
        lowerable,
        () -> lines(SuggestionText.of(ranked(interview), glyphs)));
  }

  private PageInput ranked(Interview interview) {
    PageInput input = pages.input(interview, kept, today());
    return Pages.ranked(input, Pages.planning(input, kept));
  }

  private Consultation.Notice notice(Interview interview, Warning warning) {
    Caution caution = warning.caution();
    List<String> facts =
        warning.because().stream().flatMap(f -> f.supportedBy().stream()).distinct().toList();
    List<String> text = new ArrayList<>();
    if (warning.cautionClass().stops()) {
      text.addAll(lines(StopNotice.of(warning, glyphs)));
      text.addAll(where(interview, facts));
    } else {
      text.addAll(lines(CareNotice.of(warning, glyphs)));
    }
    return new Consultation.Notice(
        caution.code(),
        caution.title(),
        warning.cautionClass().stops(),
        warning.cautionClass() == CautionClass.STOP_ALL,
        caution.contact(),
        facts,
        text);
  }

  /** The part of the body a stop speaks of, where it was asked. */
  private List<String> where(Interview interview, List<String> facts) {
    for (String fact : facts) {
      String place = fact + ".where";
      Field field = pages.bank().questionnaire().fieldsByFact().get(place);
      if (field != null && interview.answers().answer(place).isPresent()) {
        String words = Wording.of(field, interview.answers().answer(place).orElseThrow());
        return Wrap.lines("", "", Clean.of("This is about: " + words + ".", glyphs));
      }
    }
    return List.of();
  }

  @Override
  public boolean isKept() {
    return kept.isKept();
  }

  @Override
  public List<String> keep(Interview interview) {
    try {
      kept.save(interview);
      troubled = false;
      return List.of();
    } catch (IOException e) {
      return told(e);
    }
  }

  @Override
  public List<String> unsaved() {
    Optional<IOException> trouble = kept.unsaved();
    troubled &= trouble.isPresent();
    return trouble.map(this::told).orElse(List.of());
  }

  private List<String> told(IOException e) {
    if (e instanceof StoredCase.ChangedElsewhere) {
      return List.of(
          "This case is open in another window, which has saved it since. Nothing here is saved over it:"
              + " leave here, and go on in the other window.");
    }
    if (troubled) {
      return List.of("Still not saved. " + kept.trouble(e));
    }
    troubled = true;
    return List.of(
        kept.trouble(e)
            + " The answers since the last save are only in this window. The interview goes on, and saving is"
            + " tried again after each answer. When you leave you can choose another place.");
  }

  @Override
  public List<String> page(Interview interview) {
    PageInput input = ranked(interview);
    return lines(PlayerPage.of(Pages.loaded(input, Pages.planning(input, kept)), glyphs));
  }

  @Override
  public List<String> keep(Interview interview, PlanChanges changes) {
    kept.change(changes);
    return keep(interview);
  }

  @Override
  public Optional<ByHand> byHand(Interview interview) {
    PageInput input = pages.input(interview, kept, today());
    return Pages.planning(input, kept)
        .map(p -> ByHand.of(input, p, kept.changes(), PlanWork.PLAN, glyphs));
  }

  @Override
  public List<String> plan(Interview interview) {
    return planned(interview, (input, plans) -> PlanText.of(input, plans, glyphs));
  }

  @Override
  public List<String> load(Interview interview) {
    return planned(interview, (input, plans) -> LoadText.details(input, plans, glyphs));
  }

  private List<String> planned(
      Interview interview, BiFunction<PageInput, List<Planned>, String> text) {
    PageInput input = pages.input(interview, kept, today());
    return Pages.planning(input, kept)
        .map(p -> p.session(PlanAsk.USUAL, () -> PlanWork.PLAN))
        .map(plans -> lines(text.apply(input, List.copyOf(plans.values()))))
        .orElseGet(() -> lines(PlanText.withheld(input, glyphs)));
  }

  @Override
  public Map<String, String> names(Interview interview, Field field) {
    return GameActions.of(pages.bank(), interview.answers(), field.fact());
  }

  @Override
  public Map<String, String> explainable(Interview interview) {
    return new Explaining(pages, glyphs).names(interview.answers());
  }

  @Override
  public List<String> explain(Interview interview, String name) {
    return lines(new Explaining(pages, glyphs).text(interview.answers(), name, false));
  }

  @Override
  public Optional<NextStep> next(Interview interview) {
    Proposal proposal = Asking.next(pages.rules(), interview);
    return Optional.of(NextText.of(proposal, pages.bank(), glyphs));
  }

  @Override
  public Optional<TaskBook> taskBook() {
    return pages.bank().tasks();
  }

  @Override
  public Optional<TaskGate> tasks() {
    if (tasks.isEmpty()) {
      tasks = TaskGate.of(pages.bank());
    }
    return tasks;
  }

  @Override
  public TaskGate.Day day(Interview interview) {
    List<Measured> today = new ArrayList<>(Measured.on(kept.measured(), today()));
    // What was measured in this sitting counts even if it could not be kept.
    interview.measured().stream()
        .filter(m -> today.stream().noneMatch(k -> k.at("").equals(m.at(""))))
        .forEach(m -> today.add(m.at(Moment.now(clock))));
    int minutes = (int) Duration.between(begun, clock.instant()).toMinutes();
    return new TaskGate.Day(
        today, sinceLast(today), PartOfDay.at(clock), Math.max(0, minutes), kept.diary(), today());
  }

  private Optional<Long> sinceLast(List<Measured> today) {
    try {
      return today.stream()
          .filter(m -> !m.goes().isEmpty())
          .map(m -> OffsetDateTime.parse(m.at()).toInstant())
          .max(Instant::compareTo)
          .map(last -> Math.max(0, Duration.between(last, clock.instant()).toSeconds()));
    } catch (DateTimeException e) {
      return Optional.of(0L);
    }
  }

  @Override
  public String today() {
    return LocalDate.now(clock).toString();
  }

  @Override
  public List<String> delete() {
    try {
      kept.delete();
      return List.of(
          "Everything kept of this case is deleted. A copy may remain on the disk until it is written over.");
    } catch (IOException e) {
      return List.of("The case could not be deleted: its file cannot be reached.");
    }
  }

  private static List<String> lines(String text) {
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    while (!lines.isEmpty() && lines.get(lines.size() - 1).isEmpty()) {
      lines.remove(lines.size() - 1);
    }
    return lines;
  }
}
