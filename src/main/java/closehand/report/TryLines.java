package closehand.report;

import closehand.bank.Approach;
import closehand.rules.Finding;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What to try, best first, on the player's page. Settings have a part of their own. */
final class TryLines {
  /** The family of approaches that are nothing but settings. */
  static final String SETTINGS = "settings";

  private static final int INDENT = 3;
  private static final int MOST_OTHERS = 5;

  private final PageInput input;
  private final Room room;
  private final Glyphs glyphs;
  private final List<Piece> pieces = new ArrayList<>();
  private final Set<String> tipsGiven = new HashSet<>();

  /** Which idea gave a reason first. */
  private final Map<String, Integer> placeOf = new HashMap<>();

  private TryLines(PageInput input, Room room, Glyphs glyphs) {
    this.input = input;
    this.room = room;
    this.glyphs = glyphs;
  }

  /** The first ideas in full, the others by name. */
  static List<Piece> of(PageInput input, Room room, Glyphs glyphs) {
    return new TryLines(input, room, glyphs).all();
  }

  private List<Piece> all() {
    List<Standing> ideas = new ArrayList<>(input.together().suggestions());
    ideas.removeIf(s -> s.approach().family().equals(SETTINGS));
    pieces.add(
        new Heading(
            input.together().forReview()
                ? "Draft for a clinician to review: what to try, in this order"
                : "What to try, in this order"));
    if (input.together().forReview()) {
      pieces.add(Paragraph.of("Show this page to a clinician before you try any of it."));
    }
    if (ideas.isEmpty()) {
      pieces.add(
          Paragraph.of(
              "Nothing yet. The answers so far do not point to one way of playing. That says nothing about you: an access"
                  + " clinician can look for a movement that we did not ask about."));
    }
    int full = Math.min(room.ideas(), ideas.size());
    for (int i = 0; i < full; i++) {
      idea(i + 1, ideas.get(i));
    }
    if (ideas.size() > full) {
      pieces.add(Paragraph.of(others(ideas.subList(full, ideas.size()))));
    }
    return pieces;
  }

  private static String others(List<Standing> others) {
    int named = Math.min(MOST_OTHERS, others.size());
    String more = others.size() > named ? " " + more(others.size() - named) : "";
    List<Standing> alone = new ArrayList<>(others.subList(0, named));
    List<Standing> guided = new ArrayList<>(alone);
    guided.removeIf(s -> !s.approach().clinicianFirst());
    alone.removeAll(guided);
    String first = alone.isEmpty() ? "" : "Also worth trying: " + briefs(alone);
    String second =
        guided.isEmpty() ? "" : "With a clinician's yes and help only: " + briefs(guided);
    return Phrases.joined(first, second) + more;
  }

  private static String more(int number) {
    return number
        + (number == 1 ? " more idea is" : " more ideas are")
        + " on the clinician's page.";
  }

  private void idea(int place, Standing idea) {
    Approach approach = idea.approach();
    Approach.Words words = approach.words();
    String because = reasons("Suggested because: ", idea.inFavour(), approach);
    boolean same = room.terse() && placeOf.containsKey(because);
    placeOf.putIfAbsent(because, place);
    String shown =
        room.tightest() && place > 1
            ? led(
                "Suggested because: ", Reasons.weightiestInFewWords(idea.inFavour(), approach.id()))
            : because;
    String summary = room.barest() && place > 1 ? "" : words.summary();
    String name = Phrases.joined(Phrases.bare(words.name()) + ".", summary);
    String why =
        Phrases.joined(
            same ? "Suggested because: the same as for idea " + placeOf.get(because) + "." : shown,
            reasons("Against it: ", idea.against(), approach),
            room.terse() ? "" : EqualWords.sentence(input, approach),
            DrivingPart.sentence(input, approach, room.terse()),
            RestingDigits.unused(input, approach),
            GamesThatRefuse.sentence(input, approach, room.tightest()),
            change(place, idea));
    String how =
        Phrases.joined(
            approach.clinicianFirst() ? words.firstTry() : "",
            words.borrow(),
            room.tightest()
                ? KitWords.inFewWords(input.bank(), approach)
                : KitWords.effortAndCost(input.bank(), approach),
            placing(approach),
            tips(idea));
    if (summary.isEmpty()) {
      pieces.add(Paragraph.numbered(place, Phrases.joined(name, why, how)));
      return;
    }
    pieces.add(Paragraph.numbered(place, name));
    if (room.tightest()) {
      under(why, how);
    } else {
      under(why);
      under(how);
    }
  }

  private String reasons(String lead, List<Finding> findings, Approach approach) {
    return led(lead, Reasons.weightiest(findings, approach.id(), room.reasons()));
  }

  private String change(int place, Standing idea) {
    return room.tightest() && place > 1
        ? ChangeWords.briefest(input, idea, glyphs)
        : ChangeWords.brief(input, idea, glyphs);
  }

  private String placing(Approach approach) {
    String mounting = approach.words().mounting();
    if (room.tightest() && input.warns("C-MOUNT")) {
      return ""; // The caution about mounts says who may fix anything.
    }
    boolean said = approach.needsMount() && (!room.terse() || KeyActions.protects(mounting));
    return said ? "Placing it: " + mounting : "";
  }

  private String tips(Standing idea) {
    List<String> tips = new ArrayList<>(Sayings.on("setup", idea.inFavour()));
    tips.removeIf(tip -> !tipsGiven.add(tip));
    return led("Tip: ", tips.subList(0, Math.min(room.tips(), tips.size())));
  }

  private static String led(String lead, List<String> sentences) {
    return sentences.isEmpty() ? "" : lead + String.join(" ", sentences);
  }

  private void under(String... sentences) {
    String text = Phrases.joined(sentences);
    if (!text.isEmpty()) {
      pieces.add(Paragraph.indented(INDENT, text));
    }
  }

  /** The short names of approaches in one sentence. */
  static String briefs(List<Standing> standings) {
    return Phrases.listed(standings.stream().map(s -> s.approach().words().brief()).toList()) + ".";
  }
}
