package closehand.rules;

import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.bank.Rule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers the cautions that rules raise: one warning a caution, with its strongest class. */
final class Warnings {
  private final Reckoning reckoning;
  private final Map<String, Caution> cautions = new LinkedHashMap<>();

  /** The rules that raise one caution, and how strongly. */
  private static final class Gathered {
    private CautionClass strongest = CautionClass.NOTE;
    private final List<Integer> rules = new ArrayList<>();

    void add(int rule, CautionClass cautionClass) {
      if (cautionClass.compareTo(strongest) > 0) {
        strongest = cautionClass;
      }
      if (!rules.contains(rule)) {
        rules.add(rule);
      }
    }
  }

  Warnings(Reckoning reckoning) {
    this.reckoning = reckoning;
    for (Caution caution : reckoning.program().bank().cautions()) {
      cautions.put(caution.code(), caution);
    }
  }

  /** Every caution that stands, strongest first, then in rule order. */
  List<Warning> standing() {
    Map<String, Gathered> byCode = new LinkedHashMap<>();
    for (int rule = 0; rule < reckoning.findings().size(); rule++) {
      if (reckoning.outcome(rule) == Outcome.TRUE) {
        for (Rule.Raised raised : raised(rule)) {
          gather(byCode, raised, rule);
        }
      }
    }
    return warnings(byCode);
  }

  /** Every stop that an open rule could still raise. */
  List<Warning> notCleared() {
    Map<String, Gathered> byCode = new LinkedHashMap<>();
    for (int rule = 0; rule < reckoning.findings().size(); rule++) {
      if (reckoning.outcome(rule) == Outcome.OPEN) {
        gatherStops(byCode, rule);
      }
    }
    return warnings(byCode);
  }

  /** Every stop that would stand, had a clinician not lowered it. */
  List<Warning> lowered() {
    Map<String, Gathered> byCode = new LinkedHashMap<>();
    for (int rule = 0; rule < reckoning.findings().size(); rule++) {
      if (reckoning.finding(rule).heldBack()) {
        for (Rule.Raised raised : raised(rule)) {
          if (raised.cautionClass().stops() && heldBackByLowering(rule, raised.code())) {
            gather(byCode, raised, rule);
          }
        }
      }
    }
    return warnings(byCode);
  }

  /** Whether the rule would no longer be held back had this one caution not been lowered. */
  private boolean heldBackByLowering(int rule, String code) {
    Program program = reckoning.program();
    FactTable.Worked cleared = program.table().worked(FactTable.CLEARED);
    int index = cleared.shape() instanceof SeveralShape codes ? codes.index(code) : -1;
    if (index < 0 || reckoning.base()[cleared.slot() + index] != Shape.YES) {
      return false;
    }
    long[] without = reckoning.base().clone();
    without[cleared.slot() + index] = Shape.NO;
    return !program.rules().get(rule).heldBack(program.settle(without));
  }

  private List<Rule.Raised> raised(int rule) {
    return reckoning.program().rules().get(rule).rule().effects().cautions();
  }

  private void gatherStops(Map<String, Gathered> byCode, int rule) {
    for (Rule.Raised raised : raised(rule)) {
      if (raised.cautionClass().stops()) {
        gather(byCode, raised, rule);
      }
    }
  }

  private static void gather(Map<String, Gathered> byCode, Rule.Raised raised, int rule) {
    byCode.computeIfAbsent(raised.code(), c -> new Gathered()).add(rule, raised.cautionClass());
  }

  private List<Warning> warnings(Map<String, Gathered> byCode) {
    List<Warning> warnings = new ArrayList<>();
    byCode.forEach((code, gathered) -> warnings.add(warning(code, gathered)));
    warnings.sort(Comparator.comparing(Warning::cautionClass).reversed());
    return warnings;
  }

  private Warning warning(String code, Gathered gathered) {
    Caution caution = cautions.get(code);
    if (caution == null) {
      throw new IllegalArgumentException("no such caution: " + code);
    }
    return new Warning(
        caution.as(gathered.strongest),
        gathered.strongest,
        gathered.rules.stream().map(reckoning::finding).toList(),
        reckoning.waitsOf(gathered.rules));
  }
}
