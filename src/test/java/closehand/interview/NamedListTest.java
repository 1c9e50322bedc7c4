package closehand.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** An action can be named by number, name or code, and is said back by name. */
class NamedListTest {
  private static final NamedList LIST = new NamedList(entries());

  private static Map<String, String> entries() {
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("X01", "Move");
    entries.put("X02", "Jump");
    entries.put("X03", "Turn left");
    entries.put("X04", "Turn right");
    entries.put("X05", "Use, open or lift");
    return entries;
  }

  private static void reads(String typed, String... codes) {
    NamedList.Outcome outcome = LIST.read(typed);
    assertEquals(
        List.of(codes), assertInstanceOf(NamedList.Outcome.Read.class, outcome, typed).codes());
  }

  private static String refused(String typed) {
    return assertInstanceOf(NamedList.Outcome.Refused.class, LIST.read(typed)).sentence();
  }

  @Test
  void numbersNamesAndCodesAllNameAnAction() {
    reads("jump", "X02");
    reads("2", "X02");
    reads("1,2", "X01", "X02");
    reads("1 2", "X01", "X02");
    reads("x02 jump", "X02");
    reads("X03 jump", "X03", "X02");
    reads("Turn left and move", "X03", "X01");
    reads("ju; turn r", "X02", "X04");
  }

  @Test
  void aWordInsideANameNamesItWhereOnlyOneHasIt() {
    reads("right", "X04");
    reads("Use, open or lift", "X05");
  }

  @Test
  void whatFitsSeveralIsAskedForByNumber() {
    assertEquals(
        "\"turn\" fits more than one: 3 Turn left, 4 Turn right. Which number?", refused("turn"));
  }

  @Test
  void nothingOfALineCountsWhereAPartNamesNothing() {
    assertTrue(
        refused("jump, swim").startsWith("\"swim\" is not in the list."), refused("jump, swim"));
    assertTrue(refused("6").contains("from 1 to 5"), refused("6"));
    assertEquals("Nothing was typed.", refused(" , "));
  }

  @Test
  void anAnswerIsSaidWithItsNames() {
    assertEquals("Jump (X02), Z09", LIST.words(new Value.Texts(List.of("X02", "Z09"))));
  }
}
