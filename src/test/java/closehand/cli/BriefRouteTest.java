package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The briefest interview, typed line by line. */
class BriefRouteTest {
  @TempDir private Path folder = Path.of(".");

  private World interview(String typed) {
    return World.run(
        typed,
        "interview",
        "--route",
        "brief",
        "--asker",
        "clinician",
        "--home",
        folder.toString());
  }

  private static String opening() {
    return "1\n1\ny\ny\n1\n3\n1\n=hand up\n2\nn\n";
  }

  @Test
  void warningSignsComeFirstAndTheReasonIsSaid() {
    World world = interview(opening() + "1\n");
    assertEquals(ExitCode.UNFINISHED, world.code(), world.error());
    String flat = world.output().replaceAll("\\s+", " ");
    assertTrue(flat.contains("Next: how we meet and what may be written down."), flat);
    assertTrue(flat.contains("Next: a warning sign, since it has to be clear"), flat);
    assertTrue(flat.contains("SAF-02. Question "), flat);
  }

  @Test
  void afterTheScreenWhatTellsMostIsAskedWithItsReason() {
    World world = interview(opening() + "1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n");
    String flat = world.output().replaceAll("\\s+", " ");
    assertTrue(flat.contains(", since it could bring in "), flat);
  }

  @Test
  void withoutTheBriefRouteNothingIsProposed() {
    World world =
        World.run(opening() + "1\n", "interview", "--route", "core", "--home", folder.toString());
    assertFalse(world.output().contains("Next: "), world.output());
  }
}
