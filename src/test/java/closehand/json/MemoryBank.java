package closehand.json;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A bank in memory.
 *
 * @param files its files by name
 */
record MemoryBank(Map<String, byte[]> files) implements BankFiles {
  /** All files of a folder. */
  static MemoryBank of(Path folder) throws IOException {
    List<Path> found = new ArrayList<>();
    try (Stream<Path> walk = Files.walk(folder)) {
      walk.filter(Files::isRegularFile).forEach(found::add);
    }
    Map<String, byte[]> files = new HashMap<>();
    for (Path path : found) {
      files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
    }
    return new MemoryBank(files);
  }

  /** The same bank with one file replaced. */
  MemoryBank with(String name, byte[] bytes) {
    Map<String, byte[]> replaced = new HashMap<>(files);
    replaced.put(name, bytes);
    return new MemoryBank(replaced);
  }

  @Override
  public Optional<byte[]> bytes(String name) {
    return Optional.ofNullable(files.get(name));
  }

  @Override
  public String displayName(String name) {
    return name;
  }
}
