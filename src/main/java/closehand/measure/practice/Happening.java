package closehand.measure.practice;

/** What a practice run is told. Times are milliseconds on one clock that only goes forward. */
public sealed interface Happening {
  /** The player is ready: a round begins, or goes on after a pause. */
  record Begun(long millis) implements Happening {}

  /** An input arrived. */
  record Pressed(Signal signal, long millis) implements Happening {}

  /** So late is it now. */
  record Elapsed(long millis) implements Happening {}

  /** Something got in between, so that times cannot be trusted. */
  record Disturbed(What what) implements Happening {}

  /**
   * How much it hurts now.
   *
   * @param pain 0 to 10
   */
  record PainTold(int pain, long millis) implements Happening {}

  /** The player pauses; nothing is counted until they go on. */
  record Paused() implements Happening {}

  /** The run is over, for a reason. */
  record Stopped(StopReason reason) implements Happening {}

  /** What can get in between. */
  enum What {
    PASTE("Something was pasted"),
    WINDOW("Another window came to the front"),
    SIZE("The window changed its size"),
    CLOSED("The terminal was closed");

    private final String words;

    What(String words) {
      this.words = words;
    }

    /** As the start of a sentence. */
    public String words() {
      return words;
    }
  }
}
