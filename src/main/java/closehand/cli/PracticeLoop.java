package closehand.cli;

import closehand.json.PlanWriter;
import closehand.measure.practice.Findings;
import closehand.measure.practice.PracticeRecord;
import closehand.plan.Planned;
import closehand.plan.Planning;
import closehand.plan.Replanned;
import closehand.plan.problem.Placement;
import closehand.report.practice.Measures;
import closehand.report.practice.Offered;
import closehand.report.practice.PracticeText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * From a practice run to changes of the plan, one at a time: keeps the run, plans again with what
 * it found, and holds what was taken and what is on offer.
 */
final class PracticeLoop {
  private final Planning planning;
  private final Planned planned;
  private final List<PracticeRecord> earlier;
  private final PracticeKeeping keeping;
  private final long seed;
  private Optional<PracticeRecord> record = Optional.empty();
  private Optional<Replanned> replanned = Optional.empty();
  private Findings findings = Findings.NOTHING;
  private final List<List<String>> left = new ArrayList<>();

  PracticeLoop(
      Planning planning,
      Planned planned,
      List<PracticeRecord> earlier,
      PracticeKeeping keeping,
      long seed) {
    this.planning = planning;
    this.planned = planned;
    this.earlier = List.copyOf(earlier);
    this.keeping = keeping;
    this.seed = seed;
  }

  /** Keeps a run and plans again; gives what went wrong with keeping it, as sentences. */
  List<String> practised(PracticeRecord now) throws IOException {
    record = Optional.of(now);
    List<PracticeRecord> all = new ArrayList<>(earlier);
    all.add(now);
    findings = PracticeRecord.findings(all, now.game());
    if (!findings.inputs().isEmpty()) {
      replanned =
          Optional.of(
              planning.again(planned, Measures.of(findings, planned.supply()), PlanWork.PLAN));
    }
    return keeping.keep(now, Optional.empty());
  }

  /** What was found, input by input. */
  List<String> found() {
    return text().found();
  }

  private PracticeText text() {
    return new PracticeText(planned, findings);
  }

  private List<Offered> offers() {
    return replanned
        .map(r -> Offered.of(r, findings, planned.supply(), seed))
        .orElse(List.of())
        .stream()
        .filter(o -> !left.contains(o.change().actions()))
        .toList();
  }

  private Optional<Offered> first() {
    return offers().stream().filter(Offered::firm).findFirst();
  }

  /** The change on offer, as paragraphs; empty where there is none. */
  List<String> offer() {
    return first().map(o -> text().offer(replanned.orElseThrow().before(), o)).orElse(List.of());
  }

  /** What is said where nothing is on offer. */
  List<String> nothingOnOffer() {
    List<String> lines = new ArrayList<>();
    if (replanned.isEmpty() || first().isPresent()) {
      return lines;
    }
    lines.add("What was measured speaks for no change of the plan. It stays as it is.");
    offers().stream()
        .findFirst()
        .ifPresent(
            o -> {
              lines.add("Perhaps later:");
              lines.addAll(text().offer(replanned.orElseThrow().before(), o));
            });
    return lines;
  }

  /** Takes the change on offer and keeps the plan with it. */
  List<String> take() throws IOException {
    Optional<Offered> offered = first();
    if (offered.isEmpty()) {
      return List.of();
    }
    Replanned now = replanned.orElseThrow().taking(offered.get().change());
    replanned = Optional.of(now);
    Map<String, String> moved = new LinkedHashMap<>();
    for (String action : offered.get().change().actions()) {
      now.before()
          .of(action)
          .map(Placement::slot)
          .filter(s -> s.layer().isEmpty())
          .ifPresent(s -> moved.put(action, s.input()));
    }
    PracticeRecord taken = record.orElseThrow().taking(moved);
    record = Optional.of(taken);
    String plan = PlanWriter.write(List.of(planning.with(planned, now).plan()), List.of());
    return keeping.keep(taken, Optional.of(plan));
  }

  /** Leaves the change on offer. */
  void leave() {
    first().ifPresent(o -> left.add(o.change().actions()));
  }
}
