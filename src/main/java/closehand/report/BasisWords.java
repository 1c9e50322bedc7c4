package closehand.report;

import closehand.bank.Rule;
import closehand.rules.Finding;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Rules and what they rest on, for the clinician. */
final class BasisWords {
  private BasisWords() {}

  /** "R025.L: what was found. Basis: S43, common practice." */
  static String of(Rule rule) {
    return rule.key() + ": " + reason(rule) + basis(rule.basis());
  }

  private static String reason(Rule rule) {
    return Phrases.sentence(rule.clinicianReason().orElse(rule.reason()));
  }

  /** " Basis: S43, common practice." or nothing. */
  private static String basis(List<String> basis) {
    return basis.isEmpty() ? "" : " Basis: " + String.join(", ", basis) + ".";
  }

  /**
   * The rules in rows of their own; rules for several sides or fingers that say one thing, once.
   */
  static List<Piece> items(int indent, List<Finding> findings) {
    Map<String, List<String>> keys = new LinkedHashMap<>();
    Map<String, List<String>> reasons = new LinkedHashMap<>();
    Map<String, String> basis = new LinkedHashMap<>();
    for (Finding finding : findings) {
      Rule rule = finding.rule();
      keys.computeIfAbsent(rule.id(), k -> new ArrayList<>()).add(rule.key());
      reasons.computeIfAbsent(rule.id(), k -> new ArrayList<>()).add(reason(rule));
      basis.putIfAbsent(rule.id(), basis(rule.basis()));
    }
    List<Piece> pieces = new ArrayList<>();
    reasons.forEach(
        (id, said) ->
            pieces.add(
                Paragraph.item(
                    indent,
                    String.join(", ", keys.getOrDefault(id, List.of()))
                        + ": "
                        + String.join(" ", Merged.sentences(said))
                        + basis.getOrDefault(id, ""))));
    return pieces;
  }

  /** Everything that the rules behind these warnings rest on. */
  static Set<String> behind(List<Warning> warnings) {
    Set<String> used = new LinkedHashSet<>();
    for (Warning warning : warnings) {
      warning.because().forEach(f -> used.addAll(f.rule().basis()));
    }
    return used;
  }

  /** Everything that the firing rules, the suggested approaches and the games rest on. */
  static Set<String> used(PageInput input) {
    Set<String> used = new LinkedHashSet<>();
    Sayings.firing(input.together()).forEach(f -> used.addAll(f.rule().basis()));
    input.together().suggestions().forEach(s -> used.addAll(s.approach().basis()));
    SettingLines.games(input).forEach(g -> used.addAll(g.basis()));
    return used;
  }
}
