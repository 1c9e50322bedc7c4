package closehand.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Standard output. Notes whether whoever read it has had enough and closed the pipe, as {@code
 * head} does: that is no trouble, unlike a full disk.
 */
final class Outlet extends OutputStream {
  private static final String PIPE = "pipe";

  private final OutputStream stream;
  private final Path link;
  private volatile boolean closedEarly;

  private Outlet(OutputStream stream, Path link) {
    this.stream = stream;
    this.link = link;
  }

  /** Standard output of this process. */
  static Outlet ofProcess() {
    return new Outlet(
        new FileOutputStream(FileDescriptor.out), Path.of("/proc", "self", "fd", "1"));
  }

  /** The same over another stream; the link says where it leads, where there is such a link. */
  static Outlet over(OutputStream stream, Path link) {
    return new Outlet(stream, link);
  }

  /** Whether the reader closed the pipe before all was written. */
  boolean closedEarly() {
    return closedEarly;
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int count) throws IOException {
    try {
      stream.write(bytes, from, count);
    } catch (IOException e) {
      closedEarly |= isPipe(e);
      throw e;
    }
  }

  @Override
  public void flush() throws IOException {
    stream.flush();
  }

  /** Systems word it in their own language, so where the output leads is looked at as well. */
  private boolean isPipe(IOException trouble) {
    if (String.valueOf(trouble.getMessage()).toLowerCase(Locale.ROOT).contains(PIPE)) {
      return true;
    }
    try {
      return Files.readSymbolicLink(link).toString().startsWith(PIPE + ":");
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }
}
