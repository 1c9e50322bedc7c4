package closehand.casefile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Date;
import java.util.HashSet;
import org.bouncycastle.bcpg.CompressionAlgorithmTags;
import org.bouncycastle.bcpg.HashAlgorithmTags;
import org.bouncycastle.bcpg.S2K;
import org.bouncycastle.bcpg.SymmetricKeyAlgorithmTags;
import org.bouncycastle.openpgp.PGPCompressedDataGenerator;
import org.bouncycastle.openpgp.PGPEncryptedDataGenerator;
import org.bouncycastle.openpgp.PGPException;
import org.bouncycastle.openpgp.PGPLiteralData;
import org.bouncycastle.openpgp.PGPLiteralDataGenerator;
import org.bouncycastle.openpgp.operator.PBEKeyEncryptionMethodGenerator;
import org.bouncycastle.openpgp.operator.PGPDigestCalculator;
import org.bouncycastle.openpgp.operator.bc.BcPBEKeyEncryptionMethodGenerator;
import org.bouncycastle.openpgp.operator.bc.BcPGPDataEncryptorBuilder;
import org.bouncycastle.openpgp.operator.bc.BcPGPDigestCalculatorProvider;
import org.junit.jupiter.api.Test;

/** What is sealed opens with its passphrase, unchanged, and in no other way. */
class SealTest {
  private static final char[] WORDS = "kelar modon tibel sawim rohok nelon".toCharArray();
  private static final byte[] CLEAR =
      "{ \"pain\" : \"3 of 10, Grüße \" }\n".repeat(5).getBytes(StandardCharsets.UTF_8);

  /** The least count that is opened, as it is coded (RFC 4880, 3.7.1.3): 16 times 2 to the 19th. */
  private static final int ENOUGH = 208;

  private static final SealKey KEY = SealKey.make(WORDS);
  private final byte[] sealed = Seal.seal(CLEAR, KEY);

  private static byte[] bare(byte[] armoured) throws IOException {
    return Armour.read(armoured).orElseThrow();
  }

  private static void refused(byte[] file, char[] words) {
    Seal.Refused refused = assertThrows(Seal.Refused.class, () -> Seal.open(file, words));
    assertEquals("wrong passphrase, or the file is damaged", refused.getMessage());
    assertEquals(null, refused.getCause());
  }

  @Test
  void itOpensWithItsPassphraseAlone() throws Seal.Refused {
    Seal.Opened opened = Seal.open(sealed, WORDS);
    assertArrayEquals(CLEAR, opened.clear());
    assertTrue(Seal.isSealed(sealed));
    assertFalse(Seal.isSealed(CLEAR));
    assertFalse(new String(sealed, StandardCharsets.ISO_8859_1).contains("pain"));
    refused(sealed, "kelar modon tibel sawim rohok nelol".toCharArray());
    refused(sealed, new char[0]);
    byte[] more = Seal.seal("{}".getBytes(StandardCharsets.UTF_8), opened.key());
    assertArrayEquals("{}".getBytes(StandardCharsets.UTF_8), Seal.open(more, WORDS).clear());
  }

  @Test
  void theSameTwiceLooksDifferent() {
    String one = new String(sealed, StandardCharsets.US_ASCII);
    String two = new String(Seal.seal(CLEAR, KEY), StandardCharsets.US_ASCII);
    int common = 0;
    while (one.charAt(common) == two.charAt(common)) {
      common++;
    }
    // The head with the salt is the same, the random bytes that follow are not.
    assertTrue(common < 64, "common " + common);
  }

  @Test
  void passphrasesInEveryScriptWork() throws Seal.Refused {
    char[] words = "größe 学校 \uD83C\uDFAE und noch mehr".toCharArray();
    byte[] other = Seal.seal(CLEAR, SealKey.make(words));
    assertArrayEquals(CLEAR, Seal.open(other, words).clear());
  }

