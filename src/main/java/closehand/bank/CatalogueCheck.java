package closehand.bank;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Checks approaches, games, cautions and sources against each other and against the questionnaire.
 */
final class CatalogueCheck {
  private final Bank bank;
  private final List<Problem> problems;
  private final Set<String> effectors = Effectors.all();

  CatalogueCheck(Bank bank, List<Problem> problems) {
    this.bank = bank;
    this.problems = problems;
  }

  void check() {
    unique(bank.approaches(), Approach::id, Approach::where, "approach");
    unique(bank.cautions(), Caution::code, Caution::where, "caution");
    unique(bank.games(), GameProfile::genre, GameProfile::where, "game profile");
    bank.approaches().forEach(this::approach);
    bank.games().forEach(this::game);
    mixes();
    genres();
    bank.cautions().stream()
        .filter(c -> c.classes().isEmpty() || c.actions().isEmpty())
        .forEach(
            c -> report(c.where(), "missing", "A caution needs a class and something to do.", ""));
  }

  private <T> void unique(
      List<T> things, Function<T, String> id, Function<T, Where> where, String what) {
    Set<String> seen = new HashSet<>();
    for (T thing : things) {
      if (!seen.add(id.apply(thing))) {
        report(
            where.apply(thing),
            "duplicate-id",
            "There are two of the " + what + " \"" + id.apply(thing) + "\".",
            "");
      }
    }
  }

  private void approach(Approach approach) {
    List<String> classes = bank.costClasses().stream().map(Approach.CostClass::code).toList();
    for (String cost : approach.costClasses()) {
      known(cost, classes, approach.where(), "unknown-value", "a class of cost");
    }
    basis(approach.basis(), approach.where());
    unique(approach.inputs(), Approach.Input::id, Approach.Input::where, "input");
    for (Approach.Input input : approach.inputs()) {
      input
          .effectors()
          .forEach(
              e ->
                  known(
                      e, List.copyOf(effectors), input.where(), "unknown-effector", "a body part"));
      if (!input.usage().isEmpty() && !isUsage(input.usage())) {
        report(
            input.where(),
            "wrong-type",
            "A USB HID usage is written page:usage in hexadecimal, such as 07:2c.",
            "");
      }
    }
  }

  private static boolean isUsage(String usage) {
    int colon = usage.indexOf(':');
    return colon == 2
        && usage.length() >= 5
        && usage.chars().allMatch(c -> c == ':' || Character.digit(c, 16) >= 0);
  }

  private void game(GameProfile game) {
    unique(game.actions(), GameProfile.Action::id, GameProfile.Action::where, "action");
    List<String> ids = game.actions().stream().map(GameProfile.Action::id).toList();
    for (GameProfile.Action action : game.actions()) {
      for (String other : action.pressedWith()) {
        known(other, ids, action.where(), "unknown-value", "an action of this game");
        if (other.equals(action.id())) {
          report(
              action.where(),
              "unknown-value",
              "An action cannot be pressed together with itself.",
              "");
        }
      }
    }
    basis(game.basis(), game.where());
  }

  private void mixes() {
    List<String> ids = bank.approaches().stream().map(Approach::id).toList();
    for (Approach.Mix mix : bank.mixes()) {
      mix.approaches()
          .forEach(
              a -> known(a, ids, Where.file("approaches.json"), "unknown-approach", "an approach"));
    }
  }

  private void genres() {
    Field first = bank.questionnaire().fieldsByFact().get("games.1.genre");
    if (first == null) {
      return;
    }
    List<String> profiles = bank.games().stream().map(GameProfile::genre).toList();
    for (Option option : first.type().choices()) {
      if (!option.code().equals("none")) {
        known(
            option.code(),
            profiles,
            option.where(),
            "unknown-value",
            "a kind of game with a profile");
      }
    }
  }

  private void basis(List<String> basis, Where where) {
    List<String> sources = bank.sources().stream().map(Source::id).toList();
    basis.forEach(b -> known(b, sources, where, "unknown-source", "a source or a named basis"));
  }

  private void known(String name, List<String> known, Where where, String code, String what) {
    if (!known.contains(name)) {
      report(where, code, "\"" + name + "\" is not " + what + ".", Hint.didYouMean(name, known));
    }
  }

  private void report(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
