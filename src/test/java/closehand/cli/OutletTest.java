package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A reader that has had enough is no trouble; a full disk is. */
class OutletTest {
  @TempDir private Path folder = Path.of(".");

  private Outlet failing(String message) {
    OutputStream stream =
        new OutputStream() {
          @Override
          public void write(int one) throws IOException {
            throw new IOException(message);
          }
        };
    return Outlet.over(stream, folder.resolve("none"));
  }

  @Test
  void onlyAClosedPipeIsForgiven() {
    Outlet closed = failing("Broken pipe");
    assertThrows(IOException.class, () -> closed.write('a'));
    assertTrue(closed.closedEarly());
    Outlet full = failing("No space left on device");
    assertThrows(IOException.class, () -> full.write('a'));
    assertFalse(full.closedEarly());
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void aPipeClosedEarlyIsQuiet() throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String line =
        "{ \"$0\" -cp \"$1\" closehand.cli.Closehand check --print; echo code $? >&2; } | head -1";
    Process process =
        new ProcessBuilder("sh", "-c", line, java, System.getProperty("java.class.path")).start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    String error = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(1, TimeUnit.MINUTES));
    assertEquals("code 0\n", error);
    assertTrue(output.startsWith("CORE INTERVIEW"), output);
  }
}
