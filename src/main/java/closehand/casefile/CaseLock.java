package closehand.casefile;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Keeps a second window from writing a case.
 *
 * <p>A small file beside the case is locked for as long as the window is open and says who holds
 * it. The system gives the lock back when a process dies, whatever killed it, so a file left behind
 * keeps nobody out. On the systems that only advise (POSIX), this guards against mistakes, not
 * against other people's programs.
 */
public final class CaseLock implements Closeable {
  /**
   * The byte that is locked. It lies far behind the end, so that systems whose locks forbid reading
   * still let others read who holds it.
   */
  private static final long LOCKED_BYTE = 1L << 40;

  private static final int TRIES = 5;

  /**
   * Files locked by this process. Some systems drop all locks of a process on a file when it closes
   * any channel of that file, so a file locked here is never opened a second time.
   */
  private static final Map<Path, Holder> HERE = new ConcurrentHashMap<>();

  private final Path file;
  private final FileChannel channel;

  private CaseLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** What came of asking for a lock. */
  public sealed interface Taking {
    /** It is ours until it is closed. */
    record Taken(CaseLock lock) implements Taking {}

    /** Another window has it. */
    record Held(Holder holder) implements Taking {}

    /** There are no locks to be had in this folder, for instance since it cannot be written. */
    record Unguarded() implements Taking {}
  }

  /** Asks for the lock that lies in this file; the folder must be there. */
  public static Taking take(Path lockFile, Holder me) {
    Path file = lockFile.toAbsolutePath().normalize();
    Holder here = HERE.putIfAbsent(file, me);
    if (here != null) {
      return new Taking.Held(here);
    }
    Taking taking = new Taking.Unguarded();
    try {
      taking = lock(file, me);
    } catch (IOException e) {
      // Without locks the interview goes on all the same; saving will say what is wrong.
    }
    if (!(taking instanceof Taking.Taken)) {
      HERE.remove(file);
    }
    return taking;
  }

  /** Whether this file of a lock was left behind by a window that died. */
  static boolean isLeft(Path lockFile) {
    Path file = lockFile.toAbsolutePath().normalize();
    if (HERE.containsKey(file)) {
      return false;
    }
    Set<OpenOption> options = Set.of(StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    try (FileChannel channel = FileChannel.open(file, options);
        FileLock lock = channel.tryLock(LOCKED_BYTE, 1, /* shared= */ false)) {
      return lock != null;
    } catch (IOException | OverlappingFileLockException e) {
      return false;
    }
  }

  private static Taking lock(Path file, Holder me) throws IOException {
    for (int i = 0; i < TRIES; i++) {
      FileChannel channel = open(file);
      Optional<Object> opened = identity(file);
      FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
      if (lock == null) {
        channel.close();
        return new Taking.Held(holder(file));
      }
      // Whoever had it before may have removed the file between our opening and our locking it.
      if (opened.isPresent() && opened.equals(identity(file))) {
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(me.text().getBytes(StandardCharsets.UTF_8)));
        return new Taking.Taken(new CaseLock(file, channel));
      }
      channel.close();
    }
    return new Taking.Unguarded();
  }

  private static FileChannel open(Path file) throws IOException {
    Set<OpenOption> options =
        Set.of(
            StandardOpenOption.CREATE,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE,
            LinkOption.NOFOLLOW_LINKS);
    return FileChannel.open(file, options, LocalDisk.OWNER_FILE);
  }

  /** What tells one file from another under the same name; the name's presence where that fails. */
  private static Optional<Object> identity(Path file) throws IOException {
    try {
      BasicFileAttributes attributes =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      return Optional.of(Optional.ofNullable(attributes.fileKey()));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  private static Holder holder(Path file) {
    try {
      byte[] bytes = new LocalDisk().read(file, Holder.LONGEST);
      return Holder.read(new String(bytes, StandardCharsets.UTF_8));
    } catch (IOException e) {
      return Holder.NOBODY_KNOWN;
    }
  }

  /** Gives the lock back and removes its file. */
  @Override
  public void close() throws IOException {
    if (!channel.isOpen()) {
      return;
    }
    try (channel) {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // Some systems keep open files; a file left behind keeps nobody out.
    } finally {
      HERE.remove(file);
    }
  }
}
