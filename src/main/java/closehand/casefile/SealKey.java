package closehand.casefile;

import java.security.SecureRandom;
import java.util.Arrays;
import org.bouncycastle.bcpg.HashAlgorithmTags;
import org.bouncycastle.bcpg.S2K;
import org.bouncycastle.bcpg.SymmetricKeyAlgorithmTags;
import org.bouncycastle.openpgp.PGPException;
import org.bouncycastle.openpgp.operator.jcajce.JcaPGPDigestCalculatorProviderBuilder;
import org.bouncycastle.openpgp.operator.jcajce.JcePBEDataDecryptorFactoryBuilder;

/**
 * The key a passphrase gives together with a salt.
 *
 * <p>Making it is slow on purpose, for whoever guesses passphrases, so it is made once a sitting
 * and used for every save. OpenPGP begins each message with random bytes of its own, so using a key
 * for several messages is what the format is made for (RFC 4880, sections 3.7.1.3 and 5.13).
 */
public final class SealKey {
  /** The highest count that the format has: 65 011 712 bytes hashed (RFC 4880, 3.7.1.3). */
  static final int HIGHEST_COUNT = 255;

  private static final int SALT_BYTES = 8;

  private final S2K specifier;
  private final byte[] key;

  private SealKey(S2K specifier, byte[] key) {
    this.specifier = specifier;
    this.key = key;
  }

  /** A key with a salt of its own. */
  public static SealKey make(char[] passphrase) {
    byte[] salt = new byte[SALT_BYTES];
    new SecureRandom().nextBytes(salt);
    S2K specifier = S2K.saltedAndIteratedS2K(HashAlgorithmTags.SHA256, salt, HIGHEST_COUNT);
    try {
      return of(passphrase, specifier);
    } catch (PGPException e) {
      throw new IllegalStateException("this Java has no SHA-256", e);
    }
  }

  static SealKey of(char[] passphrase, S2K specifier) throws PGPException {
    byte[] key =
        new JcePBEDataDecryptorFactoryBuilder(new JcaPGPDigestCalculatorProviderBuilder().build())
            .build(passphrase)
            .makeKeyFromPassPhrase(SymmetricKeyAlgorithmTags.AES_256, specifier);
    return new SealKey(specifier, key);
  }

  S2K specifier() {
    return specifier;
  }

  byte[] bytes() {
    return key.clone();
  }

  /** Overwrites the key; it cannot be used after that. */
  public void forget() {
    Arrays.fill(key, (byte) 0);
  }
}