  @Test
  void everyByteOfTheTextCountsButLineEndsAndTrailingSpace() throws Exception {
    for (int i = 0; i < sealed.length - 1; i++) {
      for (int flip : new int[] {0x01, 0x80}) {
        byte[] damaged = sealed.clone();
        damaged[i] ^= (byte) flip;
        boolean read = opensAsArmour(damaged);
        assertFalse(read, "byte " + i + " with " + flip);
      }
    }
    String mailed = new String(sealed, StandardCharsets.US_ASCII).replace("\n", "\r\n") + "\r\n";
    assertArrayEquals(CLEAR, Seal.open(mailed.getBytes(StandardCharsets.US_ASCII), WORDS).clear());
  }

  private static boolean opensAsArmour(byte[] text) {
    try {
      return Armour.begins(text) && Armour.read(text).isPresent();
    } catch (IOException | RuntimeException e) {
      return false;
    }
  }

  @Test
  void everyByteOfTheMessageCounts() throws Exception {
    byte[] message = bare(sealed);
    assertArrayEquals(CLEAR, Seal.inside(message, KEY));
    int salt = saltStart(message);
    for (int i = 0; i < message.length; i++) {
      // Hash, salt and count only make another key, which is tried below.
      boolean key = i >= salt - 1 && i < salt + 9;
      for (int bit = 0; bit < 8 && !key; bit += 7) {
        byte[] damaged = message.clone();
        damaged[i] ^= (byte) (1 << bit);
        assertRefused(damaged, "byte " + i + " bit " + bit);
      }
    }
    byte[] otherSalt = message.clone();
    otherSalt[salt] ^= 1;
    refused(otherSalt, WORDS);
    byte[] otherHash = message.clone();
    otherHash[salt - 1] = HashAlgorithmTags.SHA512;
    refused(otherHash, WORDS);
    byte[] fewerRounds = message.clone();
    fewerRounds[salt + 8] = 96;
    refused(fewerRounds, WORDS);
  }

  private void assertRefused(byte[] message, String where) {
    boolean opened;
    try {
      Seal.inside(message, KEY);
      opened = true;
    } catch (Seal.Refused | IOException | PGPException | RuntimeException e) {
      opened = false;
    }
    assertFalse(opened, where);
  }

  private int saltStart(byte[] message) {
    byte[] salt = KEY.specifier().getIV();
    int at = 0;
    while (!Arrays.equals(message, at, at + salt.length, salt, 0, salt.length)) {
      at++;
    }
    return at;
  }

  @Test
  void everyTruncationAndEveryAdditionIsRefused() throws Exception {
    byte[] message = bare(sealed);
    for (int length = 0; length < message.length; length++) {
      assertRefused(Arrays.copyOf(message, length), "length " + length);
    }
    byte[] twice = Arrays.copyOf(message, 2 * message.length);
    System.arraycopy(message, 0, twice, message.length, message.length);
    assertRefused(twice, "twice");
    assertRefused(Arrays.copyOf(message, message.length + 1), "one more");
    refused(new byte[0], WORDS);
    refused(new byte[Seal.MOST_SEALED + 1], WORDS);
  }

  /** A message of another form, made with the right passphrase. */
  private static byte[] other(
      int algorithm, boolean integrity, PBEKeyEncryptionMethodGenerator method, byte[] inside)
      throws IOException, PGPException {
    PGPEncryptedDataGenerator generator =
        new PGPEncryptedDataGenerator(
            new BcPGPDataEncryptorBuilder(algorithm)
                .setWithIntegrityPacket(integrity)
                .setSecureRandom(new SecureRandom()));
    generator.setForceSessionKey(false);
    generator.addMethod(method.setSecureRandom(new SecureRandom()));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (OutputStream encrypted = generator.open(out, new byte[4096])) {
      encrypted.write(inside);
    }
    return out.toByteArray();
  }

