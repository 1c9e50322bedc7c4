package closehand.json;

import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Every comparison that can be written about the tiny bank, sensible or not, is refused with a
 * finding or can be worked out.
 */
class EveryComparisonTest {
  private static final List<String> FACTS =
      List.of(
          "consent.state",
          "session.video",
          "hand.L.press",
          "tremor",
          "arm.reachCm",
          "pain.any",
          "pain.where",
          "pain.now",
          "pain.words",
          "games.1.genre",
          "games.2.mode",
          "game.genre",
          "game.mode",
          "press.best",
          "pain.places",
          "hand.R.presses",
          "shaky",
          "cleared",
          "nothing");
  private static final List<String> VALUES =
      List.of(
          "true",
          "1",
          "2.5",
          "40",
          "\"1\"",
          "\"none\"",
          "\"severe\"",
          "\"neck\"",
          "\"solo\"",
          "\"C-NECK\"",
          "[\"none\", \"mild\"]",
          "[\"1\", 2]",
          "[\"solo\"]",
          "[\"notAsked\", \"later\"]");

  private static final String HOW = "[\"pain.any\", \"how\", [\"notAsked\", \"declined\"]]";

  private static final String SHAKY = "[\"tremor\", \"in\", [\"moderate\", \"severe\"]]";

  private final MemoryBank tiny = MemoryBank.of(FixtureBank.TINY);

  EveryComparisonTest() throws IOException {}

  @Test
  void inRules() throws IOException {
    List<String> when = new ArrayList<>();
    for (String fact : FACTS) {
      for (String operator : List.of("<", "<=", ">", ">=", "is", "in", "has", "how")) {
        for (String value : VALUES) {
          String test = "[\"" + fact + "\", \"" + operator + "\", " + value + "]";
          when.add(fact.startsWith("game.") ? "{\"everyGame\": " + test + "}" : test);
        }
      }
    }
    int worked = 0;
    for (String condition : when) {
      worked +=
          (condition.contains("\"how\"")
                  ? works("rules/gates.json", HOW, condition)
                  : works("rules/hands.json", SHAKY, condition))
              ? 1
              : 0;
    }
    assertTrue(worked > 60 && worked < when.size() / 5, worked + " of " + when.size());
  }

  @Test
  void betweenQuestions() throws IOException {
    List<String> answers = new ArrayList<>();
    for (String value : List.of("true", "2.5", "40")) {
      for (String type : List.of("Boolean", "Integer", "Decimal", "String")) {
        answers.add("\"answer" + type + "\": " + value);
      }
    }
    for (String code : List.of("none", "1", "neck", "RAC", "yes")) {
      String system = "\"system\": \"http://closehand.invalid/fhir/answers\"";
      answers.add("\"answerCoding\": {" + system + ", \"code\": \"" + code + "\"}");
    }
    int worked = 0;
    int all = 0;
    for (String fact : FACTS.subList(0, 11)) {
      for (String operator : List.of("exists", "=", "!=", "<", "<=", ">", ">=")) {
        for (String answer : answers) {
          String test =
              "{ \"question\": \""
                  + fact
                  + "\", \"operator\": \""
                  + operator
                  + "\", "
                  + answer
                  + " }";
          String old = "{ \"question\": \"pain.now\", \"operator\": \">=\", \"answerInteger\": 4 }";
          worked += works("questionnaire.json", old, test) ? 1 : 0;
          all++;
        }
      }
    }
    assertTrue(worked > 20 && worked < all / 5, worked + " of " + all);
  }

  /** Whether nothing is wrong but examples that were written for another comparison. */
  private boolean works(String file, String old, String instead) throws IOException {
    String text = new String(tiny.files().get(file), StandardCharsets.UTF_8);
    assertTrue(text.contains(old), file + " holds " + old);
    byte[] bytes = text.replace(old, instead).getBytes(StandardCharsets.UTF_8);
    List<Problem> problems = BankInspection.of(tiny.with(file, bytes)).problems();
    List<String> codes = problems.stream().map(Problem::code).toList();
    assertTrue(!codes.contains("too-fine"), () -> instead + " gives " + problems);
    boolean works = codes.stream().allMatch("failing-example"::equals);
    if (!works) {
      assertTrue(codes.size() <= 3, () -> instead + " floods: " + problems);
    }
    return works;
  }
}
