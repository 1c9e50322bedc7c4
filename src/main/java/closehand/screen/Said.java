package closehand.screen;

/**
 * What came of the last key.
 *
 * @param sentence a whole sentence, or nothing
 * @param refusal whether it says why something was not done; then it also stands beside the answers
 */
record Said(String sentence, boolean refusal) {
  static final Said NOTHING = new Said("", false);

  static Said that(String sentence) {
    return new Said(sentence, false);
  }

  static Said refused(String sentence) {
    return new Said(sentence, true);
  }
}
