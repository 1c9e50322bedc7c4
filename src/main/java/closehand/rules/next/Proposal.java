package closehand.rules.next;

import closehand.bank.Question;
import java.util.List;
import java.util.Optional;

/**
 * What to ask next, or that enough is known.
 *
 * @param question the question; empty when enough is known
 * @param because why
 */
public record Proposal(Optional<Question> question, Because because) {

  /** How the suggestion stands when nothing more is worth asking for it. */
  public enum Stand {
    /** One leads, and no open answer can change that. */
    LEADS_FIRMLY,
    /** One leads, and open answers could change that, none of them likely. */
    LEADS,
    /** None leads, and no open answer can change that. */
    NOTHING_CAN_LEAD,
    /** None leads, and open answers could change that, none of them likely. */
    NOTHING_LEADS,
    /** All suggestions wait for a health check, whatever leads by its points. */
    WITHHELD
  }

  /** Why a question is asked, or none. */
  public sealed interface Because {
    /** Consent and how to talk come before everything. */
    record Opening() implements Because {}

    /**
     * A warning sign that could stop something is not cleared.
     *
     * @param cautions codes of the stops it could clear or raise
     */
    record OpenStop(List<String> cautions) implements Because {
      public OpenStop {
        cautions = List.copyOf(cautions);
      }
    }

    /**
     * It tells about what leads.
     *
     * @param bits how much; 1 bit halves what is open
     * @param couldBringIn approaches, not suggested so far, that wait for it
     * @param couldMove suggested approaches that wait for it
     */
    record Telling(double bits, List<String> couldBringIn, List<String> couldMove)
        implements Because {
      public Telling {
        couldBringIn = List.copyOf(couldBringIn);
        couldMove = List.copyOf(couldMove);
      }
    }

    /**
     * A caution waits for it.
     *
     * @param cautions codes of the cautions
     */
    record OpenCare(List<String> cautions) implements Because {
      public OpenCare {
        cautions = List.copyOf(cautions);
      }
    }

    /**
     * Nothing more is worth asking for the suggestion's sake.
     *
     * @param stand how the suggestion stands
     * @param questionsLeft questions of the short interview that are still open
     */
    record Enough(Stand stand, int questionsLeft) implements Because {}
  }
}
