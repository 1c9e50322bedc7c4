package closehand.measure.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Problem;
import closehand.json.NormsReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What travels with the program is what was confirmed, figure by figure, and nothing else. */
class ShippedNormsTest {
  private static final Map<String, String> SOURCES =
      Map.of(
          "grip-usa-1985", "Mathiowetz 1985,grip",
          "tip-pinch-usa-1985", "Mathiowetz 1985,tip pinch",
          "key-pinch-usa-1985", "Mathiowetz 1985,key pinch",
          "palmar-pinch-usa-1985", "Mathiowetz 1985,palmar pinch",
          "grip-germany-2016", "Steiber 2016,grip",
          "grip-world-2025", "Tomkinson 2025,grip centile P");

  /** A confirmed figure: its spread only where that was confirmed too. */
  private record Figure(String mean, String deviation) {}

  private static Map<String, Figure> confirmed() throws IOException {
    Map<String, Figure> figures = new HashMap<>();
    for (String line : Files.readAllLines(Path.of("src/test/resources/norms/grip-norms.csv"))) {
      String[] cells = line.split(",", -1);
      boolean all = cells[9].equals("CONFIRMED");
      if (all || cells[9].startsWith("MEAN CONFIRMED")) {
        String key = String.join(",", cells[0], cells[1], cells[2], cells[3], cells[4]);
        figures.put(key, new Figure(cells[6], all ? cells[7] : ""));
      }
    }
    return figures;
  }

  private static String key(String table, String centile, Group group) {
    String sex = group.sex() == Group.Sex.MALE ? "M" : "F";
    String hand =
        switch (group.hand()) {
          case RIGHT -> "R";
          case LEFT -> "L";
          case EITHER -> "unspecified";
        };
    return SOURCES.get(table) + centile + "," + sex + "," + hand + "," + group.leastAge();
  }

  @Test
  void everyFigureIsAConfirmedOne() throws IOException {
    Map<String, Figure> confirmed = confirmed();
    int checked = 0;
    Norms norms = NormsReader.embedded();
    for (MeanTable table : norms.means()) {
      for (MeanTable.Row row : table.rows()) {
        Figure figure = figure(confirmed, key(table.origin().id(), "", row.group()));
        assertEquals(Double.parseDouble(figure.mean()), row.mean(), 0);
        assertEquals(
            figure.deviation(),
            row.deviation().isPresent() ? trimmed(row.deviation().getAsDouble(), figure) : "");
        checked++;
      }
    }
    for (CentileTable table : norms.centiles()) {
      for (CentileTable.Row row : table.rows()) {
        for (int i = 0; i < table.centiles().size(); i++) {
          String key = key(table.origin().id(), "" + table.centiles().get(i), row.group());
          assertEquals(Double.parseDouble(figure(confirmed, key).mean()), row.values().get(i), 0);
          checked++;
        }
      }
    }
    assertEquals(4 * 48 + 26 + 28 * 11, checked);
  }

  private static Figure figure(Map<String, Figure> confirmed, String key) {
    return Optional.ofNullable(confirmed.get(key)).orElseThrow(() -> new AssertionError(key));
  }

  private static String trimmed(double value, Figure figure) {
    return Double.parseDouble(figure.deviation()) == value ? figure.deviation() : "" + value;
  }

  @Test
  void everyTableNamesItsSourceItsStatusAndItsPeople() throws IOException {
    Norms norms = NormsReader.embedded();
    List<Origin> origins = new ArrayList<>();
    norms.means().forEach(t -> origins.add(t.origin()));
    norms.centiles().forEach(t -> origins.add(t.origin()));
    assertEquals(SOURCES.keySet().size(), origins.size());
    for (Origin origin : origins) {
      assertFalse(origin.source().isBlank() || origin.people().isBlank());
      assertTrue(origin.status().contains("confirmed"));
    }
  }

  private static List<Problem> problems(String json) {
    List<Problem> problems = new ArrayList<>();
    byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
    boolean read = NormsReader.read("n.json", bytes, problems).isPresent();
    assertEquals(problems.isEmpty(), read);
    return problems;
  }

  private static String file(String table) {
    return "{\"means\": ["
        + table
        + "], \"centiles\": [], \"thumbReach\": {\"proximalShare\": 0.2, \"distalShare\": 0.1,"
        + " \"withShiftShare\": 0.6, \"bendDegrees\": 80, \"turnDegrees\": 50,"
        + " \"source\": \"invented\", \"status\": \"estimate\"}}";
  }

  private static String table(String status, String row) {
    return file(
        "{\"id\": \"a\", \"measure\": \"grip\", \"unit\": \"kg\", \"source\": \"invented\","
            + " \"status\": \""
            + status
            + "\", \"people\": \"invented\", \"rows\": ["
            + row
            + "]}");
  }

  @Test
  void brokenTablesAreToldWithTheirPlace() {
    assertEquals(List.of(), problems(table("confirmed", "[\"male\", \"left\", 20, 24, 50, 8]")));
    assertEquals(
        "norm-table",
        problems(table("from memory", "[\"male\", \"left\", 20, 24, 50, 8]")).get(0).code());
    assertEquals(
        "norm-figure",
        problems(table("confirmed", "[\"male\", \"left\", 20, 24, -50, 8]")).get(0).code());
    assertEquals(
        "norm-group",
        problems(table("confirmed", "[\"man\", \"left\", 20, 24, 50, 8]")).get(0).code());
    assertEquals(
        "norm-row", problems(table("confirmed", "[\"male\", \"left\", 20]")).get(0).code());
    assertFalse(problems("[]").isEmpty());
    assertFalse(problems("{").isEmpty());
  }
}
