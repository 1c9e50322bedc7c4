package closehand.screen.terminal;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * Takes keys from standard input as the full screen does and prints when each was stamped, in
 * milliseconds of the machine's forward clock; {@code docs/measure-keys.sh} holds them against when
 * they were sent.
 */
final class KeyTimes {
  private KeyTimes() {}

  public static void main(String[] arguments) throws InterruptedException {
    BlockingQueue<Arrival> arrivals = new LinkedBlockingQueue<>();
    KeyReader.start(System.in, arrivals);
    System.out.println("ready");
    KeyDecoder decoder = new KeyDecoder();
    Characters characters = new Characters(java.nio.charset.StandardCharsets.UTF_8);
    StringBuilder stamps = new StringBuilder();
    while (arrivals.take() instanceof Arrival.Bytes bytes) {
      for (var key : decoder.feed(characters.of(bytes.bytes()))) {
        if (key.equals(closehand.screen.frame.Key.of('q'))) {
          System.out.println(stamps + "end");
          return;
        }
        stamps.append(bytes.millis()).append(' ');
      }
    }
  }
}
