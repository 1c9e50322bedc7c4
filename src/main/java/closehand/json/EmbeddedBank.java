package closehand.json;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** The core bank that travels inside the program. */
public final class EmbeddedBank implements BankFiles {
  private static final String FOLDER = "/question-banks/core/";

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
