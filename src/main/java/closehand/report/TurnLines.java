package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Section;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.StillOpen;
import closehand.interview.Value;
import closehand.interview.Wording;
import closehand.rules.Standing;
import closehand.rules.Variation;
import closehand.rules.Verdict;
import closehand.rules.why.Settled;
import closehand.rules.why.Turns;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What would change which control comes first, and which answers decide it, in words. */
final class TurnLines {
  private static final int GATE = 3;
  private static final int MOST = 5;
  private static final String TRIED =
      "of two answers together that act on the same rules, only the likeliest "
          + Turns.MOST_PAIRS
          + " pairs were tried";

  private final Bank bank;
  private final Answers answers;
  private final Glyphs glyphs;
  private final Map<String, Field> fields;
  private final int most;

  TurnLines(Bank bank, Answers answers, boolean unfolded, Glyphs glyphs) {
    this.bank = bank;
    this.answers = answers;
    this.glyphs = glyphs;
    this.fields = bank.questionnaire().fieldsByFact();
    this.most = unfolded ? Integer.MAX_VALUE : MOST;
  }

  /** What would change for one approach; nothing while suggestions are withheld. */
  List<Piece> changes(Turns turns, String approach) {
    List<Piece> pieces = new ArrayList<>();
    if (turns.now().withheld()) {
      return pieces;
    }
    pieces.add(new Heading("What would change this"));
    boolean leads = turns.now().leader().equals(Optional.of(approach));
    List<Variation> singles = leads ? turns.singles() : turns.bringingForward(approach);
    List<Variation> telling =
        singles.stream().filter(v -> !v.then().withheld() && !isWarning(v)).toList();
    listed(pieces, telling, approach);
    if (telling.isEmpty()) {
      List<Variation> pairs = leads ? turns.pairs() : turns.pairsBringingForward(approach);
      pairs = pairs.stream().filter(v -> !v.then().withheld()).toList();
      if (pairs.isEmpty()) {
        pieces.add(Paragraph.of(none(turns, leads)));
      } else {
        pieces.add(Paragraph.of("No single answer, but two together:"));
        listed(pieces, pairs, approach);
        if (!turns.everyPairTried()) {
          pieces.add(Paragraph.of(Phrases.upper(TRIED) + "."));
        }
      }
    }
    if (!leads) {
      standing(pieces, turns.standingChanges(approach));
    }
    if (turns.singles().stream().anyMatch(v -> v.then().withheld())) {
      pieces.add(
          Paragraph.of(
              "A warning sign among the safety answers would stop all suggestions, whatever else"
                  + " was found."));
    }
    return pieces;
  }

  /** Only answers that were given are changed here; open ones are told of as well. */
  private static String none(Turns turns, boolean leads) {
    String what = leads ? "takes it from the first place" : "brings it to the first place";
    String changes =
        turns.everyPairTried()
            ? "No change to one or two of the answers given " + what + "."
            : "No change to one of the answers given " + what + "; " + TRIED + ".";
    return turns.now().firm()
        ? changes
        : changes + " Answers that are still open can, where they are named above.";
  }

  private boolean isWarning(Variation variation) {
    return variation.steps().stream()
        .allMatch(
            s ->
                bank.questionnaire()
                    .questionOf(s.fact())
                    .map(Question::safetyWeight)
                    .filter(w -> w >= GATE)
                    .isPresent());
  }

  private void listed(List<Piece> pieces, List<Variation> variations, String approach) {
    Map<String, List<Variation>> alike = new LinkedHashMap<>();
    for (Variation variation : variations) {
      alike.computeIfAbsent(likeness(variation), k -> new ArrayList<>()).add(variation);
    }
    List<List<Variation>> groups = List.copyOf(alike.values());
    int shown = Math.min(most, groups.size());
    for (List<Variation> same : groups.subList(0, shown)) {
      pieces.add(Paragraph.item(sentence(same, approach)));
    }
    if (shown < groups.size()) {
      pieces.add(Paragraph.of("And " + (groups.size() - shown) + " more, farther off."));
    }
  }

  /** Other answers to one question after which the same leads are told in one sentence. */
  private static String likeness(Variation variation) {
    Variation.Step first = variation.steps().get(0);
    boolean joins =
        variation.steps().size() == 1 && first.to() instanceof closehand.rules.Change.To.Option;
    return joins
        ? first.fact() + variation.then().leader() + variation.uncertain()
        : variation.steps().toString();
  }

  /** "If ... was ..., ... would come first." with a word on answers that may be off by so much. */
  private String sentence(List<Variation> same, String approach) {
    Variation first = same.get(0);
    List<String> parts = new ArrayList<>();
    if (first.steps().size() == 1) {
      parts.add(step(same.stream().map(v -> v.steps().get(0)).toList()));
    } else {
      first.steps().forEach(s -> parts.add(step(List.of(s))));
    }
    String look = first.uncertain() ? " " + look(first) : "";
    return "If " + String.join(" and ", parts) + ", " + then(first.then(), approach) + look;
  }

