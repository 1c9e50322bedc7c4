package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The reasons that a clinician reads are sentences, not the bank's own shorthand. */
class PlainReasonsTest {
  /** Bare levels, names of facts and classes, numbers of other rules, points. */
  private static final Pattern SHORTHAND =
      Pattern.compile(
          "\\(\\d\\)|tap10|\\bclass(es)? \\d|\\b[Ss]cored \\d|\\b[Rr]ole [a-z]|\\bR\\d{3}"
              + "|[+]\\d|STOP-|sameness|One more point|\\beffectors?\\b|set the digit"
              + "|\\b[0-4] (to|or) [0-4]\\b(?! (cm|mm|N|s|weeks)\\b)");

  @Test
  void noReasonForAClinicianSpeaksInShorthand() throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    List<String> found =
        bank.rules().stream()
            .filter(r -> SHORTHAND.matcher(r.clinicianReason().orElse("")).find())
            .map(r -> r.id() + ": " + r.clinicianReason().orElse(""))
            .toList();
    assertEquals(List.of(), found);
    assertTrue(bank.rules().stream().anyMatch(r -> r.clinicianReason().isPresent()));
  }

  @Test
  void shorthandIsKnownAndPlainWordsAreNot() {
    for (String terse :
        List.of("Moves with neighbours only (1).", "Press class 1 or 2.", "Adds to R085a.")) {
      assertTrue(SHORTHAND.matcher(terse).find(), terse);
    }
    assertTrue(!SHORTHAND.matcher("A shake of 5 mm or more, up to 0.75 N.").find());
  }
}
