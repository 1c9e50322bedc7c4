package closehand.casefile;

import java.nio.file.FileSystemException;

/**
 * Something that is no plain file, such as a folder, a link or a pipe, stands where a case should.
 */
public final class NotPlainFile extends FileSystemException {
  private static final long serialVersionUID = 1L;

  NotPlainFile(String file) {
    super(file, null, "not a plain file");
  }
}
