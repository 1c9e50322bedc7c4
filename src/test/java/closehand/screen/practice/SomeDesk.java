package closehand.screen.practice;

import closehand.bank.Stops;
import closehand.measure.CoreStops;
import closehand.measure.practice.ButtonCheck;
import closehand.measure.practice.Findings;
import closehand.measure.practice.PracticeRun;
import closehand.measure.practice.Reckoning;
import closehand.measure.practice.Sheet;
import closehand.measure.practice.Signal;
import closehand.measure.practice.SomeSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A desk with an invented panel, which remembers what it was given. */
final class SomeDesk implements PracticeDesk {
  static final Sheet SHEET = SomeSheet.twelve();

  final List<PracticeRun> finished = new ArrayList<>();
  Findings findings = Findings.NOTHING;
  private int offers = 1;

  @Override
  public List<String> first() {
    return List.of("You practise the control plan of \"An invented game\".");
  }

  @Override
  public List<ButtonCheck.Wanted> inputs() {
    return SHEET.targets().stream()
        .map(t -> new ButtonCheck.Wanted(t.input(), t.name(), t.part(), Optional.of(t.signal())))
        .toList();
  }

  @Override
  public Map<String, Signal> known() {
    Map<String, Signal> known = new LinkedHashMap<>();
    SHEET.targets().forEach(t -> known.put(t.input(), t.signal()));
    return known;
  }

  @Override
  public Stops stops() {
    return CoreStops.all();
  }

  @Override
  public PracticeRun run(Map<String, Signal> signals) {
    return PracticeRun.of(SHEET, 1, 7, false, 720);
  }

  @Override
  public Outcome finished(Map<String, Signal> signals, PracticeRun run) {
    finished.add(run);
    findings = Reckoning.of(run.counted());
    boolean offered = run.stage() == PracticeRun.Stage.DONE;
    return new Outcome(
        List.of("Rounds that count: " + findings.rounds() + "."),
        offered ? List.of("\"Action 1\" moves from cell 2 to cell 3.") : List.of());
  }

  @Override
  public Outcome take() {
    offers--;
    return new Outcome(List.of("Taken. Changes left: " + offers + "."), List.of());
  }

  @Override
  public Outcome leave() {
    return new Outcome(List.of("Kept as it was."), List.of());
  }
}
