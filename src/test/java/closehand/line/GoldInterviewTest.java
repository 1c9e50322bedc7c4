package closehand.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.interview.FlatAnswers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.json.JsonValue;
import closehand.report.Consultation;
import closehand.report.Desk;
import closehand.report.Glyphs;
import closehand.report.QuietLine;
import closehand.rules.Advice;
import closehand.rules.RuleBook;
import closehand.rules.Standing;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whole interviews on the core bank, typed line by line, come to the same advice as the file they
 * were typed from.
 */
class GoldInterviewTest {
  private static final Bank BANK = bank();
  private static final RuleBook RULES = RuleBook.of(BANK);

  private static Bank bank() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void typingAGoldCaseGivesTheAdviceOfItsFile(int number) throws IOException {
    Answers wanted = goldCase(number);
    Typist typist = new Typist(wanted);
    TestDesk desk = new TestDesk();
    LineFace face =
        new LineFace(
            typist,
            desk,
            Interview.begin(BANK.questionnaire(), Interview.Route.FULL, Provenance.By.CLINICIAN));

    assertEquals(LineFace.Ending.FINISHED, typist.run(face));

    Advice typed = RULES.advise(face.interview().answers());
    Advice filed = RULES.advise(wanted);
    assertEquals(points(filed), points(typed));
    assertEquals(codes(filed), codes(typed));
    assertTrue(desk.kept > 100, "kept after every answer: " + desk.kept);
    assertTrue(
        typist.shown().stream().noneMatch(l -> l.chars().anyMatch(c -> c < ' ')),
        "no control characters");
  }

  private static List<String> points(Advice advice) {
    List<String> points = new ArrayList<>();
    for (Standing standing : advice.suggestions()) {
      points.add(standing.approach().id() + " " + standing.points());
    }
    return points;
  }

  /** Cautions apart from those that only say that questions are open. */
  private static List<String> codes(Advice advice) {
    List<String> codes = new ArrayList<>();
    advice.cautions().forEach(w -> codes.add(w.caution().code() + " " + w.cautionClass()));
    codes.removeIf(c -> c.startsWith("C-UNKNOWN"));
    return codes;
  }

  private static Answers goldCase(int number) throws IOException {
    List<Problem> problems = new ArrayList<>();
    try (InputStream in = GoldInterviewTest.class.getResourceAsStream("/gold-cases.json")) {
      JsonValue.Obj all =
          (JsonValue.Obj) JsonReader.read("gold", in.readAllBytes(), problems).orElseThrow();
      JsonValue one = ((JsonValue.Arr) all.member("cases").orElseThrow()).items().get(number);
      JsonValue facts = ((JsonValue.Obj) one).member("facts").orElseThrow();
      FlatAnswers flat = FlatAnswers.of(BANK, FlatReader.read(facts, problems));
      assertEquals(List.of(), problems);
      return flat.answers();
    }
  }

  private static final class TestDesk implements Desk {
    private int kept;

    @Override
    public Consultation consult(Interview interview) {
      Advice advice = RULES.advise(interview.answers());
      List<Consultation.Notice> notices = new ArrayList<>();
      advice
          .stops()
          .forEach(
              s ->
                  notices.add(
                      new Consultation.Notice(
                          s.caution().code(),
                          s.caution().title(),
                          true,
                          false,
                          List.of(),
                          List.of("STOP"))));
      return new Consultation(
          List.of(QuietLine.of(advice, interview.open().size(), Glyphs.ASCII).strip().split("\n")),
          advice.holds(),
          notices,
          List.of(),
          List::of);
    }

    @Override
    public List<String> keep(Interview interview) {
      kept++;
      return List.of();
    }

    @Override
    public List<String> page(Interview interview) {
      return List.of();
    }

    @Override
    public java.util.Map<String, String> names(Interview interview, closehand.bank.Field field) {
      return closehand.rules.GameActions.of(BANK, interview.answers(), field.fact());
    }

    @Override
    public String today() {
      return "2026-11-25";
    }

    @Override
    public List<String> delete() {
      return List.of();
    }
  }
}