  private static byte[] packet(byte[] clear) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (OutputStream literal =
        new PGPLiteralDataGenerator()
            .open(out, PGPLiteralData.BINARY, "", clear.length, new Date(0))) {
      literal.write(clear);
    }
    return out.toByteArray();
  }

  private static byte[] zipped(byte[] packets) throws IOException, PGPException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (OutputStream zip =
        new PGPCompressedDataGenerator(CompressionAlgorithmTags.ZLIB).open(out, new byte[4096])) {
      zip.write(packets);
    }
    return out.toByteArray();
  }

  private static PBEKeyEncryptionMethodGenerator method(int hash, int count) throws PGPException {
    PGPDigestCalculator digest = new BcPGPDigestCalculatorProvider().get(hash);
    return new BcPBEKeyEncryptionMethodGenerator(WORDS, digest, count);
  }

  @Test
  void weakerFormsAreRefusedEvenWithTheRightPassphrase() throws Exception {
    int aes = SymmetricKeyAlgorithmTags.AES_256;
    int sha256 = HashAlgorithmTags.SHA256;
    byte[] inside = packet(CLEAR);
    assertArrayEquals(
        CLEAR, Seal.open(other(aes, true, method(sha256, ENOUGH), inside), WORDS).clear());
    assertArrayEquals(
        CLEAR, Seal.open(other(aes, true, method(sha256, ENOUGH), zipped(inside)), WORDS).clear());
    refused(other(aes, true, method(sha256, ENOUGH - 1), inside), WORDS);
    refused(other(aes, true, method(sha256, 96), inside), WORDS);
    refused(other(aes, false, method(sha256, ENOUGH), inside), WORDS);
    refused(other(aes, true, method(HashAlgorithmTags.SHA1, ENOUGH), inside), WORDS);
    refused(
        other(SymmetricKeyAlgorithmTags.TRIPLE_DES, true, method(sha256, ENOUGH), inside), WORDS);
    refused(other(SymmetricKeyAlgorithmTags.AES_128, true, method(sha256, ENOUGH), inside), WORDS);
    S2K.Argon2Params memory = S2K.Argon2Params.memoryConstrainedParameters();
    refused(other(aes, true, new BcPBEKeyEncryptionMethodGenerator(WORDS, memory), inside), WORDS);
    refused(other(aes, true, method(sha256, ENOUGH), "{}".getBytes(StandardCharsets.UTF_8)), WORDS);
    refused(inside, WORDS);
  }

  @Test
  void aBombIsRefused() throws Exception {
    byte[] bomb = zipped(packet(new byte[64_000_000]));
    assertTrue(bomb.length < 100_000);
    PBEKeyEncryptionMethodGenerator method = method(HashAlgorithmTags.SHA256, ENOUGH);
    refused(other(SymmetricKeyAlgorithmTags.AES_256, true, method, bomb), WORDS);
  }

  @Test
  void aForgottenKeyIsGone() {
    SealKey key = SealKey.make(WORDS);
    key.forget();
    assertArrayEquals(new byte[32], key.bytes());
  }

  @Test
  void drawnPassphrasesAreSixWordsOfOneLongListOfDifferentWords() {
    assertTrue(Passphrase.words().size() > 3700);
    assertEquals(Passphrase.words().size(), new HashSet<>(Passphrase.words()).size());
    String drawn = Passphrase.draw(new SecureRandom());
    assertEquals(6, drawn.split(" ").length);
    assertTrue(Passphrase.words().containsAll(Arrays.asList(drawn.split(" "))));
    assertTrue(Passphrase.isLongEnough(drawn.toCharArray()));
    assertFalse(Passphrase.isLongEnough("thirteen char".toCharArray()));
    assertEquals("a b c", new String(Passphrase.kept("  a  b\tc ".toCharArray())));
    assertEquals("", new String(Passphrase.kept(" ".toCharArray())));
  }
}
