package closehand.json;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A bank in a folder on disk.
 *
 * @param folder the folder that holds {@code bank.json}
 */
public record BankFolder(Path folder) implements BankFiles {

  @Override
  public Optional<byte[]> bytes(String name) throws IOException {
    Path file = folder.resolve(name).normalize();
    if (!file.startsWith(folder.normalize()) || !Files.isRegularFile(file)) {
      return Optional.empty();
    }
    if (Files.size(file) > JsonReader.MAXIMUM_BYTES) {
      return Optional.of(new byte[JsonReader.MAXIMUM_BYTES + 1]);
    }
    return Optional.of(Files.readAllBytes(file));
  }

  @Override
  public String displayName(String name) {
    return folder.resolve(name).toString();
  }
}
