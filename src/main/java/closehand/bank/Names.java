package closehand.bank;

import java.util.List;

/** Tells about names that nothing in the bank answers to. */
final class Names {
  private final Doubt doubt;
  private final List<Problem> problems;

  Names(Doubt doubt, List<Problem> problems) {
    this.doubt = doubt;
    this.problems = problems;
  }

  /** The name must be one of a catalogue, unless that could not be read whole. */
  void known(
      String name, Where where, Catalogue catalogue, List<String> known, String code, String what) {
    if (!doubt.lacks(catalogue)) {
      known(name, where, known, code, what);
    }
  }

  /** The name must be one of a fixed list. */
  void known(String name, Where where, List<String> known, String code, String what) {
    if (!name.isEmpty() && !known.contains(name)) {
      problems.add(
          Problem.error(
              where, code, "\"" + name + "\" is not " + what + ".", Hint.didYouMean(name, known)));
    }
  }
}
