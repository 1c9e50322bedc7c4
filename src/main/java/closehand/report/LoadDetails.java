package closehand.report;

import closehand.bank.Bank;
import closehand.bank.Effectors;
import closehand.interview.Wording;
import closehand.strain.Accepted;
import closehand.strain.DayLoad;
import closehand.strain.EffectorReading;
import closehand.strain.Flag;
import closehand.strain.HandReading;
import closehand.strain.Load;
import closehand.strain.LoadWords;
import closehand.strain.Method;
import closehand.strain.PlanLoad;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What plans ask of the body, for the clinician: every method with its limits and its source. */
final class LoadDetails {
  private static final double HUNDRED = 100;

  private final Set<Method> methods = new LinkedHashSet<>();
  private final Set<Flag> notes = new LinkedHashSet<>();
  private final List<Piece> pieces = new ArrayList<>();

  private LoadDetails() {}

  /** All games, then the day, then what the figures are not, then the sources. */
  static List<Piece> of(Bank bank, List<Accepted> accepted, DayLoad day) {
    LoadDetails details = new LoadDetails();
    day.games().forEach(g -> details.game(bank, accepted, g));
    details.day(day);
    details.pieces.add(new Heading("What to know beside the load figures"));
    details.notes.stream()
        .filter(f -> f != Flag.EFFORT_NOT_RATED)
        .forEach(f -> details.pieces.add(Paragraph.item(LoadWords.flag(f))));
    details.pieces.addAll(LoadLines.standing(day.games()));
    details.pieces.add(new Heading("Methods behind the load figures"));
    details.methods.forEach(m -> details.pieces.add(Paragraph.item(LoadWords.source(m))));
    return details.pieces;
  }

  /** The games of a day together; for a single game that is the figure of the game. */
  private void day(DayLoad day) {
    if (day.hands().isEmpty()) {
      return;
    }
    pieces.add(new Heading("All games of a day together"));
    day.hands().forEach((hand, load) -> add(Phrases.upper(hand.words()) + " as a whole", load));
  }

  private void game(Bank bank, List<Accepted> accepted, PlanLoad load) {
    double hours = Math.round(HUNDRED * load.time().hoursPerDay()) / HUNDRED;
    pieces.add(new Heading("Load of the plan: " + load.title()));
    pieces.add(
        Paragraph.of(
            "For "
                + Wording.number(hours)
                + (hours == 1 ? " hour" : " hours")
                + " a day on "
                + Phrases.count(load.time().daysPerWeek(), "day")
                + " a week."));
    methods.add(Method.LOAD_LIGHT);
    for (EffectorReading part : load.effectors()) {
      pieces.add(new LoadBar(part));
    }
    LoadLines.heaviest(bank, load).ifPresent(s -> pieces.add(Paragraph.item(s)));
    pieces.addAll(LoadLines.cautions(bank, load));
    pieces.addAll(LoadLines.blocked(load, accepted));
    pieces.addAll(LoadLines.accepted(load, accepted));
    methods(load);
    notes.addAll(load.flags());
  }

  private void methods(PlanLoad load) {
    for (EffectorReading part : load.effectors()) {
      String who = Phrases.upper(Effectors.words(part.effector()));
      add(who, part.index());
      add(who, part.secondLook(load.time().hoursPerDay()));
      if (part.indexesDisagree(load.time().hoursPerDay())) {
        pieces.add(Paragraph.item(who + ": " + LoadWords.FAR_APART));
      }
      add(who, part.hold());
    }
    for (HandReading hand : load.hands()) {
      String who = Phrases.upper(hand.hand().words()) + " as a whole";
      add(who, hand.composite());
      hand.activity().forEach(a -> add(who, a));
    }
  }

  private void add(String who, Load load) {
    figure(load).ifPresent(f -> pieces.add(Paragraph.item(who + ": " + f)));
  }

  /** A method's figure; nothing where the part has no use for the method. */
  private Optional<String> figure(Load load) {
    if (load.flags().contains(Flag.NOT_A_HAND) || load.flags().contains(Flag.NOTHING_TO_DO)) {
      return Optional.empty();
    }
    methods.add(load.method());
    StringBuilder text = new StringBuilder(load.method().title()).append(": ");
    text.append(LoadLines.said(load));
    if (load instanceof Load.Figure figure) {
      text.append("; mostly ").append(LoadLines.drivers(figure));
      notes.addAll(figure.flags());
    }
    return Optional.of(text.append('.').toString());
  }
}
