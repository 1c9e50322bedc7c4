package closehand.bank;

/** What gives names that other parts of a bank use. */
public enum Catalogue {
  /** The questionnaire: facts that are asked. */
  FACTS,
  /** What is worked out from facts. */
  TERMS,
  APPROACHES,
  CAUTIONS,
  SOURCES,
  GAMES
}
