package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder for cases that somebody made with looser rights than the program gives. */
class LooseFolderTest {
  private static final String TOLD =
      "Others on this computer can see the names of the files in this folder,"
          + " but not what is in the cases.\n";

  @TempDir private Path temp = Path.of(".");

  private static String rights(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }

  @Test
  void whatOthersSeeIsSaidOnceAndTheCaseIsTheOwnersAlone() throws IOException {
    Path loose = Files.createDirectory(temp.resolve("loose"));
    Files.setPosixFilePermissions(loose, PosixFilePermissions.fromString("rwxr-xr-x"));
    World world = World.run("1\n1\n", "interview", "--home", loose.toString());
    assertEquals(TOLD, world.error());
    String name = Cases.at(loose).store().names().get(0);
    assertEquals("rw-------", rights(loose.resolve(name + ".json")));
    assertEquals("rwxr-xr-x", rights(loose), "somebody else's choice is left as it is");
  }

  @Test
  void ofAFolderThatTheProgramMakesThereIsNothingToSay() throws IOException {
    Path made = temp.resolve("made");
    assertEquals("", World.run("1\n1\n", "interview", "--home", made.toString()).error());
    assertEquals("rwx------", rights(made));
    assertEquals("", World.run("1\n1\n", "interview", "--home", made.toString()).error());
  }
}
