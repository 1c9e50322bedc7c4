package closehand.strain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Outside its ground a method says nothing; impossible figures are told with what is possible. */
class OutsideMethodTest {
  private static final Where FILE = Where.file("plan.json");

  private static Exertion press(String part, double effort, double perMinute, double seconds) {
    return new Exertion(part, effort, perMinute, seconds);
  }

  private static Flag why(Load load) {
    assertTrue(load instanceof Load.Outside, "outside the method");
    assertTrue(load.amount().isEmpty() && load.flags().get(0).outside());
    return load.flags().get(0);
  }

  @Test
  void theStrainIndexSpeaksOfHandsOnly() {
    assertEquals(Flag.NOT_A_HAND, why(RevisedStrainIndex.of(press("R.foot", 0.2, 5, 1), 2)));
    assertEquals(Flag.NOT_A_HAND, why(StrainIndex1995.of(press("jaw", 0.2, 5, 1), 2)));
    assertEquals(
        Flag.NOT_A_HAND,
        why(CompositeStrain.of(List.of(press("R.T", 0.2, 5, 1), press("voice", 0.2, 5, 1)), 2)));
  }

  @Test
  void morePressesThanTheMinuteHoldsAreOutside() {
    Exertion tooMuch = press("R.T", 0.2, 40, 2);
    assertEquals(Flag.MORE_THAN_A_MINUTE, why(RevisedStrainIndex.of(tooMuch, 2)));
    assertEquals(Flag.MORE_THAN_A_MINUTE, why(CompositeStrain.of(List.of(tooMuch), 2)));
    List<Exertion> both = List.of(press("R.T", 0.2, 20, 2), press("R.T", 0.1, 25, 1));
    assertEquals(Flag.MORE_THAN_A_MINUTE, why(CompositeStrain.of(both, 2)));
    assertEquals(Flag.MORE_THAN_A_MINUTE, why(LoadLight.of(both, OptionalDouble.of(40))));
  }

  @Test
  void twoFingersMayBeDownAtOnceAndTheTimeCountsOnce() {
    List<Exertion> overlapping = List.of(press("R.I", 0.3, 2, 25), press("R.M", 0.1, 2, 25));
    Load.Figure figure = CompositeStrain.of(overlapping, 2).figure().orElseThrow();
    assertTrue(figure.flags().contains(Flag.OVERLAPPING));
    List<Exertion> oneAfterTheOther = List.of(press("R.I", 0.3, 2, 25), press("R.M", 0.1, 2, 5));
    assertEquals(
        CompositeStrain.of(oneAfterTheOther, 2).amount().orElseThrow(), figure.value(), 1e-9);
  }

  @Test
  void noCurveIsMadeUp() {
    assertEquals(Flag.NO_METHOD_FOR_PART, why(Endurance.of(press("jaw", 0.3, 1, 20))));
    assertEquals(Flag.NO_METHOD_FOR_PART, why(Endurance.of(press("head", 0.3, 1, 20))));
    assertEquals(Flag.EFFORT_OUTSIDE, why(Endurance.of(press("R.I", 0.05, 1, 20))));
    Load finger = Endurance.of(press("R.I", 0.2, 1, 20));
    assertEquals(List.of(Flag.NEAREST_PART), finger.flags());
    assertEquals(20 / (0.53 * 447.7), finger.amount().orElseThrow(), 0.001);
  }

  @Test
  void handActivityIsDefinedForLongDaysAndNotForLightTaps() {
    List<Exertion> hand = List.of(press("R.I", 0.3, 20, 1));
    assertEquals(Flag.HOURS_OUTSIDE, why(HandActivity.of(hand, 2).get(0)));
    assertEquals(Flag.HOURS_OUTSIDE, why(HandActivity.of(hand, 9).get(1)));
    assertEquals(
        Flag.EFFORT_OUTSIDE, why(HandActivity.of(List.of(press("R.I", 0.1, 20, 1)), 5).get(0)));
    assertEquals(
        Flag.FREQUENCY_OUTSIDE, why(HandActivity.of(List.of(press("R.I", 0.3, 5, 3)), 5).get(0)));
    assertEquals(
        Flag.SHARE_OUTSIDE, why(HandActivity.of(List.of(press("R.I", 0.3, 20, 0.1)), 5).get(0)));
    Load.Figure older = HandActivity.of(hand, 5).get(0).figure().orElseThrow();
    Load.Figure newer = HandActivity.of(hand, 5).get(1).figure().orElseThrow();
    assertEquals(older.value(), newer.value(), 0);
    assertTrue(newer.band().compareTo(older.band()) >= 0, "the newer lines are stricter");
  }

  @Test
  void nothingToDoIsNotALoadOfNothing() {
    assertEquals(Flag.NOTHING_TO_DO, why(CompositeStrain.of(List.of(), 2)));
    assertEquals(Flag.NOTHING_TO_DO, why(CumulativeStrain.of(List.of())));
    assertEquals(Flag.NOTHING_TO_DO, why(LoadLight.of(List.of(), OptionalDouble.empty())));
  }

  @Test
  void aDayHasTwentyFourHours() {
    List<Exertion> hand = List.of(press("R.I", 0.1, 5, 0.2));
    assertEquals(
        Flag.MORE_THAN_A_DAY,
        why(
            CumulativeStrain.of(
                List.of(
                    new CumulativeStrain.GameTime(hand, 20),
                    new CumulativeStrain.GameTime(hand, 5)))));
  }

  private static List<Problem> problems(
      String part, double effort, double perMinute, double seconds, double wrist) {
    List<Problem> problems = new ArrayList<>();
    boolean made =
        ExertionCheck.exertion(FILE, part, effort, perMinute, seconds, wrist, problems).isPresent();
    assertEquals(problems.isEmpty(), made);
    problems.forEach(p -> assertFalse(p.mend().isEmpty(), "says what is possible"));
    return problems;
  }

