package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.report.Desk;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the full-screen face asks of the program around it besides the desk of one case.
 *
 * <p>Passphrases are overwritten by whoever hands them over, as soon as the call returns.
 */
public interface CaseBook {
  /** The names of all saved cases. */
  List<String> names();

  /** What is to be known before a new interview of one that was broken off; usually nothing. */
  Optional<String> brokenOff();

  /**
   * A new case.
   *
   * @param own the passphrase, where the case is sealed with one of somebody's own
   */
  Opened begin(Provenance.By asker, Interview.Route route, Sealing sealing, char[] own);

  /**
   * Looks a saved case up; it is held until it is taken or put back.
   *
   * @param passphrase what opens it; empty where none was typed
   */
  Found find(String name, char[] passphrase);

  /** Puts the case that was found back unchanged. */
  void putBack();

  /** Goes on with the case that was found, or reviews it. */
  Opened take(Wish wish);

  /**
   * Goes on with the case that was found, sealed from now on.
   *
   * @param own the passphrase, where it is one of somebody's own
   */
  Opened seal(Sealing sealing, char[] own);

  /** The pages of the case that was found, and what else is known of it. */
  List<String> look();

  /** Removes the case that was found; tells what came of it. */
  List<String> discard();

  /** Why a passphrase of somebody's own is not taken; nothing where it is. */
  Optional<String> unfit(char[] own);

  /** An invented player, of whom nothing is kept. */
  Opened example();

  /** What is wrong with the question bank, or that nothing is, in sentences. */
  List<String> check();

  /** Writes the pages of the case at hand; tells where they are, or why they are not. */
  List<String> writePages(Interview interview);

  /** Prints lines that are shown only once; tells what came of it. */
  List<String> print(List<String> lines);

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

  /** What came of looking a case up. */
  sealed interface Found {
    /**
     * It is there.
     *
     * @param sentences where it was left, and what else is to be known
     * @param wishes what can be done with it
     */
    record Case(List<String> sentences, Set<Wish> wishes) implements Found {
      /** Copies both. */
      public Case {
        sentences = List.copyOf(sentences);
        wishes = Set.copyOf(wishes);
      }
    }

    /** It is sealed, and what was typed does not open it. */
    record Locked() implements Found {}

    /**
     * It cannot be opened.
     *
     * @param sentences why
     */
    record Refused(List<String> sentences) implements Found {
      /** Copies the sentences. */
      public Refused {
        sentences = List.copyOf(sentences);
      }
    }
  }
}
