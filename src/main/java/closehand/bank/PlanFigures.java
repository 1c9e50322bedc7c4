package closehand.bank;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a control plan is weighed with: every number a practitioner may want to correct. Points are
 * points a minute of play; an easy press is about 100.
 *
 * @param effort what presses and holds cost
 * @param prices what is paid for other things
 * @param load how much a part of the body may do
 * @param time how fast things are, and how fast they must be
 * @param reliability how often a press is understood
 * @param parts what separate devices cost
 * @param kinds what the kinds of input are, by kind
 * @param families what the approaches ask of a body, by approach
 * @param layout where inputs lie
 * @param demand how the styles of actions are understood
 * @param basis where the figures come from
 * @param where where they stand in the bank
 */
public record PlanFigures(
    Effort effort,
    Prices prices,
    Load load,
    Time time,
    Reliability reliability,
    Parts parts,
    Map<String, Kind> kinds,
    Map<String, Family> families,
    Layout layout,
    DemandFigures demand,
    List<String> basis,
    Where where) {

  /** What an input speaks that every game takes. */
  public static final String ANYTHING = "any";

  public PlanFigures {
    kinds = Map.copyOf(kinds);
    families = Map.copyOf(families);
    basis = List.copyOf(basis);
  }

  /** Kinds of input that come out as their device does, where the device says how. */
  private static final Set<String> AS_THE_DEVICE =
      Set.of("button", "axis1", "axis2", "trigger", "panelButton");

  /**
   * What a game must accept for this input of this approach: any of mouse, keyboard, pad, touch; or
   * any.
   */
  public List<String> speaks(String approach, String inputKind) {
    Family family = families.get(approach);
    if (family != null && !family.buttonsSpeak().isEmpty() && AS_THE_DEVICE.contains(inputKind)) {
      return family.buttonsSpeak();
    }
    Kind kind = kinds.get(inputKind);
    return kind == null ? List.of(ANYTHING) : kind.speaks();
  }

  /**
   * What presses and holds cost.
   *
   * @param pointsPerPress an easy press of an action of no importance
   * @param pointsPerHeldSecond an easy hold
   * @param leastFactor the lowest product of factors
   * @param mostFactor the highest
   * @param lastResortFrom from this product on an input is only for want of another
   * @param lastResortTimes and costs so many times as much
   * @param importanceTimes by importance 0 to 3: what matters more goes to easier inputs
   * @param uncertainTimes for facts that were told or measured in an unsteady seat
   * @param effectorTimes how much harder than a finger's a press of this part of the body is, by
   *     its name without a side; 1 for parts that are not named
   * @param longHoldSeconds from where on a hold is a long one
   */
  public record Effort(
      double pointsPerPress,
      double pointsPerHeldSecond,
      double leastFactor,
      double mostFactor,
      double lastResortFrom,
      double lastResortTimes,
      List<Double> importanceTimes,
      double uncertainTimes,
      Map<String, Double> effectorTimes,
      double longHoldSeconds) {
    public Effort {
      effectorTimes = Map.copyOf(effectorTimes);
      importanceTimes = List.copyOf(importanceTimes);
    }
  }

  /**
   * What is paid for other things than effort.
   *
   * @param leftOutPoints by rank 0 to 5 of what is left out; 5 is a must
   * @param missTenths tenths of the points of a press not understood, by rank 0 to 5
   * @param togglePoints for having to remember that something is switched on
   * @param waitPointsPerSecond for each second a press takes
   * @param longHoldOnLayerMilliseconds longer holds are impossible on a layer
   * @param crossPoints for each step away from a cross of directions
   * @param apartPoints for an irreversible action next to a busy one
   * @param habitPoints for a job that sits elsewhere than in another game
   * @param usualPoints for the press at the pointer where it is not on a main button
   */
  public record Prices(
      List<Integer> leftOutPoints,
      List<Integer> missTenths,
      int togglePoints,
      int waitPointsPerSecond,
      int longHoldOnLayerMilliseconds,
      int crossPoints,
      int apartPoints,
      int habitPoints,
      int usualPoints) {
    public Prices {
      leftOutPoints = List.copyOf(leftOutPoints);
      missTenths = List.copyOf(missTenths);
    }
  }

  /**
   * How much a part of the body may do in a minute, and from where on it is amber.
   *
   * @param mostPressesPerMinute red above it
   * @param mostShareOfTapRate red above this share of the measured tap rate
   * @param greenPressesPerMinute amber above it
   * @param greenShareOfTapRate amber above this share
   * @param mostHeldShare red when held for more of the time
   * @param greenHeldShare amber when held for more of the time
   * @param shareOfMeasuredHold of the measured hold that one hold may last
   * @param longestMeasuredHoldSeconds where the measure stops: nothing is known above it
   * @param quickSitePressesPerMinute for body sites that are reliable and quick
   * @param slowSitePressesPerMinute for those that are reliable and slow
   * @param spokenPerMinute for words and sounds
   * @param overuseTimes green limits of the one hand that does most of the work are so much lower
   * @param amberPointsPerPress for each press a minute above green
   * @param amberPointsPerHeldSecond for each second held a minute above green
   */
  public record Load(
      double mostPressesPerMinute,
      double mostShareOfTapRate,
      double greenPressesPerMinute,
      double greenShareOfTapRate,
      double mostHeldShare,
      double greenHeldShare,
      double shareOfMeasuredHold,
      double longestMeasuredHoldSeconds,
      double quickSitePressesPerMinute,
      double slowSitePressesPerMinute,
      double spokenPerMinute,
      double overuseTimes,
      int amberPointsPerPress,
      int amberPointsPerHeldSecond) {}

  /**
   * How fast things are, and how fast they must be.
   *
   * @param urgencyMilliseconds by urgency 0 to 3, from wish to effect; 0 where any time will do
   * @param latencyShare where in an approach's range its delay is taken: 0 fastest, 1 slowest
   * @param digitMilliseconds a finger's press
   * @param quickSiteMilliseconds a press of a quick body site
   * @param slowSiteMilliseconds a press of a slow one
   * @param layerMilliseconds holding a layer first
   */
  public record Time(
      List<Integer> urgencyMilliseconds,
      double latencyShare,
      int digitMilliseconds,
      int quickSiteMilliseconds,
      int slowSiteMilliseconds,
      int layerMilliseconds) {
    public Time {
      urgencyMilliseconds = List.copyOf(urgencyMilliseconds);
    }
  }

  /** How many of a thousand presses are understood. */
  public record Reliability(
      int digitPerMille, int quickSitePerMille, int slowSitePerMille, int dwellPerMille) {}

  /**
   * What separate devices cost.
   *
   * @param most how many may be used together, unless somebody says otherwise
   * @param pointsPerSetupMinute for each minute of setting up
   * @param pointsPerRulePoint for each point that the rules give an approach less than the leading
   *     one
   * @param costPoints by class of cost
   * @param overBudgetPoints on top where the class is above the player's budget
   * @param overTimePoints on top where setting up takes longer than the player wants
   * @param ownedTimes for what is there already
   * @param owned approaches by what the player says is in use
   */
  public record Parts(
      int most,
      int pointsPerSetupMinute,
      int pointsPerRulePoint,
      Map<String, Integer> costPoints,
      int overBudgetPoints,
      int overTimePoints,
      double ownedTimes,
      Map<String, List<String>> owned) {
    public Parts {
      costPoints = Map.copyOf(costPoints);
      owned = Map.copyOf(owned);
    }
  }

  /**
   * A kind of input.
   *
   * @param uses kinds of use that factors of rules speak of
   * @param speaks what a game must accept for it: any of mouse, keyboard, pad, touch, or any
   * @param needsCursor whether the game must be played with a pointer
   * @param times how much harder than a plain button it is
   */
  public record Kind(List<String> uses, List<String> speaks, boolean needsCursor, double times) {
    public Kind {
      uses = List.copyOf(uses);
      speaks = List.copyOf(speaks);
    }
  }

  /**
   * What an approach asks of a body.
   *
   * @param occupies what it keeps busy: hand, bothHands, digits, arm, foot, head or nothing
   * @param leastMove the least movement score of a finger that works it
   * @param leastPress the least press score of a finger that works it
   * @param buttonsSpeak what a game must accept for its buttons; empty for what their kind says
   * @param uses kinds of use that all its inputs are
   */
  public record Family(
      String occupies,
      int leastMove,
      int leastPress,
      List<String> buttonsSpeak,
      List<String> uses) {
    public Family {
      buttonsSpeak = List.copyOf(buttonsSpeak);
      uses = List.copyOf(uses);
    }
  }

  /**
   * Where inputs lie.
   *
   * @param keyOrder keys, the easiest to reach first
   * @param places column and row of inputs by id
   * @param crosses inputs that lie like a cross: up, left, down, right
   * @param phrasesFrom90 spoken commands to plan with when nine of ten are understood
   * @param phrasesFrom70 when seven of ten are
   */
  public record Layout(
      List<String> keyOrder,
      Map<String, List<Integer>> places,
      List<List<String>> crosses,
      int phrasesFrom90,
      int phrasesFrom70) {
    public Layout {
      keyOrder = List.copyOf(keyOrder);
      places = Map.copyOf(places);
      crosses = List.copyOf(crosses);
    }

    /** Column and row of an input, where they are known. */
    public Optional<List<Integer>> place(String input) {
      return Optional.ofNullable(places.get(input));
    }
  }
}