  private static String code(List<Problem> problems) {
    assertEquals(1, problems.size());
    return problems.get(0).code();
  }

  @Test
  void impossibleInputIsToldWithWhatIsPossible() {
    assertEquals(List.of(), problems("R.T", 3, 40, 0.2, -20));
    assertEquals("effort-range", code(problems("R.T", 11, 40, 0.2, 0)));
    assertEquals("effort-range", code(problems("R.T", Double.NaN, 40, 0.2, 0)));
    assertEquals("effort-range", code(problems("R.T", -1, 40, 0.2, 0)));
    assertEquals("frequency-range", code(problems("R.T", 3, 0, 0.2, 0)));
    assertEquals("frequency-range", code(problems("R.T", 3, Double.NaN, 0.2, 0)));
    assertEquals("frequency-range", code(problems("R.T", 3, Double.POSITIVE_INFINITY, 0.2, 0)));
    assertEquals("seconds-range", code(problems("R.T", 3, 40, 0, 0)));
    assertEquals("more-than-a-minute", code(problems("R.T", 3, 40, 2, 0)));
    assertEquals("wrist-range", code(problems("R.T", 3, 40, 0.2, 120)));
    assertEquals("unknown-effector", code(problems("R.X", 3, 40, 0.2, 0)));
    assertEquals(4, problems("R.X", 11, Double.NaN, 0.2, 120).size());
  }

  @Test
  void hoursAndDaysHaveLimits() {
    List<Problem> problems = new ArrayList<>();
    assertTrue(ExertionCheck.playTime(FILE, 0, 8, problems).isEmpty());
    assertEquals(
        List.of("hours-range", "days-range"), problems.stream().map(Problem::code).toList());
    assertTrue(ExertionCheck.playTime(FILE, Double.NaN, 2.5, problems).isEmpty());
    assertEquals(4, problems.size());
    assertEquals(
        new PlayTime(1.5, 3), ExertionCheck.playTime(FILE, 1.5, 3, problems).orElseThrow());
  }

  @Test
  void forcesAreTakenBesideTheOwnMaximumOnly() {
    List<Problem> problems = new ArrayList<>();
    assertEquals(
        0.2,
        Effort.ofForces(FILE, 0.6, 3, Effort.MOST_FINGER_NEWTONS, problems).orElseThrow(),
        1e-12);
    assertTrue(problems.isEmpty());
    assertTrue(Effort.ofForces(FILE, 5, 900, Effort.MOST_HAND_NEWTONS, problems).isEmpty());
    assertTrue(Effort.ofForces(FILE, 5, 3, Effort.MOST_FINGER_NEWTONS, problems).isEmpty());
    assertTrue(
        Effort.ofForces(FILE, Double.NaN, 3, Effort.MOST_FINGER_NEWTONS, problems).isEmpty());
    assertEquals(
        List.of("force-range", "force-needed", "force-needed"),
        problems.stream().map(Problem::code).toList());
  }

  @Test
  void aPressThatCannotBeIsACallersMistake() {
    assertThrows(IllegalArgumentException.class, () -> press("R.T", 1.1, 4, 1));
    assertThrows(IllegalArgumentException.class, () -> press("R.T", Double.NaN, 4, 1));
    assertThrows(IllegalArgumentException.class, () -> press("R.T", 0.1, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new PlayTime(0, 3));
  }

  @Test
  void everyFigureNamesItsTwoBiggestDrivers() {
    Load.Figure figure =
        RevisedStrainIndex.of(press("R.T", 0.4, 30, 0.5), 1).figure().orElseThrow();
    assertEquals(
        List.of(Factor.EFFORT, Factor.FREQUENCY),
        figure.drivers().stream().map(Driver::factor).toList());
    Load.Figure hand =
        CompositeStrain.of(
                List.of(
                    press("R.T", 0.4, 30, 0.5), press("R.I", 0.1, 5, 0.1), press("R.M", 0.1, 2, 8)),
                1)
            .figure()
            .orElseThrow();
    assertEquals(List.of("R.T", "R.M"), hand.drivers().stream().map(Driver::effector).toList());
    assertEquals(Factor.DURATION, hand.drivers().get(1).factor());
  }

  @Test
  void theLoadLightTakesTheHeaviestOfItsThreeLooks() {
    LoadLight.Reading calm =
        LoadLight.reading(List.of(press("R.T", 0.2, 30, 0.5)), OptionalDouble.of(50));
    assertEquals(Band.LOWER, calm.band());
    assertEquals(0.1, calm.tappingShare().orElseThrow(), 1e-12);
    assertEquals(
        Band.MIDDLE,
        LoadLight.reading(List.of(press("R.T", 0.2, 30, 0.5)), OptionalDouble.of(24)).band());
    assertEquals(
        Band.UPPER,
        LoadLight.reading(List.of(press("R.T", 0.2, 30, 0.5)), OptionalDouble.of(9)).band());
    LoadLight.Reading held =
        LoadLight.reading(List.of(press("R.T", 0.2, 1, 31)), OptionalDouble.empty());
    assertEquals(Band.UPPER, held.band());
    assertTrue(held.holds() && !held.repeats());
    Load unknown = LoadLight.of(List.of(press("R.T", 0.2, 61, 0.1)), OptionalDouble.empty());
    assertEquals(List.of(Flag.TAPPING_NOT_MEASURED), unknown.flags());
    assertEquals(Band.UPPER, unknown.figure().orElseThrow().band());
  }
}
