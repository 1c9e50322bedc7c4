package closehand.report;

import closehand.bank.Bank;
import closehand.bank.CautionClass;
import closehand.bank.Condition;
import closehand.bank.Effectors;
import closehand.bank.Field;
import closehand.bank.Rule;
import closehand.interview.Answers;
import closehand.rules.Outcome;
import closehand.rules.Standing;
import closehand.rules.why.Explanation;
import closehand.rules.why.Ground;
import closehand.rules.why.Part;
import closehand.rules.why.Settled;
import closehand.rules.why.Subject;
import closehand.rules.why.Turns;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Why an approach, a caution or an input stands as it does, rule by rule. */
public final class WhyText {
  private static final int INDENT = 2;
  private static final int MOST_ANSWERS = 6;
  private static final int GATE = 3;

  private final Bank bank;
  private final Answers answers;
  private final Glyphs glyphs;
  private final ConditionWords words;
  private final boolean unfolded;

  private WhyText(Bank bank, Answers answers, boolean unfolded, Glyphs glyphs) {
    this.bank = bank;
    this.answers = answers;
    this.glyphs = glyphs;
    this.unfolded = unfolded;
    this.words = new ConditionWords(bank, glyphs);
  }

  /**
   * The explanation as lines that end in line feeds.
   *
   * @param answers all answers
   * @param turns what would change it; nothing where that is not about a control
   * @param settled which answers decide it; nothing where they do not
   * @param unfolded whether what stands behind worked-out facts, and every change, is told as well
   */
  public static String of(
      Explanation explanation,
      Bank bank,
      Answers answers,
      Optional<Turns> turns,
      Optional<Settled> settled,
      boolean unfolded,
      Glyphs glyphs) {
    List<Piece> pieces = new WhyText(bank, answers, unfolded, glyphs).pieces(explanation);
    TurnLines lines = new TurnLines(bank, answers, unfolded, glyphs);
    String id = explanation.subject().id();
    turns.ifPresent(t -> pieces.addAll(lines.changes(t, id)));
    settled.filter(s -> s.leader().equals(id)).ifPresent(s -> pieces.addAll(lines.settled(s)));
    return Sheet.text(pieces, glyphs);
  }

