package closehand.strain;

import closehand.bank.Effectors;

/** Everything this package says, in words that compare plans and judge nobody. */
public final class LoadWords {
  /** Stands beside every figure. */
  public static final String MADE_FOR_WORK =
      "These figures come from methods that were made for people at work, not for your condition."
          + " Here they only compare plans with each other.";

  /** Stands beside every figure. */
  public static final String YOUR_OWN_SIGNS =
      "Your own signs and your health team come first. If pain goes up by 2 or is still up two"
          + " hours later, shorten the next session or change the control, and tell your therapist.";

  /** Stands where a figure is missing. */
  public static final String OUTSIDE = "outside this method";

  /** Stands where two methods for one thing lie far apart. */
  public static final String FAR_APART =
      "The two strain indexes lie far apart here, so compare no plans by either before somebody has"
          + " looked at these presses.";

  /** What no method counts. */
  public static final String DAYS =
      "Days a week are in no method. Think of them yourself: a day off is a pause too.";

  private LoadWords() {}

  /** The band of a method in a few words. */
  public static String band(Method method, Band band) {
    return switch (method) {
      case LOAD_LIGHT ->
          pick(band, "green: has room", "amber: busy, worth sharing", "red: very busy");
      case ENDURANCE ->
          pick(band, "short", "worth watching", "long: worth a toggle, a latch or a foot");
      default -> pick(band, "lower band", "middle band", "upper band");
    };
  }

  /** The load light of a body part, and its strain index where only that lies in an upper band. */
  public static String light(EffectorReading part) {
    return part.light()
        .figure()
        .map(
            f ->
                f.band() != Band.UPPER && part.isHeavyByIndex()
                    ? (f.band() == Band.LOWER ? "green" : "amber")
                        + " by presses and time, but in the upper band of its strain index"
                    : band(Method.LOAD_LIGHT, f.band()))
        .orElse(OUTSIDE + ": more than a minute holds");
  }

  /** "46 a minute"; "less than once a minute" below one. */
  public static String often(double perMinute) {
    return perMinute < 1 ? "less than once a minute" : Math.round(perMinute) + " a minute";
  }

  private static String pick(Band band, String lower, String middle, String upper) {
    return switch (band) {
      case LOWER -> lower;
      case MIDDLE -> middle;
      case UPPER -> upper;
    };
  }

  /** What to know beside a figure, or why there is none: a whole sentence. */
  public static String flag(Flag flag) {
    return switch (flag) {
      case MORE_THAN_A_MINUTE -> "The presses take more time than a minute has.";
      case NO_METHOD_FOR_PART -> "No published method covers this part.";
      case NOT_A_HAND -> "The method looks at hand and wrist only.";
      case EFFORT_OUTSIDE -> "The method has no data for an effort this light.";
      case FREQUENCY_OUTSIDE -> "The method has no data for this many presses a minute.";
      case SHARE_OUTSIDE -> "The method has no data for this share of the time.";
      case HOURS_OUTSIDE -> "The method speaks of 4 to 8 hours a day only.";
      case NOTHING_TO_DO -> "This part has nothing to do.";
      case MORE_THAN_A_DAY -> "The games take more hours than a day has.";
      case OVERLAPPING -> "Some presses overlap; that time counts once, at the higher effort.";
      case NEAREST_PART -> "One finger is looked at by the endurance curve for the whole hand.";
      case POSTURE_NOT_ASKED -> "Posture and speed count as fair.";
      case WRIST_NOT_ASKED -> "The wrist counts as straight.";
      case EFFORT_NOT_RATED ->
          "Effort has not been rated for every part yet. Until then a control counts as 1 of 10, times"
              + " how hard the rules say it is for you; rate each part after a trial.";
      case TAPPING_NOT_MEASURED -> "How fast this part can tap is not known yet.";
      case ABOVE_PUBLISHED_ORDER ->
          "Composite figures are added up in a careful order; the published order gives less in"
              + " places.";
      case DAYS_NOT_COUNTED -> DAYS;
    };
  }

  /** What a driver is called: "presses a minute of your right thumb". */
  public static String driver(Driver driver) {
    String what = factor(driver.factor());
    return driver.effector().isEmpty() ? what : what + " of " + yours(driver.effector());
  }

  /** A factor in a few words. */
  public static String factor(Factor factor) {
    return switch (factor) {
      case EFFORT -> "the effort of each press";
      case FREQUENCY -> "the presses a minute";
      case DURATION -> "the length of each press";
      case POSTURE -> "a bent wrist";
      case HOURS -> "the hours a day";
      case HELD_SHARE -> "the time spent holding";
      case TAP_SHARE -> "presses close to your fastest tapping";
    };
  }

  /** What would lighten it: a few words after "What helps most:". */
  public static String lighten(Factor factor) {
    return switch (factor) {
      case EFFORT -> "a lighter button, or a part that finds it easier";
      case FREQUENCY -> "share these presses with another part, or drop some";
      case DURATION, HELD_SHARE -> "a toggle, a latch or a foot instead of the hold";
      case POSTURE -> "a place that keeps the wrist straight";
      case HOURS -> "a shorter time with this game";
      case TAP_SHARE -> "fewer presses here, or a part that taps faster";
    };
  }

  /** "your right thumb", "your voice". */
  public static String yours(String effector) {
    return "your " + Effectors.words(effector);
  }

  /** Who a method was made for, where it was published: for the clinician. */
  public static String source(Method method) {
    return method.title() + ": " + method.source() + ". Made for " + method.madeFor() + ".";
  }
}
