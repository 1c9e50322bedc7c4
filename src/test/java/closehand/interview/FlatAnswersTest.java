package closehand.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.bank.FactType;
import closehand.bank.FlatValue;
import closehand.bank.Option;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Flat values become answers, and whatever does not fit is said in one plain sentence. */
class FlatAnswersTest {
  private static final Where HERE = Where.file("answers.json");

  private static final Bank BANK =
      new Bank(
          Forms.form(
              Forms.section(
                  "ALL",
                  Forms.question("Q1", Forms.yesNo("chat"), Forms.whole("pain.now", 0, 10, "")),
                  Forms.question("Q2", Forms.item("size", new FactType.Amount(12, 23, 1, "cm"))),
                  Forms.question("Q3", Forms.one("side", "left", "right"), steady()),
                  Forms.question("Q4", Forms.several("grip", "none!", "tip", "key")),
                  Forms.question("Q5", Forms.item("label", new FactType.Words(5))),
                  Forms.question("Q6", Forms.list("sites")))),
          List.of(),
          List.of(),
          Map.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(
              new Caution(
                  "C-NECK",
                  List.of(CautionClass.STOP_PART),
                  true,
                  true,
                  "Neck",
                  "Neck.",
                  List.of(),
                  "",
                  "",
                  HERE)),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          "invented");

  private static Forms.Item steady() {
    List<Option> options = new ArrayList<>();
    for (int place : List.of(0, 5, 24)) {
      String code = place == 24 ? "more" : Integer.toString(place);
      options.add(new Option("", code, code, OptionalDouble.of(place), false, HERE));
    }
    return Forms.item("steady", new FactType.OneOf(options));
  }

  private static FlatValue number(double value) {
    return new FlatValue.Number(value, HERE);
  }

  private static FlatValue text(String value) {
    return new FlatValue.Text(value, HERE);
  }

  private static FlatValue texts(String... values) {
    return new FlatValue.Texts(List.of(values), HERE);
  }

  private static FlatValue flag(boolean value) {
    return new FlatValue.Flag(value, HERE);
  }

  private static Optional<Value> read(String fact, FlatValue value) {
    FlatAnswers flat = FlatAnswers.of(BANK, Map.of(fact, value));
    assertEquals(List.of(), flat.problems());
    return flat.answers().value(fact);
  }

  private static void refuse(String fact, FlatValue value, String problem) {
    FlatAnswers flat = FlatAnswers.of(BANK, Map.of(fact, value));
    assertEquals(
        List.of("answers.json " + problem),
        flat.problems().stream().map(Problem::toString).toList());
    assertEquals(Map.of(), flat.answers().byFact());
  }

  @Test
  void everyKindOfAnswer() {
    assertEquals(Optional.of(new Value.Flag(true)), read("chat", flag(true)));
    assertEquals(Optional.of(new Value.Number(7)), read("pain.now", number(7)));
    assertEquals(Optional.of(new Value.Number(18.5)), read("size", number(18.5)));
    assertEquals(Optional.of(new Value.Code("left")), read("side", text("left")));
    assertEquals(
        Optional.of(new Value.Codes(List.of("tip", "key"))), read("grip", texts("key", "tip")));
    assertEquals(Optional.of(new Value.Codes(List.of())), read("grip", texts()));
    assertEquals(Optional.of(new Value.Text("words")), read("label", text("words")));
    assertEquals(Optional.of(new Value.Texts(List.of("a", "b"))), read("sites", texts("a", "b")));
  }

  @Test
  void aScaleTakesItsNumbers() {
    assertEquals(Optional.of(new Value.Code("5")), read("steady", number(5)));
    assertEquals(Optional.of(new Value.Code("5")), read("steady", text("5")));
    assertEquals(Optional.of(new Value.Code("more")), read("steady", number(24)));
    refuse(
        "steady", number(6), "[unknown-value] This is not an answer of \"steady\" (0, 5, more).");
  }

