package closehand.casefile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Where cases live when nobody says otherwise: the place each system has for a user's data. */
public final class CaseFolder {
  private static final Set<PosixFilePermission> OWNER =
      PosixFilePermissions.fromString("rwx------");

  private CaseFolder() {}

  /**
   * The standard folder.
   *
   * @param environment the environment variables; {@code XDG_DATA_HOME} (only where it is absolute,
   *     after the base directory specification) and {@code APPDATA} are looked at
   * @param system the name of the operating system, as the Java runtime gives it
   * @param home the user's home folder
   */
  public static Path standard(Map<String, String> environment, String system, Path home) {
    return data(environment, system.toLowerCase(Locale.ROOT), home)
        .resolve("closehand")
        .resolve("cases");
  }

  /**
   * Whether others on this computer may list a folder that is there already, and so see the names
   * of its files. Files of cases are open to their owner alone whatever the folder allows. Where
   * rights are not of this kind, and where they cannot be read, nothing is claimed.
   */
  public static boolean showsItsNames(Path folder) {
    try {
      Set<PosixFilePermission> rights = Files.getPosixFilePermissions(folder);
      return rights.contains(PosixFilePermission.GROUP_READ)
          || rights.contains(PosixFilePermission.OTHERS_READ);
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }

  /**
   * Takes the rights of everybody but its owner away from a folder that is this program's own. A
   * link is left alone, since what it leads to may be somebody else's, and so is what cannot be
   * changed.
   */
  public static void closeToOthers(Path folder) {
    try {
      if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)
          && !OWNER.containsAll(Files.getPosixFilePermissions(folder))) {
        Files.setPosixFilePermissions(folder, OWNER);
      }
    } catch (IOException | UnsupportedOperationException e) {
      // The files in it are open to their owner alone all the same.
    }
  }

  private static Path data(Map<String, String> environment, String system, Path home) {
    if (system.startsWith("windows")) {
      return absolute(environment.getOrDefault("APPDATA", ""))
          .orElseGet(() -> home.resolve("AppData").resolve("Roaming"));
    }
    if (system.startsWith("mac")) {
      return home.resolve("Library").resolve("Application Support");
    }
    return absolute(environment.getOrDefault("XDG_DATA_HOME", ""))
        .orElseGet(() -> home.resolve(".local").resolve("share"));
  }

  private static Optional<Path> absolute(String text) {
    try {
      return text.isBlank()
          ? Optional.empty()
          : Optional.of(Path.of(text)).filter(Path::isAbsolute);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
