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
  private final Doubt doubt;
  private final List<Problem> problems;
  private final Names names;
  private final List<String> effectors = List.copyOf(Effectors.all());
  private final List<String> sources;

  CatalogueCheck(Bank bank, Doubt doubt, List<Problem> problems) {
    this.bank = bank;
    this.doubt = doubt;
    this.problems = problems;
    this.names = new Names(doubt, problems);
    this.sources = bank.sources().stream().map(Source::id).toList();
  }

  void check() {
    unique(bank.approaches(), Approach::id, a -> a.where().child("id"), "approach");
    unique(bank.cautions(), Caution::code, c -> c.where().child("code"), "caution");
    unique(bank.games(), GameProfile::genre, g -> g.where().child("genre"), "game profile");
    bank.approaches().forEach(this::approach);
    bank.games().forEach(this::game);
    mixes();
    genres();
    bank.cautions().forEach(this::caution);
  }

  private <T> void unique(
      List<T> things, Function<T, String> id, Function<T, Where> where, String what) {
    Set<String> seen = new HashSet<>();
    for (T thing : things) {
      String name = id.apply(thing);
      if (!name.isEmpty() && !seen.add(name)) {
        report(
            where.apply(thing),
            "duplicate-id",
            "The " + what + " \"" + name + "\" stands here for the second time.",
            "Choose another name.");
      }
    }
  }

  private void approach(Approach approach) {
    Where where = approach.where();
    List<String> classes =
        bank.costClasses().stream().map(Approach.CostClass::code).distinct().toList();
    int index = 0;
    for (String cost : approach.costClasses()) {
      names.known(
          cost,
          where.child("costClass").child(index++),
          Catalogue.APPROACHES,
          classes,
          "unknown-value",
          "a class of cost (" + String.join(", ", classes) + ")");
    }
    basis(approach.basis(), where.child("basis"));
    unique(approach.inputs(), Approach.Input::id, i -> i.where().child("id"), "input");
    approach.inputs().forEach(this::input);
  }

  private void input(Approach.Input input) {
    int index = 0;
    for (String effector : input.effectors()) {
      names.known(
          effector,
          input.where().child("effectors").child(index++),
          effectors,
          "unknown-effector",
          "a body part, such as L.T");
    }
    if (!input.usage().isEmpty() && !isUsage(input.usage())) {
      report(
          input.where().child("hid"),
          "wrong-type",
          "A USB HID usage is written page:usage, two hexadecimal digits and two to four.",
          "Such as 07:2c.");
    }
  }

  private static boolean isUsage(String usage) {
    int digits = usage.length() - 3;
    return digits >= 2
        && digits <= 4
        && usage.charAt(2) == ':'
        && isHexadecimal(usage.substring(0, 2))
        && isHexadecimal(usage.substring(3));
  }

  private static boolean isHexadecimal(String digits) {
    return digits.chars().allMatch(c -> c < 0x80 && Character.digit(c, 16) >= 0);
  }

  private void game(GameProfile game) {
    unique(game.actions(), GameProfile.Action::id, a -> a.where().child("id"), "action");
    List<String> ids = game.actions().stream().map(GameProfile.Action::id).toList();
    for (GameProfile.Action action : game.actions()) {
      Where where = action.where().child("coPress");
      int index = 0;
      for (String other : action.pressedWith()) {
        Where here = where.child(index++);
        names.known(other, here, Catalogue.GAMES, ids, "unknown-value", "an action of this game");
        if (other.equals(action.id())) {
          report(
              here,
              "unknown-value",
              "An action cannot be pressed together with itself.",
              "Remove it.");
        }
      }
    }
    basis(game.basis(), game.where().child("basis"));
  }

  private void mixes() {
    if (bank.approaches().isEmpty()) {
      return;
    }
    List<String> ids = bank.approaches().stream().map(Approach::id).toList();
    Where mixes = Where.file(bank.approaches().get(0).where().file()).child("mixes");
    int outer = 0;
    for (Approach.Mix mix : bank.mixes()) {
      Where here = mixes.child(outer++).child("approaches");
      if (mix.approaches().isEmpty() && !doubt.lacks(Catalogue.APPROACHES)) {
        report(here, "empty-list", "This mix names no approach.", "Add some.");
      }
      int index = 0;
      for (String approach : mix.approaches()) {
        names.known(
            approach,
            here.child(index++),
            Catalogue.APPROACHES,
            ids,
            "unknown-approach",
            "an approach of this bank");
      }
    }
  }

  private void genres() {
    List<String> profiles = bank.games().stream().map(GameProfile::genre).toList();
    for (int slot = 1; slot <= Bank.GAME_SLOTS; slot++) {
      Field field = bank.questionnaire().fieldsByFact().get("games." + slot + ".genre");
      List<Option> options = field == null ? List.of() : field.type().choices();
      for (Option option : options) {
        if (!option.code().equals("none")) {
          names.known(
              option.code(),
              option.where(),
              Catalogue.GAMES,
              profiles,
              "unknown-value",
              "a kind of game with a profile of its own");
        }
      }
    }
  }

  private void caution(Caution caution) {
    if (doubt.about(caution.where())) {
      return;
    }
    if (caution.classes().isEmpty()) {
      report(
          caution.where().child("classes"),
          "empty-list",
          "This caution has no class.",
          "Name every class it can have.");
    }
    if (caution.actions().isEmpty()) {
      report(
          caution.where().child("actions"),
          "empty-list",
          "This caution does not say what to do.",
          "Add a sentence.");
    }
  }

  private void basis(List<String> basis, Where where) {
    if (basis.isEmpty() && !doubt.about(where)) {
      report(
          where,
          "missing",
          "There is no basis for these figures.",
          "Name a source, or say \"practice estimate\".");
    }
    int index = 0;
    for (String source : basis) {
      names.known(
          source,
          where.child(index++),
          Catalogue.SOURCES,
          sources,
          "unknown-source",
          "a source or a named basis of this bank");
    }
  }

  private void report(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
