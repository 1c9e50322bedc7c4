package closehand.casefile;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.SecureRandom;
import java.util.Date;
import org.bouncycastle.bcpg.BCPGInputStream;
import org.bouncycastle.bcpg.ContainedPacket;
import org.bouncycastle.bcpg.HashAlgorithmTags;
import org.bouncycastle.bcpg.S2K;
import org.bouncycastle.bcpg.SymmetricKeyAlgorithmTags;
import org.bouncycastle.bcpg.SymmetricKeyEncSessionPacket;
import org.bouncycastle.openpgp.PGPCompressedData;
import org.bouncycastle.openpgp.PGPEncryptedDataGenerator;
import org.bouncycastle.openpgp.PGPEncryptedDataList;
import org.bouncycastle.openpgp.PGPException;
import org.bouncycastle.openpgp.PGPLiteralData;
import org.bouncycastle.openpgp.PGPLiteralDataGenerator;
import org.bouncycastle.openpgp.PGPPBEEncryptedData;
import org.bouncycastle.openpgp.PGPSessionKey;
import org.bouncycastle.openpgp.PGPSessionKeyEncryptedData;
import org.bouncycastle.openpgp.jcajce.JcaPGPObjectFactory;
import org.bouncycastle.openpgp.operator.PBEKeyEncryptionMethodGenerator;
import org.bouncycastle.openpgp.operator.PGPDataEncryptorBuilder;
import org.bouncycastle.openpgp.operator.jcajce.JcaPGPDigestCalculatorProviderBuilder;
import org.bouncycastle.openpgp.operator.jcajce.JcePGPDataEncryptorBuilder;
import org.bouncycastle.openpgp.operator.jcajce.JceSessionKeyDataDecryptorFactoryBuilder;

/**
 * Seals bytes as an OpenPGP message, and opens such messages.
 *
 * <p>AES-256 with an integrity code, the key made from a passphrase with salt and the highest count
 * (RFC 4880): the strongest form that other programs in use open too. Whatever is not of this form
 * is refused before anything in it is believed.
 */
public final class Seal {
  /** Most bytes that are sealed or opened: what a case may have. */
  static final int MOST_CLEAR = 2_000_001;

  /** Most bytes of a sealed file: armour makes it a third larger. */
  static final int MOST_SEALED = 3_000_000;

  /**
   * Fewest bytes that are hashed to make the key of a message that is opened: an eighth of the
   * highest count. Common practice, no source; programs that count what a tenth of a second does
   * come out above it on today's machines.
   */
  static final long LEAST_HASHED = 8L << 20;

  private static final int BUFFER = 4096;

  /** How a message without armour begins: a packet with tag 3, in either form of length. */
  private static final int NEW_KEY_PACKET = 0xc3;

  private static final int OLD_KEY_PACKET = 0x8c;

  private Seal() {}

