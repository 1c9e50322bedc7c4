package closehand.report;

import closehand.rules.Verdict;
import closehand.rules.proof.Move;
import closehand.rules.proof.Standpoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How a case moves from one bank to another, in a few lines. */
public final class MoveText {
  private MoveText() {}

  /** The name of the case and what moved; nothing where nothing did. */
  public static String of(String name, Move move, Glyphs glyphs) {
    if (move.in().isEmpty()) {
      return "";
    }
    List<String> parts = new ArrayList<>();
    for (Move.In in : move.in()) {
      parts.add(words(in, move));
    }
    String rules = move.byRules().isEmpty() ? "" : " By " + String.join(", ", move.byRules()) + ".";
    if (move.byTies()) {
      rules =
          " No rule moved it: equal points are told apart in another way, by cost, setting up or"
              + " the order of the approaches.";
    }
    return Sheet.text(
        List.of(
            Paragraph.item(name),
            Paragraph.under(2, Phrases.upper(String.join("; ", parts)) + "." + rules)),
        glyphs);
  }

  private static String words(Move.In in, Move move) {
    return switch (in) {
      case LEADER ->
          "leads: " + leader(move.before().verdict()) + ", now " + leader(move.after().verdict());
      case ORDER -> "suggested: " + order(move.before()) + ", now " + order(move.after());
      case FIRMNESS -> move.after().verdict().firm() ? "now firm" : "no longer firm";
      case EXCLUSIONS -> "ruled out: " + change(move.before().ruledOut(), move.after().ruledOut());
      case CAUTIONS -> "cautions: " + change(move.before().cautions(), move.after().cautions());
      case STOPS -> "stops: " + change(move.before().stops(), move.after().stops());
    };
  }

  private static String order(Standpoint standpoint) {
    return standpoint.suggested().isEmpty() ? "none" : String.join(" > ", standpoint.suggested());
  }

  private static String leader(Verdict verdict) {
    Optional<String> leader = verdict.leader();
    return verdict.withheld() ? "all withheld" : leader.orElse("none");
  }

  private static String change(java.util.Set<String> before, java.util.Set<String> after) {
    List<String> parts = new ArrayList<>();
    Move.added(before, after).forEach(a -> parts.add(a + " new"));
    Move.added(after, before).forEach(g -> parts.add(g + " gone"));
    return String.join(", ", parts);
  }

  /**
   * What was counted, as a small table.
   *
   * @param cases how many cases were compared
   * @param moved how many moved in anything
   * @param skipped how many were not read
   * @param counts how many moved in each respect, in the order of {@link Move.In}
   */
  public static String summary(int cases, int moved, int skipped, int[] counts) {
    StringBuilder table = new StringBuilder();
    table.append(row("cases compared", cases)).append(row("moved", moved));
    for (Move.In in : Move.In.values()) {
      String name =
          switch (in) {
            case LEADER -> "  what leads";
            case ORDER -> "  what follows it";
            case FIRMNESS -> "  firmness";
            case EXCLUSIONS -> "  what is ruled out";
            case CAUTIONS -> "  cautions";
            case STOPS -> "  stops";
          };
      table.append(row(name, counts[in.ordinal()]));
    }
    return table.append(row("skipped, not read", skipped)).toString();
  }

  private static String row(String name, int count) {
    String number = Integer.toString(count);
    return name + " ".repeat(Math.max(1, 32 - name.length() - number.length())) + number + "\n";
  }
}
