package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.CautionClass;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.rules.Warning;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A caution that comes up during an interview says its name once, and what to do. */
class CareNoticeTest {
  private static String notice(String code) throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    Warning care =
        new Warning(bank.caution(code).orElseThrow(), CautionClass.CARE, List.of(), List.of());
    return CareNotice.of(care, Glyphs.UNICODE).replace('\n', ' ');
  }

  @Test
  void aTitleThatSaysTheSameAsTheMessageIsSaidOnce() throws IOException {
    String text = notice("C-FATIGUE");
    assertEquals(1, text.split("You tire within the session", -1).length - 1, text);
    assertTrue(text.contains("What to do: Play in blocks of two thirds"), text);
  }

  @Test
  void anotherTitleStandsBeforeTheMessage() throws IOException {
    String text = notice("C-FAINT");
    assertTrue(
        text.startsWith("Take care: Feeling faint when upright. You may go faint or see grey"),
        text);
  }
}
