package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.PlanFigures;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.ControlPlan.EffectorLoad;
import closehand.plan.ControlPlan.LeftOut;
import closehand.plan.ControlPlan.Light;
import closehand.plan.ControlPlan.Mode;
import closehand.plan.demand.WantedAction;
import closehand.plan.demand.WantedAction.Purpose;
import closehand.plan.problem.PlanPricer;
import closehand.plan.solve.Budget;
import closehand.plan.supply.SuppliedInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Rules of thumb of the trade, each held against whole plans: those of all games of eight invented
 * players. Every test is named by its rule.
 */
class RulesOfThumbTest {
  private static final Budget QUICK = Budget.ORDINARY.withNodes(150).withTolerance(50);
  private static final Set<String> SLOW =
      Set.of("VOICE", "SOUND", "SCAN", "GAZE", "HEAD_POINT", "ONSCREEN");

  private static final Map<String, Map<Integer, Planned>> PLANS = new LinkedHashMap<>();
  private static PlanFigures figures;

  @BeforeAll
  static void planEverything() {
    figures = Player.bank().planFigures().orElseThrow();
    for (String id : Player.ids()) {
      PLANS.put(id, Player.gold(id).planning().session(PlanAsk.USUAL, () -> QUICK));
    }
  }

  private static List<Planned> all() {
    List<Planned> all = new ArrayList<>();
    PLANS.values().forEach(p -> all.addAll(p.values()));
    return all;
  }

  @Test
  void everyPlanKeepsEveryDemandOfItsProblem() {
    for (Planned planned : all()) {
      var pricing = new PlanPricer(planned.problem()).price(planned.outcome().plan());
      assertEquals(List.of(), pricing.breaches(), planned.plan().title());
      assertEquals(planned.plan().cost(), pricing.cost().total());
      assertTrue(planned.plan().bound() <= planned.plan().cost());
    }
  }

  @Test
  void r111SettingsThatThePlanReliesOnAreListedFirst() {
    for (Planned planned : all()) {
      long toggles =
          planned.plan().assignments().stream().filter(a -> a.mode() == Mode.TOGGLE).count();
      assertTrue(planned.plan().settings().size() >= toggles, planned.plan().title());
    }
  }

  @Test
  void r044AFingerHasOneThingToRestOn() {
    Set<String> rested = Set.of("JOY_LIGHT", "SW_FINGER", "SW_SENSE");
    for (Planned planned : all()) {
      Map<String, Set<String>> homes = new LinkedHashMap<>();
      for (Assignment one : planned.plan().assignments()) {
        if (rested.contains(one.approach()) && one.effector().length() == 3) {
          homes.computeIfAbsent(one.effector(), k -> new java.util.TreeSet<>()).add(one.approach());
        }
      }
      homes.forEach((finger, on) -> assertEquals(1, on.size(), finger + " on " + on));
    }
  }

  @Test
  void leftIsNotWorkedFromTheRightSideOfTheHead() {
    for (int slot : List.of(2, 3)) {
      for (Assignment one : PLANS.get("GC7").get(slot).plan().assignments()) {
        if (one.approach().equals("SW_HEAD") && one.id().endsWith(".left")) {
          assertFalse(one.input().equals("sideR"), one.id());
        }
        if (one.approach().equals("SW_HEAD") && one.id().endsWith(".right")) {
          assertFalse(one.input().equals("sideL"), one.id());
        }
      }
    }
  }

  @Test
  void r057KeysAreNotHeldByTheHandThatHurtsWhereAnotherIsFree() {
    for (Assignment one : PLANS.get("GC8").get(2).plan().assignments()) {
      boolean rightFinger = one.effector().startsWith("R.") && one.effector().length() == 3;
      assertFalse(one.mode() == Mode.HOLD && rightFinger, one.id() + " " + one.effector());
    }
  }

