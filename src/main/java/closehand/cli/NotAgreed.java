package closehand.cli;

import closehand.interview.Sharing;

/** What is said where the player did not agree that somebody sees the answers. */
final class NotAgreed {
  private NotAgreed() {}

  /** Says so, and who can change it; gives the exit code. */
  static int say(Sharing reader, String caseName, Surroundings surroundings) {
    surroundings
        .error()
        .println(
            "Sharing with "
                + (reader == Sharing.TEAM ? "everybody who helps" : "a clinician")
                + " was not agreed in this case, so nothing is handed over.");
    surroundings
        .error()
        .println(
            "Only the player can change that, where it is asked who may see the answers: closehand interview "
                + Words.clean(caseName));
    return ExitCode.BAD_DATA;
  }
}
