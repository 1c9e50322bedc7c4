package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Effectors;
import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.ControlPlan.LeftOut;
import closehand.plan.ControlPlan.Mode;
import closehand.plan.ControlPlan.Shared;
import closehand.plan.Planned;
import closehand.plan.solve.PlanOutcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One control plan in sentences. */
final class PlanLines {
  private static final int MOST_WAITS = 4;

  private PlanLines() {}

  /** The whole plan of one game. */
  static List<Piece> of(Bank bank, Planned planned) {
    ControlPlan plan = planned.plan();
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Control plan: " + plan.title()));
    pieces.addAll(unkept(plan));
    if (isImpossible(planned)) {
      pieces.addAll(ClashLines.of(planned));
      return pieces;
    }
    pieces.add(Paragraph.of(uses(bank, plan)));
    pieces.add(Paragraph.of(sureness(plan)));
    pieces.addAll(NeededLines.of(plan));
    pieces.addAll(ClashLines.of(planned));
    pieces.addAll(settings(plan));
    pieces.addAll(assignments(plan));
    pieces.addAll(shared(plan));
    pieces.addAll(leftOut(plan));
    pieces.addAll(waits(bank, plan));
    return pieces;
  }

  /** What must stand beside every plan. */
  static List<Piece> standing() {
    return List.of(
        new Gap(),
        Paragraph.of(
            "The points and limits behind a plan are rules of thumb. No published method was made"
                + " for disabled players; your own signs and your health team come first."));
  }

  /** Kept wishes that cannot be kept now. */
  static List<Piece> unkept(ControlPlan plan) {
    return plan.unkept().stream()
        .map(w -> (Piece) Paragraph.of("A wish that was kept cannot be kept now. " + w))
        .toList();
  }

  /** Whether there is no plan, since what was wished cannot be kept together. */
  static boolean isImpossible(Planned planned) {
    return planned.outcome().status() == PlanOutcome.Status.IMPOSSIBLE;
  }

  static String uses(Bank bank, ControlPlan plan) {
    List<String> names =
        plan.approaches().stream()
            .flatMap(a -> bank.approach(a).stream())
            .map(Approach::words)
            .map(Approach.Words::name)
            .toList();
    if (names.isEmpty() && plan.sureness() == ControlPlan.Sureness.OPEN) {
      return "No plan was found in the time given. Looking longer may find one.";
    }
    return names.isEmpty()
        ? "Nothing suggested so far can work this game."
        : "You play with: " + Phrases.listed(names) + ".";
  }

  static String sureness(ControlPlan plan) {
    return switch (plan.sureness()) {
      case PROVED -> "Proved best: under these demands no other plan asks less of you.";
      case NEAR -> "Within 0.5 % of the best possible: no other plan asks noticeably less of you.";
      case OPEN -> "A good plan; whether there is a better one was not settled in the time given.";
    };
  }

  private static List<Piece> settings(ControlPlan plan) {
    List<Piece> pieces = new ArrayList<>();
    if (!plan.settings().isEmpty()) {
      pieces.add(Paragraph.headed("Set in the game first.", ""));
      plan.settings().forEach(s -> pieces.add(Paragraph.item(Phrases.sentence(s))));
    }
    return pieces;
  }

  private static List<Piece> assignments(ControlPlan plan) {
    List<Piece> pieces = new ArrayList<>();
    Map<String, List<Assignment>> byDevice = new LinkedHashMap<>();
    plan.assignments()
        .forEach(a -> byDevice.computeIfAbsent(device(a), d -> new ArrayList<>()).add(a));
    byDevice.forEach(
        (device, all) -> {
          pieces.add(new Gap());
          pieces.add(Paragraph.of(device + ":"));
          all.forEach(a -> pieces.add(Paragraph.item(sentence(a))));
        });
    return pieces;
  }

  /** What it is set up on; a panel on the screen is not on the device that works it. */
  static String device(Assignment assignment) {
    return assignment.inputKind().equals("panelButton")
        ? "On-screen panel, worked with the " + Phrases.lower(assignment.device())
        : assignment.device();
  }

  /** Such as "Jump: extra top button 1, left index finger, press." */
  static String sentence(Assignment assignment) {
    String held = assignment.held().map(h -> "hold the " + h + ", then ").orElse("");
    return assignment.name()
        + ": "
        + held
        + assignment.inputName()
        + ", "
        + Effectors.words(assignment.effector())
        + ", "
        + mode(assignment.mode())
        + ".";
  }

  static String mode(Mode mode) {
    return switch (mode) {
      case TAP -> "press";
      case HOLD -> "hold";
      case TOGGLE -> "press on, press off";
      case AXIS -> "move";
    };
  }

  private static List<Piece> shared(ControlPlan plan) {
    List<Piece> pieces = new ArrayList<>();
    if (!plan.settled().isEmpty()) {
      pieces.add(new Gap());
      pieces.add(Paragraph.of("Needs no input of its own:"));
      for (Shared one : plan.settled()) {
        pieces.add(Paragraph.item(Phrases.sentence(one.name() + ": " + one.words())));
      }
    }
    return pieces;
  }

  private static List<Piece> leftOut(ControlPlan plan) {
    List<Piece> pieces = new ArrayList<>();
    if (!plan.leftOut().isEmpty()) {
      pieces.add(new Gap());
      pieces.add(Paragraph.of("Left out, and why:"));
      for (LeftOut one : plan.leftOut()) {
        String must = one.importance() == 3 ? " (the game needs this)" : "";
        String bring =
            one.bringInBy().isEmpty()
                ? ""
                : " It may come in with: " + Phrases.listed(one.bringInBy()) + ".";
        pieces.add(
            Paragraph.item(Phrases.sentence(one.name() + must + ": " + one.because()) + bring));
      }
    }
    return pieces;
  }

  private static List<Piece> waits(Bank bank, ControlPlan plan) {
    if (plan.waitsFor().isEmpty()) {
      return List.of();
    }
    List<String> first = plan.waitsFor().subList(0, Math.min(MOST_WAITS, plan.waitsFor().size()));
    return List.of(
        new Gap(),
        Paragraph.of(
            "This plan goes carefully where an answer is missing. More could come in with: "
                + Labels.sentence(bank.questionnaire(), first)));
  }
}
