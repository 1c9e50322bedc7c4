package closehand.cli;

import closehand.interview.Interview;
import java.io.IOException;

/** Where one case is kept. */
interface Kept {
  /** The pseudonym it goes by. */
  String name();

  /** Keeps the interview as it stands, in place of what was kept before. */
  void save(Interview interview) throws IOException;

  /** Why it could not be kept, in a plain sentence. */
  String trouble(IOException e);

  /** Removes the case and its pages. */
  void delete() throws IOException;
}
