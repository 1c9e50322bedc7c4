package closehand.screen;

/** How a case is kept. */
public enum Sealing {
  /** Readable by whoever can use the account. */
  NONE,
  /** Opened by six words that the program draws. */
  DRAWN,
  /** Opened by a passphrase of somebody's own. */
  OWN
}
