package closehand.measure.practice;

import closehand.bank.StopSign;
import closehand.bank.Stops;
import java.util.Optional;

/**
 * Why a run ended early: one of the ten signs that end everything at once, or something that says
 * nothing of the player.
 *
 * @param sign the sign, where it was one
 * @param code its name in files
 */
public record StopReason(Optional<StopSign> sign, String code) {
  /** The timed work of the day is done. */
  public static final StopReason TIME = new StopReason(Optional.empty(), "time");

  /** The terminal was closed. */
  public static final StopReason CLOSED = new StopReason(Optional.empty(), "closed");

  /** One of the ten signs. */
  public static StopReason of(StopSign sign) {
    return new StopReason(Optional.of(sign), sign.code());
  }

  /** In the player's words, the beginning of a sentence. */
  public String words(Stops stops) {
    return sign.map(stops::words)
        .orElse(
            equals(TIME)
                ? "Twelve minutes of timed work are enough for one day"
                : "The terminal was closed");
  }

  /** Whether the warning signs are asked again after it, before anything else. */
  public boolean asksAgain() {
    return sign.isPresent();
  }

  /** The reason with this name in files, also one that older cases have. */
  public static Optional<StopReason> named(String name) {
    return name.equals(TIME.code)
        ? Optional.of(TIME)
        : name.equals(CLOSED.code) ? Optional.of(CLOSED) : StopSign.named(name).map(StopReason::of);
  }
}
