package closehand.json;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.json.snapshot.BankSnapshot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Makes the snapshot of the embedded bank; run by the build, never by the program. */
public final class SnapshotMaker {
  private SnapshotMaker() {}

  /**
   * Reads the JSON of the embedded bank and writes its snapshot.
   *
   * @param arguments the file to write
   * @throws IllegalStateException if the form of the bank is not sound, which stops the build
   */
  public static void main(String[] arguments) throws IOException {
    BankReader.Result read = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE);
    for (Problem problem : read.problems()) {
      System.err.println(problem);
    }
    Bank bank = read.bank().orElseThrow(() -> new IllegalStateException("the bank is not sound"));
    Files.write(Path.of(arguments[0]), BankSnapshot.write(bank));
  }
}
