package closehand.plan.supply;

import closehand.bank.PlanFigures;
import closehand.plan.KnownFacts;
import closehand.rules.Finding;
import closehand.rules.Outcome;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Which parts of the body can work something, judged from the answers and the rules. */
final class BodyParts {
  private static final double MINUTE = 60_000;
  private static final double TAPS_TO_MINUTE = 6;
  private static final int QUICK = 3;
  private static final int RELIABLE = 2;
  private static final int CAUTIOUS_TAPS = 10;
  private static final int CAUTIOUS_HOLD_SECONDS = 2;

  /** The caution that one limb does most of the work. */
  private static final String OVERUSE = "C-OVERUSE";

  private final PlanFigures figures;
  private final KnownFacts facts;
  private final Set<String> resting = new HashSet<>();
  private final Set<String> maybeResting = new HashSet<>();
  private final boolean oneHandDoesAll;

  BodyParts(PlanFigures figures, KnownFacts facts, List<Finding> findings) {
    this.figures = figures;
    this.facts = facts;
    for (Finding finding : findings) {
      if (finding.outcome() == Outcome.TRUE) {
        resting.addAll(finding.rule().effects().restingEffectors());
      } else if (finding.outcome() == Outcome.OPEN) {
        maybeResting.addAll(finding.rule().effects().restingEffectors());
      }
    }
    oneHandDoesAll =
        findings.stream()
            .filter(f -> f.outcome() == Outcome.TRUE)
            .flatMap(f -> f.rule().effects().cautions().stream())
            .anyMatch(c -> c.code().equals(OVERUSE));
  }

  /** Whether a rule lets this part rest. */
  boolean rests(String effector) {
    return resting.contains(effector);
  }

  /** Whether an open rule may yet let this part rest. */
  boolean mayRest(String effector) {
    return maybeResting.contains(effector);
  }

  /** A finger or thumb, if it moves and presses well enough. */
  Optional<BodyPart> digit(String effector, int leastMove, int leastPress) {
    String side = effector.substring(0, 1);
    String digit = effector.substring(2);
    if (rests(effector) || !fingersPress(side)) {
      return Optional.empty();
    }
    String state = facts.code("digit." + side + ".state." + digit).orElse("ok");
    if (!(state.equals("ok") || state.equals("part"))
        || !facts.atLeast("digit." + side + ".move." + digit, leastMove)
        || !facts.atLeast("digit." + side + ".press." + digit, leastPress)) {
      return Optional.empty();
    }
    double taps =
        facts.number("digit." + side + ".tap10." + digit).orElse(CAUTIOUS_TAPS) * TAPS_TO_MINUTE;
    PlanFigures.Load load = figures.load();
    return Optional.of(
        new BodyPart(
            effector,
            tenths(Math.min(load.mostPressesPerMinute(), load.mostShareOfTapRate() * taps)),
            tenths(
                share()
                    * Math.min(load.greenPressesPerMinute(), load.greenShareOfTapRate() * taps)),
            held(load.mostHeldShare()),
            held(share() * load.greenHeldShare()),
            longestHold(facts.number("digit." + side + ".holdS." + digit)),
            figures.time().digitMilliseconds(),
            figures.reliability().digitPerMille(),
            facts.isFirm("digit." + side + ".press." + digit)));
  }

  /** Fingers press only where a hand presses, so these are those of the hand that does it all. */
  private double share() {
    return oneHandDoesAll ? figures.load().overuseTimes() : 1;
  }

  private boolean fingersPress(String side) {
    String role = facts.code("hand." + side + ".role").orElse("");
    return role.equals("gripPress") || role.equals("full");
  }

  private OptionalInt longestHold(OptionalDouble measured) {
    double seconds = measured.orElse(CAUTIOUS_HOLD_SECONDS);
    return seconds >= figures.load().longestMeasuredHoldSeconds()
        ? OptionalInt.empty()
        : OptionalInt.of((int) (1000 * seconds * figures.load().shareOfMeasuredHold()));
  }

  /** A whole hand or palm, if it can press one big thing or more. */
  Optional<BodyPart> hand(String effector) {
    String role = facts.code("hand." + effector.charAt(0) + ".role").orElse("");
    boolean presses = List.of("bigPress", "gripPress", "full").contains(role);
    return presses && !rests(effector) ? Optional.of(site(effector, QUICK)) : Optional.empty();
  }

  /** Another part of the body, if its score says that it is reliable. */
  Optional<BodyPart> site(String effector, String fact) {
    if (rests(effector) || !facts.atLeast(fact, RELIABLE)) {
      return Optional.empty();
    }
    return Optional.of(site(effector, (int) facts.number(fact).orElse(RELIABLE)));
  }

  /** A part of the body with this score, 2 reliable and slow, 3 reliable and quick. */
  BodyPart site(String effector, int score) {
    PlanFigures.Load load = figures.load();
    boolean quick = score >= QUICK;
    double share = effector.endsWith(".hand") ? share() : 1;
    double most = quick ? load.quickSitePressesPerMinute() : load.slowSitePressesPerMinute();
    return new BodyPart(
        effector,
        tenths(most),
        tenths(share * Math.min(load.greenPressesPerMinute(), most / 2)),
        held(load.mostHeldShare()),
        held(share * load.greenHeldShare()),
        OptionalInt.empty(),
        quick ? figures.time().quickSiteMilliseconds() : figures.time().slowSiteMilliseconds(),
        quick
            ? figures.reliability().quickSitePerMille()
            : figures.reliability().slowSitePerMille(),
        false);
  }

  /** Speech or sounds, understood so many times of a hundred. */
  BodyPart voice(double percent) {
    double most = figures.load().spokenPerMinute();
    return new BodyPart(
        "voice",
        tenths(most),
        tenths(most / 2),
        0,
        0,
        OptionalInt.of(0),
        0,
        (int) Math.max(1, Math.min(1000, Math.round(10 * percent))),
        false);
  }

  /** The eyes. */
  BodyPart eyes(int score) {
    BodyPart site = site("eyes", score);
    return new BodyPart(
        "eyes",
        site.mostPressesTenths(),
        site.greenPressesTenths(),
        0,
        0,
        OptionalInt.of(0),
        site.pressMillis(),
        figures.reliability().dwellPerMille(),
        false);
  }

  private static int tenths(double perMinute) {
    return (int) Math.floor(10 * perMinute + 1e-9);
  }

  private static int held(double share) {
    return (int) Math.round(share * MINUTE);
  }
}