  /** One fact and what its answer would have to be, any of these. */
  private String step(List<Variation.Step> steps) {
    Variation.Step first = steps.get(0);
    List<String> words = new ArrayList<>();
    for (Variation.Step step : steps) {
      closehand.rules.Change change =
          new closehand.rules.Change(step.fact(), step.to(), Standing.Status.UNDECIDED);
      String one = Phrases.bare(Change.of(bank.questionnaire(), change).whatWouldBe());
      words.add(glyphs.quoted(one));
    }
    String label = Phrases.bare(Labels.brief(bank.questionnaire(), first.fact()));
    return glyphs.quoted(label) + " was " + String.join(" or ", words) + now(first);
  }

  private String now(Variation.Step step) {
    String fact = step.fact();
    if (step.to() instanceof closehand.rules.Change.To.Counted
        && answers.value(fact).orElse(null) instanceof Value.Codes codes) {
      long picked = codes.codes().stream().filter(c -> !isExclusive(fact, c)).count();
      return " (now " + picked + ")";
    }
    Field field = fields.get(fact);
    Answers.Recorded recorded = answers.byFact().get(fact);
    return field == null || recorded == null
        ? ""
        : " (now " + glyphs.quoted(Phrases.bare(Wording.of(field, recorded.answer()))) + ")";
  }

  private boolean isExclusive(String fact, String code) {
    Field field = fields.get(fact);
    return field != null && field.type().option(code).filter(Option::exclusive).isPresent();
  }

  private String then(Verdict then, String approach) {
    if (then.leader().isEmpty()) {
      return then.withheld() ? "all suggestions would wait." : "nothing would come first any more.";
    }
    String leader = then.leader().get();
    return leader.equals(approach)
        ? "this would come first."
        : Phrases.lower(name(leader)) + " would come first.";
  }

  private String name(String approach) {
    return bank.approach(approach).map(Approach::words).map(Approach.Words::brief).orElse(approach);
  }

  /** How the answer is known, and what to do about it. */
  private String look(Variation variation) {
    boolean told =
        variation.steps().stream()
            .map(s -> answers.byFact().get(s.fact()))
            .anyMatch(r -> r != null && r.provenance().how() == Provenance.How.TOLD);
    return told
        ? "This rests on an answer that was told, not seen: look once."
        : "This lies within what looking or measuring leaves uncertain: measure once more.";
  }

  private void standing(List<Piece> pieces, List<closehand.rules.Change> changes) {
    List<String> parts = new ArrayList<>();
    for (closehand.rules.Change change : changes) {
      if (parts.size() < most && change.status().suggested()) {
        Variation.Step step = new Variation.Step(change.fact(), change.to(), 1, 0, false);
        parts.add(step(List.of(step)));
      }
    }
    if (!parts.isEmpty()) {
      pieces.add(
          Paragraph.item(
              "It would be suggested at all if " + String.join("; or if ", parts) + "."));
    }
  }

  /** Which answers alone decide a firm suggestion. */
  List<Piece> settled(Settled settled) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Settled by"));
    int all = answers.byFact().size();
    int few = settled.telling().size() + settled.warningSigns().size();
    pieces.add(
        Paragraph.of(
            "This is firm. Of " + Phrases.count(all, "answer") + ", " + few + " alone decide it:"));
    pieces.add(
        Paragraph.item(
            "Warning signs and consent: "
                + Phrases.count(settled.warningSigns().size(), "answer")
                + "."));
    bySection(settled.telling())
        .forEach(
            (section, facts) ->
                pieces.add(
                    Paragraph.item(
                        Phrases.bare(section)
                            + ": "
                            + Phrases.lower(Labels.sentence(bank.questionnaire(), facts)))));
    long left = stillOpen();
    if (left > 0) {
      pieces.add(Paragraph.of(cannotChange(left)));
    }
    return pieces;
  }

  /** The facts by the parts of the interview that ask for them, in its order. */
  private Map<String, List<String>> bySection(List<String> facts) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (Section section : bank.questionnaire().sections()) {
      for (String fact : facts) {
        boolean here =
            bank.questionnaire()
                .questionOf(fact)
                .filter(q -> q.section().equals(section.id()))
                .isPresent();
        if (here) {
          parts.computeIfAbsent(section.title(), t -> new ArrayList<>()).add(fact);
        }
      }
    }
    return parts;
  }

  private static String cannotChange(long left) {
    return left == 1
        ? "The question of the short interview that is left cannot change it."
        : "The " + left + " questions of the short interview that are left cannot change it.";
  }

  /** How many questions of the short interview nobody has come to yet. */
  private long stillOpen() {
    return Interview.reopen(
            bank.questionnaire(),
            answers,
            Interview.Route.CORE,
            Provenance.By.VOLUNTEER,
            Optional.empty())
        .open()
        .stream()
        .filter(o -> o.why() == StillOpen.Why.NOT_YET_ASKED)
        .map(o -> o.question().id())
        .distinct()
        .count();
  }
}
