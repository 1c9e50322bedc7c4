package closehand.casefile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the files in a folder of cases tell without being opened.
 *
 * @param folder the folder
 * @param disk where it lies
 */
public record CaseTraces(Path folder, Disk disk) {
  /**
   * The cases whose window died before it could close them, the latest first: their lock is there
   * and nobody holds it.
   *
   * @throws IOException if the folder cannot be read
   */
  public List<String> brokenOff() throws IOException {
    CaseStore store = new CaseStore(folder, disk);
    List<String> files = disk.names(folder);
    Map<String, FileTime> saved = new HashMap<>();
    for (String name : store.names()) {
      String lock = name + CaseStore.LOCK_END;
      if (files.contains(lock) && CaseLock.isLeft(folder.resolve(lock))) {
        saved.put(name, Files.getLastModifiedTime(store.where(name)));
      }
    }
    return saved.keySet().stream()
        .sorted(Comparator.comparing(saved::get, Comparator.reverseOrder()))
        .toList();
  }

  /**
   * The names of all files with content of a case, in alphabetical order.
   *
   * @throws IOException if the folder cannot be read
   */
  public List<String> files(String name) throws IOException {
    return disk.names(folder).stream()
        .filter(f -> belongs(f, name) && !f.equals(name + CaseStore.LOCK_END))
        .sorted()
        .toList();
  }

  private static boolean belongs(String file, String name) {
    return file.startsWith(name + ".")
        || file.startsWith(".save-" + name + ".")
        || file.equals(name + "-player.txt")
        || file.equals(name + "-clinician.txt");
  }
}
