package closehand.report;

import closehand.plan.Planned;
import closehand.strain.Accepted;
import closehand.strain.Body;
import closehand.strain.DayLoad;
import closehand.strain.PlanLoad;
import closehand.strain.PlanUses;
import closehand.strain.PlayTime;
import closehand.strain.PlayTimes;
import closehand.strain.SessionPlan;
import java.util.ArrayList;
import java.util.List;

/** The load of a player's control plans, beside the plans and in detail. */
public final class LoadText {
  private LoadText() {}

  /** What the plans of one player ask over a day. */
  public static DayLoad day(PageInput input, List<Planned> plans) {
    Body body = new Body(input.limits().effort(), Body.of(input.answers()).tapsInTenSeconds());
    PlayTime time = PlayTimes.of(input.answers());
    List<PlanLoad> loads = new ArrayList<>();
    for (Planned planned : plans) {
      loads.add(PlanLoad.of(planned.plan().title(), PlanUses.of(planned, body), body, time));
    }
    return DayLoad.of(loads);
  }

  /**
   * What breaks ties between plans of equal cost: the composite index of the heavier hand.
   *
   * @param input the player
   */
  public static double heavierHand(PageInput input, Planned planned) {
    return day(input, List.of(planned)).games().get(0).heavierHand();
  }

  /** Every method with its limits and sources, for the clinician. */
  public static String details(PageInput input, List<Planned> plans, Glyphs glyphs) {
    if (!input.ending().isEmpty()) {
      return StopNotice.of(input.ending(), glyphs);
    }
    List<Piece> pieces = new ArrayList<>(StopNotice.all(input));
    if (plans.isEmpty()) {
      pieces.add(Paragraph.of("No plan yet: no game has been named."));
    } else {
      DayLoad day = day(input, plans);
      pieces.addAll(LoadDetails.of(input.bank(), input.limits().accepted(), day));
      pieces.addAll(SessionLines.withReasons(input.with(day)));
    }
    pieces.addAll(FooterLines.of(input));
    return Sheet.text(pieces, glyphs);
  }

  /** A plan, or that it waits for a clinician, with what it asks of the body. */
  static List<Piece> withLoad(PageInput input, Planned planned, PlanLoad load) {
    List<Accepted> accepted = input.limits().accepted();
    List<Piece> pieces = new ArrayList<>();
    List<Piece> blocked = LoadLines.blocked(load, accepted);
    if (blocked.isEmpty()) {
      pieces.addAll(PlanLines.of(input.bank(), planned));
    } else {
      pieces.add(new Heading("Control plan: " + load.title()));
      pieces.addAll(blocked);
    }
    pieces.addAll(LoadLines.of(input.bank(), load));
    pieces.addAll(LoadLines.accepted(load, accepted));
    return pieces;
  }

  /** What stands under all plans: the day, one session, what the figures are not. */
  static List<Piece> under(PageInput input, DayLoad day) {
    List<Piece> pieces = new ArrayList<>(LoadLines.together(day));
    if (!day.games().isEmpty()) {
      pieces.add(new Gap());
      pieces.add(
          Paragraph.of(SessionLines.sentence(SessionPlan.of(SessionLines.pace(input.with(day))))));
    }
    if (!day.games().isEmpty() && input.warns("C-PRESSURE")) {
      pieces.add(Paragraph.of(SessionLines.relief(input)));
    }
    pieces.addAll(LoadLines.standing(day.games()));
    return pieces;
  }
}
