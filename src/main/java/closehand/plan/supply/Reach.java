package closehand.plan.supply;

import closehand.bank.Approach;
import closehand.bank.PlanFigures;
import closehand.plan.KnownFacts;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether this player can reach and work one input with one part of the body. */
final class Reach {
  private static final double LEAST_STICK = 2;
  private static final double LEAST_SLIDE_CENTIMETRES = 3;
  private static final double LEAST_UNDERSTOOD_PERCENT = 70;
  private static final double WELL_UNDERSTOOD_PERCENT = 90;
  private static final double LEAST_NECK_MINUTES = 10;

  /** Questions about top buttons by the input they tell of. */
  private static final Map<String, String> TOP =
      Map.of(
          "main", "main",
          "second", "second",
          "wheelUp", "wheelRoll",
          "wheelDown", "wheelRoll",
          "wheelClick", "wheelClick",
          "tiltL", "tiltL",
          "tiltR", "tiltR",
          "top1", "top1",
          "top2", "top2");

  private final PlanFigures figures;
  private final KnownFacts facts;
  private final BodyParts body;

  Reach(PlanFigures figures, KnownFacts facts, BodyParts body) {
    this.figures = figures;
    this.facts = facts;
    this.body = body;
  }

  /** The part of the body that works the input; empty when it cannot, or nobody knows yet. */
  Optional<BodyPart> of(Approach approach, Approach.Input input, String effector) {
    if (!effector.contains(".")) {
      return elsewhere(approach, input, effector);
    }
    String side = effector.substring(0, 1);
    String part = effector.substring(2);
    return switch (part) {
      case "T", "I", "M", "R", "L" -> finger(approach, input, effector, side, part);
      case "hand" -> hand(approach, input, effector, side);
      case "forearm", "elbow", "shoulder", "foot", "knee" ->
          body.site(effector, "site." + part + side);
      default -> Optional.empty();
    };
  }

  private Optional<BodyPart> finger(
      Approach approach, Approach.Input input, String effector, String side, String digit) {
    PlanFigures.Family family = figures.families().get(approach.id());
    if (family == null) {
      return Optional.empty();
    }
    Optional<BodyPart> part = body.digit(effector, family.leastMove(), family.leastPress());
    return part.filter(p -> reaches(approach, input, side, digit));
  }

  private boolean reaches(Approach approach, Approach.Input input, String side, String digit) {
    return switch (input.kind()) {
      case "cell" -> panel(side, digit).contains(input.id());
      case "key" -> keyRank(input.id()) < facts.number("digit." + side + ".keys").orElse(0);
      case "axis2" -> facts.atLeast("stick." + side, LEAST_STICK);
      case "trigger" -> facts.flag("trigger." + side).orElse(false);
      case "button", "wheel", "tilt" -> !isMouse(approach) || top(input.id(), side, digit);
      default -> true;
    };
  }

  private static boolean isMouse(Approach approach) {
    return approach.family().equals("mouse");
  }

  private boolean top(String input, String side, String digit) {
    String asked = TOP.get(input);
    if (asked == null) {
      return !panel(side, digit).isEmpty();
    }
    Optional<String> answer = facts.code("digit." + side + ".top." + asked);
    boolean everyMouseHasIt = input.equals("main") || input.equals("second");
    return answer.map(digit::equals).orElse(everyMouseHasIt);
  }

  private List<String> panel(String side, String digit) {
    return facts.codes("digit." + side + ".panel." + digit).orElse(List.of()).stream()
        .filter(c -> !c.equals("none"))
        .toList();
  }

  /** How many keys are easier to reach. */
  private int keyRank(String key) {
    int rank = figures.layout().keyOrder().indexOf(key);
    return rank < 0 ? Integer.MAX_VALUE : rank;
  }

  private Optional<BodyPart> hand(
      Approach approach, Approach.Input input, String effector, String side) {
    return body.hand(effector)
        .filter(
            hand ->
                switch (input.kind()) {
                  case "axis2" -> facts.atLeast("stick." + side, LEAST_STICK);
                  case "pointer" -> !isMouse(approach) || slides(side);
                  default -> true;
                });
  }

  private boolean slides(String side) {
    return facts.flag("hand." + side + ".mouseRest").orElse(false)
        && facts.atLeast("hand." + side + ".slideCm", LEAST_SLIDE_CENTIMETRES);
  }

  private Optional<BodyPart> elsewhere(Approach approach, Approach.Input input, String effector) {
    return switch (effector) {
      case "head" -> head(approach, input);
      case "chin", "cheek", "brow", "jaw" -> body.site(effector, "site." + effector);
      case "breath" -> breath(input);
      case "voice" -> voice(approach, input);
      case "eyes" ->
          body.rests(effector)
              ? Optional.empty()
              : facts.atLeast("eye.control", LEAST_STICK)
                  ? Optional.of(body.eyes((int) facts.number("eye.control").orElse(2)))
                  : Optional.empty();
      default -> Optional.empty();
    };
  }

  private Optional<BodyPart> head(Approach approach, Approach.Input input) {
    if (approach.id().equals("HEAD_POINT")) {
      boolean moves =
          facts.code("neck.range").map(r -> r.equals("full") || r.equals("half")).orElse(false);
      return moves && facts.atLeast("neck.minutes", LEAST_NECK_MINUTES)
          ? body.site("head", "site.headTurn")
          : Optional.empty();
    }
    return body.site("head", input.id().equals("back") ? "site.headBack" : "site.headTurn");
  }

  private Optional<BodyPart> breath(Approach.Input input) {
    String fact = input.id().toLowerCase(java.util.Locale.ROOT).contains("sip") ? "sip" : "puff";
    boolean hard = input.id().startsWith("hard");
    return facts.atLeast("breath." + fact, hard ? LEAST_STICK + 1 : LEAST_STICK)
        ? body.site("breath", "breath." + fact)
        : Optional.empty();
  }

  private Optional<BodyPart> voice(Approach approach, Approach.Input input) {
    if (facts.code("voice.ok").filter("yes"::equals).isEmpty() || body.rests("voice")) {
      return Optional.empty();
    }
    double understood = facts.number("voice.recog").orElse(0);
    int place = number(input.id());
    if (approach.id().equals("SOUND")) {
      OptionalDouble sounds = facts.number("voice.sounds");
      return place <= sounds.orElse(0)
          ? Optional.of(body.voice(WELL_UNDERSTOOD_PERCENT))
          : Optional.empty();
    }
    if (understood < LEAST_UNDERSTOOD_PERCENT) {
      return Optional.empty();
    }
    int phrases =
        understood >= WELL_UNDERSTOOD_PERCENT
            ? figures.layout().phrasesFrom90()
            : figures.layout().phrasesFrom70();
    return place <= phrases ? Optional.of(body.voice(understood)) : Optional.empty();
  }

  /** The number an id ends in; 0 where it ends in none. */
  private static int number(String id) {
    String digits = id.replaceAll("\\D+", "");
    return digits.isEmpty() ? 0 : Integer.parseInt(digits);
  }
}
