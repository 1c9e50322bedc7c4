package closehand.plan.solve;

import closehand.plan.problem.Mode;

/**
 * What a branch decides about one action: to leave it out, to give it one signature and mode, or
 * one placement.
 *
 * @param out whether it is left out
 * @param signature the signature, or -1
 * @param mode the mode that goes with the signature
 * @param placement the placement, or -1
 */
record Choice(boolean out, int signature, Mode mode, int placement) {

  static final Choice OUT = new Choice(true, -1, Mode.AS_IS, -1);

  static Choice of(int signature, Mode mode) {
    return new Choice(false, signature, mode, -1);
  }

  static Choice of(int placement) {
    return new Choice(false, -1, Mode.AS_IS, placement);
  }

  boolean admits(Tables tables, int p) {
    if (out) {
      return false;
    }
    return placement >= 0
        ? placement == p
        : tables.signatures.of[p] == signature && tables.placement[p].mode() == mode;
  }
}
