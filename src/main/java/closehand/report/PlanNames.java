package closehand.report;

import closehand.bank.Effectors;
import closehand.plan.Planned;
import closehand.plan.demand.WantedAction;
import closehand.plan.explain.Change;
import closehand.plan.problem.Breach;
import java.util.ArrayList;
import java.util.List;

/** Plain words for what a search talks about in ids. */
final class PlanNames {
  private final Planned planned;

  PlanNames(Planned planned) {
    this.planned = planned;
  }

  /** The name of an action in quotation marks. */
  String action(String id) {
    return "\"" + planned.demand().action(id).map(WantedAction::name).orElse(id) + "\"";
  }

  /** A change, as the rest of "It would come in if ...". */
  String change(Change change) {
    if (change instanceof Change.OnePartMore) {
      return "one more separate part were used";
    }
    if (change instanceof Change.Toggle toggle) {
      return "the game let " + action(toggle.action()) + " be switched on and off";
    }
    if (change instanceof Change.NotTogether pair) {
      return action(pair.first())
          + " and "
          + action(pair.second())
          + " need not be pressed at the same moment";
    }
    if (change instanceof Change.QuarterMore more) {
      return "your "
          + Effectors.words(more.effector())
          + " could do a quarter more in a minute; only if it stays comfortable";
    }
    if (change instanceof Change.Without without) {
      return action(without.action()) + " were left out";
    }
    return "the game gave twice as long to react, by a slower speed for example";
  }

  /** A change, as what brings an action in: "with ...". */
  String bringingIn(Change change) {
    if (change instanceof Change.OnePartMore) {
      return "one more separate part";
    }
    if (change instanceof Change.Toggle toggle) {
      return action(toggle.action()) + " switched on and off instead of held";
    }
    if (change instanceof Change.NotTogether pair) {
      return action(pair.first()) + " and " + action(pair.second()) + " one after the other";
    }
    if (change instanceof Change.QuarterMore more) {
      return "a quarter more a minute for your "
          + Effectors.words(more.effector())
          + ", only if it stays comfortable";
    }
    if (change instanceof Change.Without without) {
      return action(without.action()) + " left out instead";
    }
    return "twice as long to react, by a slower speed for example";
  }

  /** What stands against a place for an action. */
  String against(String subject, List<Breach> breaches) {
    if (breaches.isEmpty()) {
      return "the whole plan would ask for more";
    }
    List<String> words = new ArrayList<>();
    for (Breach breach : breaches.subList(0, Math.min(2, breaches.size()))) {
      words.add(words(subject, breach));
    }
    return Phrases.and(words);
  }

  private String words(String subject, Breach breach) {
    List<String> ids = breach.ids();
    return switch (breach.kind()) {
      case SAME_PLACE -> others(subject, ids) + " sits there";
      case CO_PRESS -> others(subject, ids) + " must work at the same moment";
      case TOO_MANY_PRESSES ->
          "your " + Effectors.words(last(ids)) + " would have too many presses";
      case HELD_TOO_LONG -> "your " + Effectors.words(last(ids)) + " would hold for too long";
      case TOO_MANY_PARTS -> "it would take one more separate part";
      case DEVICES_INCOMPATIBLE -> "the same hand is needed elsewhere";
      case INPUTS_EXCLUSIVE -> "the stick is used in another way";
      case LAYER_BUTTON_TAKEN, LAYERS_SHARE_BUTTON -> "it is the button that is held for a layer";
      case PIN_NOT_KEPT -> "somebody wished it here";
      default -> "it is not possible there";
    };
  }

  private String others(String subject, List<String> ids) {
    List<String> named =
        ids.stream()
            .filter(i -> !i.equals(subject) && planned.demand().action(i).isPresent())
            .map(this::action)
            .toList();
    return named.isEmpty() ? "another action" : named.get(named.size() - 1);
  }

  private static String last(List<String> ids) {
    return ids.isEmpty() ? "" : ids.get(ids.size() - 1);
  }
}
