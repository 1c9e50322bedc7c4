package closehand.screen.trial;

import closehand.measure.trial.Step;
import closehand.measure.trial.Trial;
import closehand.measure.trial.TrialDialogue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where somebody is in a trial.
 *
 * @param dialogue what was said so far
 * @param page what is in sight
 * @param part which part of the page, from 0
 * @param typed the line being typed
 */
record State(TrialDialogue dialogue, Page page, int part, String typed) {
  /** Figures of a day, such as 20261231. */
  private static final int DAY_FIGURES = 8;

  /** What can be in sight. */
  enum Page {
    CONSENT,
    QUESTION,
    DAY,
    CHECK,
    OTHER,
    SIGNS,
    LETTERS,
    LETTER,
    HELP,
    COMPARED,
    LEFT
  }

  /** How a question is answered. */
  enum Kind {
    CHOICE,
    NUMBER,
    WORDS
  }

  static State begin(TrialDialogue dialogue) {
    return new State(dialogue, Page.CONSENT, 0, "");
  }

  State at(Page next, int nextPart) {
    return new State(dialogue, next, nextPart, typed);
  }

  State writing(String text) {
    return new State(dialogue, page, part, text);
  }

  /** At the question that is open now, with nothing typed. */
  State with(TrialDialogue now) {
    return new State(now, Page.QUESTION, 0, "");
  }

  Optional<Step> step() {
    return dialogue.step();
  }

  /** Where one comes back to from two set-ups side by side: consent is not passed by. */
  Page home() {
    return part == 0 ? Page.CONSENT : Page.QUESTION;
  }

  /** Every trial so far, this one with them. */
  List<Trial> trials() {
    List<Trial> all = new ArrayList<>(dialogue.earlier());
    all.add(dialogue.trial());
    return all;
  }

  /** How the open question is answered. */
  Kind kind() {
    return switch (step().orElseThrow().kind()) {
      case PLACE, COST, WEIGHT, SIGN, LOAN -> Kind.CHOICE;
      case SET_UP, GAME, SCENE, ACTION, NOTES -> Kind.WORDS;
      default -> Kind.NUMBER;
    };
  }

  /** How many figures fill the line where figures are typed. */
  int figures() {
    if (page == Page.DAY) {
      return DAY_FIGURES;
    }
    return isMinutes() ? 3 : 2;
  }

  /** Whether the open question is about minutes. */
  boolean isMinutes() {
    Step.Kind kind = step().orElseThrow().kind();
    return kind == Step.Kind.MINUTES || kind == Step.Kind.MINUTES_TO_SET_UP;
  }

  /** Whether figures are typed here. */
  boolean takesFigures() {
    return page == Page.DAY || page == Page.QUESTION && step().isPresent() && kind() == Kind.NUMBER;
  }

  /** Whether words are typed here. */
  boolean takesWords() {
    return page == Page.QUESTION && step().isPresent() && kind() == Kind.WORDS;
  }

  /** The typed line as the dialogue reads it: a day with its hyphens, a number without zeros. */
  String asRead() {
    if (kind() == Kind.WORDS || typed.isEmpty()) {
      return typed;
    }
    if (typed.length() == DAY_FIGURES) {
      return typed.substring(0, 4) + "-" + typed.substring(4, 6) + "-" + typed.substring(6);
    }
    String bare = typed.replaceFirst("^0+", "");
    return bare.isEmpty() ? "0" : bare;
  }
}
