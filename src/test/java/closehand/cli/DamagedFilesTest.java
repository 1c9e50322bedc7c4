package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.casefile.CaseStore;
import closehand.casefile.Passphrases;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Damaged cases met by whole commands: a plain sentence, a lawful exit code, an untouched file. */
class DamagedFilesTest {
  private static final List<Integer> LAWFUL =
      List.of(ExitCode.DONE, ExitCode.BAD_DATA, ExitCode.NO_INPUT, ExitCode.USAGE);

  private static final int OPENED = 400;

  @TempDir private Path folder = Path.of(".");

  /**
   * What every command does with a case first, for many more files than whole commands can take.
   */
  @Test
  void openingADamagedFileLeavesItAndItsFolderAsTheyWere() throws IOException {
    byte[] sound = Files.readAllBytes(Path.of("src/test/resources/cases/schema-2.json"));
    Bank bank = BankSource.load(Optional.empty()).bank().orElseThrow();
    Random random = new Random(20261126L);
    CaseStore store = Cases.at(folder).store();
    Path file = folder.resolve("marsh-wren.json");
    int refused = 0;
    for (int i = 0; i < OPENED; i++) {
      byte[] damaged = damaged(sound, random);
      Files.write(file, damaged);
      CaseStore.Opened opened = store.open("marsh-wren", bank.questionnaire(), Passphrases.NONE);
      refused += opened instanceof CaseStore.Opened.Refused ? 1 : 0;
      assertArrayEquals(damaged, Files.readAllBytes(file), "round " + i);
      try (Stream<Path> files = Files.list(folder)) {
        assertEquals(List.of(file), files.toList(), "round " + i);
      }
    }
    assertTrue(refused > OPENED / 5 && refused < OPENED, "refused " + refused);
  }

  private static byte[] damaged(byte[] sound, Random random) {
    byte[] damaged = sound.clone();
    for (int times = 1 + random.nextInt(3); times > 0; times--) {
      damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
    }
    return damaged;
  }

  @Test
  void noDamageBringsATraceOrChangesTheFile() throws IOException {
    byte[] sound = Files.readAllBytes(Path.of("src/test/resources/cases/schema-2.json"));
    Random random = new Random(20261125L);
    List<String[]> commands =
        List.of(
            new String[] {"summary"},
            new String[] {"export", "--to", "fhir"},
            new String[] {"export", "--to", "answers"});
    for (int i = 0; i < 24; i++) {
      byte[] damaged = damaged(sound, random);
      Path file = Files.write(folder.resolve("marsh-wren.json"), damaged);
      String[] command = commands.get(i % commands.size());
      String[] whole = new String[command.length + 3];
      System.arraycopy(command, 0, whole, 0, command.length);
      whole[command.length] = "marsh-wren";
      whole[command.length + 1] = "--home";
      whole[command.length + 2] = folder.toString();
      World world = World.run("", whole);
      assertTrue(LAWFUL.contains(world.code()), "round " + i + ": " + world.error());
      String said = world.error();
      assertFalse(said.contains("Something went wrong") || said.contains("\tat "), said);
      assertFalse(said.contains("prefers short questions"), "an answer is quoted: " + said);
      assertTrue(said.chars().allMatch(c -> c == '\n' || c >= ' '), "round " + i);
      assertArrayEquals(damaged, Files.readAllBytes(file), "round " + i);
    }
  }
}
