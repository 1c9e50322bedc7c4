package closehand.bank;

import java.util.List;
import java.util.Optional;

/**
 * How a bank puts the stop signs.
 *
 * @param all each sign once, in the order in which they are offered
 */
public record Stops(List<TaskBook.Stop> all) {
  /** Takes a copy. */
  public Stops {
    all = List.copyOf(all);
  }

  /**
   * What the bank says of a sign; one that it does not name, which the check of a bank refuses, has
   * its name for words and nothing that follows.
   */
  public TaskBook.Stop of(StopSign sign) {
    return named(sign.code())
        .orElseGet(
            () ->
                new TaskBook.Stop(sign, sign.code(), List.of(), true, false, Where.file("tasks")));
  }

  /** A few words for a sign, the beginning of a sentence. */
  public String words(StopSign sign) {
    return of(sign).words();
  }

  /** What the bank says of the sign with this name in files. */
  public Optional<TaskBook.Stop> named(String name) {
    return StopSign.named(name)
        .flatMap(sign -> all.stream().filter(s -> s.sign() == sign).findFirst());
  }
}
