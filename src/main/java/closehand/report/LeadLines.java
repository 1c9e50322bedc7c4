package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.rules.why.Lead;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What comes first now, how surely, and which open answers stand in the way of that. */
final class LeadLines {
  private static final int MOST = 6;

  private final Bank bank;
  private final Answers answers;
  private final int most;

  LeadLines(Bank bank, Answers answers, boolean unfolded) {
    this.bank = bank;
    this.answers = answers;
    this.most = unfolded ? Integer.MAX_VALUE : MOST;
  }

  /** About a control: whether it is first, and how surely. */
  List<Piece> of(Lead lead, String approach) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Paragraph.of(first(lead, approach)));
    if (!lead.couldOverturn().isEmpty()) {
      pieces.add(
          Paragraph.item("Open answers that could still change it: " + few(lead.couldOverturn())));
    }
    pieces.addAll(notCleared(lead));
    return pieces;
  }

  private String first(Lead lead, String approach) {
    if (lead.leader().isEmpty()) {
      return "Nothing comes first so far.";
    }
    String id = lead.leader().get();
    String subject =
        id.equals(approach)
            ? "It comes first now"
            : "First now: "
                + bank.approach(id).map(Approach::words).map(Approach.Words::brief).orElse(id);
    return subject
        + (lead.firm()
            ? ". That is firm: no open answer can change it."
            : ". That is not firm yet.");
  }

  /** The open safety questions behind stops that are not cleared; nothing where all are. */
  List<Piece> notCleared(Lead lead) {
    List<String> declined = new ArrayList<>();
    List<String> open = new ArrayList<>();
    lead.openSafety().forEach(f -> (isDeclined(f) ? declined : open).add(f));
    List<Piece> pieces = new ArrayList<>();
    if (!open.isEmpty()) {
      pieces.add(
          Paragraph.item("Not cleared yet, so ask these safety questions first: " + few(open)));
    }
    if (!declined.isEmpty()) {
      pieces.add(
          Paragraph.item(
              "Not cleared, since you would rather not say, and that is fine; we count it as"
                  + " unsure: "
                  + few(declined)));
    }
    return pieces;
  }

  private boolean isDeclined(String fact) {
    return answers
        .answer(fact)
        .filter(a -> a instanceof Answer.Absent absent && absent.reason() == Answer.Reason.DECLINED)
        .isPresent();
  }

  /** The questions behind these facts, each once, as far as they are few enough to read. */
  private String few(List<String> facts) {
    Set<String> names = new LinkedHashSet<>();
    facts.forEach(f -> names.add(Phrases.bare(Labels.ofQuestion(bank.questionnaire(), f))));
    List<String> all = List.copyOf(names);
    int shown = Math.min(most, all.size());
    String more = shown < all.size() ? "; and " + (all.size() - shown) + " more" : "";
    return Phrases.sentence(Phrases.listed(all.subList(0, shown)) + more);
  }
}
