package closehand.report;

import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is ruled out, and why: the approaches with the same reason together. */
final class RuledOutLines {
  private RuledOutLines() {}

  /** One entry for each reason, those with most approaches first; the rest in one line. */
  static List<Piece> of(PageInput input, Room room) {
    Map<String, List<String>> groups = byReason(input.together().with(Standing.Status.RULED_OUT));
    if (groups.isEmpty()) {
      return List.of();
    }
    List<Map.Entry<String, List<String>>> sorted = new ArrayList<>(groups.entrySet());
    sorted.sort((a, b) -> b.getValue().size() - a.getValue().size());
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Ruled out for now"));
    int shown = Math.min(room.ruledOut(), sorted.size());
    for (Map.Entry<String, List<String>> group : sorted.subList(0, shown)) {
      pieces.add(Paragraph.item(Phrases.listed(group.getValue()) + ": " + group.getKey()));
    }
    List<String> rest = new ArrayList<>();
    sorted.subList(shown, sorted.size()).forEach(group -> rest.addAll(group.getValue()));
    if (!rest.isEmpty()) {
      pieces.add(Paragraph.item("For other reasons: " + Phrases.listed(rest) + "."));
    }
    return pieces;
  }

  /** Short names of approaches by the first reason that rules them out, said once for all sides. */
  static Map<String, List<String>> byReason(List<Standing> ruledOut) {
    Map<String, List<Standing>> byRule = new LinkedHashMap<>();
    for (Standing standing : ruledOut) {
      String rule = standing.ruledOutBy().stream().findFirst().map(f -> f.rule().id()).orElse("");
      byRule.computeIfAbsent(rule, r -> new ArrayList<>()).add(standing);
    }
    Map<String, List<String>> groups = new LinkedHashMap<>();
    for (List<Standing> together : byRule.values()) {
      List<String> names = together.stream().map(s -> s.approach().words().brief()).toList();
      groups.computeIfAbsent(reason(together), r -> new ArrayList<>()).addAll(names);
    }
    return groups;
  }

  private static String reason(List<Standing> together) {
    List<String> reasons =
        together.stream()
            .flatMap(s -> Reasons.sentences(s.ruledOutBy(), 1).stream())
            .distinct()
            .toList();
    return reasons.isEmpty()
        ? "It does not fit for now."
        : String.join(" ", Merged.sentences(reasons));
  }
}
