package closehand.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where cases live and what they are called. */
class CaseFolderTest {
  private static final Path HOME = Path.of("/home/kit");

  private static String standard(Map<String, String> environment, String system) {
    return CaseFolder.standard(environment, system, HOME).toString();
  }

  @Test
  void linuxFollowsTheBaseDirectorySpecification() {
    assertEquals("/home/kit/.local/share/closehand/cases", standard(Map.of(), "Linux"));
    assertEquals("/data/closehand/cases", standard(Map.of("XDG_DATA_HOME", "/data"), "Linux"));
    for (String unusable : new String[] {"", "  ", "data", "./data", "\0"}) {
      assertEquals(
          "/home/kit/.local/share/closehand/cases",
          standard(Map.of("XDG_DATA_HOME", unusable), "Linux"));
    }
  }

  @Test
  void otherSystemsHaveTheirOwnPlaces() {
    Map<String, String> elsewhere = Map.of("XDG_DATA_HOME", "/data");
    assertEquals(
        "/home/kit/Library/Application Support/closehand/cases", standard(elsewhere, "Mac OS X"));
    assertEquals("/home/kit/AppData/Roaming/closehand/cases", standard(elsewhere, "Windows 11"));
    assertEquals("/roam/closehand/cases", standard(Map.of("APPDATA", "/roam"), "Windows 11"));
  }

  @Test
  void aFolderThatOthersMayListIsTold(@TempDir Path temp) throws IOException {
    Path folder = Files.createDirectory(temp.resolve("cases"));
    for (String open : List.of("rwxr-xr-x", "rwxrwxrwx", "rwxr-----", "rwx---r--")) {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString(open));
      assertTrue(CaseFolder.showsItsNames(folder), open);
    }
    for (String closed : List.of("rwx------", "rwx--x--x")) {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString(closed));
      assertFalse(CaseFolder.showsItsNames(folder), closed);
    }
    assertFalse(CaseFolder.showsItsNames(temp.resolve("not-there")));
  }

  @Test
  void everyNumberHasALawfulNameAndNoTwoShareOne() {
    Set<String> names = new HashSet<>();
    for (int i = 0; i < CaseName.count(); i++) {
      String name = CaseName.of(i);
      assertTrue(CaseName.isLawful(name), name);
      assertTrue(names.add(name), name);
    }
    assertEquals(4096, names.size());
    assertEquals(CaseName.of(5), CaseName.of(5 + 4096));
    assertTrue(CaseName.isLawful(CaseName.of(-1)));
  }
}
