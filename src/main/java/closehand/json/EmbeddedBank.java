package closehand.json;

import closehand.bank.Bank;
import closehand.json.snapshot.BankSnapshot;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** The core bank that travels inside the program. */
public final class EmbeddedBank implements BankFiles {
  private static final String FOLDER = "/question-banks/core/";
  private static final String SNAPSHOT = "/question-banks/core.snapshot";

  /**
   * The bank as an interview uses it, without the examples of its rules; read from the snapshot
   * that the build makes of the JSON files, or from these where there is none.
   *
   * @throws IOException if the program itself cannot be read
   * @throws IllegalStateException if the files are not sound, which the build would have refused
   */
  public static Bank forUse() throws IOException {
    try (InputStream in = EmbeddedBank.class.getResourceAsStream(SNAPSHOT)) {
      if (in != null) {
        return BankSnapshot.read(in.readAllBytes());
      }
    }
    return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE)
        .bank()
        .orElseThrow(() -> new IllegalStateException("the embedded bank cannot be read"));
  }

  @Override
  public Optional<byte[]> bytes(String name) throws IOException {
    try (InputStream in = EmbeddedBank.class.getResourceAsStream(FOLDER + name)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    }
  }

  @Override
  public String displayName(String name) {
    return "core/" + name;
  }
}
