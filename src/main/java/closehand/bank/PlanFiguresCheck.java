package closehand.bank;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Checks the figures of control plans against the rest of the bank. */
final class PlanFiguresCheck {
  private static final List<String> OCCUPIES =
      List.of("hand", "bothHands", "digits", "arm", "foot", "head", "nothing");
  private static final List<String> SPEAKS = List.of("mouse", "keyboard", "pad", "touch", "any");
  private static final List<String> NO_SOURCE =
      List.of("common practice", "practice estimate", "from memory");

  private final Bank bank;
  private final PlanFigures figures;
  private final Doubt doubt;
  private final Names names;
  private final List<Problem> problems;

  private PlanFiguresCheck(Bank bank, PlanFigures figures, Doubt doubt, List<Problem> problems) {
    this.bank = bank;
    this.figures = figures;
    this.doubt = doubt;
    this.names = new Names(doubt, problems);
    this.problems = problems;
  }

  static void check(Bank bank, Doubt doubt, List<Problem> problems) {
    bank.planFigures()
        .filter(f -> !doubt.about(f.where()))
        .ifPresent(f -> new PlanFiguresCheck(bank, f, doubt, problems).check());
  }

  private void check() {
    basis();
    approaches();
    kinds();
    actions();
    for (String code : new TreeSet<>(figures.parts().costPoints().keySet())) {
      names.known(
          code,
          at("parts", "costPoints", code),
          Catalogue.APPROACHES,
          bank.costClasses().stream().map(Approach.CostClass::code).toList(),
          "unknown-value",
          "a class of cost");
    }
  }

  private void basis() {
    if (figures.basis().isEmpty()) {
      problems.add(
          Problem.error(
              at("basis"),
              "missing",
              "There is no basis for these figures.",
              "Name a source, or say \"practice estimate\"."));
    }
    List<String> known = new java.util.ArrayList<>(NO_SOURCE);
    bank.sources().forEach(s -> known.add(s.id()));
    for (String source : figures.basis()) {
      names.known(
          source, at("basis"), Catalogue.SOURCES, known, "unknown-source", "a source of this bank");
    }
  }

  private void approaches() {
    List<String> ids = bank.approaches().stream().map(Approach::id).toList();
    each(figures.families().keySet(), at("families"), ids, "an approach of this bank");
    figures
        .parts()
        .owned()
        .forEach(
            (kit, owned) ->
                each(owned, at("parts", "owned", kit), ids, "an approach of this bank"));
    figures
        .families()
        .forEach(
            (id, family) -> {
              names.known(
                  family.occupies(),
                  at("families"),
                  OCCUPIES,
                  "unknown-value",
                  "a part that can be kept busy");
              speaks(family.buttonsSpeak(), at("families"));
            });
  }

  private void each(Collection<String> found, Where where, List<String> known, String what) {
    for (String one : new TreeSet<>(found)) {
      names.known(one, where, Catalogue.APPROACHES, known, "unknown-approach", what);
    }
  }

  private void speaks(List<String> words, Where where) {
    words.forEach(
        w -> names.known(w, where, SPEAKS, "unknown-value", "something that a game can accept"));
  }

  /** Every kind of input that the approaches have must be explained. */
  private void kinds() {
    figures.kinds().values().forEach(k -> speaks(k.speaks(), at("kinds")));
    Set<String> used = new TreeSet<>();
    bank.approaches().forEach(a -> a.inputs().forEach(i -> used.add(i.kind())));
    for (String kind : used) {
      if (!kind.isEmpty() && !figures.kinds().containsKey(kind)) {
        problems.add(
            Problem.error(
                at("kinds"),
                "missing",
                "The kind of input \"" + kind + "\" is not here.",
                "Say what it is used for and what a game must accept for it."));
      }
    }
  }

  private void actions() {
    if (doubt.lacks(Catalogue.GAMES)) {
      return;
    }
    List<String> ids =
        bank.games().stream()
            .flatMap(g -> g.actions().stream())
            .map(GameProfile.Action::id)
            .toList();
    DemandFigures demand = figures.demand();
    action(demand.ownDirections().keySet(), at("demand", "ownDirections"), ids);
    action(demand.irreversible(), at("demand", "irreversible"), ids);
    demand.jobs().forEach(j -> action(j.actions(), at("demand", "jobs"), ids));
  }

  private void action(Collection<String> found, Where where, List<String> known) {
    for (String one : found) {
      names.known(
          one, where, Catalogue.GAMES, known, "unknown-value", "an action of a game of this bank");
    }
  }

  private Where at(String... steps) {
    Where where = Where.file(figures.where().file());
    for (String step : steps) {
      where = where.child(step);
    }
    return where;
  }
}
