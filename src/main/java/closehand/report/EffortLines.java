package closehand.report;

import closehand.bank.Effectors;
import closehand.bank.Rule;
import closehand.bank.TaskKind;
import closehand.interview.Wording;
import closehand.rules.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Body parts that rest or work harder, and tasks that wait, for the clinician. */
final class EffortLines {
  private EffortLines() {}

  /** Tasks on hold, resting parts, effort factors; nothing where there are none. */
  static List<Piece> of(PageInput input) {
    List<Finding> firing = Sayings.firing(input.together());
    List<Piece> pieces = new ArrayList<>();
    if (!input.together().holds().isEmpty()) {
      List<String> kinds = input.together().holds().stream().sorted().map(TaskKind::code).toList();
      pieces.add(Paragraph.item("On hold: " + Phrases.and(kinds) + " tasks."));
    }
    alike(resting(firing))
        .forEach(
            (rules, parts) ->
                pieces.add(Paragraph.item("Rests: " + Grid.row(parts) + " (" + rules + ").")));
    alike(factors(firing))
        .forEach(
            (factors, parts) ->
                pieces.add(Paragraph.item("Effort, " + Grid.row(parts) + ": " + factors + ".")));
    if (!pieces.isEmpty()) {
      pieces.add(0, new Heading("Body parts and effort"));
    }
    return pieces;
  }

  /** Rules by the body part that they let rest. */
  private static Map<String, List<String>> resting(List<Finding> firing) {
    Map<String, List<String>> resting = new LinkedHashMap<>();
    for (Finding finding : firing) {
      for (String part : finding.rule().effects().restingEffectors()) {
        put(resting, part, finding.rule().key());
      }
    }
    return resting;
  }

  /** Factors with their rules by body part. */
  private static Map<String, List<String>> factors(List<Finding> firing) {
    Map<String, List<String>> factors = new LinkedHashMap<>();
    for (Finding finding : firing) {
      for (Rule.Effort effort : finding.rule().effects().effort()) {
        String words =
            "x "
                + Wording.number(effort.factor())
                + uses(effort.inputs())
                + " ("
                + finding.rule().key()
                + ")";
        effort.effectors().forEach(part -> put(factors, part, words));
      }
    }
    return factors;
  }

  private static void put(Map<String, List<String>> map, String part, String words) {
    List<String> list = map.computeIfAbsent(Effectors.words(part), p -> new ArrayList<>());
    if (!list.contains(words)) {
      list.add(words);
    }
  }

  /** Body parts by what is said of them. */
  private static Map<String, List<String>> alike(Map<String, List<String>> byPart) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    byPart.forEach(
        (part, words) ->
            alike.computeIfAbsent(String.join("; ", words), w -> new ArrayList<>()).add(part));
    return alike;
  }

  private static String uses(List<String> inputs) {
    return inputs.isEmpty()
        ? ""
        : " for " + Phrases.and(inputs.stream().map(EffortLines::use).toList());
  }

  private static String use(String input) {
    return switch (input) {
      case "sidePanel" -> "side panel";
      case "farCell" -> "far side cells";
      case "smallTarget" -> "small targets";
      case "firmPress" -> "firm presses";
      case "wheelClick" -> "wheel click";
      case "layerHold" -> "holding a layer";
      case "any" -> "any use";
      default -> input;
    };
  }
}
