package closehand.strain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What may never be said beside a load: promises, verdicts, chances. Every text is read. */
class PrintableWordsTest {
  private static void assertAllowed(String text) {
    assertEquals(List.of(), ForbiddenWords.in(text), text);
  }

  private static void assertAllAllowed(List<String> texts) {
    assertEquals(List.of(), texts.stream().filter(t -> !ForbiddenWords.in(t).isEmpty()).toList());
  }

  @Test
  void everyTextOfTheLoadIsAllowed() throws IOException {
    List<String> texts = new ArrayList<>(SourceText.of("strain", ""));
    assertTrue(texts.size() > 100, "texts were found: " + texts.size());
    assertTrue(texts.contains(LoadWords.MADE_FOR_WORK), "and joined: " + LoadWords.MADE_FOR_WORK);
    texts.addAll(
        SourceText.of(
            "report",
            "Load",
            "Session",
            "Norm",
            "Asked",
            "SetupSheet",
            "Plan",
            "PlayLimit",
            "Pace"));
    texts.addAll(SourceText.of("json", "LoadWriter"));
    texts.addAll(SourceText.of("measure/norms", ""));
    texts.addAll(SourceText.of("cli", "Norms", "SaidAboutLoad"));
    assertAllAllowed(texts);
  }

  @Test
  void everyTextOfEveryCautionIsAllowed() throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.WHOLE).bank().orElseThrow();
    List<String> texts = new ArrayList<>();
    bank.cautions().forEach(c -> texts.addAll(texts(c)));
    assertTrue(texts.size() > 200, "cautions were read: " + texts.size());
    assertAllAllowed(texts);
  }

  private static List<String> texts(Caution caution) {
    List<String> texts = new ArrayList<>(caution.actions());
    texts.addAll(
        List.of(caution.title(), caution.message(), caution.clinician(), caution.contact()));
    texts.add(caution.brief());
    for (Caution.Variant variant : caution.variants()) {
      texts.addAll(variant.actions());
      texts.addAll(List.of(variant.title(), variant.message(), variant.contact(), variant.brief()));
    }
    return texts;
  }

  /** The test would notice: each of these was written to be caught. */
  @Test
  void whatMayNotBeSaidIsCaught() {
    for (String text :
        List.of(
            "This plan is safe for you.",
            "It will not cause injury.",
            "About 32 % risk of complaints.",
            "A diagnosis of strain.",
            "Your score is 12.",
            "Below normal strength.",
            "Add 5 minutes a week.",
            "You are too weak for this button.",
            "This prevents pain.",
            "A chance of 1 in 3 that it hurts.")) {
      assertFalse(ForbiddenWords.in(text).isEmpty(), text);
    }
    assertAllowed("Some safety questions are still open, so we go carefully.");
  }

  @Test
  void whatMustBeSaidBesideAFigureIsThere() {
    assertTrue(LoadWords.MADE_FOR_WORK.contains("not for your condition"));
    assertTrue(LoadWords.MADE_FOR_WORK.contains("only compare plans"));
    assertTrue(LoadWords.YOUR_OWN_SIGNS.contains("health team come first"));
  }

  @Test
  void everyMethodNamesItsSourceAndItsPeople() {
    for (Method method : Method.values()) {
      assertFalse(method.source().isBlank() || method.madeFor().isBlank());
      assertTrue(LoadWords.source(method).contains("Made for " + method.madeFor()));
      for (Band band : Band.values()) {
        assertFalse(LoadWords.band(method, band).isBlank());
      }
    }
  }

  @Test
  void bandsDifferInWordsNotOnlyInColour() {
    for (Method method : Method.values()) {
      Set<String> words =
          Set.of(
              LoadWords.band(method, Band.LOWER),
              LoadWords.band(method, Band.MIDDLE),
              LoadWords.band(method, Band.UPPER));
      assertEquals(3, words.size());
    }
  }

  @Test
  void driversAreNamedWithTheirPart() {
    assertEquals(
        "the presses a minute of your right thumb",
        LoadWords.driver(new Driver("R.T", Factor.FREQUENCY, 2)));
    assertEquals("the length of each press", LoadWords.driver(new Driver("", Factor.DURATION, 2)));
  }
}
