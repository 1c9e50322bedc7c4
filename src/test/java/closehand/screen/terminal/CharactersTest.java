package closehand.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.screen.frame.ScreenSize;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class CharactersTest {
  @Test
  void aCharacterMayArriveByteByByte() {
    String text = "1\u00fc\u624b\ud83d\ude002";
    Characters characters = new Characters(StandardCharsets.UTF_8);
    StringBuilder read = new StringBuilder();
    for (byte one : text.getBytes(StandardCharsets.UTF_8)) {
      read.append(characters.of(new byte[] {one}));
    }
    assertEquals(text, read.toString());
  }

  @Test
  void aByteThatIsNoCharacterNeverStopsTheNext() {
    byte[] broken = {'1', (byte) 0xff, (byte) 0xc3, '2', '3'};
    assertEquals("1\ufffd\ufffd23", new Characters(StandardCharsets.UTF_8).of(broken));
    assertEquals("1\ufffd\ufffd23", new Characters(StandardCharsets.US_ASCII).of(broken));
  }

  @Test
  void aSizeNobodyKnowsIsTheUsualOne() {
    assertEquals(new ScreenSize(132, 43), TerminalSettings.size("43 132\n"));
    for (String none : new String[] {"", "0 0", "24", "a b", "24 80 1", "-1 5", "99999 80"}) {
      assertEquals(ScreenSize.USUAL, TerminalSettings.size(none));
    }
  }
}
