package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.FlatValue;
import closehand.bank.Problem;
import closehand.bank.Where;
import closehand.interview.Answers;
import closehand.interview.Enablement;
import closehand.interview.FlatAnswers;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.json.JsonValue;
import closehand.rules.Advice;
import closehand.rules.RuleBook;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages that the core bank gives for the gold cases (all of them invented people). */
class CoreBankPagesTest {
  private static final int CASES = 8;

  private static final Bank BANK = bank();
  private static final RuleBook RULES = RuleBook.of(BANK);

  private static Bank bank() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void everyPageKeepsItsShapeAndItsManners(int number) throws IOException {
    PageInput input = input(goldCase(number));
    for (Glyphs glyphs : Glyphs.values()) {
      String player = PlayerPage.of(input, glyphs);
      String advice = SuggestionText.of(input, glyphs);
      PageShape.check(player, glyphs);
      PageShape.isKind(player);
      PageShape.check(advice, glyphs);
      PageShape.isKind(advice);
      PageShape.check(ClinicianPage.of(input, glyphs), glyphs);
      assertTrue(player.lines().count() <= Room.FULL_PAGE, player);
      assertTrue(QuietLine.of(input.together(), 41, glyphs).lines().count() <= 2);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void theTextsOfTheBankNeedNoReplacementInAscii(int number) throws IOException {
    PageInput input = input(goldCase(number));
    String unicode = PlayerPage.of(input, Glyphs.UNICODE);
    String ascii = PlayerPage.of(input, Glyphs.ASCII);
    assertTrue(count(ascii, '?') <= count(unicode, '?'), ascii);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void everyStandingCautionIsOnThePlayersPage(int number) throws IOException {
    PageInput input = input(goldCase(number));
    String page = PlayerPage.of(input, Glyphs.ASCII).replaceAll("\\s+", " ");
    for (var warning : input.together().cautions()) {
      String title = Phrases.bare(warning.caution().title());
      boolean there =
          page.contains(warning.caution().message())
              || page.contains(warning.caution().brief()) && !warning.caution().brief().isEmpty()
              || warning.caution().code().equals("C-BREAK") && page.contains("Then rest for")
              || warning.caution().code().equals("C-BUY") && page.contains("borrow before you buy")
              || page.contains(title)
              || page.contains(Phrases.lower(title));
      assertTrue(there, warning.caution().code());
    }
  }

  @Test
  void halfAnInterviewGivesPagesToo() throws IOException {
    for (int number = 0; number < CASES; number++) {
      List<Map.Entry<String, FlatValue>> facts = List.copyOf(goldCase(number).entrySet());
      for (int known = 0; known < facts.size(); known += 29) {
        Map<String, FlatValue> some = new LinkedHashMap<>();
        facts.subList(0, known).forEach(f -> some.put(f.getKey(), f.getValue()));
        PageInput input = input(some);
        PageShape.check(PlayerPage.of(input, Glyphs.UNICODE), Glyphs.UNICODE);
        PageShape.check(ClinicianPage.of(input, Glyphs.ASCII), Glyphs.ASCII);
        assertTrue(QuietLine.of(input.together(), 7, Glyphs.ASCII).lines().count() <= 2);
      }
    }
  }

  @Test
  void anEmergencyLeavesNothingButTheNotice() throws IOException {
    Map<String, FlatValue> facts = goldCase(0);
    facts.put("safe.suddenNeuro", new FlatValue.Text("now", Where.file("test")));
    PageInput input = input(facts);
    String page = PlayerPage.of(input, Glyphs.ASCII);
    assertTrue(page.startsWith("STOP. EMERGENCY HELP NOW\n"), page);
    assertFalse(page.contains("mouse"));
    assertTrue(SuggestionText.of(input, Glyphs.ASCII).startsWith("STOP. EMERGENCY HELP NOW\n"));
  }

  /** Dysreflexia and faintness on one page: the order to sit up is given once, in one way. */
  @Test
  void onePageGivesOneOrderForDysreflexia() throws IOException {
    Map<String, FlatValue> facts = goldCase(1);
    String page = flat(PlayerPage.of(input(facts), Glyphs.ASCII));
    assertEquals(2, page.split("Pounding headache", -1).length, page);
    assertTrue(page.contains("sit UP, loosen, find the cause, follow your plan"), page);
    assertTrue(page.contains("lean BACK"), page);
    facts.put("safe.sciT6", new FlatValue.Text("no", Where.file("here")));
    assertFalse(flat(PlayerPage.of(input(facts), Glyphs.ASCII)).contains("Pounding headache"));
  }

  /** No question asks where a neck warning sits, so no page says that the place is missing. */
  @Test
  void aNeckWarningNeedsNoPlace() throws IOException {
    Map<String, FlatValue> facts = goldCase(1);
    facts.put("safe.neck", new FlatValue.Text("symptoms", Where.file("here")));
    String page = PlayerPage.of(input(facts), Glyphs.ASCII);
    assertTrue(page.contains("STOP FOR THIS PART"), page);
    assertFalse(page.contains("not told yet"), page);
  }

  private static String flat(String page) {
    return page.replaceAll("\\s+", " ");
  }

  private static long count(String page, char sign) {
    return page.chars().filter(c -> c == sign).count();
  }

  private static PageInput input(Map<String, FlatValue> facts) {
    Answers given = FlatAnswers.of(BANK, facts).answers();
    Answers answers = Enablement.of(BANK.questionnaire(), given).effective();
    Map<Integer, Advice> byGame = new TreeMap<>();
    RULES.games(answers).forEach(slot -> byGame.put(slot, RULES.advise(answers, slot)));
    return new PageInput(
        BANK,
        answers,
        RULES.advise(answers),
        byGame,
        Map.of(),
        true,
        List.of(),
        "Heron",
        "2026-11-25");
  }

  private static Map<String, FlatValue> goldCase(int number) throws IOException {
    List<Problem> problems = new ArrayList<>();
    try (InputStream in = CoreBankPagesTest.class.getResourceAsStream("/gold-cases.json")) {
      JsonValue document =
          JsonReader.read("gold-cases.json", in.readAllBytes(), problems).orElseThrow();
      JsonValue cases = ((JsonValue.Obj) document).member("cases").orElseThrow();
      JsonValue one = ((JsonValue.Arr) cases).items().get(number);
      JsonValue facts = ((JsonValue.Obj) one).member("facts").orElseThrow();
      return new LinkedHashMap<>(FlatReader.read(facts, problems));
    }
  }
}
