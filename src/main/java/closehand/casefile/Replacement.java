package closehand.casefile;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Replaces a file of a case in one step.
 *
 * <p>The new content is written to a file beside it, forced to the disk and moved into place, and
 * the names in the folder are forced too. Whatever dies in between, there is the old content or the
 * new one. Half-written files carry the name of their case, so that they can be told apart from
 * those of other windows and be swept away by whoever holds the lock.
 */
final class Replacement {
  private static final String BEGINNING = ".save-";
  private static final String END = ".tmp";

  /** Names of cases have no dot, so none is the beginning of another's. */
  private static final String BETWEEN = ".";

  private final Disk disk;
  private final Path folder;
  private final String name;

  /** Replaces files of the case with this name. */
  Replacement(Disk disk, Path folder, String name) {
    this.disk = disk;
    this.folder = folder;
    this.name = name;
  }

  /**
   * Puts new content in the place of a file.
   *
   * @param previous where the old content is kept, if it is
   * @throws IOException if the content is not replaced; the old one is then still there
   */
  void put(byte[] bytes, Path target, Optional<Path> previous) throws IOException {
    Path temporary = disk.createTemporary(folder, BEGINNING + name + BETWEEN, END);
    try {
      disk.write(temporary, bytes);
      disk.force(temporary);
      previous.ifPresent(p -> keep(target, p));
      disk.move(temporary, target);
    } catch (IOException e) {
      deleteQuietly(temporary, e);
      throw e;
    }
    settle();
  }

  /**
   * Waits until the names in the folder are on the disk, where that can be done.
   *
   * <p>That it fails is no reason to say that nothing was saved. Some systems cannot do it for any
   * folder, and the content of each file was forced before it got its name. All that is open then
   * is which of two whole files goes by the name after a power cut in the next moments: the old one
   * or the new one.
   */
  void settle() {
    try {
      disk.forceFolder(folder);
    } catch (IOException e) {
      // Old or new, never neither.
    }
  }

  /** Keeps the old content under another name; that it fails is no reason not to save the new. */
  private void keep(Path target, Path previous) {
    try {
      Path temporary = disk.createTemporary(folder, BEGINNING + name + BETWEEN, END);
      try {
        disk.delete(temporary);
        linkOrCopy(target, temporary);
        disk.move(temporary, previous);
      } finally {
        disk.delete(temporary);
      }
    } catch (IOException e) {
      // The case itself is untouched by this.
    }
  }

  private void linkOrCopy(Path target, Path temporary) throws IOException {
    try {
      disk.link(target, temporary);
    } catch (NoSuchFileException e) {
      throw e;
    } catch (IOException e) {
      byte[] bytes = disk.read(target, Integer.MAX_VALUE);
      Path copy = disk.createTemporary(folder, BEGINNING + name + BETWEEN, END);
      disk.write(copy, bytes);
      disk.force(copy);
      disk.move(copy, temporary);
    }
  }

  private void deleteQuietly(Path temporary, IOException reason) {
    try {
      disk.delete(temporary);
    } catch (IOException e) {
      reason.addSuppressed(e);
    }
  }

  /** Removes what broken-off saves of this case left behind. */
  void sweep() throws IOException {
    for (String file : disk.names(folder)) {
      if (file.startsWith(BEGINNING + name + BETWEEN) && file.endsWith(END)) {
        disk.delete(folder.resolve(file));
      }
    }
  }
}
