package closehand.measure;

import closehand.bank.Stops;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import java.io.IOException;
import java.io.UncheckedIOException;

/** The ten stop signs as the core bank puts them. */
public final class CoreStops {
  private static final Stops STOPS = read();

  private CoreStops() {}

  /** All ten. */
  public static Stops all() {
    return STOPS;
  }

  private static Stops read() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE)
          .bank()
          .flatMap(bank -> bank.tasks())
          .orElseThrow()
          .stops();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
