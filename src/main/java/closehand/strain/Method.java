package closehand.strain;

/** A method behind a figure: what it is called, where it was published, for whom it was made. */
public enum Method {
  /** One repeated press by one body part. */
  REVISED_STRAIN_INDEX(
      "Revised Strain Index",
      "Garg, Moore, Kapellusch, Ergonomics 2017;60(7):912-922",
      "adults in repetitive paid work; hand and wrist",
      Standing.PUBLISHED),
  /** Everything one hand does in a game. */
  COMPOSITE_STRAIN_INDEX(
      "Composite Strain Index",
      "Garg, Moore, Kapellusch, Ergonomics 2017;60(8):1033-1041",
      "adults in repetitive paid work; hand and wrist",
      Standing.PUBLISHED),
  /** Everything one hand does in a day. */
  CUMULATIVE_STRAIN_INDEX(
      "Cumulative Strain Index",
      "Garg, Moore, Kapellusch, Ergonomics 2017;60(8):1033-1041",
      "adults in repetitive paid work; hand and wrist",
      Standing.PUBLISHED),
  /** How long a still hold can last. */
  ENDURANCE(
      "Endurance of holding still",
      "Frey Law, Avin, Ergonomics 2010;53(1):109-129, table 2",
      "non-disabled adults aged 18 to 50, who held until they could not go on",
      Standing.PUBLISHED),
  /** Hand activity against the limit lines of 2001. */
  HAND_ACTIVITY_2001(
      "Hand activity level, lines of 2001",
      "Radwin et al., Ergonomics 2015;58(2):173-183; ACGIH lines of 2001",
      "adults in hand work of 4 to 8 hours a day",
      Standing.PUBLISHED),
  /** Hand activity against the limit lines of 2018. */
  HAND_ACTIVITY_2018(
      "Hand activity level, lines of 2018",
      "Radwin et al., Ergonomics 2015;58(2):173-183; ACGIH lines of 2018",
      "adults in hand work of 4 to 8 hours a day",
      Standing.PUBLISHED),
  /** The older index, kept as a second look. */
  STRAIN_INDEX_1995(
      "Strain Index of 1995",
      "Moore, Garg, American Industrial Hygiene Association Journal 1995;56:443-458",
      "adults in repetitive paid work; hand and wrist",
      Standing.SECOND_LOOK),
  /** Presses and holds of one body part against what it can do. */
  LOAD_LIGHT(
      "Load light",
      "practice estimate, no source",
      "players in an access to games interview; never tested on people",
      Standing.PRACTICE_ESTIMATE);

  /** How far the method can be leaned on. */
  public enum Standing {
    /** Published, and its coefficients were read. */
    PUBLISHED,
    /** Published, but a newer method replaces it. */
    SECOND_LOOK,
    /** The trade's own estimate. */
    PRACTICE_ESTIMATE
  }

  private final String title;
  private final String source;
  private final String madeFor;
  private final Standing standing;

  Method(String title, String source, String madeFor, Standing standing) {
    this.title = title;
    this.source = source;
    this.madeFor = madeFor;
    this.standing = standing;
  }

  /** Its name. */
  public String title() {
    return title;
  }

  /** Where it was published. */
  public String source() {
    return source;
  }

  /** The people it was made for; never the people who use it here. */
  public String madeFor() {
    return madeFor;
  }

  /** How far it can be leaned on. */
  public Standing standing() {
    return standing;
  }
}
