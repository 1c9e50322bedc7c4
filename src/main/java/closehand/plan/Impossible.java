package closehand.plan;

import closehand.plan.demand.WantedAction;
import closehand.plan.problem.Style;
import closehand.plan.problem.Wishes;
import closehand.plan.supply.BodyPart;
import closehand.plan.supply.SuppliedInput;
import closehand.plan.supply.Supply;
import java.util.ArrayList;
import java.util.List;

/** What an action can never sit on for this body, though the input could do it. */
final class Impossible {
  private static final int AT_ONCE = 3;

  private final Supply supply;

  Impossible(Supply supply) {
    this.supply = supply;
  }

  /** Every such pair as something the search must keep clear of. */
  List<Wishes.Ban> bans(List<WantedAction> actions, List<SuppliedInput> inputs) {
    List<Wishes.Ban> bans = new ArrayList<>();
    for (WantedAction action : actions) {
      for (SuppliedInput input : inputs) {
        boolean tooUrgent = action.urgency() == AT_ONCE && input.uses().contains("calmOnly");
        if (tooUrgent || unsuitable(action, input) || heldTooLong(action, input)) {
          bans.add(new Wishes.Ban(action.id(), input.id()));
        }
      }
    }
    return bans;
  }

  /** Whether the movement of the input is not the movement that the action needs. */
  static boolean unsuitable(WantedAction action, SuppliedInput input) {
    boolean stick = input.kind().equals("axis2");
    boolean pointOnly = input.uses().contains("pointOnly");
    return switch (action.purpose()) {
      case PRESS, POINT -> false;
      case MOVE -> input.can().contains(Style.TWO_AXES) && !stick;
      case AIM -> pointOnly;
      case STEER -> input.can().contains(Style.ONE_AXIS) && !input.input().endsWith(".across");
    };
  }

  /**
   * Whether one hold lasts longer than the part of the body was found to hold with ease. One that
   * can be switched on and off stays possible; it is then never held.
   */
  private boolean heldTooLong(WantedAction action, SuppliedInput input) {
    BodyPart part = supply.body().get(input.effector());
    return part != null
        && action.style() == Style.HOLD
        && !action.toggleOffered()
        && part.longestHoldMillis().isPresent()
        && 1000 * action.longestHoldSeconds() > part.longestHoldMillis().getAsInt();
  }
}
