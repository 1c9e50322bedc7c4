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
  private static final int FEW = 4;

  private static final List<String> EVERY = Effectors.all().stream().map(Effectors::words).toList();

  private EffortLines() {}

  /** Resting parts, tasks on hold and the limit on play; nothing where there are none. */
  static List<Piece> resting(PageInput input) {
    List<Finding> firing = Sayings.firing(input.together());
    List<Piece> pieces = new ArrayList<>();
    List<String> digits = RestingDigits.of(input);
    if (!digits.isEmpty()) {
      pieces.add(Paragraph.item("Rests today by the answers: " + Grid.row(digits) + "."));
    }
    if (!input.together().holds().isEmpty()) {
      List<String> kinds = input.together().holds().stream().sorted().map(TaskKind::code).toList();
      pieces.add(Paragraph.item("On hold: " + Phrases.and(kinds) + " tasks."));
    }
    pieces.addAll(PaceLines.limit(input));
    alike(resting(firing))
        .forEach(
            (rules, parts) ->
                pieces.add(Paragraph.item("Rests: " + Grid.row(parts) + " (" + rules + ").")));
    if (!pieces.isEmpty()) {
      pieces.add(0, new Heading("Resting parts, waiting tasks, time limit"));
    }
    return pieces;
  }

  /** Effort factors, each rule once with the parts it speaks of; nothing where there are none. */
  static List<Piece> factors(PageInput input) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    Map<String, List<String>> rules = new LinkedHashMap<>();
    for (Finding finding : Sayings.firing(input.together())) {
      for (Rule.Effort effort : finding.rule().effects().effort()) {
        String words = "x " + Wording.number(effort.factor()) + uses(effort.inputs());
        String key = words + finding.rule().id();
        add(rules, key, words, finding.rule().key());
        List<String> named = parts.computeIfAbsent(key, k -> new ArrayList<>());
        effort.effectors().stream()
            .map(Effectors::words)
            .filter(p -> !named.contains(p))
            .forEach(named::add);
      }
    }
    List<Piece> pieces = new ArrayList<>();
    rules.forEach(
        (key, said) ->
            pieces.add(
                Paragraph.item(
                    said.get(0)
                        + ": "
                        + everyOr(parts.getOrDefault(key, List.of()))
                        + " ("
                        + String.join(", ", said.subList(1, said.size()))
                        + ")")));
    if (!pieces.isEmpty()) {
      pieces.add(0, new Heading("Effort by rule"));
      pieces.add(
          1,
          Paragraph.of(
              "A factor says how much harder a press or a hold is there than an easy one; the control plan multiplies them."));
    }
    return pieces;
  }

  private static void add(Map<String, List<String>> rules, String key, String words, String rule) {
    List<String> said = rules.computeIfAbsent(key, k -> new ArrayList<>(List.of(words)));
    if (!said.contains(rule)) {
      said.add(rule);
    }
  }

  /** "every body part", with the few that are left out, or the parts in a row. */
  private static String everyOr(List<String> parts) {
    List<String> missing = EVERY.stream().filter(p -> !parts.contains(p)).toList();
    if (missing.size() > FEW) {
      return Grid.row(parts);
    }
    return "every body part" + (missing.isEmpty() ? "" : " but " + Grid.row(missing));
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
