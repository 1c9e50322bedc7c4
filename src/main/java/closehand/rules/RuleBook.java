package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.CautionClass;
import closehand.bank.TaskKind;
import closehand.interview.Answers;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The rules of a bank, made out so that any set of answers, however incomplete, can be judged at
 * once. Immutable and thread-safe; every judgement starts from nothing and keeps nothing.
 */
public final class RuleBook {
  private final Program program;
  private final BaseStates bases;
  private final Ranking ranking;
  private final Stops stops;

  private RuleBook(Program program) {
    this.program = program;
    this.bases = new BaseStates(program.table());
    this.ranking = new Ranking(program.bank());
    this.stops = new Stops(program);
  }

  /**
   * Makes out the rules of a bank that passed its check.
   *
   * @throws IllegalArgumentException when it would not pass: a condition on something that does not
   *     exist or does not suit, an unknown approach, a cycle of terms, more than 63 cells of a fact
   */
  public static RuleBook of(Bank bank) {
    return new RuleBook(Program.of(bank));
  }

  /**
   * The facts and terms of a bank that need themselves in the end, in bank order; empty for a sound
   * bank. Names that do not exist are passed over.
   */
  public static List<String> cycles(Bank bank) {
    return Strata.of(BankView.of(bank)).stuck();
  }

  /** The bank behind it. */
  public Bank bank() {
    return program.bank();
  }

  /**
   * What the rules make of these answers, for all wanted games together.
   *
   * @throws IllegalArgumentException when an answer is not of its question's kind
   */
  public Advice advise(Answers answers) {
    return advise(base(answers));
  }

  /**
   * What the rules make of these answers for one wanted game alone, as if no other was wanted.
   *
   * @param gameSlot 1 to 3
   * @throws IllegalArgumentException for another slot, or when an answer is not of its question's
   *     kind
   */
  public Advice advise(Answers answers, int gameSlot) {
    return advise(base(answers, gameSlot));
  }

  /** The slots, from 1, that are known to hold a game. */
  public List<Integer> games(Answers answers) {
    long[] state = program.settle(bases.of(answers));
    return program.table().games().stream()
        .filter(game -> state[program.table().listedSlot(game)] == Shape.YES)
        .toList();
  }

  /** What came of one rule. */
  Finding find(int rule, Answers answers) {
    return new Reckoning(program, base(answers)).finding(rule);
  }

  Program program() {
    return program;
  }

  long[] base(Answers answers) {
    return bases.of(answers);
  }

  long[] base(Answers answers, int gameSlot) {
    long[] base = bases.of(answers);
    bases.keepOnly(gameSlot, base);
    return base;
  }

  Ranking ranking() {
    return ranking;
  }

  private Advice advise(long[] base) {
    Reckoning reckoning = new Reckoning(program, base);
    Warnings warnings = new Warnings(reckoning);
    List<Warning> standing = warnings.standing();
    List<Warning> stopping = new ArrayList<>();
    List<Warning> cautions = new ArrayList<>();
    for (Warning warning : standing) {
      (warning.cautionClass().stops() ? stopping : cautions).add(warning);
    }
    List<Warning> notCleared = warnings.notCleared();
    boolean withheld =
        stopping.stream().map(Warning::cautionClass).anyMatch(CautionClass::withholds)
            || stops.partIsOpen(reckoning);
    return new Advice(
        Standings.of(reckoning, ranking),
        stopping,
        cautions,
        notCleared,
        warnings.lowered(),
        withheld,
        reckoning.tally().partStopped() && !withheld,
        !withheld && notCleared.isEmpty() && new Firmness(reckoning, ranking).firm(),
        holds(reckoning),
        reckoning.findings());
  }

  private static Set<TaskKind> holds(Reckoning reckoning) {
    Set<TaskKind> holds = EnumSet.noneOf(TaskKind.class);
    for (Finding finding : reckoning.findings()) {
      if (finding.outcome() == Outcome.TRUE) {
        holds.addAll(Holds.of(finding.rule()));
      }
    }
    return holds;
  }
}
