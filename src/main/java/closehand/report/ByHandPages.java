package closehand.report;

import closehand.bank.GameProfile.Action;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.ControlPlan.LeftOut;
import closehand.plan.PlanChanges;
import closehand.plan.Planned;
import closehand.report.ByHandPage.Move;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the pages together on which a plan is changed by hand. */
final class ByHandPages {
  private static final ByHandStep.Start START = new ByHandStep.Start();

  private final PlanBench bench;
  private final List<Piece> pieces = new ArrayList<>();
  private final ByHandChoices choices = new ByHandChoices();
  private String heading = "The plan, changed by hand";
  private String asked = "";

  private ByHandPages(PlanBench bench) {
    this.bench = bench;
  }

  /**
   * The page of a step.
   *
   * @param undoable whether something was changed in this sitting
   */
  static ByHandPage of(PlanBench bench, ByHandStep at, boolean undoable) {
    ByHandPages pages = new ByHandPages(bench);
    pages.step(at, undoable);
    return new ByHandPage(
        pages.heading,
        Sheet.lines(pages.pieces, bench.glyphs()),
        pages.choices.list(),
        pages.asked);
  }

  private void step(ByHandStep at, boolean undoable) {
    if (at instanceof ByHandStep.Start) {
      start(undoable);
    } else if (at instanceof ByHandStep.Actions actions) {
      actions(actions);
    } else if (at instanceof ByHandStep.Why why) {
      why(why);
    } else if (at instanceof ByHandStep.Places places) {
      places(places);
    } else if (at instanceof ByHandStep.Moved moved) {
      moved(moved);
    } else if (at instanceof ByHandStep.Kept kept) {
      kept(kept);
    } else if (at instanceof ByHandStep.Asks asks) {
      asks(asks);
    } else if (at instanceof ByHandStep.Asked one) {
      asked(one);
    } else if (at instanceof ByHandStep.Values values) {
      values(values);
    } else {
      name((ByHandStep.Name) at);
    }
  }

  private void say(String sentence) {
    pieces.add(Paragraph.of(sentence));
  }

  private void item(String sentence) {
    pieces.add(Paragraph.item(sentence));
  }

  private void start(boolean undoable) {
    if (bench.input().together().forReview()) {
      say("A draft for a clinician to review.");
    }
    if (bench.plans().isEmpty()) {
      say("No plan yet: no game has been named.");
    } else {
      say("What you wish stays; the rest is planned around it. Everything can be taken back.");
    }
    boolean one = bench.plans().size() == 1;
    for (var game : bench.plans().entrySet()) {
      String of = one ? "" : Phrases.bare(game.getValue().plan().title()) + ": ";
      int slot = game.getKey();
      wishes(game.getValue(), slot);
      choices.to(
          Phrases.upper(of + "why an action sits where it does, and moving it"),
          new ByHandStep.Actions(slot, 0));
      choices.to(
          Phrases.upper(of + "what the game asks; change, add or remove actions"),
          new ByHandStep.Asks(slot, 0));
    }
    if (undoable) {
      choices.add(7, "Take back the last change", new Move.Undo(START));
    }
    choices.add(0, "Back", new Move.Leave());
  }

  private void wishes(Planned planned, int slot) {
    pieces.addAll(PlanLines.unkept(planned.plan()));
    if (PlanLines.isImpossible(planned)) {
      pieces.addAll(ClashLines.of(planned));
    }
    PlanChanges.OfGame changes = bench.changes(slot);
    if (!changes.wishes().isEmpty()) {
      PlanNames names = new PlanNames(planned);
      say(
          "Wished in "
              + planned.plan().title()
              + ": "
              + Phrases.and(changes.wishes().stream().map(w -> names.action(w.action())).toList())
              + ".");
    }
  }

  private void actions(ByHandStep.Actions at) {
    Planned planned = bench.plan(at.slot());
    heading = Phrases.upper(planned.plan().title());
    say("Which action?");
    List<ByHandChoices.Entry> entries = new ArrayList<>();
    PlanChanges.OfGame changes = bench.changes(at.slot());
    for (Assignment one : planned.plan().assignments()) {
      boolean wished = changes.wishes().stream().anyMatch(w -> w.action().equals(one.id()));
      entries.add(
          new ByHandChoices.Entry(
              Phrases.bare(PlanLines.sentence(one)) + (wished ? " (wished)" : ""),
              new ByHandStep.Why(at.slot(), one.id())));
    }
    for (LeftOut left : planned.plan().leftOut()) {
      if (planned.demand().action(left.id()).isPresent()) {
        entries.add(
            new ByHandChoices.Entry(
                left.name() + ": left out", new ByHandStep.Why(at.slot(), left.id())));
      }
    }
    choices.paged(entries, at.page(), p -> new ByHandStep.Actions(at.slot(), p));
    choices.back(START);
  }

