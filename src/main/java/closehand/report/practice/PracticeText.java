package closehand.report.practice;

import closehand.bank.Effectors;
import closehand.measure.practice.Findings;
import closehand.plan.Planned;
import closehand.plan.demand.WantedAction;
import closehand.plan.explain.SingleChanges.SingleChange;
import closehand.plan.problem.Placement;
import closehand.plan.problem.Placements;
import closehand.plan.problem.Slot;
import closehand.plan.supply.SuppliedInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What came of a practice run, as lines for screen and paper. */
public final class PracticeText {
  private static final double EASY_PRESS_POINTS = 100;

  private final Planned planned;
  private final Findings findings;

  /** The words for one plan and what was found of it. */
  public PracticeText(Planned planned, Findings findings) {
    this.planned = planned;
    this.findings = findings;
  }

  /** Each practised input in a paragraph of its own, then what these numbers are not. */
  public List<String> found() {
    List<String> lines = new ArrayList<>();
    if (findings.inputs().isEmpty()) {
      lines.add(
          "Too little was practised to tell anything: the first round is for warming up, and"
              + " no other was finished.");
      return lines;
    }
    for (Findings.OfInput input : findings.inputs()) {
      lines.add(name(input.input()) + ". " + FindingWords.of(input));
    }
    lines.add(
        "These are differences between your own inputs on this machine, from "
            + findings.rounds()
            + (findings.rounds() == 1 ? " round" : " rounds")
            + " after the first. They compare you with nobody, and no method behind them was"
            + " made for disabled players.");
    lines.add(
        "In the first weeks practice makes everything quicker, which can hide that something"
            + " tires you.");
    return lines;
  }

  /** What one change would do and why, as paragraphs. */
  public List<String> offer(Placements before, Offered offered) {
    SingleChange change = offered.change();
    List<String> lines = new ArrayList<>();
    for (String action : change.actions()) {
      lines.add(moved(action, before.of(action), change.plan().of(action)));
    }
    for (String input : inputs(before, change)) {
      lines.add(
          findings
              .of(input)
              .map(f -> "Measured: " + name(input) + ". " + FindingWords.of(f))
              .orElse("Not practised yet: " + name(input) + ". Try it before you settle on it."));
    }
    lines.add(saving(offered));
    return lines;
  }

  private static String saving(Offered offered) {
    String middle =
        "This would save you about as much effort as " + presses(offered.saving()) + " a minute";
    return offered.firm()
        ? middle
            + " (between "
            + Math.round(Math.max(0, offered.low()) / EASY_PRESS_POINTS)
            + " and "
            + Math.round(offered.high() / EASY_PRESS_POINTS)
            + ")."
        : middle + ", but that is within what chance could do. Practise again before you move it.";
  }

  private static String presses(long points) {
    long presses = Math.max(1, Math.round(points / EASY_PRESS_POINTS));
    return presses == 1 ? "one easy press" : presses + " easy presses";
  }

  private String moved(String action, Optional<Placement> from, Optional<Placement> to) {
    String named =
        "\"" + planned.demand().action(action).map(WantedAction::name).orElse(action) + "\"";
    if (from.isEmpty() && to.isPresent()) {
      return named + " comes in: " + place(to.get().slot()) + ".";
    }
    if (from.isPresent() && to.isEmpty()) {
      return named + " goes out: it was on " + place(from.get().slot()) + ".";
    }
    return named
        + " moves from "
        + from.map(p -> place(p.slot())).orElse("")
        + " to "
        + to.map(p -> place(p.slot())).orElse("")
        + ".";
  }

  private String place(Slot slot) {
    String held =
        slot.layer()
            .flatMap(
                l -> planned.supply().layers().stream().filter(s -> s.id().equals(l)).findFirst())
            .map(l -> ", while you hold " + inputName(l.button()))
            .orElse("");
    return name(slot.input()) + held;
  }

  private static List<String> inputs(Placements before, SingleChange change) {
    List<String> inputs = new ArrayList<>();
    for (String action : change.actions()) {
      before.of(action).ifPresent(p -> inputs.add(p.slot().input()));
      change.plan().of(action).ifPresent(p -> inputs.add(p.slot().input()));
    }
    return inputs.stream().distinct().toList();
  }

  private String inputName(String id) {
    return planned.supply().input(id).map(SuppliedInput::name).orElse(id);
  }

  private String name(String id) {
    return planned
        .supply()
        .input(id)
        .map(i -> i.name() + " (" + Effectors.words(i.effector()) + ")")
        .orElse(id);
  }
}