  /** A message could not be opened; nobody is told whether it or the passphrase was wrong. */
  public static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    Refused() {
      super("wrong passphrase, or the file is damaged");
    }
  }

  /** What was in a message, and the key it was opened with. */
  public record Opened(byte[] clear, SealKey key) {}

  /** Whether a file looks like an OpenPGP message rather than like a document. */
  public static boolean isSealed(byte[] file) {
    return Armour.begins(file)
        || (file.length > 0
            && ((file[0] & 0xff) == NEW_KEY_PACKET || (file[0] & 0xfc) == OLD_KEY_PACKET));
  }

  /** The message, as text of ASCII characters. */
  public static byte[] seal(byte[] clear, SealKey key) {
    if (clear.length > MOST_CLEAR) {
      throw new IllegalArgumentException("too much to seal");
    }
    try {
      ByteArrayOutputStream message = new ByteArrayOutputStream();
      PGPEncryptedDataGenerator generator =
          new PGPEncryptedDataGenerator(
              new JcePGPDataEncryptorBuilder(SymmetricKeyAlgorithmTags.AES_256)
                  .setWithIntegrityPacket(true)
                  .setSecureRandom(new SecureRandom()));
      generator.setForceSessionKey(false);
      generator.addMethod(new KnownKey(key));
      try (OutputStream encrypted = generator.open(message, new byte[BUFFER]);
          OutputStream literal =
              new PGPLiteralDataGenerator()
                  .open(encrypted, PGPLiteralData.BINARY, "", clear.length, new Date(0))) {
        literal.write(clear);
      }
      return Armour.of(message.toByteArray());
    } catch (IOException | PGPException e) {
      throw new IllegalStateException("sealing in memory cannot fail", e);
    }
  }

  /** Puts a key into a message that was made from the passphrase before. */
  private static final class KnownKey extends PBEKeyEncryptionMethodGenerator {
    private final SealKey key;

    KnownKey(SealKey key) throws PGPException {
      super(
          new char[0],
          new JcaPGPDigestCalculatorProviderBuilder().build().get(HashAlgorithmTags.SHA256));
      this.key = key;
    }

    @Override
    public byte[] getKey(int algorithm) {
      return key.bytes();
    }

    @Override
    public ContainedPacket generate(PGPDataEncryptorBuilder builder, byte[] sessionKey) {
      return SymmetricKeyEncSessionPacket.createV4Packet(
          SymmetricKeyAlgorithmTags.AES_256, key.specifier(), noSessionKey());
    }

    /** The format's way of saying that the passphrase's key is the message's key. */
    @SuppressWarnings("NullAway")
    private static byte[] noSessionKey() {
      return null;
    }

    @Override
    protected byte[] encryptSessionInfo(int algorithm, byte[] wrapping, byte[] session) {
      throw new UnsupportedOperationException();
    }

    @Override
    protected byte[] getEskAndTag(
        int algorithm, int aead, byte[] session, byte[] wrapping, byte[] nonce, byte[] info) {
      throw new UnsupportedOperationException();
    }

    @Override
    protected byte[] generateV6KEK(int algorithm, byte[] key, byte[] info) {
      throw new UnsupportedOperationException();
    }
  }

  /**
   * Opens a message.
   *
   * @throws Refused if it cannot be opened, for whatever reason
   */
  public static Opened open(byte[] file, char[] passphrase) throws Refused {
    if (file.length > MOST_SEALED) {
      throw new Refused();
    }
    try {
      byte[] message = Armour.begins(file) ? Armour.read(file).orElseThrow(Refused::new) : file;
      SealKey key = SealKey.of(passphrase, specifier(message));
      return new Opened(inside(message, key), key);
    } catch (IOException | PGPException | RuntimeException e) {
      // Bouncy Castle answers damage with many kinds of exception; to a reader they are all one.
      throw new Refused();
    }
  }

  /** What a message without armour holds, opened with a key that was made before. */
  static byte[] inside(byte[] message, SealKey key) throws IOException, PGPException, Refused {
    specifier(message);
    return literal(verified(message, key));
  }

  /** How the key is made, if the message is of the one form that is opened. */
  private static S2K specifier(byte[] message) throws IOException, Refused {
    Object head = new BCPGInputStream(new ByteArrayInputStream(message)).readPacket();
    if (!(head instanceof SymmetricKeyEncSessionPacket packet)
        || packet.getVersion() != SymmetricKeyEncSessionPacket.VERSION_4
        || packet.getEncAlgorithm() != SymmetricKeyAlgorithmTags.AES_256
        || packet.getS2K().getType() != S2K.SALTED_AND_ITERATED
        || !isStrong(packet.getS2K().getHashAlgorithm())
        || packet.getS2K().getIterationCount() < LEAST_HASHED
        || hasSessionKey(packet)) {
      throw new Refused();
    }
    return packet.getS2K();
  }

  private static boolean hasSessionKey(SymmetricKeyEncSessionPacket packet) {
    byte[] data = packet.getSecKeyData();
    return data != null && data.length > 0;
  }

  private static boolean isStrong(int hash) {
    return hash == HashAlgorithmTags.SHA256
        || hash == HashAlgorithmTags.SHA384
        || hash == HashAlgorithmTags.SHA512;
  }

  /** What is inside, read to its end and found whole before anything looks at it. */
  private static byte[] verified(byte[] message, SealKey key)
      throws IOException, PGPException, Refused {
    JcaPGPObjectFactory objects = new JcaPGPObjectFactory(message);
    if (!(objects.nextObject() instanceof PGPEncryptedDataList list)
        || list.size() != 1
        || !(list.get(0) instanceof PGPPBEEncryptedData)
        || !list.get(0).isIntegrityProtected()
        || list.get(0).isAEAD()) {
      throw new Refused();
    }
    PGPSessionKeyEncryptedData data = list.extractSessionKeyEncryptedData();
    PGPSessionKey session = new PGPSessionKey(SymmetricKeyAlgorithmTags.AES_256, key.bytes());
    InputStream inside =
        data.getDataStream(new JceSessionKeyDataDecryptorFactoryBuilder().build(session));
    byte[] bytes = inside.readNBytes(MOST_SEALED + 1);
    if (bytes.length > MOST_SEALED || !data.verify() || objects.nextObject() != null) {
      throw new Refused();
    }
    return bytes;
  }

  /** The document inside; a compressed one is unpacked as far as a case may be large. */
  private static byte[] literal(byte[] packets) throws IOException, PGPException, Refused {
    Object object = new JcaPGPObjectFactory(packets).nextObject();
    if (object instanceof PGPCompressedData compressed) {
      object = new JcaPGPObjectFactory(compressed.getDataStream()).nextObject();
    }
    if (!(object instanceof PGPLiteralData data)) {
      throw new Refused();
    }
    byte[] clear = data.getInputStream().readNBytes(MOST_CLEAR + 1);
    if (clear.length > MOST_CLEAR) {
      throw new Refused();
    }
    return clear;
  }
}
