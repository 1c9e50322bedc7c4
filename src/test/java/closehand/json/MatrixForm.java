package closehand.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.TreeMap;

/**
 * A form, written out as FHIR, in which every operator meets every kind of question: one question
 * of each kind, and for each comparison one yes-or-no question that it opens.
 */
final class MatrixForm {
  static final String URL = "http://closehand.invalid/fhir/Questionnaire/matrix";
  private static final String SYSTEM = "http://closehand.invalid/fhir/answers";
  private static final String HL7 = "http://hl7.org/fhir/StructureDefinition/";

  private final List<String> items = new ArrayList<>();
  private int targets;

  /** The form as JSON. */
  static String text() {
    return new MatrixForm().form();
  }

  private String form() {
    String range = "{\"url\": \"%sminValue\", \"%s\": 0}, {\"url\": \"%smaxValue\", \"%s\": 9}";
    String whole = range.formatted(HL7, "valueInteger", HL7, "valueInteger");
    String decimal = range.formatted(HL7, "valueDecimal", HL7, "valueDecimal");
    items.add(item("b", "boolean", "", ""));
    items.add(item("n", "integer", "", "\"extension\": [" + whole + "]"));
    items.add(item("d", "decimal", "", "\"extension\": [" + decimal + "]"));
    items.add(item("c", "choice", "", "\"answerOption\": [" + options() + "]"));
    items.add(item("m", "choice", "", "\"repeats\": true, \"answerOption\": [" + options() + "]"));
    items.add(item("s", "string", "", ""));
    items.add(item("l", "string", "", "\"repeats\": true"));
    Map<String, String> expected =
        new TreeMap<>(
            Map.of(
                "b", "\"answerBoolean\": true",
                "n", "\"answerInteger\": 5",
                "d", "\"answerDecimal\": 2.5",
                "c", coding("yes"),
                "m", coding("yes"),
                "s", "\"answerString\": \"ab\"",
                "l", "\"answerString\": \"ab\""));
    expected.forEach(this::operators);
    target(test("b", "=", "\"answerBoolean\": false"));
    combinations();
    chains();
    return """
        {"resourceType": "Questionnaire", "url": "%s", "version": "1.0.0", "name": "Matrix",
         "title": "Matrix", "status": "draft", "subjectType": ["Patient"],
         "item": [{"linkId": "S", "type": "group", "text": "Section", "item": [%s]}]}"""
        .formatted(URL, String.join(",\n", items));
  }

  private void operators(String question, String expected) {
    boolean ordered = question.equals("n") || question.equals("d");
    for (String operator :
        ordered ? List.of("=", "!=", ">", ">=", "<", "<=") : List.of("=", "!=")) {
      target(test(question, operator, expected));
    }
    target(test(question, "exists", "\"answerBoolean\": true"));
    target(test(question, "exists", "\"answerBoolean\": false"));
  }

  private void combinations() {
    String b = test("b", "=", "\"answerBoolean\": true");
    String c = test("c", "=", coding("yes"));
    String m = test("m", "exists", "\"answerBoolean\": true");
    for (String behaviour : List.of("all", "any")) {
      items.add(
          opened(
              "\"enableWhen\": ["
                  + b
                  + ","
                  + c
                  + ","
                  + m
                  + "], \"enableBehavior\": \""
                  + behaviour
                  + "\"",
              "combined." + behaviour));
    }
  }

  /** Conditions on questions that may not apply themselves, and groups that open what is inside. */
  private void chains() {
    target("opened", test("b", "=", "\"answerBoolean\": true"));
    target("opened.then", test("opened", "=", "\"answerBoolean\": true"));
    target("opened.not", test("opened", "exists", "\"answerBoolean\": false"));
    target("opened.then.then", test("opened.then", "exists", "\"answerBoolean\": true"));
    String inside =
        opened("\"enableWhen\": [" + test("n", ">", "\"answerInteger\": 5") + "]", "inside");
    String always = opened("", "inside.always");
    items.add(
        """
        {"linkId": "G", "prefix": "G-1", "type": "group", "text": "Group",
         "enableWhen": [%s], "item": [%s, %s]}"""
            .formatted(test("c", "=", coding("no")), inside, always));
    target("after.group", test("inside", "exists", "\"answerBoolean\": true"));
  }

  private void target(String test) {
    target("t" + targets++, test);
  }

  private void target(String linkId, String test) {
    items.add(opened("\"enableWhen\": [" + test + "]", linkId));
  }

  private static String opened(String condition, String linkId) {
    return item(linkId, "boolean", "\"required\": true", condition);
  }

  private static String item(String linkId, String type, String one, String two) {
    StringJoiner members = new StringJoiner(", ", "{", "}");
    members.add("\"linkId\": \"" + linkId + "\"");
    members.add("\"prefix\": \"Q-" + linkId + "\"");
    members.add("\"type\": \"" + type + "\"");
    members.add("\"text\": \"About " + linkId + "\"");
    for (String member : List.of(one, two)) {
      if (!member.isEmpty()) {
        members.add(member);
      }
    }
    return members.toString();
  }

  private static String test(String question, String operator, String expected) {
    return "{\"question\": \""
        + question
        + "\", \"operator\": \""
        + operator
        + "\", "
        + expected
        + "}";
  }

  private static String coding(String code) {
    return "\"answerCoding\": {\"system\": \"" + SYSTEM + "\", \"code\": \"" + code + "\"}";
  }

  private static String options() {
    StringJoiner options = new StringJoiner(", ");
    for (String code : List.of("yes", "no", "unsure")) {
      options.add(
          "{\"valueCoding\": {\"system\": \""
              + SYSTEM
              + "\", \"code\": \""
              + code
              + "\", \"display\": \"Say "
              + code
              + "\"}}");
    }
    return options.toString();
  }
}