  private void why(ByHandStep.Why at) {
    Planned planned = bench.plan(at.slot());
    heading = "Why, and moving it";
    if (PlanLines.isImpossible(planned)) {
      pieces.addAll(ClashLines.of(planned));
    }
    pieces.addAll(PlanReasons.of(bench.input().bank(), planned, at.id()));
    choices.to("Move it by hand", new ByHandStep.Places(at.slot(), at.id(), 0));
    PlanChanges.OfGame changes = bench.changes(at.slot());
    if (changes.wishes().stream().anyMatch(w -> w.action().equals(at.id()))) {
      choices.add(
          2,
          "Take this wish back",
          new Move.Change(bench.changes().with(at.slot(), changes.unwished(at.id())), at));
    }
    planned
        .demand()
        .action(at.id())
        .ifPresent(
            a ->
                choices.add(
                    3,
                    "What the game asks of it",
                    new Move.To(new ByHandStep.Asked(at.slot(), a.of()))));
    choices.back(new ByHandStep.Actions(at.slot(), 0));
  }

  private void places(ByHandStep.Places at) {
    MovedByHand moves = new MovedByHand(bench.plan(at.slot()), at.id());
    heading = "Where to?";
    say(moves.name() + ". Points a minute are beside each place; an easy press is about 100.");
    List<ByHandChoices.Entry> entries = new ArrayList<>();
    for (MovedByHand.Place place : moves.places()) {
      entries.add(
          new ByHandChoices.Entry(
              moves.brief(place), new ByHandStep.Moved(at.slot(), at.id(), place.input())));
    }
    if (entries.isEmpty()) {
      say("Nothing else within reach can do it.");
    }
    choices.paged(entries, at.page(), p -> new ByHandStep.Places(at.slot(), at.id(), p));
    choices.back(new ByHandStep.Why(at.slot(), at.id()));
  }

  private void moved(ByHandStep.Moved at) {
    Planned planned = bench.plan(at.slot());
    heading = "What that costs";
    MovedByHand moves = new MovedByHand(planned, at.id());
    Optional<MovedByHand.Place> place =
        moves.places().stream().filter(p -> p.input().equals(at.input())).findFirst();
    place.ifPresent(p -> moves.sentences(p).forEach(this::say));
    PlanChanges next =
        bench
            .changes()
            .with(
                at.slot(),
                bench
                    .changes(at.slot())
                    .wishing(new closehand.plan.PlanAsk.Wish(at.id(), at.input())));
    choices.add(
        1,
        "Keep it as a wish; the rest is planned around it",
        new Move.Change(next, new ByHandStep.Kept(at.slot(), at.id(), planned)));
    choices.add(2, "Undo; leave it as it was", new Move.To(new ByHandStep.Why(at.slot(), at.id())));
    choices.back(new ByHandStep.Places(at.slot(), at.id(), 0));
  }

  private void kept(ByHandStep.Kept at) {
    Planned planned = bench.plan(at.slot());
    heading = "The plan around your wish";
    if (PlanLines.isImpossible(planned)) {
      pieces.addAll(ClashLines.of(planned));
    } else {
      planned.plan().assignment(at.id()).map(PlanLines::sentence).ifPresent(this::say);
      MovedByHand.differences(at.before(), planned, at.id()).forEach(this::say);
    }
    choices.add(1, "Keep it", new Move.To(new ByHandStep.Actions(at.slot(), 0)));
    choices.add(2, "Undo; plan as before", new Move.Undo(new ByHandStep.Why(at.slot(), at.id())));
    choices.back(START);
  }

