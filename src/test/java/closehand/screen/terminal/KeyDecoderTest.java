package closehand.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.screen.frame.Key;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What terminals send becomes keys; what nobody knows becomes one unknown key, never a digit. */
class KeyDecoderTest {
  private static final String ESC = "\u001b";

  /** Sequences and the key each stands for, one for each way terminals send it. */
  private static final Map<String, Key> KNOWN = new LinkedHashMap<>();

  static {
    known(Key.Named.UP, "[A", "OA", "[1;1A");
    known(Key.Named.DOWN, "[B", "OB");
    known(Key.Named.RIGHT, "[C", "OC");
    known(Key.Named.LEFT, "[D", "OD");
    known(Key.Named.HOME, "[H", "OH", "[1~", "[7~", "[7;1~");
    known(Key.Named.END, "[F", "OF", "[4~", "[8~");
    known(Key.Named.DELETE, "[3~");
    known(Key.Named.PAGE_UP, "[5~");
    known(Key.Named.PAGE_DOWN, "[6~");
    known(Key.Named.TAB, "[Z", "OI");
    known(Key.Named.HELP, "OP", "[11~", "[[A", "[P");
    known(Key.Named.ENTER, "OM");
    known(Key.Named.SPACE, "O ");
    for (int digit = 0; digit <= 9; digit++) {
      known(Key.of((char) ('0' + digit)), "O" + (char) ('p' + digit));
    }
    known(Key.of('-'), "Om");
    known(Key.of('.'), "On");
    known(Key.of('+'), "Ok");
  }

  private static void known(Key key, String... rests) {
    for (String rest : rests) {
      KNOWN.put(ESC + rest, key);
    }
  }

  /**
   * Sequences this program has no use for: function keys, chords, mouse reports of four kinds, key
   * releases, focus, answers to questions nobody asked, strings.
   */
  private static final List<String> UNKNOWN =
      List.of(
          "[12~",
          "[15~",
          "[17~",
          "[24~",
          "[25~",
          "[34~",
          "[2~",
          "[9~",
          "[29~",
          "[57~",
          "[1;5A",
          "[1;2C",
          "[1;3D",
          "[5;5~",
          "[3;2~",
          "[27;5;49~",
          "[1;2P",
          "[1;5H",
          "[E",
          "OE",
          "OQ",
          "OR",
          "OS",
          "O5P",
          "O2A",
          "[[B",
          "[[E",
          "[<0;12;7M",
          "[<0;12;7m",
          "[<35;1;95M",
          "[<64;3;3M",
          "[<128;5;5m",
          "[32;12;7M",
          "[M !!",
          "[M#12",
          "[49u",
          "[49;1:1u",
          "[50;5u",
          "[57400;1u",
          "[51;1:3u",
          "[13;2u",
          "[I",
          "[O",
          "[24;80R",
          "[1;1R",
          "[?62;1;2;4c",
          "[>0;276;0c",
          "[?1u",
          "[?2004;2$y",
          "[8;24;80t",
          "[4;480;640t",
          "[201~",
          "]11;rgb:1111/2222/3333\u0007",
          "]52;c;MTIz" + ESC + "\\",
          "P1$r0m" + ESC + "\\",
          "P>|term 1.2.3" + ESC + "\\",
          "_G1;OK" + ESC + "\\",
          "^12" + ESC + "\\",
          "X34\u009c",
          "(B",
          ")0",
          "#8",
          "%G",
          "[0;59;68;3;5~",
          "[1;99q",
          "[200;1~",
          "[3@",
          "[3^",
          "[ @",
          "[!p");

  @Test
  void everyKnownSequenceIsItsKeyInOnePieceAndInEveryTwo() {
    KNOWN.forEach(
        (sequence, key) -> {
          assertEquals(List.of(key), new KeyDecoder().feed(sequence), () -> shown(sequence));
          for (int cut = 1; cut < sequence.length(); cut++) {
            KeyDecoder decoder = new KeyDecoder();
            List<Key> keys = new ArrayList<>(decoder.feed(sequence.substring(0, cut)));
            keys.addAll(decoder.feed(sequence.substring(cut)));
            assertEquals(List.of(key), keys, () -> shown(sequence));
          }
        });
  }

  @Test
  void noUnknownSequenceEverBecomesACharacterHoweverItIsSplit() {
    assertTrue(UNKNOWN.size() >= 50);
    for (String rest : UNKNOWN) {
      String sequence = ESC + rest;
      assertNoKeyThatActs(new KeyDecoder(), List.of(sequence), sequence);
      for (int cut = 1; cut < sequence.length(); cut++) {
        List<String> pieces = List.of(sequence.substring(0, cut), sequence.substring(cut));
        assertNoKeyThatActs(new KeyDecoder(), pieces, sequence);
      }
    }
  }

