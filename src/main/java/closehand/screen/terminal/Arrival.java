package closehand.screen.terminal;

/** What can arrive while the screen is open. */
sealed interface Arrival {
  /**
   * Bytes from the keyboard.
   *
   * @param bytes what came in one piece
   * @param millis when, on a clock that only goes forward
   */
  @SuppressWarnings("ArrayRecordComponent")
  record Bytes(byte[] bytes, long millis) implements Arrival {}

  /** The window may have another size. */
  record WindowChanged() implements Arrival {}

  /** Something came up beside the keys that may be told. */
  record Noted() implements Arrival {}

  /** Nothing more will be typed. */
  record Ended() implements Arrival {}
}
