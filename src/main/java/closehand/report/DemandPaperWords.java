package closehand.report;

import static closehand.interview.Wording.number;

import closehand.bank.Bank;
import closehand.bank.DemandFigures;
import closehand.bank.GameProfile;
import java.util.List;
import java.util.TreeMap;

/** How the actions of games are understood when a control plan is made, in words. */
final class DemandPaperWords {
  private final Bank bank;
  private final PaperPart part = new PaperPart("demand", "How actions of games are understood", "");

  private DemandPaperWords(Bank bank) {
    this.bank = bank;
  }

  static PaperPart of(DemandFigures demand, Bank bank) {
    DemandPaperWords words = new DemandPaperWords(bank);
    words.all(demand);
    return words.part;
  }

  private void all(DemandFigures demand) {
    part.add(
        "Shares of play",
        "Moving or steering takes "
            + number(demand.movingShare())
            + " of play, one action is held at most "
            + number(demand.longestHeldShare())
            + " of it; a movement of a stick or pointer counts as "
            + number(demand.movementCountsAs())
            + " of a press; rapid pressing is "
            + number(demand.rapidPressesPerSecond())
            + " presses a second.");
    new TreeMap<>(demand.directions())
        .forEach((style, d) -> part.add("Without a stick, " + style, directions(d)));
    new TreeMap<>(demand.ownDirections())
        .forEach((action, d) -> part.add("Of its own, " + action(action), directions(d)));
    demand
        .settings()
        .forEach(
            s ->
                part.add(
                    "Setting " + s.option() + " (" + String.join(", ", s.words()) + ")",
                    does(s.does())));
    part.add(
        "Cannot be undone",
        Phrases.sentence(
            String.join("; ", demand.irreversible().stream().map(this::action).toList())));
    demand
        .jobs()
        .forEach(
            j ->
                part.add(
                    "The same job, " + j.name(),
                    Phrases.sentence(
                        String.join("; ", j.actions().stream().map(this::action).toList()))));
  }

  private static String directions(DemandFigures.Directions directions) {
    return "Presses stand for it: "
        + String.join(", ", directions.names())
        + "; they point "
        + String.join(", ", directions.keys())
        + "; of its presses they take "
        + String.join(", ", directions.shares().stream().map(s -> number(s)).toList())
        + ".";
  }

  private static String does(DemandFigures.Effect effect) {
    return switch (effect) {
      case TOGGLE -> "A hold becomes one press for on and one for off.";
      case INSTEAD -> "The game does it instead of the player.";
      case HELPS -> "It becomes easier; nothing changes in the plan.";
    };
  }

  private String action(String id) {
    List<String> names =
        bank.games().stream()
            .flatMap(g -> g.actions().stream())
            .filter(a -> a.id().equals(id))
            .map(GameProfile.Action::name)
            .toList();
    return names.isEmpty() ? id : id + " (" + Phrases.bare(names.get(0)) + ")";
  }
}
