package closehand.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.FactType;
import closehand.bank.Field;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type, and what it means. */
class EntryTest {
  private static final FactType SEAT =
      Forms.one("seat", "deskChair", "sofa", "bed", "standing").field().type();
  private static final FactType SHAKE = Forms.one("shake", "0", "5", "20", "50").field().type();
  private static final FactType HOLDS =
      Forms.several("grip", "none!", "power", "tip", "key").field().type();
  private static final FactType GOALS = Forms.several("goal", "relax", "compete").field().type();
  private static final FactType REACH = new FactType.Amount(0, 60, 0, "cm");
  private static final FactType HAND = new FactType.Amount(12, 23, 1, "cm");

  @ParameterizedTest
  @CsvSource({
    "1,deskChair",
    "4,standing",
    "SOFA,sofa",
    "say bed,bed",
    "st,standing",
    "Say d,deskChair"
  })
  void oneOption(String typed, String code) {
    assertEquals(new Value.Code(code), read(SEAT, typed));
  }

  @ParameterizedTest
  @CsvSource({"1,0", "4,50", "20,20", "50,50", "0,0", "5,5"})
  void aNumberIsTheNumberShownBeforeItIsACode(String typed, String code) {
    assertEquals(new Value.Code(code), read(SHAKE, typed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"5", "99999999999", "chair", "1 2", "-1", "", "   "})
  void whatIsNoOptionIsRefusedWithTheOptions(String typed) {
    assertTrue(
        refusal(SEAT, typed)
            .contains("Please pick one: 1 Say deskChair, 2 Say sofa, 3 Say bed, 4 Say standing."));
  }

  @Test
  void beginningsThatFitTwiceAreRefused() {
    assertTrue(refusal(SEAT, "s").startsWith("\"s\" fits more than one answer."));
    assertTrue(refusal(SEAT, "say").startsWith("\"say\" fits more than one answer."));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2 3", "3,2", "tip, power", "tip power", " 3 , say power ", "2, 3"})
  void severalOptionsInAnyOrder(String typed) {
    assertEquals(new Value.Codes(List.of("power", "tip")), read(HOLDS, typed));
  }

  @Test
  void noneIsTheOptionThatSaysSoOrNoOption() {
    assertEquals(new Value.Codes(List.of("none")), read(HOLDS, "none"));
    assertEquals(new Value.Codes(List.of("none")), read(HOLDS, "1"));
    assertEquals(new Value.Codes(List.of()), read(GOALS, "None"));
  }

  @Test
  void noneGoesWithNothingElseAndNothingIsNamedTwice() {
    assertTrue(refusal(HOLDS, "1 2").contains("cannot go together"));
    assertTrue(refusal(HOLDS, "tip 3").contains("there twice"));
    assertTrue(refusal(HOLDS, "2 9").contains("Please pick any of these"));
    assertTrue(refusal(HOLDS, ",").contains("Please pick any of these"));
  }

  @ParameterizedTest
  @CsvSource({"y,true", "Yes,true", "1,true", "N,false", "no,false", "2,false"})
  void yesAndNo(String typed, boolean value) {
    assertEquals(new Value.Flag(value), read(new FactType.YesNo(), typed));
    assertEquals("Please answer yes or no.", refusal(new FactType.YesNo(), "maybe"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"12;12", "12 cm;12", "12CM;12", "0;0", "-0;0", "12.0;12", "060;60"})
  void wholeNumbers(String typed, double value) {
    assertEquals(new Value.Number(value), read(REACH, typed));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"12.5;12.5", "12,5;12.5", "17;17", "22,9 cm;22.9"})
  void decimalsWithPointOrComma(String typed, double value) {
    assertEquals(new Value.Number(value), read(HAND, typed));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"61", "-1", "12.5", "1e1", "0x10", "NaN", "1.2.3", "12 13", "about 5", "5.", "cm"})
  void numbersThatDoNotFitAreRefusedWithTheRange(String typed) {
    assertEquals("Please give a whole number from 0 to 60 cm.", refusal(REACH, typed));
  }

  @Test
  void tooManyDecimalsAreRefused() {
    assertEquals(
        "Please give a number from 12 to 23 cm, with at most 1 decimal.", refusal(HAND, "12.55"));
  }

  @Test
  void aUnitOfOneIsNotMistakenForADigit() {
    assertEquals(new Value.Number(1), read(new FactType.Amount(0, 30, 0, "1"), "1"));
    assertEquals(new Value.Number(21), read(new FactType.Amount(0, 30, 0, "1"), "21"));
    assertEquals(new Value.Number(30), read(new FactType.Amount(0, 60, 0, "min"), "30 minutes"));
    assertEquals(new Value.Number(40), read(new FactType.Amount(0, 100, 0, "%"), "40%"));
  }

  @Test
  void wordsAreCleanedTrimmedAndLimited() {
    FactType words = new FactType.Words(20);
    assertEquals(new Value.Text("walk  and fight"), read(words, " walk\t\u001band fight\n"));
    assertEquals(new Value.Text("caf\u00e9"), read(words, "caf\u00e9\u200b\u202e"));
    assertEquals("Please write at most 20 characters.", refusal(words, "x".repeat(21)));
    assertTrue(refusal(words, "\u0007").startsWith("Nothing was typed."));
  }

  @Test
  void listsAreParted() {
    FactType list = new FactType.WordList();
    assertEquals(new Value.Texts(List.of("FPA01", "jump high")), read(list, "FPA01, jump high,"));
    assertTrue(refusal(list, "a, a").contains("there twice"));
    assertTrue(refusal(list, "a," + "b".repeat(201)).contains("at most 200 characters"));
  }

  @Test
  void oneLineFillsSeveralFieldsOfAKind() {
    List<Field> digits = List.of(press("T").field(), press("I").field(), press("M").field());
    assertEquals(
        new Entry.Line.Filled(
            List.of(
                new Entry.Line.For("press.T", new Value.Code("light")),
                new Entry.Line.For("press.M", new Value.Code("none")))),
        Entry.readLine(digits, "light - 1"));
    assertEquals(3, filled(digits, "1, 2, 3").size());
    assertEquals(3, filled(digits, "1,2,3").size());
    assertEquals(1, filled(digits, "say light").size());
    assertEquals("There are 4 answers for 3 places.", notRead(digits, "1 2 3 1"));
    assertTrue(notRead(digits, "1 9").startsWith("Label of press.I: Please pick one"));
    assertTrue(notRead(digits, "9").startsWith("Please pick one"));
  }

  @Test
  void aLineOfNumbersKeepsDecimalCommas() {
    List<Field> sizes =
        List.of(Forms.item("size.L", HAND).field(), Forms.item("size.R", HAND).field());
    assertEquals(
        new Entry.Line.Filled(
            List.of(
                new Entry.Line.For("size.L", new Value.Number(17.5)),
                new Entry.Line.For("size.R", new Value.Number(18)))),
        Entry.readLine(sizes, "17,5, 18"));
  }

  @Test
  void aLineForOneFieldOfManyPicksIsOneAnswer() {
    List<Field> grips =
        List.of(Forms.item("grip.L", HOLDS).field(), Forms.item("grip.R", HOLDS).field());
    assertEquals(
        new Entry.Line.Filled(
            List.of(new Entry.Line.For("grip.L", new Value.Codes(List.of("power", "tip"))))),
        Entry.readLine(grips, "2 3"));
    assertTrue(notRead(grips, "2 9").contains("Please pick any"));
  }

  private static Forms.Item press(String digit) {
    return Forms.one("press." + digit, "none", "touch", "light");
  }

  private static Value read(FactType type, String typed) {
    return assertInstanceOf(Entry.Read.class, Entry.read(type, typed)).value();
  }

  private static String refusal(FactType type, String typed) {
    return assertInstanceOf(Entry.Refused.class, Entry.read(type, typed)).sentence();
  }

  private static List<Entry.Line.For> filled(List<Field> fields, String typed) {
    return assertInstanceOf(Entry.Line.Filled.class, Entry.readLine(fields, typed)).values();
  }

  private static String notRead(List<Field> fields, String typed) {
    return assertInstanceOf(Entry.Line.NotRead.class, Entry.readLine(fields, typed)).sentence();
  }
}
