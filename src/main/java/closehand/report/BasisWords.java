package closehand.report;

import closehand.bank.Rule;
import closehand.rules.Finding;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Rules and what they rest on, for the clinician. */
final class BasisWords {
  private BasisWords() {}

  /** "R025.L: what was found. Basis: S43, common practice." */
  static String of(Rule rule) {
    return rule.key()
        + ": "
        + Phrases.sentence(rule.clinicianReason().orElse(rule.reason()))
        + basis(rule.basis());
  }

  /** " Basis: S43, common practice." or nothing. */
  static String basis(List<String> basis) {
    return basis.isEmpty() ? "" : " Basis: " + String.join(", ", basis) + ".";
  }

  /** The rules in rows of their own. */
  static List<Piece> items(int indent, List<Finding> findings) {
    List<Piece> pieces = new ArrayList<>();
    findings.forEach(f -> pieces.add(Paragraph.item(indent, of(f.rule()))));
    return pieces;
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
