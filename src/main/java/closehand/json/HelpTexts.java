package closehand.json;

import closehand.bank.Doubt;
import closehand.bank.EnableWhen;
import closehand.bank.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The help texts of one question, told apart by the end of their link id. */
final class HelpTexts {
  private final List<Problem> problems;
  private final List<EnableWhen> conditions = new ArrayList<>();
  private final Set<String> kinds = new HashSet<>();
  private String why = "";
  private String room = "";
  private String video = "";
  private String alone = "";
  private boolean strange;

  HelpTexts(List<Problem> problems) {
    this.problems = problems;
  }

  /** Reads one display item. */
  void take(ObjectReading in) {
    String linkId = in.optionalText("linkId").orElse("");
    String text = in.text("text");
    in.optionalText("type");
    EnableWhenReader.read(in, problems).ifPresent(conditions::add);
    new FhirExtensions(in.optionalList("extension"), problems).check();
    in.finish();
    String kind = linkId.substring(linkId.lastIndexOf('.') + 1);
    switch (kind) {
      case "why" -> why = text;
      case "room" -> room = text;
      case "video" -> video = text;
      case "alone" -> alone = text;
      case "" -> strange = true;
      default -> {
        strange = true;
        note(
            in,
            "unknown-value",
            "A help text's link id ends in .why, .room, .video or .alone.",
            "");
        return;
      }
    }
    if (!kinds.add(kind) && !kind.isEmpty()) {
      note(in, "duplicate-id", "The question has another help text ." + kind + ".", "Keep one.");
    }
  }

  private void note(ObjectReading in, String code, String what, String mend) {
    problems.add(Problem.error(in.where("linkId"), code, what, mend));
  }

  /** Notes which of the three texts are missing, unless one of an unknown kind is there. */
  void check(ObjectReading question) {
    List<String> missing = new ArrayList<>();
    for (String kind : List.of("why", "room", "video")) {
      if (!kinds.contains(kind)) {
        missing.add("." + kind);
      }
    }
    if (!missing.isEmpty() && !strange) {
      problems.add(
          Problem.error(
              question.where(),
              Doubt.MISSING_HELP,
              "This question has no help text " + String.join(" and ", missing) + ".",
              "Add a display item for each."));
    }
  }

  String why() {
    return why;
  }

  String room() {
    return room;
  }

  String video() {
    return video;
  }

  /** For a player who asks the questions alone; it may be missing. */
  String alone() {
    return alone;
  }

  /** When other programs show the texts. */
  List<EnableWhen> conditions() {
    return conditions;
  }
}
