package closehand.strain;

/** What a reader must know beside a figure, or why there is none. */
public enum Flag {
  /** The presses of one body part take more time than there is. */
  MORE_THAN_A_MINUTE(true),
  /** No published method covers this body part. */
  NO_METHOD_FOR_PART(true),
  /** The method looks at hand and wrist only. */
  NOT_A_HAND(true),
  /** The effort lies where the method has no data. */
  EFFORT_OUTSIDE(true),
  /** Presses a minute lie where the method has no data. */
  FREQUENCY_OUTSIDE(true),
  /** The share of time lies where the method has no data. */
  SHARE_OUTSIDE(true),
  /** The method speaks of 4 to 8 hours a day only. */
  HOURS_OUTSIDE(true),
  /** Nothing was asked of this part. */
  NOTHING_TO_DO(true),
  /** The rest of the day takes more hours than a day has. */
  MORE_THAN_A_DAY(true),
  /** Presses overlap: time counts once, at the higher effort. */
  OVERLAPPING(false),
  /** A finger is looked at by the curve for the whole hand. */
  NEAREST_PART(false),
  /** Posture and speed count as fair. */
  POSTURE_NOT_ASKED(false),
  /** The wrist was not asked about and counts as straight. */
  WRIST_NOT_ASKED(false),
  /** Effort was not rated; a stand-in lets plans be compared. */
  EFFORT_NOT_RATED(false),
  /** How fast this part can tap is not known. */
  TAPPING_NOT_MEASURED(false),
  /** The order of adding up gives more than the published order. */
  ABOVE_PUBLISHED_ORDER(false),
  /** Days a week are in no method. */
  DAYS_NOT_COUNTED(false);

  private final boolean outside;

  Flag(boolean outside) {
    this.outside = outside;
  }

  /** Whether it puts the case outside the method, so that there is no figure. */
  public boolean outside() {
    return outside;
  }
}
