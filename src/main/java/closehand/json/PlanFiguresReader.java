package closehand.json;

import closehand.bank.PlanFigures;
import closehand.bank.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code control-plan.json}: what a control plan is weighed with. */
final class PlanFiguresReader {
  private static final int RANKS = 6;
  private static final int LEVELS = 4;
  private static final int MOST_POINTS = 1_000_000;
  private static final int MOST_MILLISECONDS = 60_000;
  private static final int MOST_SCORE = 4;

  private final List<Problem> problems;

  PlanFiguresReader(List<Problem> problems) {
    this.problems = problems;
  }

  PlanFigures read(ObjectReading object) {
    FigureReading in = new FigureReading(object);
    object.optionalText("note");
    PlanFigures figures =
        new PlanFigures(
            in.part("effort", this::effort),
            in.part("prices", PlanFiguresReader::prices),
            in.part("load", PlanFiguresReader::load),
            in.part("time", PlanFiguresReader::time),
            in.part("reliability", PlanFiguresReader::reliability),
            in.part("parts", this::parts),
            kinds(in),
            families(in),
            in.part("inputs", this::layout),
            in.part("demand", new DemandFiguresReader(problems)::read),
            object.texts("basis"),
            object.where());
    object.finish();
    return figures;
  }

  private PlanFigures.Effort effort(FigureReading in) {
    return new PlanFigures.Effort(
        in.number("pointsPerPress", 1, 1000),
        in.number("pointsPerHeldSecond", 0, 1000),
        in.number("leastFactor", 0.1, 1),
        in.number("mostFactor", 1, 20),
        in.number("lastResortFrom", 1, 20),
        in.number("lastResortTimes", 1, 100),
        in.numbers("importanceTimes", LEVELS, 0.1, 10),
        in.number("uncertainTimes", 1, 10),
        in.members("effectorTimes", this::times),
        in.number("longHoldSeconds", 0, 60));
  }

  private double times(JsonValue value) {
    if (value instanceof JsonValue.Num number && number.value() >= 0.5 && number.value() <= 6) {
      return number.value();
    }
    ObjectReading.wrongType(value, "a number from 0.5 to 6", problems);
    return 1;
  }

  private static PlanFigures.Prices prices(FigureReading in) {
    return new PlanFigures.Prices(
        in.wholes("leftOutPoints", RANKS, 0, MOST_POINTS),
        in.wholes("missTenths", RANKS, 0, 1000),
        in.whole("togglePoints", 0, MOST_POINTS),
        in.whole("waitPointsPerSecond", 0, 10_000),
        in.whole("longHoldOnLayerMilliseconds", 0, MOST_MILLISECONDS),
        in.whole("crossPoints", 0, 10_000),
        in.whole("apartPoints", 0, 10_000),
        in.whole("habitPoints", 0, 10_000),
        in.whole("usualPoints", 0, 10_000));
  }

  private static PlanFigures.Load load(FigureReading in) {
    return new PlanFigures.Load(
        in.number("mostPressesPerMinute", 1, 600),
        in.number("mostShareOfTapRate", 0, 1),
        in.number("greenPressesPerMinute", 0, 600),
        in.number("greenShareOfTapRate", 0, 1),
        in.number("mostHeldShare", 0, 1),
        in.number("greenHeldShare", 0, 1),
        in.number("shareOfMeasuredHold", 0, 1),
        in.number("longestMeasuredHoldSeconds", 1, 600),
        in.number("quickSitePressesPerMinute", 0, 600),
        in.number("slowSitePressesPerMinute", 0, 600),
        in.number("spokenPerMinute", 0, 600),
        in.number("overuseTimes", 0, 1),
        in.whole("amberPointsPerPress", 0, 1000),
        in.whole("amberPointsPerHeldSecond", 0, 1000));
  }

  private static PlanFigures.Time time(FigureReading in) {
    return new PlanFigures.Time(
        in.wholes("urgencyMilliseconds", LEVELS, 0, MOST_MILLISECONDS),
        in.number("latencyShare", 0, 1),
        in.whole("digitMilliseconds", 0, 10_000),
        in.whole("quickSiteMilliseconds", 0, 10_000),
        in.whole("slowSiteMilliseconds", 0, 10_000),
        in.whole("layerMilliseconds", 0, 10_000));
  }

  private static PlanFigures.Reliability reliability(FigureReading in) {
    return new PlanFigures.Reliability(
        in.whole("digitPerMille", 1, 1000),
        in.whole("quickSitePerMille", 1, 1000),
        in.whole("slowSitePerMille", 1, 1000),
        in.whole("dwellPerMille", 1, 1000));
  }

  private PlanFigures.Parts parts(FigureReading in) {
    return new PlanFigures.Parts(
        in.whole("most", 1, 20),
        in.whole("pointsPerSetupMinute", 0, 10_000),
        in.whole("pointsPerRulePoint", 0, 10_000),
        in.members("costPoints", this::points),
        in.whole("overBudgetPoints", 0, MOST_POINTS),
        in.whole("overTimePoints", 0, MOST_POINTS),
        in.number("ownedTimes", 0, 1),
        in.members("owned", this::texts));
  }

  private int points(JsonValue value) {
    if (value instanceof JsonValue.Num number
        && number.isWhole()
        && number.value() >= 0
        && number.value() <= MOST_POINTS) {
      return (int) number.value();
    }
    ObjectReading.wrongType(value, "a whole number of points", problems);
    return 0;
  }

  private List<String> texts(JsonValue value) {
    return ObjectReading.texts(ObjectReading.items(value, problems), problems);
  }

  private record Named<T>(List<String> names, T value) {}

  private static <T> Map<String, T> byName(List<Named<T>> all) {
    Map<String, T> map = new LinkedHashMap<>();
    all.forEach(one -> one.names().forEach(name -> map.put(name, one.value())));
    return map;
  }

  private static Map<String, PlanFigures.Kind> kinds(FigureReading in) {
    return byName(
        in.each(
            "kinds",
            one ->
                new Named<>(
                    List.of(one.in().text("kind")),
                    new PlanFigures.Kind(
                        one.in().texts("uses"),
                        one.in().texts("speaks"),
                        one.in().flag("needsCursor", false),
                        one.in().optionalNumber("times", 0.5, 6).orElse(1)))));
  }

  private static Map<String, PlanFigures.Family> families(FigureReading in) {
    return byName(
        in.each(
            "families",
            one ->
                new Named<>(
                    one.in().texts("approaches"),
                    new PlanFigures.Family(
                        one.in().text("occupies"),
                        one.whole("leastMove", 0, MOST_SCORE),
                        one.whole("leastPress", 0, MOST_SCORE),
                        one.in().optionalTexts("buttonsSpeak"),
                        one.in().optionalTexts("uses")))));
  }

  private PlanFigures.Layout layout(FigureReading in) {
    List<List<String>> crosses = in.in().list("crosses").stream().map(this::texts).toList();
    return in.part(
        "phrases",
        phrases ->
            new PlanFigures.Layout(
                in.in().texts("keyOrder"),
                in.members("places", this::place),
                crosses,
                phrases.whole("from90", 0, 50),
                phrases.whole("from70", 0, 50)));
  }

  private List<Integer> place(JsonValue value) {
    List<JsonValue> two = ObjectReading.items(value, problems);
    if (two.size() != 2 || !two.stream().allMatch(v -> v instanceof JsonValue.Num)) {
      ObjectReading.wrongType(value, "a column and a row", problems);
      return List.of(0, 0);
    }
    return two.stream().map(v -> (int) ((JsonValue.Num) v).value()).toList();
  }
}