  @Test
  void r092WhatTheGameNeedsIsNotLeftToWordsThatAreOftenMisheard() {
    for (Assignment one : PLANS.get("GC1").get(1).plan().assignments()) {
      assertFalse(one.importance() == 3 && one.approach().equals("VOICE"), one.id());
    }
  }

  @Test
  void r112WhatIsLeftOutHasAReasonAndNothingIsLost() {
    for (Planned planned : all()) {
      ControlPlan plan = planned.plan();
      for (LeftOut left : plan.leftOut()) {
        assertFalse(left.because().isBlank(), left.id());
      }
      for (WantedAction action : planned.demand().actions()) {
        boolean out = plan.leftOut().stream().anyMatch(l -> l.id().equals(action.id()));
        assertTrue(out != plan.assignment(action.id()).isPresent(), action.id());
      }
    }
    Planned few = PLANS.get("GC7").get(1);
    assertFalse(few.plan().leftOut().isEmpty(), "five switches are not enough for ten jobs");
  }

  @Test
  void r113PauseIsAlwaysReachable() {
    for (Planned planned : all()) {
      for (WantedAction action : planned.demand().actions()) {
        boolean pause = figures.demand().job(action.of()).filter("pause"::equals).isPresent();
        if (pause && action.importance() == 3) {
          assertTrue(
              planned.plan().assignment(action.id()).isPresent(),
              planned.plan().title() + " " + action.id());
        }
      }
    }
  }

  @Test
  void r113LookingAndAimingSitOnTheSteadiestEffectorOfThoseThatCan() {
    for (Planned planned : all()) {
      for (WantedAction action : planned.demand().actions()) {
        Optional<Assignment> placed = planned.plan().assignment(action.id());
        if (action.purpose() == Purpose.AIM && placed.isPresent()) {
          double worst =
              planned.supply().inputs().stream()
                  .filter(i -> i.can().contains(action.style()))
                  .filter(i -> !Impossible.unsuitable(action, i))
                  .mapToDouble(i -> factor(planned, action, i))
                  .max()
                  .orElseThrow();
          assertTrue(placed.get().factor() <= worst);
          assertTrue(placed.get().factor() < figures.effort().lastResortFrom(), action.id());
        }
      }
    }
  }

  private static double factor(Planned planned, WantedAction action, SuppliedInput input) {
    return new Efforts(figures, planned.supply()).factor(action, input).value();
  }

  @Test
  void r114WalkingAndJumpingCanBePressedTogether() {
    int pairs = 0;
    for (Planned planned : all()) {
      for (WantedAction action : planned.demand().actions()) {
        for (String other : action.pressedWith()) {
          Optional<Assignment> one = planned.plan().assignment(action.id());
          Optional<Assignment> two = planned.plan().assignment(other);
          if (one.isPresent() && two.isPresent()) {
            pairs++;
            boolean sameStick = one.get().input().contains(".") && two.get().input().contains(".");
            assertTrue(
                sameStick || !one.get().effector().equals(two.get().effector()),
                action.id() + " with " + other);
            assertEquals(one.get().held(), two.get().held(), "both on one layer or on none");
          }
        }
      }
    }
    assertTrue(pairs > 50, "there are pairs to look at: " + pairs);
  }

  @Test
  void r115RareCalmActionsLeaveTheFingersBeforeThoseAreOverloaded() {
    for (Planned planned : all()) {
      for (EffectorLoad load : planned.plan().effectors()) {
        assertTrue(load.light() != Light.RED, planned.plan().title() + " " + load);
      }
    }
    long elsewhere =
        all().stream()
            .flatMap(p -> p.plan().assignments().stream())
            .filter(a -> a.perMinute() <= 1 && a.urgency() <= 1)
            .filter(a -> SLOW.contains(a.approach()) || a.approach().startsWith("SW_"))
            .count();
    assertTrue(elsewhere > 5, "rare calm jobs on switches, voice or the screen: " + elsewhere);
  }

