package closehand.casefile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * A disk that fails at one chosen step: either once with an error, or for good, as when the process
 * is killed and nothing that follows happens any more. A write that fails leaves half of the bytes,
 * and so does a file that could not be forced: the rest never got to the disk.
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
  private String failedStep = "";
  private boolean dead;

  FaultyDisk(Disk disk, int soundSteps, Fault fault) {
    this.disk = disk;
    this.stepsLeft = soundSteps;
    this.fault = fault;
  }

  /** Whether the chosen step was reached. */
  boolean failed() {
    return stepsLeft < 0;
  }

  /** The name of the step that failed; nothing while none has. */
  String failedStep() {
    return failedStep;
  }

  private boolean failsNow() {
    return stepsLeft == 0 && !dead;
  }

  private void step(String name) throws IOException {
    if (dead) {
      throw new Killed();
    }
    stepsLeft--;
    if (stepsLeft == -1) {
      failedStep = name;
      if (fault == Fault.KILL) {
        dead = true;
        throw new Killed();
      }
      throw new IOException("invented fault");
    }
  }

  @Override
  public void createFolder(Path folder) throws IOException {
    step("createFolder");
    disk.createFolder(folder);
  }

  @Override
  public Path createTemporary(Path folder, String beginning, String end) throws IOException {
    step("createTemporary");
    return disk.createTemporary(folder, beginning, end);
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    if (failsNow()) {
      disk.write(file, Arrays.copyOf(bytes, bytes.length / 2));
    }
    step("write");
    disk.write(file, bytes);
  }

  @Override
  public void force(Path file) throws IOException {
    if (failsNow()) {
      byte[] written = disk.read(file, Integer.MAX_VALUE);
      disk.write(file, Arrays.copyOf(written, written.length / 2));
    }
    step("force");
    disk.force(file);
  }

  @Override
  public void link(Path existing, Path other) throws IOException {
    step("link");
    disk.link(existing, other);
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    step("move");
    disk.move(from, to);
  }

  @Override
  public void forceFolder(Path folder) throws IOException {
    step("forceFolder");
    disk.forceFolder(folder);
  }

  @Override
  public byte[] read(Path file, int limit) throws IOException {
    step("read");
    return disk.read(file, limit);
  }

  @Override
  public List<String> names(Path folder) throws IOException {
    step("names");
    return disk.names(folder);
  }

  @Override
  public void delete(Path file) throws IOException {
    step("delete");
    disk.delete(file);
  }
}