  @Test
  void emptyWordsAreNoAnswer() {
    for (FlatValue empty : List.of(text(""), texts())) {
      assertEquals(Optional.empty(), read("label", empty));
      assertEquals(Optional.empty(), read("sites", empty));
      assertFalse(
          FlatAnswers.of(BANK, Map.of("label", empty)).answers().byFact().containsKey("label"));
    }
  }

  @Test
  void anAnswerWithoutValueKeepsItsReason() {
    FlatAnswers flat = FlatAnswers.of(BANK, Map.of("chat", new FlatValue.Absent("declined", HERE)));
    assertEquals(
        Optional.of(new Answer.Absent(Answer.Reason.DECLINED)), flat.answers().answer("chat"));
    refuse(
        "chat",
        new FlatValue.Absent("bored", HERE),
        "[unknown-value] \"chat\" cannot be absent for that reason."
            + " Say one of unknown, declined, notApplicable, later.");
  }

  @Test
  void whatDoesNotFitIsSaid() {
    refuse(
        "pian.now",
        number(1),
        "[unknown-fact] There is no question \"pian.now\". Did you mean \"pain.now\"?");
    refuse("chat", text("yes"), "[wrong-type] \"chat\" needs true or false.");
    refuse("pain.now", text("7"), "[wrong-type] \"pain.now\" needs a number.");
    refuse("grip", text("tip"), "[wrong-type] \"grip\" needs a list of answers.");
    refuse("side", flag(true), "[wrong-type] \"side\" needs one answer.");
    refuse("label", texts("a"), "[wrong-type] \"label\" needs text.");
    refuse("sites", number(1), "[wrong-type] \"sites\" needs a list of words.");
    refuse("pain.now", number(11), "[out-of-range] \"pain.now\" goes from 0 to 10.");
    refuse("pain.now", number(Double.NaN), "[out-of-range] \"pain.now\" goes from 0 to 10.");
    refuse("pain.now", number(2.5), "[too-many-decimals] \"pain.now\" is a whole number.");
    refuse(
        "size",
        number(18.25),
        "[too-many-decimals] \"size\" has at most 1 digits after the point.");
    refuse(
        "side",
        text("lefd"),
        "[unknown-value] This is not an answer of \"side\" (left, right)."
            + " Did you mean \"left\"?");
    refuse(
        "grip",
        texts("none", "tip"),
        "[exclusive-option] \"grip\" has \"none\" beside other answers."
            + " Keep \"none\" or the others.");
    refuse(
        "grip",
        texts("tip", "tip"),
        "[duplicate-pick] \"grip\" names an answer twice. Keep it once.");
    refuse("label", text("longer"), "[too-long] \"label\" has at most 5 characters. Shorten it.");
  }

  @Test
  void everythingWrongIsFoundAtOnce() {
    FlatAnswers flat =
        FlatAnswers.of(
            BANK, Map.of("b", flag(true), "a", flag(true), "chat", text(""), "side", text("left")));
    assertEquals(
        List.of("wrong-type", "unknown-fact", "unknown-fact"),
        flat.problems().stream().map(Problem::code).toList());
    assertEquals(Optional.of(new Value.Code("left")), flat.answers().value("side"));
  }

  @Test
  void clearedNamesWhatAClinicianLowered() {
    FlatAnswers flat = FlatAnswers.of(BANK, Map.of("cleared", texts("C-NECK")));
    assertEquals(List.of(), flat.problems());
    assertTrue(flat.answers().isLowered("C-NECK"));
    refuse(
        "cleared",
        texts("C-NEKC"),
        "[unknown-caution] There is no caution \"C-NEKC\". Did you mean \"C-NECK\"?");
    refuse(
        "cleared",
        text("C-NECK"),
        "[wrong-type] \"cleared\" needs a list of caution codes. Write it as [\"code\"].");
  }
}