  private List<Piece> pieces(Explanation explanation) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Why: " + name(explanation.subject())));
    if (explanation.withheld() && explanation.standing().isPresent()) {
      pieces.add(Paragraph.of("Suggestions wait for a health check. The rules stand like this:"));
    } else {
      explanation.standing().ifPresent(s -> pieces.add(Paragraph.of(standing(s))));
    }
    LeadLines lead = new LeadLines(bank, answers, unfolded);
    if (explanation.withheld() || explanation.standing().isEmpty()) {
      pieces.addAll(lead.notCleared(explanation.lead()));
    } else {
      pieces.addAll(lead.of(explanation.lead(), explanation.subject().id()));
    }
    if (explanation.grounds().isEmpty()) {
      pieces.add(Paragraph.of("No rule of this question bank speaks of it."));
    }
    group(pieces, "Rules that apply", explanation, Ground.State.FIRED);
    group(pieces, "Would apply, but", explanation, Ground.State.HELD_BACK);
    group(pieces, "Still waiting for answers", explanation, Ground.State.WAITING);
    group(pieces, "Rules that do not apply", explanation, Ground.State.NOT_FIRED);
    return pieces;
  }

  private String name(Subject subject) {
    if (subject instanceof Subject.OfApproach one) {
      return one.approach().words().name() + " [" + one.id() + "]";
    }
    if (subject instanceof Subject.OfCaution one) {
      return Phrases.bare(one.caution().title()) + " [" + one.id() + "]";
    }
    return subject instanceof Subject.OfEffector ? Effectors.words(subject.id()) : subject.id();
  }

  private static String standing(Standing standing) {
    String status = Phrases.upper(StandingWords.of(standing.status()));
    String points = Phrases.count(standing.points(), "point");
    boolean sure = standing.lowest() == standing.highest();
    String range = sure ? "" : " (" + standing.lowest() + " to " + standing.highest() + ")";
    return status + "; " + points + range + ".";
  }

  private void group(
      List<Piece> pieces, String title, Explanation explanation, Ground.State state) {
    List<Ground> grounds = explanation.in(state);
    if (grounds.isEmpty()) {
      return;
    }
    pieces.add(new Heading(title));
    boolean apart = unfolded || state != Ground.State.NOT_FIRED;
    Map<String, List<Ground>> alike = new LinkedHashMap<>();
    for (Ground ground : grounds) {
      String together = apart ? ground.rule().key() : ground.rule().id();
      alike.computeIfAbsent(together, k -> new ArrayList<>()).add(ground);
    }
    for (List<Ground> same : alike.values()) {
      ground(pieces, same.get(0), explanation.subject());
      if (same.size() > 1) {
        under(pieces, "The same rule does not apply for others: " + others(same) + ".");
      }
    }
  }

  /** The sides and digits of all but the first, which one rule is made out for. */
  private static String others(List<Ground> same) {
    return String.join(
        ", ", same.stream().skip(1).map(g -> Effectors.words(g.rule().instance())).toList());
  }

  private void ground(List<Piece> pieces, Ground ground, Subject subject) {
    Rule rule = ground.rule();
    pieces.add(
        Paragraph.item(
            effect(ground, subject)
                + ": "
                + rule.key()
                + ", "
                + Phrases.lower(rule.title())
                + "."));
    switch (ground.state()) {
      case FIRED -> {
        under(pieces, Phrases.sentence(rule.reason()));
        used(pieces, ground.answersUsed());
        unfold(pieces, ground.when());
      }
      case HELD_BACK -> {
        under(pieces, "Its condition holds: " + words.of(ground.when().condition()) + ".");
        ground.unless().ifPresent(u -> under(pieces, "But: " + words.of(u.condition()) + "."));
      }
      case WAITING -> {
        ground.hindrance().ifPresent(p -> under(pieces, "Open: " + words.of(p.condition()) + "."));
        under(
            pieces,
            "Waits for: " + Labels.sentence(bank.questionnaire(), ground.finding().waitsFor()));
      }
      case NOT_FIRED -> {
        ground.hindrance().ifPresent(p -> under(pieces, failing(p)));
        ground.hindrance().ifPresent(p -> used(pieces, p.facts()));
        ground.hindrance().ifPresent(p -> unfold(pieces, p));
      }
    }
  }

  private String failing(Part part) {
    boolean holds = part.outcome() == Outcome.TRUE;
    return (holds ? "But: " : "Not so: ") + words.of(part.condition()) + ".";
  }

  private static void under(List<Piece> pieces, String text) {
    pieces.add(Paragraph.under(INDENT, text));
  }

  /** The answers behind something, as far as they are few enough to read. */
  private void used(List<Piece> pieces, List<String> facts) {
    List<String> told = new ArrayList<>();
    List<String> signs = new ArrayList<>();
    Map<String, Field> fields = bank.questionnaire().fieldsByFact();
    for (String fact : facts) {
      Field field = fields.get(fact);
      Answers.Recorded recorded = answers.byFact().get(fact);
      if (field != null && recorded != null) {
        String label =
            Phrases.bare(Labels.of(bank.questionnaire(), fact)).replace(", yes or no", "");
        (isSign(fact) ? signs : told).add(label + ": " + AnswerWords.of(field, recorded));
      }
    }
    String folded = "";
    if (unfolded || told.isEmpty()) {
      told.addAll(signs);
    } else if (!signs.isEmpty()) {
      folded = "; and " + Phrases.count(signs.size(), "answer") + " on warning signs";
    }
    if (told.isEmpty()) {
      return;
    }
    int shown = unfolded ? told.size() : Math.min(MOST_ANSWERS, told.size());
    String more = shown < told.size() ? "; and " + (told.size() - shown) + " more" : "";
    under(
        pieces, "Answers used: " + String.join("; ", told.subList(0, shown)) + more + folded + ".");
  }

  /** Whether the fact is one of the warning signs, which stand behind nearly every rule. */
  private boolean isSign(String fact) {
    return bank.questionnaire().questionOf(fact).filter(q -> q.safetyWeight() >= GATE).isPresent();
  }

  /** What stands behind worked-out facts, where somebody asked for it. */
  private void unfold(List<Piece> pieces, Part part) {
    if (!unfolded) {
      return;
    }
    if (part.folded() && part.condition() instanceof Condition.Test test) {
      String holds =
          switch (part.parts().get(0).outcome()) {
            case TRUE -> "so, since ";
            case FALSE -> "not so; it would need that ";
            case OPEN -> "open; it hangs on whether ";
          };
      pieces.add(
          Paragraph.under(
              2 * INDENT,
              Phrases.upper(words.name(test.fact()))
                  + ": "
                  + holds
                  + words.of(part.parts().get(0).condition())
                  + "."));
    }
    part.parts().forEach(p -> unfold(pieces, p));
  }

  /** What the rule does to the subject, in a few words. */
  private static String effect(Ground ground, Subject subject) {
    Rule rule = ground.rule();
    boolean fires = ground.state() == Ground.State.FIRED;
    if (subject instanceof Subject.OfApproach approach) {
      int points = Reasons.points(rule, approach.id());
      boolean out = rule.effects().exclude().stream().anyMatch(e -> e.name().equals(subject.id()));
      String count = points + (Math.abs(points) == 1 ? " point" : " points");
      String given = (points > 0 ? "+" : "") + count;
      return out
          ? fires ? "Rules it out" : "Would rule it out"
          : fires ? given : "Would give " + given;
    }
    if (subject instanceof Subject.OfCaution) {
      return rule.effects().cautions().stream()
          .filter(c -> c.code().equals(subject.id()))
          .map(Rule.Raised::cautionClass)
          .max(CautionClass::compareTo)
          .map(c -> (fires ? "Raises it as " : "Would raise it as ") + c.code())
          .orElse("");
    }
    boolean rests = rule.effects().restingEffectors().contains(subject.id());
    return rests
        ? fires ? "Gives it a rest" : "Would give it a rest"
        : (fires ? "" : "Would count ") + factor(rule, subject, fires);
  }

  private static String factor(Rule rule, Subject subject, boolean fires) {
    return rule.effects().effort().stream()
        .filter(e -> e.inputs().contains(subject.id()) || e.effectors().contains(subject.id()))
        .findFirst()
        .map(
            e ->
                (fires ? "Effort times " : "effort times ")
                    + closehand.interview.Wording.number(e.factor()))
        .orElse("");
  }
}
