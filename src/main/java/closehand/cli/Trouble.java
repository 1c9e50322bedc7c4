package closehand.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/** Why something could not be saved, in words; never what was to be saved. */
final class Trouble {
  private Trouble() {}

  /** One or two sentences about what is wrong with the folder of cases. */
  static String of(Throwable e, Path folder) {
    return "Nothing can be saved in " + Words.clean(folder.toString()) + " now: " + why(e, folder);
  }

  private static String why(Throwable e, Path folder) {
    String reason =
        e instanceof FileSystemException f && f.getReason() != null
            ? f.getReason().toLowerCase(Locale.ROOT)
            : String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
    if (reason.contains("space") || reason.contains("quota")) {
      return "the disk is full.";
    }
    if (reason.contains("file too large")) {
      return "this system lets no file grow as large as the case.";
    }
    if (reason.contains("too large")) {
      return "the case has grown larger than can be opened again. Export it, and begin a new one.";
    }
    if (e instanceof AccessDeniedException
        || e instanceof ReadOnlyFileSystemException
        || reason.contains("read-only")
        || reason.contains("permission")) {
      return "the folder may not be written.";
    }
    if (e instanceof NoSuchFileException || !Files.isDirectory(folder)) {
      return "the folder is not there any more. Was a drive taken out?";
    }
    return e instanceof IOException ? "the disk does not answer as it should." : "";
  }
}
