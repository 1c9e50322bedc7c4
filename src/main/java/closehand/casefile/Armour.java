package closehand.casefile;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.bouncycastle.bcpg.ArmoredInputStream;
import org.bouncycastle.bcpg.ArmoredOutputStream;

/** The text form of an OpenPGP message, which survives being mailed (RFC 4880, section 6). */
final class Armour {
  private static final String BEGIN = "-----BEGIN PGP MESSAGE-----";
  private static final String HEADER_LINE = "[A-Za-z]+: [^\n]*\n";

  private Armour() {}

  static boolean begins(byte[] file) {
    byte[] begin = BEGIN.getBytes(StandardCharsets.US_ASCII);
    if (file.length < begin.length) {
      return false;
    }
    for (int i = 0; i < begin.length; i++) {
      if (file[i] != begin[i]) {
        return false;
      }
    }
    return true;
  }

  static byte[] of(byte[] message) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ArmoredOutputStream armour = ArmoredOutputStream.builder().clearHeaders().build(out)) {
      armour.write(message);
    }
    return plain(out.toByteArray()).getBytes(StandardCharsets.US_ASCII);
  }

  /**
   * The message in a text; nothing unless the text is exactly what that message looks like, apart
   * from line ends and headers, which mail programs change.
   */
  static Optional<byte[]> read(byte[] text) throws IOException {
    byte[] message =
        ArmoredInputStream.builder().build(new ByteArrayInputStream(text)).readAllBytes();
    String wanted = new String(of(message), StandardCharsets.US_ASCII).stripTrailing();
    String found = plain(text).stripTrailing().replaceFirst("\n(" + HEADER_LINE + ")+\n", "\n\n");
    return found.equals(wanted) ? Optional.of(message) : Optional.empty();
  }

  /** With line feeds alone; bytes beyond ASCII stay different from every ASCII character. */
  private static String plain(byte[] text) {
    return new String(text, StandardCharsets.ISO_8859_1).replace("\r\n", "\n");
  }
}
