package closehand.casefile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** What a case store asks of the disk; small, so that tests can let every step of it fail. */
public interface Disk {
  /** Creates a folder and those around it where missing, open to its owner alone. */
  void createFolder(Path folder) throws IOException;

  /** Creates a new empty file in a folder, open to its owner alone, and returns it. */
  Path createTemporary(Path folder, String beginning, String end) throws IOException;

  /** Writes a whole file; what is written may still be on its way to the disk. */
  void write(Path file, byte[] bytes) throws IOException;

  /** Waits until what was written to a file is on the disk. */
  void force(Path file) throws IOException;

  /**
   * Gives a file a second name.
   *
   * @throws IOException if it cannot be done here, as on disks without links
   */
  void link(Path existing, Path other) throws IOException;

  /** Gives a file another name in one step, replacing what has that name. */
  void move(Path from, Path to) throws IOException;

  /**
   * Waits until the names in a folder are on the disk.
   *
   * @throws IOException if the system cannot do that, as those that do not open a folder like a
   *     file
   */
  void forceFolder(Path folder) throws IOException;

  /**
   * The first {@code limit} bytes of a file.
   *
   * @throws NotPlainFile if a folder, link or pipe has this name
   */
  byte[] read(Path file, int limit) throws IOException;

  /** The names in a folder; none if there is no such folder. */
  List<String> names(Path folder) throws IOException;

  /** Removes a file if it is there. */
  void delete(Path file) throws IOException;
}
