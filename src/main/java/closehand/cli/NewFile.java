package closehand.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** A new file with somebody's answers in it: never over another one, open to its owner alone. */
final class NewFile {
  private NewFile() {}

  /** Writes the file and says where it is, or why it is not; gives the exit code. */
  static int write(Path file, byte[] content, Surroundings surroundings) {
    String name = Words.clean(file.toString());
    try {
      create(file, content);
    } catch (FileAlreadyExistsException e) {
      surroundings.error().println("\"" + name + "\" is there already. Choose another name.");
      return ExitCode.CANNOT_CREATE;
    } catch (IOException e) {
      surroundings.error().println("\"" + name + "\" could not be written.");
      return ExitCode.CANNOT_CREATE;
    }
    surroundings.error().println("Written to this file:");
    surroundings.error().println(name);
    surroundings
        .error()
        .println(
            "It is not sealed: readable by you, and by whoever can use this account or take the disk out.");
    return ExitCode.DONE;
  }

  private static void create(Path file, byte[] content) throws IOException {
    Set<OpenOption> options = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    try (OutputStream out =
        Channels.newOutputStream(Files.newByteChannel(file, options, ownerOnly()))) {
      out.write(content);
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (IOException e) {
      if (Files.isRegularFile(file)) {
        Files.delete(file);
      }
      throw e;
    }
  }

  private static FileAttribute<?>[] ownerOnly() {
    return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
        }
        : new FileAttribute<?>[0];
  }
}
