package closehand.measure.practice;

import java.util.List;
import java.util.Optional;

/**
 * What a run tells of each input. Times are differences within one person; no time by itself means
 * anything, since it carries the delay of screen and keyboard.
 *
 * @param rounds finished rounds that count; the first is for warming up
 * @param usualMillis the person's own middle of all inputs, for turning shares into milliseconds
 * @param missShare misses of all presses, 0 to 1
 * @param dropShare how much slower the last round was than the first that counts, over all inputs;
 *     below 0 where it was quicker
 * @param inputs one a practised input
 */
public record Findings(
    int rounds, double usualMillis, double missShare, double dropShare, List<OfInput> inputs) {
  /** Copies the list. */
  public Findings {
    inputs = List.copyOf(inputs);
  }

  /** What is said where a run was too short. */
  public static final Findings NOTHING = new Findings(0, 0, 0, 0, List.of());

  /** A number and how far it may be off: two times out of three the truth lies this near. */
  public record About(double value, double error) {}

  /**
   * What is known of one input.
   *
   * @param input its id
   * @param prompts prompts for it that count
   * @param timed presses that were timed
   * @param misses prompts whose key did not come, or came only after a long while
   * @param beside misses that hit an input right beside it
   * @param difference milliseconds more (or, below 0, less) than the person's usual
   * @param missShare misses of a prompt, 0 to 1
   * @param drop how much slower it got from the first counted round to the last, as a share
   * @param held presses that were held so long that the key came again
   * @param bounced presses that came twice at once
   * @param along presses with which another key came along
   */
  public record OfInput(
      String input,
      int prompts,
      int timed,
      int misses,
      int beside,
      About difference,
      About missShare,
      About drop,
      int held,
      int bounced,
      int along) {}

  /** What is known of this input. */
  public Optional<OfInput> of(String input) {
    return inputs.stream().filter(i -> i.input().equals(input)).findFirst();
  }
}
