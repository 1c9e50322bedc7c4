package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A case from the offer to seal it to its opening, and what lies on the disk meanwhile. */
class SealedCaseTest {
  private static final String OWN = "four words are enough here";

  @TempDir private Path folder = Path.of(".");

  /** Who asks, how long, then the offer and what follows. */
  private World begins(List<String> secrets, String typed) {
    return World.typed(secrets, "\n\n" + typed, "interview", "--home", folder.toString());
  }

  private String files() throws IOException {
    StringBuilder all = new StringBuilder();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        all.append(file.getFileName()).append('\n');
        all.append(Files.readString(file, StandardCharsets.ISO_8859_1));
      }
    }
    return all.toString();
  }

  private String name() throws IOException {
    return Cases.at(folder).store().names().get(0);
  }

  @Test
  void aDrawnPassphraseIsShownOnceAndOpensTheCase() throws IOException {
    World world = begins(List.of(), "\n\n1\n1\ny\ny\n1\n3\n1\n=wave the flamingo\n2 4\n:q\n");
    assertEquals(ExitCode.DONE, world.code(), world.error());
    String shown = world.output().split("The passphrase of this case:\n\n", -1)[1];
    String words = shown.substring(0, shown.indexOf('\n'));
    assertEquals(6, words.split(" ").length, words);
    assertEquals(2, world.output().split(words, -1).length, "shown once");
    String files = files();
    assertFalse(files.contains("flamingo") || files.contains("QuestionnaireResponse"), files);
    assertFalse(files.contains(words.substring(0, 11)), files);
    assertFalse(files.contains("-player.txt"), files);

    World again =
        World.typed(
            List.of("wrong words altogether", "  " + words.replace(" ", "  ")),
            "2\n2\nq\n",
            "interview",
            name(),
            "--home",
            folder.toString());
    assertEquals(ExitCode.DONE, again.code(), again.error());
    assertTrue(again.error().contains("Wrong passphrase, or the file is damaged."));
    assertTrue(again.output().contains("flamingo"), again.output());
    World page = World.typed(List.of(words), "", "summary", name(), "--home", folder.toString());
    assertEquals(ExitCode.DONE, page.code(), page.error());
    World closed = World.run("", "summary", name(), "--home", folder.toString());
    assertEquals(ExitCode.BAD_DATA, closed.code());
    assertTrue(closed.error().contains("sealed"), closed.error());
  }

  @Test
  void aPassphraseOfOnesOwnMustBeLongAndTypedTwice() throws IOException {
    World world = begins(List.of("short", OWN, "another", OWN, OWN), "2\n1\n:q\n");
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertTrue(world.output().contains("too short"), world.output());
    assertTrue(world.output().contains("The two are not the same."), world.output());
    assertFalse(world.output().contains(OWN));
    assertTrue(files().contains("-----BEGIN PGP MESSAGE-----"));
    World goesOn =
        World.typed(
            List.of(OWN), "1\n1\n1\n:q\n", "interview", name(), "--home", folder.toString());
    assertEquals(ExitCode.DONE, goesOn.code(), goesOn.error());
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(
          List.of(name() + ".previous", name() + ".sealed"),
          left.map(f -> f.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void aCaseInTheClearIsSealedLaterWithEverythingBesideIt() throws IOException {
    World.run(
        "1\n1\ny\ny\n1\n3\n1\n=wave the flamingo\n2 4\n", "interview", "--home", folder.toString());
    String name = name();
    Files.writeString(folder.resolve(name + ".before"), "{ \"flamingo\" : 1 }");
    World world =
        World.typed(
            List.of(OWN, OWN), "5\n2\n1\n:q\n", "interview", name, "--home", folder.toString());
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertFalse(files().contains("flamingo"), files());
    assertFalse(files().contains("-player.txt"), files());
    World opened =
        World.typed(List.of(OWN), "2\n2\nq\n", "interview", name, "--home", folder.toString());
    assertTrue(opened.output().contains("flamingo"), opened.output());
  }

  @Test
  void clearFilesLeftByAMachineThatDiedWhileSealingGoWhenTheCaseIsNextOpened() throws IOException {
    World.typed(List.of(OWN, OWN), "\n\n2\n1\n:q\n", "interview", "--home", folder.toString());
    String name = name();
    Files.writeString(folder.resolve(name + ".json"), "{ \"flamingo\" : 1 }");
    Files.writeString(folder.resolve(name + ".previous"), "{ \"flamingo\" : 1 }");
    World next =
        World.typed(List.of(OWN), "1\n1\n:q\n", "interview", name, "--home", folder.toString());
    assertEquals(ExitCode.DONE, next.code(), next.error());
    assertFalse(files().contains("flamingo"), files());
  }

  @Test
  void refusingToSealIsAChoiceThatTheCaseRemembers() throws IOException {
    World world = begins(List.of(), "3\n1\n:q\n");
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertTrue(files().contains("\"what\" : \"sealingRefused\""), files());
  }
}
