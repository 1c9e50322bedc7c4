package closehand.report;

/** Which characters a page may use. */
public enum Glyphs {
  /** Any character that prints. */
  UNICODE("\u2022 ", "\u201c", "\u201d"),
  /** The printable characters of ASCII only; everything else is written in another way. */
  ASCII("- ", "\"", "\"");

  private final String bullet;
  private final String openingQuote;
  private final String closingQuote;

  Glyphs(String bullet, String openingQuote, String closingQuote) {
    this.bullet = bullet;
    this.openingQuote = openingQuote;
    this.closingQuote = closingQuote;
  }

  /** What stands before an entry of a list, with its space. */
  public String bullet() {
    return bullet;
  }

  /** Somebody's own words between quotation marks. */
  public String quoted(String words) {
    return openingQuote + words.strip() + closingQuote;
  }
}
