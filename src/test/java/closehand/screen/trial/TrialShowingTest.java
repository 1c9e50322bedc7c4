package closehand.screen.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.StopSign;
import closehand.measure.CoreStops;
import closehand.measure.trial.Trial;
import closehand.measure.trial.TrialDialogue;
import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** A trial on the full screen. All players are invented. */
class TrialShowingTest {
  private static final ScreenSize SMALL = new ScreenSize(40, 12);

  private final List<Trial> kept = new ArrayList<>();

  private TrialShowing showing(List<Trial> earlier) {
    return new TrialShowing(
        TrialDialogue.on(Trial.begun("2026-11-25"), earlier, CoreStops.all()),
        trial -> {
          kept.add(trial);
          return List.of();
        },
        Glyphs.UNICODE,
        Guards.USUAL);
  }

  /** Keys as typed; {@code E} is Enter, {@code B} Backspace. */
  private static TrialShowing pressing(TrialShowing showing, String keys) {
    for (char key : keys.toCharArray()) {
      showing.press(key == 'E' ? Key.Named.ENTER : key == 'B' ? Key.Named.BACKSPACE : Key.of(key));
    }
    return showing;
  }

  private static String seen(TrialShowing showing) {
    return String.join(" ", showing.frame(new ScreenSize(100, 60)).text()).replaceAll("\\s+", " ");
  }

  /** Takes the line with these words with nothing but Space and Enter. */
  private static void take(TrialShowing showing, String words) {
    for (int i = 0; i < 200; i++) {
      Frame frame = showing.frame(SMALL);
      boolean stands = frame.text().stream().anyMatch(r -> isLine(r, words));
      if (stands) {
        showing.press(Key.Named.ENTER);
        return;
      }
      showing.press(Key.Named.SPACE);
    }
    throw new AssertionError(words + " cannot be reached: " + showing.frame(SMALL).text());
  }

  /** Whether the mark stands on a line with these words; a number must be all there is. */
  private static boolean isLine(String row, String words) {
    String line = row.strip();
    boolean number = words.length() <= 2;
    return line.startsWith(">")
        && (number ? line.substring(1).strip().equals(words) : line.contains(words));
  }

  @Test
  void aWholeTrialWithTheTenDigitsAlone() {
    // pad; then a, b and c for the actions; the rest figures that fill their line.
    String pad = "7" + "44" + "11" + "14" + "0" + "1";
    String game = "7" + "41" + "0" + "1";
    String scene = "7" + "33" + "0" + "1";
    String actions = "71101" + "71201" + "71301" + "0";
    TrialShowing showing =
        pressing(
            showing(List.of()),
            "1" + "1" + pad + "0051" + "2" + "2" + game + scene + actions + "011" + "021" + "021"
                + "011" + "1" + "0121" + "081" + "071" + "091" + "011" + "031" + "031" + "081"
                + "0");
    assertTrue(showing.trial().done(), seen(showing));
    assertEquals("pad", showing.trial().setUp().name());
    assertEquals(List.of("a", "b", "c"), showing.trial().actionNames());
    assertEquals(OptionalInt.of(7), showing.trial().actions().get(1).worked());
    assertEquals(OptionalInt.of(12), showing.trial().minutes());
    assertEquals(showing.trial(), kept.get(kept.size() - 1), "kept after the last answer");
    assertTrue(kept.size() > 15, "and after each before it");
    assertTrue(pressing(showing, "1").over());
  }

  @Test
  void aWholeTrialWithSpaceAndEnterAlone() {
    Trial earlier = pressing(showing(List.of()), "12padEEEEEmoonElapEaEbEcE").trial();
    assertEquals("pad", earlier.setUp().name());
    TrialShowing showing = showing(List.of(earlier));
    for (String line :
        List.of(
            "Yes",
            "here, together",
            "pad",
            "The same",
            "The same",
            "The same",
            "1",
            "2",
            "2",
            "1",
            "None of these",
            "12 minutes",
            "8",
            "7",
            "9",
            "1",
            "3",
            "3",
            "8",
            "Nothing to note")) {
      take(showing, line);
    }
    assertTrue(showing.trial().done(), seen(showing));
    assertEquals(OptionalInt.of(9), showing.trial().actions().get(2).worked());
  }

