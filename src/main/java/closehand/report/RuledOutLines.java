package closehand.report;

import closehand.bank.Rule;
import closehand.rules.Finding;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What is ruled out, and why: the approaches with the same reason together. */
final class RuledOutLines {
  private static final List<String> DELICATE = List.of("breath", "voice", "neck");

  private static final String LEFT = ", left";
  private static final String RIGHT = ", right";
  private static final String SIDE = ", (left|right)$";

  private RuledOutLines() {}

  /** One entry for each reason, those that matter most first; few others in one line. */
  static List<Piece> of(PageInput input, Room room) {
    List<Group> groups = groups(input.together().with(Standing.Status.RULED_OUT));
    if (groups.isEmpty()) {
      return List.of();
    }
    if (room.terse()) {
      return List.of(new Gap(), Paragraph.headed("Ruled out for now.", inFewWords(groups)));
    }
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Ruled out for now"));
    List<String> rest = new ArrayList<>();
    int shown = 0;
    for (Group group : groups) {
      if (group.matters() || shown < room.ruledOut()) {
        pieces.add(Paragraph.item(Phrases.listed(paired(group.names())) + ": " + group.reason()));
        shown++;
      } else {
        rest.addAll(group.names());
      }
    }
    if (!rest.isEmpty()) {
      pieces.add(
          Paragraph.item(
              Phrases.listed(paired(rest)) + ": the reasons are on the clinician's page."));
    }
    return pieces;
  }

  /** Every group with its reason in a few words, one after another. */
  private static String inFewWords(List<Group> groups) {
    Map<String, List<String>> names = new LinkedHashMap<>();
    groups.forEach(g -> names.computeIfAbsent(g.brief(), b -> new ArrayList<>()).addAll(g.names()));
    List<String> said = new ArrayList<>();
    names.forEach(
        (reason, together) ->
            said.add(
                Phrases.upper(Phrases.listed(paired(together))) + ": " + Phrases.lower(reason)));
    return String.join(" ", said);
  }

  /** "Mouse, right" and "mouse, left" as "mouse, either side", where the first stands. */
  static List<String> paired(List<String> names) {
    List<String> paired = new ArrayList<>();
    for (String name : names) {
      String thing = name.replaceFirst(SIDE, "");
      boolean both = names.contains(thing + LEFT) && names.contains(thing + RIGHT);
      String said = both ? thing + ", either side" : name;
      if (!paired.contains(said)) {
        paired.add(said);
      }
    }
    return paired;
  }

  /**
   * Approaches ruled out for one reason.
   *
   * @param brief the reason in a few words
   * @param matters whether the reason protects the player, so that no page may leave it out
   */
  record Group(List<String> names, String reason, String brief, boolean matters) {}

  /** The groups whose reason matters first, then those with most approaches. */
  static List<Group> groups(List<Standing> ruledOut) {
    Map<String, List<Standing>> byRule = new LinkedHashMap<>();
    for (Standing standing : ruledOut) {
      byRule.computeIfAbsent(rule(standing), r -> new ArrayList<>()).add(standing);
    }
    Map<String, Group> groups = new LinkedHashMap<>();
    for (List<Standing> together : byRule.values()) {
      String reason = reason(together);
      Group before =
          groups.getOrDefault(reason, new Group(List.of(), reason, brief(together), false));
      List<String> names = new ArrayList<>(before.names());
      together.forEach(s -> names.add(s.approach().words().brief()));
      boolean matters = before.matters() || together.stream().anyMatch(RuledOutLines::matters);
      groups.put(reason, new Group(names, reason, before.brief(), matters));
    }
    List<Group> sorted = new ArrayList<>(groups.values());
    sorted.sort(
        Comparator.comparing((Group g) -> !g.matters()).thenComparing(g -> -g.names().size()));
    return sorted;
  }

  private static String rule(Standing standing) {
    return telling(standing).stream().findFirst().map(f -> f.rule().id()).orElse("");
  }

  /** What rules it out, what protects the player first. */
  private static List<Finding> telling(Standing standing) {
    List<Finding> findings = new ArrayList<>(standing.ruledOutBy());
    findings.sort(Comparator.comparing((Finding f) -> !protects(f.rule())));
    return findings;
  }

  private static boolean matters(Standing standing) {
    return standing.ruledOutBy().stream().anyMatch(f -> protects(f.rule()));
  }

  private static boolean protects(Rule rule) {
    String reason = rule.reason().toLowerCase(Locale.ROOT);
    return !rule.effects().cautions().isEmpty() || DELICATE.stream().anyMatch(reason::contains);
  }

  private static String reason(List<Standing> together) {
    return merged(
        together.stream().flatMap(s -> Reasons.sentences(telling(s), 1).stream()).toList());
  }

  private static String brief(List<Standing> together) {
    return merged(
        together.stream()
            .flatMap(s -> telling(s).stream().limit(1))
            .map(f -> Phrases.sentence(f.rule().briefReason()))
            .toList());
  }

  private static String merged(List<String> said) {
    List<String> reasons = said.stream().distinct().toList();
    return reasons.isEmpty()
        ? "It does not fit for now."
        : String.join(" ", Merged.sentences(reasons));
  }
}
