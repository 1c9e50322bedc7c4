package closehand.json;

import java.io.IOException;
import java.util.Optional;

/** Where the files of a bank come from: a folder, the program's own jar, or memory. */
public interface BankFiles {
  /**
   * The bytes of one file.
   *
   * @param name a path inside the bank with forward slashes, such as {@code rules/gates.json}
   * @return empty if there is no such file
   * @throws IOException if it is there but cannot be read
   */
  Optional<byte[]> bytes(String name) throws IOException;

  /** How messages name this file. */
  String displayName(String name);
}