  @Test
  void nineStopsOnEveryPageAndEveryOneOfTheTenSignsCanBeNamed() {
    for (StopSign sign : StopSign.values()) {
      int place = sign.ordinal();
      String pick = (place < 7 ? "" : "8") + (place % 7 + 1);
      for (String before : List.of("1", "117", "11", "12padEEEE", "1171")) {
        TrialShowing showing = pressing(showing(List.of()), before + "9" + pick);
        assertEquals(Optional.of(sign), showing.trial().stopped(), before + seen(showing));
        assertTrue(seen(showing).contains("Stop here. That is the right thing to do"));
        assertTrue(seen(showing).contains("your own doctor, nurse or clinic"));
      }
    }
  }

  @Test
  void whereNumbersAreTypedStopIsALineAndNinetyNineLeadsThere() {
    TrialShowing showing = pressing(showing(List.of()), "11padE");
    take(showing, "Stop: pain");
    assertTrue(seen(showing).contains("What came?"), seen(showing));
    TrialShowing digits = pressing(showing(List.of()), "11padE999");
    assertTrue(seen(digits).contains("Something else"), seen(digits));
    assertTrue(seen(pressing(digits, "9")).contains("What came?"), seen(digits));
    assertFalse(seen(pressing(digits, "0")).contains("What came?"), "a slip goes on");
  }

  @Test
  void painUpByTwoStopsAndASlipOfTheKeyDoesNot() {
    String begun = "11padE5E22moonElapEaEbEcE0" + "1E2E2E";
    TrialShowing showing = pressing(showing(List.of()), begun);
    assertTrue(seen(showing).contains("play for about 5 minutes"), seen(showing));
    assertTrue(seen(pressing(showing, "031")).contains("Stop here."), seen(showing));
    assertEquals(Optional.of(StopSign.PAIN), showing.trial().stopped());
    TrialShowing slip = pressing(showing(List.of()), begun + "03" + "2" + "01" + "1");
    assertEquals(Optional.empty(), slip.trial().stopped());
    assertTrue(seen(slip).contains("Did any of these come?"), seen(slip));
  }

  @Test
  void backLeadsToTheQuestionBeforeAndHelpSaysWhy() {
    TrialShowing showing = pressing(showing(List.of()), "11padE");
    assertTrue(seen(pressing(showing, "?")).contains("used more"), seen(showing));
    pressing(showing, "0B");
    assertTrue(seen(showing).contains("Which set-up or plan is tried?"), seen(showing));
    assertTrue(pressing(showing(List.of()), "2").over(), "not now is fine");
    TrialShowing closed = showing(List.of());
    closed.press(new Key.Closed());
    assertTrue(closed.over());
  }

  @Test
  void whatIsOnLoanIsTypedAsADay() {
    TrialShowing showing = pressing(showing(List.of()), "12padE5E22" + "2" + "20261220" + "1");
    assertEquals(Optional.of("2026-12-20"), showing.trial().place().backOn());
    TrialShowing gone = pressing(showing(List.of()), "12padE5E22" + "2" + "20261101" + "1");
    assertTrue(seen(gone).contains("a day that is still to come"), seen(gone));
  }

  @Test
  void troubleWithKeepingIsSaidAtTheFoot() {
    TrialShowing showing =
        new TrialShowing(
            TrialDialogue.on(Trial.begun("2026-11-25"), List.of(), CoreStops.all()),
            trial -> List.of("The disk is full."),
            Glyphs.ASCII,
            Guards.USUAL);
    assertTrue(seen(pressing(showing, "11")).contains("The disk is full."));
  }

  @Test
  void everyPageFitsEverySize() {
    for (String keys :
        List.of(
            "",
            "1",
            "11",
            "117",
            "1171",
            "11padE",
            "11padE999",
            "19",
            "1?",
            "12padE5E222",
            "11padE5E22moonElapEaEbEcE01E2E2E1E")) {
      TrialShowing showing = pressing(showing(List.of()), keys);
      for (int columns = 20; columns <= 140; columns += 8) {
        for (int rows = 6; rows <= 46; rows += 4) {
          Frame frame = showing.frame(new ScreenSize(columns, rows));
          assertEquals(rows, frame.rows().size());
        }
      }
      assertTrue(String.join("", showing.frame(SMALL).text()).contains("? help"), keys);
    }
  }
}
