package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.CautionClass;
import closehand.bank.TaskKind;
import closehand.interview.Answers;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a bank, made out so that any set of answers, however incomplete, can be judged at
 * once. Immutable and thread-safe; every judgement starts from nothing and keeps nothing.
 */
public final class RuleBook {
  private final Program program;
  private final BaseStates bases;
  private final Ranking ranking;
  private final Stops stops;
  private final Judge judge;
  private @Nullable Influence influence;

  private RuleBook(Program program) {
    this.program = program;
    this.bases = new BaseStates(program.table());
    this.ranking = new Ranking(program.bank());
    this.stops = new Stops(program);
    this.judge = new Judge(program, ranking, stops);
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

  /**
   * Which suggestion leads, and how surely, for all wanted games together. Much quicker than the
   * whole advice.
   *
   * @throws IllegalArgumentException when an answer is not of its question's kind
   */
  public Verdict verdict(Answers answers) {
    long[] state = program.settle(bases.of(answers));
    Outcome[] outcomes = program.outcomes(state);
    return judge.verdict(judge.tally(outcomes), outcomes, state);
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
    return Reckoning.alone(program, base(answers), rule);
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

  Judge judge() {
    return judge;
  }

  /** Worked out when somebody first asks, since most runs never do. */
  synchronized Influence influence() {
    if (influence == null) {
      influence = new Influence(program);
    }
    return influence;
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
            || stops.partIsOpen(reckoning.outcomes(), reckoning.state());
    return new Advice(
        Standings.of(reckoning, ranking),
        stopping,
        cautions,
        notCleared,
        warnings.lowered(),
        withheld,
        reckoning.tally().partStopped() && !withheld,
        !withheld
            && notCleared.isEmpty()
            && new Firmness(program, ranking, reckoning.tally(), reckoning.outcomes()).firm(),
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
