package closehand.casefile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A disk that fails at one chosen step: either once with an error, or for good, as when the process
 * is killed and nothing that follows happens any more. A write that fails leaves half of the bytes,
 * and so does a death of what was written and never forced.
 */
final class FaultyDisk implements Disk {
  /** The process dies; nothing of its own runs after that. */
  static final class Killed extends RuntimeException {
    private static final long serialVersionUID = 1;
  }

  enum Fault {
    ERROR,
    KILL
  }

  private final Disk disk;
  private final Fault fault;
  private int stepsLeft;
  private boolean dead;
  private final Map<Path, byte[]> unforced = new HashMap<>();

  FaultyDisk(Disk disk, int soundSteps, Fault fault) {
    this.disk = disk;
    this.stepsLeft = soundSteps;
    this.fault = fault;
  }

  /** Whether the chosen step was reached. */
  boolean failed() {
    return stepsLeft < 0;
  }

  private void step() throws IOException {
    if (dead) {
      throw new Killed();
    }
    stepsLeft--;
    if (stepsLeft == -1) {
      if (fault == Fault.KILL) {
        dead = true;
        loseUnforced();
        throw new Killed();
      }
      throw new IOException("invented fault");
    }
  }

  private void loseUnforced() throws IOException {
    for (Map.Entry<Path, byte[]> one : unforced.entrySet()) {
      disk.write(one.getKey(), Arrays.copyOf(one.getValue(), one.getValue().length / 2));
    }
  }

  @Override
  public void createFolder(Path folder) throws IOException {
    step();
    disk.createFolder(folder);
  }

  @Override
  public Path createTemporary(Path folder, String beginning, String end) throws IOException {
    step();
    return disk.createTemporary(folder, beginning, end);
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    if (stepsLeft == 0 && !dead) {
      disk.write(file, Arrays.copyOf(bytes, bytes.length / 2));
    }
    step();
    disk.write(file, bytes);
    unforced.put(file, bytes);
  }

  @Override
  public void force(Path file) throws IOException {
    step();
    disk.force(file);
    unforced.remove(file);
  }

  @Override
  public void link(Path existing, Path other) throws IOException {
    step();
    disk.link(existing, other);
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    step();
    disk.move(from, to);
    byte[] moved = unforced.remove(from);
    if (moved != null) {
      unforced.put(to, moved);
    }
  }

  @Override
  public void forceFolder(Path folder) throws IOException {
    step();
    disk.forceFolder(folder);
  }

  @Override
  public byte[] read(Path file, int limit) throws IOException {
    step();
    return disk.read(file, limit);
  }

  @Override
  public List<String> names(Path folder) throws IOException {
    step();
    return disk.names(folder);
  }

  @Override
  public void delete(Path file) throws IOException {
    step();
    disk.delete(file);
  }
}
