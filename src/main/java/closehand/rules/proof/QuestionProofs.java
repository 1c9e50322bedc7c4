package closehand.rules.proof;

import closehand.bank.Bank;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Question;
import closehand.bank.Term;
import closehand.rules.Reading;
import closehand.rules.Search;
import closehand.rules.proof.Advisory.Kind;
import java.util.List;

/** Questions nobody uses or reaches, answers that change nothing, terms nobody feeds or reads. */
final class QuestionProofs {
  private static final int GATE = 3;

  private final Bank bank;
  private final Search search;
  private final Reading reading;

  QuestionProofs(Bank bank, Search search, Reading reading) {
    this.bank = bank;
    this.search = search;
    this.reading = reading;
  }

  void questions(List<Advisory> found) {
    for (Question question : bank.questionnaire().questions()) {
      boolean choices = question.fields().stream().anyMatch(f -> !isWords(f.type()));
      if (choices && question.fields().stream().noneMatch(f -> reading.isRead(f.fact()))) {
        found.add(
            Advisory.readOff(Kind.UNUSED_QUESTION, question.id(), List.of(), question.where()));
      }
      question.fields().forEach(f -> field(question, f, found));
    }
    bank.terms().forEach(t -> term(t, found));
  }

  private static boolean isWords(FactType type) {
    return type instanceof FactType.Words || type instanceof FactType.WordList;
  }

  private void field(Question question, Field field, List<Advisory> found) {
    for (List<String> alike : reading.alike(field.fact())) {
      found.add(Advisory.readOff(Kind.ANSWERS_ALIKE, field.fact(), alike, field.where()));
    }
    boolean sign = question.safetyWeight() >= GATE && !isWords(field.type());
    if (sign && reading.isRead(field.fact()) && !reading.hearsDoubt(field.fact())) {
      found.add(Advisory.readOff(Kind.NO_DOUBT, field.fact(), List.of(), field.where()));
    }
    if (!field.conditions().isEmpty()) {
      Search.Found applies = search.find(new Search.Goal.Applies(field.fact()), true);
      if (!(applies instanceof Search.Found.Witness)) {
        found.add(
            Advisory.searched(
                Kind.UNREACHABLE, List.of(field.fact()), List.of(), applies, field.where()));
      }
    }
  }

  private void term(Term term, List<Advisory> found) {
    if (!reading.isRead(term.id())) {
      found.add(Advisory.readOff(Kind.UNUSED_TERM, term.id(), List.of(), term.where()));
    }
    if (term instanceof Term.Computed) {
      Search.Found any = search.find(new Search.Goal.InCells(term.id(), ~0L >>> 1), true);
      if (!(any instanceof Search.Found.Witness)) {
        found.add(
            Advisory.searched(
                Kind.NOBODY_FEEDS,
                List.of(term.id()),
                List.of("without a value"),
                any,
                term.where()));
      }
    }
    if (term instanceof Term.Derived) {
      for (boolean yes : new boolean[] {true, false}) {
        Search.Found can = search.find(new Search.Goal.Yes(term.id()), yes);
        if (!(can instanceof Search.Found.Witness)) {
          List<String> always = List.of(yes ? "no" : "yes");
          found.add(
              Advisory.searched(Kind.NOBODY_FEEDS, List.of(term.id()), always, can, term.where()));
        }
      }
    }
  }
}