  private void asks(ByHandStep.Asks at) {
    heading = Phrases.upper(bench.plan(at.slot()).plan().title());
    say("Which action of the game?");
    PlanChanges.OfGame changes = bench.changes(at.slot());
    List<ByHandChoices.Entry> entries = new ArrayList<>();
    entries.add(
        new ByHandChoices.Entry("Add an action of your own", new ByHandStep.Name(at.slot())));
    for (Action action : bench.actions(at.slot())) {
      boolean changed = changes.action(action.id()).isPresent();
      entries.add(
          new ByHandChoices.Entry(
              AskedAction.line(action) + (changed ? " (changed)" : ""),
              new ByHandStep.Asked(at.slot(), action.id())));
    }
    for (Action action : bench.told(at.slot()).actions()) {
      if (changes.removed().contains(action.id())) {
        entries.add(
            new ByHandChoices.Entry(
                action.name() + " (removed)", new ByHandStep.Asked(at.slot(), action.id())));
      }
    }
    choices.paged(entries, at.page(), p -> new ByHandStep.Asks(at.slot(), p));
    choices.back(START);
  }

  private void asked(ByHandStep.Asked at) {
    heading = "What the game asks";
    PlanChanges.OfGame changes = bench.changes(at.slot());
    ByHandStep list = new ByHandStep.Asks(at.slot(), 0);
    Optional<Action> there = find(bench.actions(at.slot()), at.action());
    Optional<Action> before = find(bench.told(at.slot()).actions(), at.action());
    if (there.isPresent()) {
      say(Phrases.sentence(AskedAction.line(there.get())));
      answered(at);
      whereNow(at);
      for (AskedAction.Part part : AskedAction.parts(there.get())) {
        choices.to(
            part.words() + ": " + AskedAction.now(there.get(), part),
            new ByHandStep.Values(at.slot(), at.action(), part));
      }
      choices.add(
          6,
          "Remove it from the game",
          new Move.Change(
              bench
                  .changes()
                  .with(
                      at.slot(),
                      before.isPresent()
                          ? changes.without(at.action())
                          : changes.without(at.action()).asBefore(at.action())),
              list));
    } else {
      say(before.map(Action::name).orElse("It") + " is removed.");
    }
    boolean touched =
        changes.action(at.action()).isPresent() || changes.removed().contains(at.action());
    if (before.isPresent() && touched) {
      choices.add(
          7,
          "Put it back as it was",
          new Move.Change(bench.changes().with(at.slot(), changes.asBefore(at.action())), at));
    }
    choices.back(list);
  }

  private static Optional<Action> find(List<Action> actions, String id) {
    return actions.stream().filter(a -> a.id().equals(id)).findFirst();
  }

  /** What the answers say of it counts until it is changed here. */
  private void answered(ByHandStep.Asked at) {
    boolean changed = bench.changes(at.slot()).action(at.action()).isPresent();
    for (String list : List.of("must", "drop")) {
      boolean named = bench.isNamed(at.slot(), list, at.action());
      if (named && !changed) {
        say(
            list.equals("must")
                ? "Your answers name it as one that must work; a change here outranks that."
                : "Your answers say you can do without it; a change here outranks that.");
      }
    }
  }

  private void whereNow(ByHandStep.Asked at) {
    bench.plan(at.slot()).plan().assignments().stream()
        .filter(a -> a.action().equals(at.action()))
        .forEach(a -> item("Now: " + PlanLines.sentence(a)));
    bench.plan(at.slot()).plan().leftOut().stream()
        .filter(l -> l.action().equals(at.action()))
        .forEach(l -> item("Now left out: " + Phrases.sentence(l.because())));
  }

  private void values(ByHandStep.Values at) {
    heading = at.part().words();
    Action action = find(bench.actions(at.slot()), at.action()).orElseThrow();
    ByHandStep back = new ByHandStep.Asked(at.slot(), at.action());
    String now = AskedAction.now(action, at.part());
    say(action.name() + ".");
    for (AskedAction.Value value : AskedAction.values(action, at.part())) {
      choices.next(
          value.words() + (value.words().equals(now) ? " (now)" : ""),
          new Move.Change(
              bench.changes().with(at.slot(), bench.changes(at.slot()).with(value.action())),
              back));
    }
    choices.back(back);
  }

  private void name(ByHandStep.Name at) {
    heading = "An action of your own";
    say("What is it called? A few words, at most 40 letters.");
    asked = "Name: ";
    choices.back(new ByHandStep.Asks(at.slot(), 0));
  }
}
