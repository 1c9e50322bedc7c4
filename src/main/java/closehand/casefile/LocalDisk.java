package closehand.casefile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;

/** The disk of this machine. */
public class LocalDisk implements Disk {
  static final FileAttribute<?>[] OWNER_FILE = owner("rw-------");
  private static final FileAttribute<?>[] OWNER_FOLDER = owner("rwx------");

  /** Rights for the owner alone; where files have none of this kind, the profile's own rights. */
  private static FileAttribute<?>[] owner(String rights) {
    boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    return posix
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
        }
        : new FileAttribute<?>[0];
  }

  @Override
  public void createFolder(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder, OWNER_FOLDER);
    }
  }

  @Override
  public Path createTemporary(Path folder, String beginning, String end) throws IOException {
    return Files.createTempFile(folder, beginning, end, OWNER_FILE);
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
    }
  }

  @Override
  public void force(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  @Override
  public void link(Path existing, Path other) throws IOException {
    try {
      Files.createLink(other, existing);
    } catch (UnsupportedOperationException e) {
      throw new FileSystemException(other.toString(), existing.toString(), "no links here");
    }
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
  }

  @Override
  public void forceFolder(Path folder) throws IOException {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    }
  }

  @Override
  public byte[] read(Path file, int limit) throws IOException {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)
        && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      // Reading a pipe could wait for ever, and a link can lead anywhere.
      throw new NotPlainFile(file.toString());
    }
    try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
      return in.readNBytes(limit);
    }
  }

  @Override
  public List<String> names(Path folder) throws IOException {
    List<String> names = new ArrayList<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
      for (Path entry : entries) {
        Path name = entry.getFileName();
        if (name != null) {
          names.add(name.toString());
        }
      }
    } catch (NoSuchFileException | NotDirectoryException e) {
      return List.of();
    }
    return names;
  }

  @Override
  public void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
  }
}
