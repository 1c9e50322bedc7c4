package closehand.json;

import closehand.bank.Path;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The characters of a file, which must be UTF-8; where they are not, the place is told. */
final class Utf8 {
  private Utf8() {}

  /**
   * The text without a byte order mark, or empty with a problem at the first byte that is wrong.
   */
  static Optional<String> read(String file, byte[] bytes, List<Problem> problems) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      problems.add(notUtf8(file, text, in.position()));
      return Optional.empty();
    }
    return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
  }

  private static Problem notUtf8(String file, String before, int byteNumber) {
    int lines = (int) before.chars().filter(c -> c == '\n').count();
    int column = before.length() - before.lastIndexOf('\n');
    return Problem.error(
        new Where(file, lines + 1, column, Path.ROOT),
        "not-utf8",
        "The file is not UTF-8 text (byte " + (byteNumber + 1) + ").",
        "Save it as UTF-8.");
  }
}