  /** What the terminal tells of the mouse and of the window answers nothing either. */
  private static boolean actsOnNothing(Key key) {
    return key instanceof Key.Unknown || key instanceof Key.Pointer || key instanceof Key.Focus;
  }

  @Test
  void whatTheMouseDoesIsToldWithButtonAndCell() {
    assertEquals(
        List.of(
            new Key.Pointer(Key.Pointer.Doing.PRESSED, 1, 11, 6),
            new Key.Pointer(Key.Pointer.Doing.RELEASED, 1, 11, 6),
            new Key.Pointer(Key.Pointer.Doing.MOVED, 0, 299, 99),
            new Key.Pointer(Key.Pointer.Doing.PRESSED, 5, 0, 0),
            new Key.Pointer(Key.Pointer.Doing.PRESSED, 8, 1, 1),
            new Key.Focus(false),
            new Key.Focus(true)),
        new KeyDecoder()
            .feed(
                "\u001b[<0;12;7M\u001b[<0;12;7m\u001b[<35;300;100M\u001b[<65;1;1M"
                    + "\u001b[<128;2;2M\u001b[O\u001b[I"));
  }

  /** Feeds the pieces and then a 7: nothing before the 7 may act, and the 7 must arrive. */
  private static void assertNoKeyThatActs(
      KeyDecoder decoder, List<String> pieces, String sequence) {
    List<Key> keys = new ArrayList<>();
    pieces.forEach(p -> keys.addAll(decoder.feed(p)));
    assertFalse(keys.isEmpty(), () -> "not finished: " + shown(sequence));
    assertTrue(
        keys.stream().allMatch(KeyDecoderTest::actsOnNothing),
        () -> shown(sequence) + " became " + keys);
    assertEquals(List.of(Key.of('7')), decoder.feed("7"), () -> "after " + shown(sequence));
  }

  @Test
  void aSequenceThatArrivesLateInTwoPiecesIsStillNoCharacter() {
    List<String> all = new ArrayList<>();
    UNKNOWN.stream().filter(r -> "[O]".indexOf(r.charAt(0)) >= 0).forEach(all::add);
    KNOWN.keySet().forEach(k -> all.add(k.substring(1)));
    for (String rest : all) {
      String sequence = ESC + rest;
      for (int cut = 1; cut < sequence.length(); cut++) {
        KeyDecoder decoder = new KeyDecoder();
        List<Key> keys = new ArrayList<>(decoder.feed(sequence.substring(0, cut)));
        keys.addAll(decoder.silence());
        keys.addAll(decoder.feed(sequence.substring(cut)));
        Key meant = KNOWN.getOrDefault(sequence, new Key.Unknown(""));
        keys.removeIf(k -> k == Key.Named.ESCAPE || actsOnNothing(k) || k.equals(meant));
        assertEquals(List.of(), keys, () -> shown(sequence));
      }
    }
  }

  @Test
  void twoSequencesAtOnceAreTwoKeys() {
    for (String first : UNKNOWN) {
      List<Key> keys = new KeyDecoder().feed(ESC + first + ESC + "[B5");
      assertEquals(Key.Named.DOWN, keys.get(keys.size() - 2), () -> shown(first));
      assertEquals(Key.of('5'), keys.get(keys.size() - 1), () -> shown(first));
      assertEquals(3, keys.size(), () -> shown(first) + " became " + keys);
    }
  }

  @Test
  void aSequenceCutOffByAnotherTypesNothing() {
    for (String rest : UNKNOWN) {
      String sequence = ESC + rest;
      for (int cut = 1; cut < sequence.length(); cut++) {
        KeyDecoder decoder = new KeyDecoder();
        List<Key> keys = new ArrayList<>(decoder.feed(sequence.substring(0, cut)));
        keys.addAll(decoder.feed(ESC + "[A"));
        assertTrue(
            keys.stream().noneMatch(k -> k instanceof Key.Typed),
            () -> shown(sequence) + " became " + keys);
      }
    }
  }

  @Test
  void ctrlCGetsOutOfEverything() {
    for (String rest : UNKNOWN) {
      for (int cut = 0; cut < rest.length(); cut++) {
        List<Key> keys = new KeyDecoder().feed(ESC + rest.substring(0, cut) + "\u0003");
        assertEquals(Key.Named.INTERRUPT, keys.get(keys.size() - 1));
      }
    }
    assertEquals(
        List.of(new Key.Pasted("12"), Key.Named.INTERRUPT),
        new KeyDecoder().feed(ESC + "[200~12\u0003"));
  }

