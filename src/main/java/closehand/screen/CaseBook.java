package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.report.Desk;
import java.util.List;
import java.util.Optional;

/** What the full-screen face asks of the program around it besides the desk of one case. */
public interface CaseBook {
  /** The names of all saved cases. */
  List<String> names();

  /**
   * A new case.
   *
   * @param sealed whether it opens with a passphrase only; the sentences tell the words
   */
  Opened begin(Provenance.By asker, Interview.Route route, boolean sealed);

  /** A saved case, opened again. */
  Opened open(String name);

  /** An invented player, of whom nothing is kept. */
  Opened example();

  /** What is wrong with the question bank, or that nothing is, in sentences. */
  List<String> check();

  /** Writes the pages of the case at hand; tells where they are, or why they are not. */
  List<String> writePages(Interview interview);

  /** Keeps settings for the next time; tells what went wrong, if something did. */
  List<String> keep(Settings settings);

  /** An interview and the desk of its case. */
  record Holding(Desk desk, Interview interview) {}

  /**
   * What came of opening a case.
   *
   * @param holding the case; nothing when it could not be opened
   * @param sentences what is to be read first, or why it could not be opened
   */
  record Opened(Optional<Holding> holding, List<String> sentences) {
    /** Copies the sentences. */
    public Opened {
      sentences = List.copyOf(sentences);
    }
  }
}
