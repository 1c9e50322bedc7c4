package closehand.report;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Rule;
import closehand.bank.Term;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A bank in words, part by part: what is printed and what two banks are compared by. */
final class BankWords {
  private final Bank bank;
  private final Glyphs glyphs;
  private final ConditionWords conditions;

  BankWords(Bank bank, Glyphs glyphs) {
    this.bank = bank;
    this.glyphs = glyphs;
    this.conditions = ConditionWords.unmistakable(bank, glyphs);
  }

  /** All parts, in the order of the paper. */
  List<PaperPart> parts() {
    List<PaperPart> parts = new ArrayList<>(new QuestionPaperWords(bank, glyphs).parts());
    parts.add(terms());
    parts.addAll(rules());
    parts.add(CautionPaperWords.of(bank));
    parts.addAll(new ApproachPaperWords(bank).parts());
    parts.add(GamePaperWords.of(bank));
    bank.planFigures()
        .ifPresent(
            figures -> {
              parts.add(FigurePaperWords.of(figures));
              parts.add(InputPaperWords.of(figures, bank));
              parts.add(DemandPaperWords.of(figures.demand(), bank));
            });
    parts.add(new TaskPaperWords(bank, conditions).part());
    parts.add(sources());
    return parts;
  }

  private PaperPart terms() {
    PaperPart part = new PaperPart("terms", "What is worked out", "");
    for (Term term : bank.terms()) {
      String text = glyphs.quoted(Phrases.bare(term.text()));
      if (term instanceof Term.Derived derived) {
        String when =
            derived.when() instanceof Condition.Always
                ? " always"
                : " when " + conditions.of(derived.when());
        part.add(term.id(), text + when + ".");
      } else if (term instanceof Term.Computed computed) {
        List<String> of = computed.of().stream().map(conditions::name).toList();
        String how =
            switch (computed.computation()) {
              case MAXIMUM -> "the largest of ";
              case MINIMUM -> "the smallest of ";
              case COUNT -> "how many are picked of ";
              case DIFFERENCE -> "the first less the second of ";
            };
        part.add(term.id(), text + " is " + how + Phrases.and(of) + ".");
      }
    }
    return part;
  }

  /** Every theme with its rules. */
  private List<PaperPart> rules() {
    RuleWords words = new RuleWords(bank, conditions);
    Map<String, PaperPart> byTheme = new LinkedHashMap<>();
    for (Rule rule : bank.rules()) {
      byTheme
          .computeIfAbsent(
              rule.theme(),
              t -> new PaperPart("rules " + t, "Rules: " + bank.themes().getOrDefault(t, t), ""))
          .add("Rule " + rule.key(), Phrases.sentence(rule.title()) + " " + words.of(rule));
    }
    return List.copyOf(byTheme.values());
  }

  private PaperPart sources() {
    PaperPart part = new PaperPart("sources", "Sources", "");
    bank.sources()
        .forEach(
            s ->
                part.add(
                    "Source " + s.id(),
                    s.reference() + " (" + s.usedFor() + "; " + s.status() + ")"));
    return part;
  }
}
