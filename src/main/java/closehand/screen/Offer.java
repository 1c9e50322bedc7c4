package closehand.screen;

/**
 * Something that can be taken on a screen.
 *
 * @param digit the digit that takes it at once, or -1
 * @param words what it is
 * @param word a word behind it such as "(chosen)", or empty
 * @param act what happens
 */
record Offer(int digit, String words, String word, Act act) {
  static Offer of(int digit, String words, Act act) {
    return new Offer(digit, words, "", act);
  }

  static Offer plain(String words, Act act) {
    return new Offer(-1, words, "", act);
  }
}
