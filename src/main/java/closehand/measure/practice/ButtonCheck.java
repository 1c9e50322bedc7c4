package closehand.measure.practice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Every input of a set-up is pressed once, and what arrives is written down; nothing that arrives
 * is ever a command.
 *
 * @param wanted the inputs, in the order asked
 * @param arrived what came of those asked so far
 * @param at the one asked for now, from 0
 * @param lastAt when the last key arrived
 * @param last that key
 * @param repeats how often it has come again by itself
 * @param said what came of the last press, as sentences; may be empty
 */
public record ButtonCheck(
    List<Wanted> wanted,
    Map<String, Arrived> arrived,
    int at,
    long lastAt,
    Optional<Signal> last,
    int repeats,
    String said) {
  private static final int MANY = 3;

  /** Copies the list and the map. */
  public ButtonCheck {
    wanted = List.copyOf(wanted);
    arrived = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(arrived));
  }

  /**
   * An input to press.
   *
   * @param input its id
   * @param name plain words
   * @param part the part of the body that works it, in plain words
   * @param expected what it should send, where that is known
   */
  public record Wanted(String input, String name, String part, Optional<Signal> expected) {}

  /**
   * What came of an input.
   *
   * @param signal what arrived; nothing where nothing did
   * @param held whether it came again and again, as a held key does
   * @param bounced whether it came twice at one press
   * @param along whether something else came along
   */
  public record Arrived(Optional<Signal> signal, boolean held, boolean bounced, boolean along) {}

  /** A check at its beginning. */
  public static ButtonCheck of(List<Wanted> wanted) {
    return new ButtonCheck(wanted, Map.of(), 0, Long.MIN_VALUE / 2, Optional.empty(), 0, "");
  }

  /** Whether every input was asked for. */
  public boolean done() {
    return at >= wanted.size();
  }

  /** The input asked for now; only before the end. */
  public Wanted asked() {
    return wanted.get(at);
  }

  /** Something arrived. */
  public ButtonCheck pressed(Signal signal, long millis) {
    long since = millis - lastAt;
    if (last.filter(signal::equals).isPresent() && since < Practising.SAME_KEY_MILLIS) {
      boolean bounce = since < Practising.BOUNCE_MILLIS && repeats == 0;
      return noticed(millis, signal, repeats + 1, bounce)
          .saying(
              bounce
                  ? "It came twice at one press. That is noted; it counts once."
                  : "It is held down, or repeats. That is noted; it counts once.");
    }
    if (since < Practising.ALONG_MILLIS && at > 0) {
      return along(millis, signal);
    }
    if (done()) {
      return with(millis, signal, 0);
    }
    Map<String, Arrived> next = new LinkedHashMap<>(arrived);
    next.put(asked().input(), new Arrived(Optional.of(signal), false, false, false));
    return new ButtonCheck(
        wanted,
        next,
        at + 1,
        millis,
        Optional.of(signal),
        0,
        asked().name() + ": " + signal.words() + ".");
  }

  /** Nothing comes from the input asked for. */
  public ButtonCheck nothingCame() {
    if (done()) {
      return this;
    }
    Map<String, Arrived> next = new LinkedHashMap<>(arrived);
    next.put(asked().input(), new Arrived(Optional.empty(), false, false, false));
    return new ButtonCheck(
        wanted, next, at + 1, lastAt, last, repeats, asked().name() + ": nothing came.");
  }

  /** The input before is asked for again. */
  public ButtonCheck again() {
    if (at == 0) {
      return this;
    }
    Map<String, Arrived> next = new LinkedHashMap<>(arrived);
    next.remove(wanted.get(at - 1).input());
    return new ButtonCheck(wanted, next, at - 1, lastAt, last, repeats, "");
  }

  private ButtonCheck noticed(long millis, Signal signal, int times, boolean bounce) {
    ButtonCheck next = with(millis, signal, times);
    boolean held = !bounce && (times >= MANY || millis - lastAt >= Practising.BOUNCE_MILLIS);
    return at == 0
        ? next
        : next.marking(a -> new Arrived(a.signal(), a.held() || held, !held && bounce, a.along()));
  }

  private ButtonCheck along(long millis, Signal signal) {
    return with(millis, signal, 0)
        .marking(a -> new Arrived(a.signal(), a.held(), a.bounced(), true))
        .saying("Something else came along: " + signal.words() + ". It does not count.");
  }

  private ButtonCheck marking(java.util.function.UnaryOperator<Arrived> mark) {
    Map<String, Arrived> next = new LinkedHashMap<>(arrived);
    next.computeIfPresent(wanted.get(at - 1).input(), (input, a) -> mark.apply(a));
    return new ButtonCheck(wanted, next, at, lastAt, last, repeats, said);
  }

  private ButtonCheck with(long millis, Signal signal, int times) {
    return new ButtonCheck(wanted, arrived, at, millis, Optional.of(signal), times, said);
  }

  private ButtonCheck saying(String words) {
    return new ButtonCheck(wanted, arrived, at, lastAt, last, repeats, words);
  }

  /** What each input sends that can be told apart; of two that send the same, the first. */
  public Map<String, Signal> signals() {
    Map<String, Signal> signals = new LinkedHashMap<>();
    arrived.forEach(
        (input, a) ->
            a.signal()
                .filter(s -> !signals.containsValue(s))
                .ifPresent(s -> signals.put(input, s)));
    return signals;
  }
}
