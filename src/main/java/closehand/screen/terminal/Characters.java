package closehand.screen.terminal;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;

/** Turns bytes into characters piece by piece; a character may arrive in two pieces. */
final class Characters {
  private static final int LONGEST_CHARACTER = 16;

  private final CharsetDecoder decoder;
  private ByteBuffer left = ByteBuffer.allocate(0);

  Characters(Charset charset) {
    decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPLACE)
            .onUnmappableCharacter(CodingErrorAction.REPLACE);
  }

  /** The characters that are complete with these bytes. */
  String of(byte[] bytes) {
    ByteBuffer all = ByteBuffer.allocate(left.remaining() + bytes.length);
    all.put(left).put(bytes).flip();
    CharBuffer characters =
        CharBuffer.allocate(
            (int) (all.remaining() * decoder.maxCharsPerByte()) + LONGEST_CHARACTER);
    decoder.decode(all, characters, false);
    left = all.slice();
    return characters.flip().toString();
  }
}
