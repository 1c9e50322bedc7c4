package closehand.cli;

/** Exit codes, with the numbers of BSD's {@code sysexits.h}. */
final class ExitCode {
  /** Done. */
  static final int DONE = 0;

  /** The command line could not be understood. */
  static final int USAGE = 64;

  /** A file was read but holds something wrong. */
  static final int BAD_DATA = 65;

  /** A file that was named is not there or cannot be read. */
  static final int NO_INPUT = 66;

  /** Our own fault. */
  static final int OUR_FAULT = 70;

  /** A file could not be written. */
  static final int CANNOT_CREATE = 73;

  /** Reading or writing broke off. */
  static final int INPUT_OUTPUT = 74;

  /** The answers ended before the interview did. */
  static final int UNFINISHED = 75;

  /** The settings or the bank are wrong. */
  static final int CONFIGURATION = 78;

  private ExitCode() {}
}
