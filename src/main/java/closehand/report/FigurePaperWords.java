package closehand.report;

import static closehand.interview.Wording.number;

import closehand.bank.PlanFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a control plan is weighed with, in sentences. */
final class FigurePaperWords {
  private final PaperPart part =
      new PaperPart(
          "figures",
          "Figures of control plans",
          "Points are points a minute of play; an easy press of an unimportant action is the"
              + " measure. A plan with fewer points is better.");

  private FigurePaperWords() {}

  static PaperPart of(PlanFigures figures) {
    FigurePaperWords words = new FigurePaperWords();
    words.effort(figures.effort());
    words.prices(figures.prices());
    words.load(figures.load());
    words.time(figures.time());
    words.reliability(figures.reliability());
    words.parts(figures.parts());
    words.part.add("Basis of the figures", ApproachPaperWords.basis(figures.basis()));
    return words.part;
  }

  private void effort(PlanFigures.Effort effort) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "A press costs "
            + number(effort.pointsPerPress())
            + " points, a second of holding "
            + number(effort.pointsPerHeldSecond())
            + "; a hold of "
            + number(effort.longHoldSeconds())
            + " s or more is a long one.");
    lines.add(
        "All factors together are taken as at least "
            + number(effort.leastFactor())
            + " and at most "
            + number(effort.mostFactor())
            + "; from "
            + number(effort.lastResortFrom())
            + " on an input is a last resort and costs "
            + number(effort.lastResortTimes())
            + " times as much.");
    lines.add(
        "By importance (rarely missed, nice, wanted, must) effort counts "
            + list(effort.importanceTimes())
            + " times; by facts that were told, or measured in an unsteady seat, "
            + number(effort.uncertainTimes())
            + " times.");
    lines.add(
        "Harder than with a finger: " + table(effort.effectorTimes(), v -> number(v) + " times"));
    part.add("Effort", lines);
  }

  private void prices(PlanFigures.Prices prices) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Leaving an action out costs, by its rank 0 to 5 where 5 is a must, "
            + list(prices.leftOutPoints())
            + " points; a press that is not understood costs, by the same rank, "
            + list(prices.missTenths())
            + " tenths of a point.");
    lines.add(
        "Remembering what is switched on costs "
            + prices.togglePoints()
            + " points, each second that a press takes "
            + prices.waitPointsPerSecond()
            + ".");
    lines.add(
        "Holds longer than "
            + prices.longHoldOnLayerMilliseconds()
            + " ms are impossible on a second layer.");
    lines.add(
        "Each step away from a cross of directions costs "
            + prices.crossPoints()
            + " points, something that cannot be undone next to a busy action "
            + prices.apartPoints()
            + ", a job that sits elsewhere than in another game "
            + prices.habitPoints()
            + ", the press at the pointer where it is on no main button "
            + prices.usualPoints()
            + ".");
    part.add("Prices", lines);
  }

  private void load(PlanFigures.Load load) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Presses of one part of the body are red above "
            + number(load.mostPressesPerMinute())
            + " a minute or above "
            + number(load.mostShareOfTapRate())
            + " of the measured tap rate, amber above "
            + number(load.greenPressesPerMinute())
            + " or "
            + number(load.greenShareOfTapRate())
            + " of it.");
    lines.add(
        "Holding is red above "
            + number(load.mostHeldShare())
            + " of the time and amber above "
            + number(load.greenHeldShare())
            + "; one hold may last "
            + number(load.shareOfMeasuredHold())
            + " of the measured hold, and nothing is known beyond "
            + number(load.longestMeasuredHoldSeconds())
            + " s.");
    lines.add(
        "Red for a quick body site above "
            + number(load.quickSitePressesPerMinute())
            + " presses a minute, for a slow one above "
            + number(load.slowSitePressesPerMinute())
            + ", for words and sounds above "
            + number(load.spokenPerMinute())
            + ".");
    lines.add(
        "Where one hand does most of the work its green limits count "
            + number(load.overuseTimes())
            + " times. Above green each press a minute costs "
            + load.amberPointsPerPress()
            + " points, each second held a minute "
            + load.amberPointsPerHeldSecond()
            + ".");
    part.add("Load", lines);
  }

  private void time(PlanFigures.Time time) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "From wish to effect an action may take, by urgency 0 to 3, "
            + list(time.urgencyMilliseconds())
            + " ms; 0 is any time. An approach's delay is taken at "
            + number(time.latencyShare())
            + " of the way from its fastest to its slowest.");
    lines.add(
        "A finger's press takes "
            + time.digitMilliseconds()
            + " ms, one of a quick body site "
            + time.quickSiteMilliseconds()
            + " ms, of a slow one "
            + time.slowSiteMilliseconds()
            + " ms, holding a layer first "
            + time.layerMilliseconds()
            + " ms.");
    part.add("Time", lines);
  }

  private void reliability(PlanFigures.Reliability reliability) {
    part.add(
        "Reliability",
        "Of 1000 presses are understood: a finger's "
            + reliability.digitPerMille()
            + ", a quick body site's "
            + reliability.quickSitePerMille()
            + ", a slow one's "
            + reliability.slowSitePerMille()
            + ", those by resting the pointer "
            + reliability.dwellPerMille()
            + ".");
  }

  private void parts(PlanFigures.Parts parts) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "At most "
            + parts.most()
            + " separate devices together, unless somebody says otherwise. Each minute of setting up"
            + " costs "
            + parts.pointsPerSetupMinute()
            + " points; each point that the rules give less than to the leading approach costs "
            + parts.pointsPerRulePoint()
            + ".");
    lines.add(
        "By class of cost: "
            + table(parts.costPoints(), v -> Phrases.count(v, "point"))
            + " Above the player's budget "
            + parts.overBudgetPoints()
            + " points on top; where setting up takes too long, "
            + parts.overTimePoints()
            + "; what is there already counts "
            + number(parts.ownedTimes())
            + " times.");
    lines.add(
        "What is in use already stands for: " + table(parts.owned(), v -> String.join(" or ", v)));
    part.add("Separate devices", lines);
  }

  private static String list(List<? extends Number> numbers) {
    return String.join(", ", numbers.stream().map(n -> number(n.doubleValue())).toList());
  }

  /** A map as a sentence, by name. */
  static <T> String table(Map<String, T> map, java.util.function.Function<T, String> words) {
    List<String> parts = new ArrayList<>();
    new TreeMap<>(map).forEach((name, value) -> parts.add(name + " " + words.apply(value)));
    return parts.isEmpty() ? "none." : String.join("; ", parts) + ".";
  }
}
