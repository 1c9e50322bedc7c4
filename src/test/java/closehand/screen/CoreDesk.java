package closehand.screen;

import closehand.bank.Bank;
import closehand.bank.CautionClass;
import closehand.bank.Field;
import closehand.bank.Problem;
import closehand.bank.TaskBook;
import closehand.interview.Answers;
import closehand.interview.FlatAnswers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.StillOpen;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.json.JsonValue;
import closehand.plan.PlanChanges;
import closehand.plan.Planning;
import closehand.plan.solve.Budget;
import closehand.report.ByHand;
import closehand.report.CareNotice;
import closehand.report.Consultation;
import closehand.report.Desk;
import closehand.report.Glyphs;
import closehand.report.PageInput;
import closehand.report.PlayerPage;
import closehand.report.QuietLine;
import closehand.report.StopNotice;
import closehand.report.SuggestionText;
import closehand.report.TaskGate;
import closehand.rules.Advice;
import closehand.rules.GameActions;
import closehand.rules.Holds;
import closehand.rules.RuleBook;
import closehand.rules.Warning;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A desk over the core bank that keeps nothing but counts. */
class CoreDesk implements Desk {
  static final Bank BANK = bank();
  static final RuleBook RULES = RuleBook.of(BANK);

  private static final Budget LITTLE = Budget.ORDINARY.withNodes(40).withTolerance(200);

  private final List<Interview> kept = new ArrayList<>();
  private PlanChanges changes = PlanChanges.NONE;

  private static Bank bank() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The answers of one of the eight invented players. */
  static Answers goldCase(int number) {
    List<Problem> problems = new ArrayList<>();
    try (InputStream in = CoreDesk.class.getResourceAsStream("/gold-cases.json")) {
      JsonValue.Obj all =
          (JsonValue.Obj) JsonReader.read("gold", in.readAllBytes(), problems).orElseThrow();
      JsonValue one = ((JsonValue.Arr) all.member("cases").orElseThrow()).items().get(number);
      JsonValue facts = ((JsonValue.Obj) one).member("facts").orElseThrow();
      return FlatAnswers.of(BANK, FlatReader.read(facts, problems)).answers();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public Optional<TaskBook> taskBook() {
    return BANK.tasks();
  }

  @Override
  public Optional<TaskGate> tasks() {
    return TaskGate.of(BANK);
  }

  /** Every interview that was kept, the latest last. */
  List<Interview> kept() {
    return kept;
  }

  @Override
  public Consultation consult(Interview interview) {
    Advice advice = RULES.advise(interview.answers());
    List<Consultation.Notice> notices = new ArrayList<>();
    advice.stops().forEach(w -> notices.add(notice(w)));
    advice.cautions().stream()
        .filter(w -> w.cautionClass() == CautionClass.CARE)
        .map(CoreDesk::notice)
        .filter(n -> n.facts().stream().anyMatch(f -> interview.answers().answer(f).isPresent()))
        .forEach(notices::add);
    List<Consultation.Lowerable> lowerable =
        advice.stops().stream()
            .map(Warning::caution)
            .filter(c -> c.lowerable())
            .map(c -> new Consultation.Lowerable(c.code(), c.title()))
            .toList();
    return new Consultation(
        lines(QuietLine.of(advice, interview.progress().open(), Glyphs.UNICODE)),
        Holds.of(advice, interview.asker() == Provenance.By.CLINICIAN),
        notices,
        lowerable,
        () -> lines(SuggestionText.of(input(interview), Glyphs.UNICODE)));
  }

  private static Consultation.Notice notice(Warning warning) {
    boolean stops = warning.cautionClass().stops();
    return new Consultation.Notice(
        warning.caution().code(),
        warning.caution().title(),
        stops,
        warning.cautionClass() == CautionClass.STOP_ALL,
        warning.caution().contact(),
        warning.because().stream().flatMap(f -> f.supportedBy().stream()).distinct().toList(),
        lines(
            stops
                ? StopNotice.of(warning, Glyphs.UNICODE)
                : CareNotice.of(warning, Glyphs.UNICODE)));
  }

  private static PageInput input(Interview interview) {
    return new PageInput(
        BANK,
        interview.effective(),
        RULES.advise(interview.answers()),
        Map.of(),
        Map.of(),
        interview.open().isEmpty(),
        interview.open().stream().map(StillOpen::question).map(q -> q.id()).distinct().toList(),
        "calm-fern",
        "2026-11-25");
  }

  static List<String> lines(String text) {
    return List.of(text.stripTrailing().split("\n", -1));
  }

  @Override
  public List<String> page(Interview interview) {
    return lines(PlayerPage.of(input(interview), Glyphs.UNICODE));
  }

  @Override
  public Optional<ByHand> byHand(Interview interview) {
    PageInput input = input(interview);
    return Planning.of(BANK, input.answers(), input.together(), Map.of(), Map.of())
        .map(p -> ByHand.of(input, p, changes, LITTLE, Glyphs.UNICODE));
  }

  @Override
  public List<String> keep(Interview interview, PlanChanges next) {
    changes = next;
    return keep(interview);
  }

  /** What was changed by hand and kept. */
  PlanChanges changes() {
    return changes;
  }

  /** The plan of an invented player, as it was once worked out. */
  @Override
  public List<String> plan(Interview interview) {
    return text("/plan-texts/plan.txt");
  }

  @Override
  public List<String> load(Interview interview) {
    return text("/plan-texts/load.txt");
  }

  private static List<String> text(String name) {
    try (InputStream in = CoreDesk.class.getResourceAsStream(name)) {
      return lines(new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public Map<String, String> names(Interview interview, Field field) {
    return GameActions.of(BANK, interview.answers(), field.fact());
  }

  @Override
  public Map<String, String> explainable(Interview interview) {
    return Map.of("SBM", "Side-button mouse: worth trying");
  }

  @Override
  public List<String> explain(Interview interview, String name) {
    return List.of("Why " + name + " stands as it does.");
  }

  @Override
  public String today() {
    return "2026-11-25";
  }

  @Override
  public List<String> keep(Interview interview) {
    kept.add(interview);
    return List.of();
  }

  @Override
  public List<String> delete() {
    return List.of("Everything kept of this case is deleted.");
  }
}