  @Test
  void r116NothingUrgentOrHeldIsSpokenScannedOrDwelledOrOnALayer() {
    for (Planned planned : all()) {
      for (Assignment one : planned.plan().assignments()) {
        boolean slow =
            one.effector().equals("voice")
                || one.approach().equals("SCAN")
                || one.approach().equals("GAZE") && one.mode() != Mode.AXIS
                || one.input().equals("dwell")
                || one.held().isPresent();
        if (slow) {
          assertTrue(one.urgency() < 3, planned.plan().title() + " " + one.id());
          assertTrue(one.mode() != Mode.HOLD, planned.plan().title() + " " + one.id());
        }
      }
    }
  }

  @Test
  void r117NoPartOfTheBodyIsAboveItsLimitOfPresses() {
    for (Planned planned : all()) {
      for (EffectorLoad load : planned.plan().effectors()) {
        assertTrue(load.perMinute() <= 60.001, load.toString());
      }
    }
  }

  @Test
  void r118NothingIsHeldForMoreThanHalfOfPlay() {
    for (Planned planned : all()) {
      for (EffectorLoad load : planned.plan().effectors()) {
        assertTrue(load.heldShare() <= 0.5001, planned.plan().title() + " " + load);
      }
    }
  }

  @Test
  void r035AHelpingHandOnALargeSwitchGetsNothingThatMustComeAtOnce() {
    for (Planned planned : all()) {
      for (Assignment one : planned.plan().assignments()) {
        Optional<SuppliedInput> input =
            planned.supply().inputs().stream()
                .filter(i -> i.path().equals(one.path()) && i.effector().equals(one.effector()))
                .findFirst();
        if (input.filter(i -> i.uses().contains("calmOnly")).isPresent()) {
          assertTrue(one.urgency() < 3, planned.plan().title() + " " + one.id());
        }
      }
    }
  }

  @Test
  void r048NoOneHoldIsLongerThanWhatWasMeasuredAsEasy() {
    for (Planned planned : all()) {
      for (Assignment one : planned.plan().assignments()) {
        var part = planned.supply().body().get(one.effector());
        if (one.mode() == Mode.HOLD && part.longestHoldMillis().isPresent()) {
          assertTrue(
              1000 * one.holdSeconds() <= part.longestHoldMillis().getAsInt(),
              planned.plan().title() + " " + one.id());
        }
      }
    }
  }

  @Test
  void r119TheSameJobSitsOnTheSameInputInSeveralGamesWhereItCan() {
    Map<Integer, Planned> games = PLANS.get("GC4");
    Map<String, Set<String>> places = new LinkedHashMap<>();
    for (Planned planned : games.values()) {
      for (Assignment one : planned.plan().assignments()) {
        figures
            .demand()
            .job(one.action())
            .ifPresent(
                j -> places.computeIfAbsent(j, k -> new java.util.TreeSet<>()).add(one.path()));
      }
    }
    long shared = places.entrySet().stream().filter(e -> e.getValue().size() == 1).count();
    assertTrue(shared >= 2, places.toString());
  }

  @Test
  void r102NoSequenceSitsOnOneButtonWhereTheModeForbidsIt() {
    Planned fight = PLANS.get("GC8").get(2);
    for (String sequence : List.of("FGT09", "FGT10", "FGT12")) {
      assertEquals(Optional.empty(), fight.plan().assignment(sequence), sequence);
      assertTrue(
          fight.plan().settled().stream().anyMatch(s -> s.action().equals(sequence)), sequence);
    }
  }

  @Test
  void r052TheLayerIsNeverHeldByTheThumb() {
    Planning planning = Player.gold("GC1").planning();
    PlanAsk layered =
        PlanAsk.USUAL.only(List.of("MOUSE_SIDE_L", "MOUSE_LAYER", "SW_FOOT", "SW_LARGE"));
    var supply = planning.supply(1, layered);
    assertFalse(supply.layers().isEmpty());
    for (var layer : supply.layers()) {
      String effector = supply.input(layer.button()).orElseThrow().effector();
      assertFalse(effector.endsWith(".T"), effector);
    }
  }
}
