package closehand.rules;

import closehand.bank.Approach;
import closehand.bank.CautionClass;
import java.util.List;
import java.util.Optional;

/** Judges a state just far enough to say what leads and how surely, without reasons. */
final class Judge {
  /** No approach leads. */
  static final int NOBODY = -1;

  private final Program program;
  private final Ranking ranking;
  private final Stops stops;
  private final boolean[] canLead;
  private final int[] withholding;
  private final int[] stopping;

  Judge(Program program, Ranking ranking, Stops stops) {
    this.program = program;
    this.ranking = ranking;
    this.stops = stops;
    List<Approach> approaches = program.bank().approaches();
    canLead = new boolean[approaches.size()];
    for (int i = 0; i < canLead.length; i++) {
      canLead[i] = Firmness.canLead(approaches.get(i));
    }
    withholding =
        program.rulesWhere(r -> r.strongest().filter(CautionClass::withholds).isPresent());
    stopping = program.rulesWhere(CompiledRule::stops);
  }

  Tally tally(Outcome[] outcomes) {
    return new Tally(program.bank().approaches().size(), program.rules(), outcomes);
  }

  /** The number of the approach that leads by its points, whether or not it is withheld. */
  int leader(Tally tally) {
    int best = NOBODY;
    for (int i = 0; i < canLead.length; i++) {
      if (canLead[i] && tally.status(i).suggested() && (best == NOBODY || ahead(i, best, tally))) {
        best = i;
      }
    }
    return best;
  }

  private boolean ahead(int one, int other, Tally tally) {
    return ahead(one, tally.points(one) - tally.points(other), other);
  }

  /** Whether one approach goes before another with so many points less. */
  boolean ahead(int one, int difference, int other) {
    return difference > 0 || (difference == 0 && ranking.place(one) < ranking.place(other));
  }

  /** Whether settings are all it is, so that it never leads. */
  boolean canLead(int approach) {
    return canLead[approach];
  }

  /** Whether suggestions wait for a health check. */
  boolean withheld(Outcome[] outcomes, long[] state) {
    for (int rule : withholding) {
      if (outcomes[rule] == Outcome.TRUE) {
        return true;
      }
    }
    return stops.partIsOpen(outcomes, state);
  }

  /** Whether an open rule could still stop something. */
  boolean notCleared(Outcome[] outcomes) {
    for (int rule : stopping) {
      if (outcomes[rule] == Outcome.OPEN) {
        return true;
      }
    }
    return false;
  }

  /** What the leading suggestion is, and how surely. */
  Verdict verdict(Tally tally, Outcome[] outcomes, long[] state) {
    boolean withheld = withheld(outcomes, state);
    boolean firm =
        !withheld
            && !notCleared(outcomes)
            && new Firmness(program, ranking, tally, outcomes).firm();
    int leader = withheld ? NOBODY : leader(tally);
    Optional<String> id =
        leader == NOBODY
            ? Optional.empty()
            : Optional.of(program.bank().approaches().get(leader).id());
    return new Verdict(id, firm, withheld);
  }
}