  @Test
  void enterGetsOutOfASequenceThatNeverEnds() {
    for (String open : List.of("[", "[1;", "]0;title", "P1", "O", "[<0;1")) {
      List<Key> keys = new KeyDecoder().feed(ESC + open + "\r");
      assertEquals(Key.Named.ENTER, keys.get(keys.size() - 1), open);
    }
  }

  @Test
  void escapeIsAKeyWhenNothingFollows() {
    KeyDecoder decoder = new KeyDecoder();
    assertEquals(List.of(), decoder.feed(ESC));
    assertTrue(decoder.waiting());
    assertEquals(List.of(Key.Named.ESCAPE), decoder.silence());
    assertFalse(decoder.waiting());
    assertEquals(List.of(Key.of('3')), decoder.feed("3"));
    assertEquals(List.of(), decoder.silence());
  }

  @Test
  void escapeTwiceIsTwoKeys() {
    KeyDecoder decoder = new KeyDecoder();
    assertEquals(List.of(Key.Named.ESCAPE), decoder.feed(ESC + ESC));
    assertEquals(List.of(Key.Named.ESCAPE), decoder.silence());
  }

  @Test
  void keysWithAltAreNoKeys() {
    for (char c = '!'; c <= '~'; c++) {
      if ("[]OPX^_".indexOf(c) < 0 && c >= '0') {
        List<Key> keys = new KeyDecoder().feed(ESC + c);
        assertEquals(List.of(new Key.Unknown("Escape " + c)), keys);
      }
    }
  }

  @Test
  void pastedTextIsOneKeyHoweverItIsSplit() {
    String pasted = ESC + "[200~1\r2" + ESC + "[20q\u00fc" + ESC + "[201~";
    Key.Pasted whole = new Key.Pasted("1\r2" + ESC + "[20q\u00fc");
    for (int cut = 1; cut < pasted.length(); cut++) {
      KeyDecoder decoder = new KeyDecoder();
      List<Key> keys = new ArrayList<>(decoder.feed(pasted.substring(0, cut)));
      keys.addAll(decoder.silence());
      keys.addAll(decoder.feed(pasted.substring(cut)));
      keys.remove(Key.Named.ESCAPE);
      assertEquals(List.of(whole), keys);
      assertEquals(List.of(Key.of('4')), decoder.feed("4"));
    }
  }

  @Test
  void aHugePasteEndsAllTheSame() {
    String much = "9".repeat(KeyDecoder.MOST_PASTED * 2);
    KeyDecoder decoder = new KeyDecoder();
    List<Key> keys = decoder.feed(ESC + "[200~" + much + ESC + "[201~8");
    assertEquals(List.of(new Key.Pasted("9".repeat(KeyDecoder.MOST_PASTED)), Key.of('8')), keys);
  }

  @Test
  void plainKeysAreThemselves() {
    assertEquals(
        List.of(
            Key.of('a'),
            Key.Named.SPACE,
            new Key.Typed("\u00fc"),
            new Key.Typed("\ud83d\ude00"),
            Key.Named.ENTER,
            Key.Named.ENTER,
            Key.Named.BACKSPACE,
            Key.Named.BACKSPACE,
            Key.Named.TAB,
            Key.Named.INTERRUPT,
            Key.Named.REPAINT),
        new KeyDecoder().feed("a \u00fc\ud83d\ude00\r\n\b\u007f\t\u0003\f"));
  }

  @Test
  void whatHidesOrSteersIsNoCharacter() {
    for (char c : "\u0000\u0004\u001a\u001c\u0085\u200b\u202e\ue000\ufffd".toCharArray()) {
      List<Key> keys = new KeyDecoder().feed(String.valueOf(c));
      assertTrue(keys.get(0) instanceof Key.Unknown, () -> (int) c + " became " + keys);
    }
  }

  @Test
  void aScreenCanSayWhatArrived() {
    assertEquals(List.of(new Key.Unknown("Escape [ 3 4 ~")), new KeyDecoder().feed(ESC + "[34~"));
  }

  @Test
  void noiseNeverFailsAndCtrlCStillWorks() {
    Random dice = new Random(20260101);
    for (int round = 0; round < 20_000; round++) {
      KeyDecoder decoder = new KeyDecoder();
      StringBuilder noise = new StringBuilder();
      for (int i = dice.nextInt(30); i > 0; i--) {
        noise.append(dice.nextInt(4) == 0 ? '\u001b' : (char) dice.nextInt(0x120));
      }
      decoder.feed(noise);
      decoder.silence();
      List<Key> keys = decoder.feed("\u0003\u0003\u0003\u0003");
      assertEquals(Key.Named.INTERRUPT, keys.get(keys.size() - 1), () -> shown(noise.toString()));
    }
  }

  private static String shown(String sequence) {
    return sequence.replace(ESC, "ESC ");
  }
}
