package closehand.casefile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** GnuPG, which shares no code with us, opens what we seal, and we open what it seals. */
class GnuPgTest {
  private static final String WORDS = "kelar modon tibel sawim größe \uD83C\uDFAE";
  private static final byte[] CLEAR =
      "{ \"pain\" : \"3 of 10, Grüße\" }\n".repeat(40).getBytes(StandardCharsets.UTF_8);

  @TempDir private Path temp = Path.of(".");

  @BeforeEach
  void gnuPgIsHere() throws IOException, InterruptedException {
    boolean here;
    try {
      here = run("--version") == 0;
    } catch (IOException e) {
      here = false;
    }
    assumeTrue(here, "gpg is not installed here, so it is not asked");
  }

  private int run(String... arguments) throws IOException, InterruptedException {
    Path home = temp.resolve("gnupg");
    if (!Files.exists(home)) {
      Files.createDirectory(
          home, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
    }
    List<String> command = new ArrayList<>(List.of("gpg", "--homedir", home.toString()));
    command.addAll(List.of("--batch", "--yes", "--no-tty", "--pinentry-mode", "loopback"));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command)
        .redirectOutput(temp.resolve("said").toFile())
        .redirectError(temp.resolve("complained").toFile())
        .start()
        .waitFor();
  }

  private Path words(String words) throws IOException {
    return Files.writeString(temp.resolve("words"), words + "\n");
  }

  @Test
  void itOpensWhatWeSeal() throws Exception {
    Path sealed = temp.resolve("case.sealed");
    Files.write(sealed, Seal.seal(CLEAR, SealKey.make(WORDS.toCharArray())));
    int code = run("--passphrase-file", words(WORDS).toString(), "--decrypt", sealed.toString());
    assertEquals(0, code, Files.readString(temp.resolve("complained")));
    assertArrayEquals(CLEAR, Files.readAllBytes(temp.resolve("said")));
    assertNotEquals(
        0, run("--passphrase-file", words("other").toString(), "--decrypt", sealed.toString()));
  }

  @Test
  void weOpenWhatItSealsWithOurSettings() throws Exception {
    Path clear = Files.write(temp.resolve("clear"), CLEAR);
    for (String form : List.of("--armor", "--no-armor")) {
      Path sealed = temp.resolve("sealed" + form);
      int code =
          run(
              "--passphrase-file",
              words(WORDS).toString(),
              "--cipher-algo",
              "AES256",
              "--s2k-mode",
              "3",
              "--s2k-digest-algo",
              "SHA256",
              "--s2k-count",
              "65011712",
              form,
              "--output",
              sealed.toString(),
              "--symmetric",
              clear.toString());
      assertEquals(0, code, Files.readString(temp.resolve("complained")));
      byte[] bytes = Files.readAllBytes(sealed);
      assertArrayEquals(CLEAR, Seal.open(bytes, WORDS.toCharArray()).clear(), form);
      assertThrows(Seal.Refused.class, () -> Seal.open(bytes, "other".toCharArray()), form);
    }
  }

  @Test
  void weRefuseWhatItSealsWithWeakerSettings() throws Exception {
    Path clear = Files.write(temp.resolve("clear"), CLEAR);
    Path sealed = temp.resolve("weak");
    int code =
        run(
            "--passphrase-file", words(WORDS).toString(),
            "--cipher-algo", "AES128",
            "--s2k-mode", "1",
            "--output", sealed.toString(),
            "--symmetric", clear.toString());
    assertEquals(0, code, Files.readString(temp.resolve("complained")));
    byte[] bytes = Files.readAllBytes(sealed);
    assertThrows(Seal.Refused.class, () -> Seal.open(bytes, WORDS.toCharArray()));
  }
}
