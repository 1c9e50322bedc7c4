package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares a page with the file kept for it; {@code -Dgolden.update=true} writes it anew. */
final class Golden {
  private static final Path FOLDER = Path.of("src/test/resources/report");

  private Golden() {}

  static void check(String name, String page) throws IOException {
    Path file = FOLDER.resolve(name + ".txt");
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, page);
    }
    assertEquals(Files.readString(file), page, name);
  }
}
