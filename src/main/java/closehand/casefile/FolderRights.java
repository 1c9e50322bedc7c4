package closehand.casefile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** Who may look into a folder, on systems whose files have rights of the POSIX kind. */
public final class FolderRights {
  private static final Set<PosixFilePermission> OWNER =
      PosixFilePermissions.fromString("rwx------");

  private FolderRights() {}

  /** Whether anybody but its owner may list, enter or change it; false where nobody can tell. */
  public static boolean openToOthers(Path folder) {
    try {
      return Files.isDirectory(folder) && !OWNER.containsAll(Files.getPosixFilePermissions(folder));
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }

  /**
   * Takes everybody's rights away but the owner's. A link is left alone, since what it leads to may
   * be somebody else's, and so is what cannot be changed.
   */
  public static void closeToOthers(Path folder) {
    if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS) && openToOthers(folder)) {
      try {
        Files.setPosixFilePermissions(folder, OWNER);
      } catch (IOException e) {
        // It belongs to somebody else; the files in it are open to their owner alone all the same.
      }
    }
  }
}
