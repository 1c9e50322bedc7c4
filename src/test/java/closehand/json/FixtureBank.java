package closehand.json;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * The tiny invented bank with some of its files replaced by those of another folder.
 *
 * <p>Beside plain replacements that folder may hold {@code NAME.missing}, which takes the file
 * away, and {@code NAME.padded}, which holds the number of spaces to put after the tiny bank's own
 * file.
 *
 * @param folder the replacements
 */
record FixtureBank(Path folder) implements BankFiles {
  static final Path BANKS = Path.of("src", "test", "resources", "banks");
  static final Path TINY = BANKS.resolve("tiny");

  @Override
  public Optional<byte[]> bytes(String name) throws IOException {
    if (Files.exists(folder.resolve(name + ".missing"))) {
      return Optional.empty();
    }
    Path padding = folder.resolve(name + ".padded");
    if (Files.exists(padding)) {
      int spaces = Integer.parseInt(Files.readString(padding).strip());
      byte[] own = Files.readAllBytes(TINY.resolve(name));
      byte[] padded = Arrays.copyOf(own, own.length + spaces);
      Arrays.fill(padded, own.length, padded.length, " ".getBytes(StandardCharsets.US_ASCII)[0]);
      return Optional.of(padded);
    }
    Path replacement = folder.resolve(name);
    Path file = Files.isRegularFile(replacement) ? replacement : TINY.resolve(name);
    return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
  }

  @Override
  public String displayName(String name) {
    return name;
  }
}
