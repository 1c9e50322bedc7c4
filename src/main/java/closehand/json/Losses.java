package closehand.json;

import closehand.bank.Catalogue;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Works out which lists of names may lack some because part of their file could not be read, so
 * that nobody is told that a name is unknown which only could not be read.
 */
final class Losses {
  private static final Set<String> LOST_ENTRY = Set.of("wrong-type", "wrong-name");
  private static final String ITEM = "item";
  private static final Set<String> SHAPE = Set.of("wrong-type", "missing", "unknown-key");

  private final List<Problem> problems;
  private final Set<String> unread = new HashSet<>();
  private final Set<Catalogue> catalogues = EnumSet.noneOf(Catalogue.class);

  /** Starts on a list of problems that grows while the files are read. */
  Losses(List<Problem> problems) {
    this.problems = problems;
  }

  /** Notes a file that could not be read at all. */
  void unread(String file) {
    unread.add(file);
  }

  Set<Catalogue> catalogues() {
    return catalogues;
  }

  /**
   * Looks at a file whose lists of names stand right inside its object.
   *
   * @param names the names that were read; an empty one stands for one that was not
   */
  void of(Catalogue catalogue, String file, Stream<String> names) {
    if (unread.contains(file)
        || names.anyMatch(String::isBlank)
        || in(file).anyMatch(Losses::losesEntry)) {
      catalogues.add(catalogue);
    }
  }

  /** Looks at the questionnaire, whose questions stand in nested lists. */
  void ofQuestions(String file, Stream<String> facts) {
    if (unread.contains(file)
        || facts.anyMatch(String::isBlank)
        || in(file).anyMatch(Losses::losesItem)) {
      catalogues.add(Catalogue.FACTS);
    }
  }

  private Stream<Problem> in(String file) {
    return problems.stream().filter(p -> p.where().file().equals(file));
  }

  private static boolean losesEntry(Problem problem) {
    int depth = problem.where().path().depth();
    return depth <= 1 || (depth == 2 && LOST_ENTRY.contains(problem.code()));
  }

  private static boolean losesItem(Problem problem) {
    Where where = problem.where();
    List<String> steps = where.path().steps();
    int depth = steps.size();
    if (depth <= 1) {
      return true;
    }
    if (!SHAPE.contains(problem.code())) {
      return false;
    }
    String last = steps.get(depth - 1);
    boolean item = last.equals(ITEM) || steps.get(depth - 2).equals(ITEM);
    boolean ofItem = depth > 2 && steps.get(depth - 3).equals(ITEM);
    return item
        || (ofItem
            && (last.equals("type")
                || last.equals("linkId")
                || problem.code().equals("unknown-key")));
  }
}
