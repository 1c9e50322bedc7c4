package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Expected output kept in a file; {@code -Dgolden.update=true} writes it afresh. */
final class Golden {
  private Golden() {}

  /** Compares line by line, so that a difference shows as a difference. */
  static void assertMatches(Path file, List<?> lines) throws IOException {
    String text = String.join("\n", lines.stream().map(Object::toString).toList());
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(file, text.isEmpty() ? "" : text + "\n");
    }
    assertEquals(Files.readString(file).strip(), text, () -> "differs from " + file);
  }
}
