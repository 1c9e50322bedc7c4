package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.interview.Answers;
import closehand.interview.Dice;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * SQL's three-valued logic, as the H2 database has it (ISO/IEC 9075, NULL as unknown), comes to the
 * same outcome for every rule and every incomplete set of answers. Where a question does not apply
 * is told to SQL in so many words, since it has no such notion.
 */
class SqlOracleTest {
  private static final int RULES = 40;
  private static final int CASES = 50;

  @ParameterizedTest
  @CsvSource({"101,false", "102,false", "103,true", "104,true", "105,true"})
  void agreesOnEveryRuleAndCase(long seed, boolean gated) throws SQLException {
    Bank bank = RandomBank.of(seed, RULES, gated);
    RuleBook book = RuleBook.of(bank);
    Dice dice = new Dice(seed);
    List<Answers> cases = new ArrayList<>();
    for (int i = 0; i < CASES; i++) {
      Answers whole = RandomBank.fill(book, Answers.NONE, dice);
      for (String fact : whole.byFact().keySet()) {
        whole = dice.oneIn(3) ? whole.without(fact) : whole;
      }
      cases.add(whole);
    }
    List<List<Outcome>> expected = query(bank, cases);
    Map<Outcome, Integer> seen = new EnumMap<>(Outcome.class);
    for (int i = 0; i < CASES; i++) {
      for (int rule = 0; rule < RULES; rule++) {
        Outcome outcome = book.find(rule, cases.get(i)).outcome();
        assertEquals(expected.get(i).get(rule), outcome, "case " + i + " rule " + rule);
        seen.merge(outcome, 1, Integer::sum);
      }
    }
    assertTrue(seen.values().stream().allMatch(n -> n > RULES * CASES / 20), seen.toString());
  }

  private static List<List<Outcome>> query(Bank bank, List<Answers> cases) throws SQLException {
    SqlText text = new SqlText(bank);
    List<String> rules = bank.rules().stream().map(text::rule).toList();
    try (Connection connection = DriverManager.getConnection("jdbc:h2:mem:");
        Statement statement = connection.createStatement()) {
      Map<String, String> columns = SqlText.columns(bank);
      List<String> declared =
          columns.entrySet().stream().map(c -> "\"" + c.getKey() + "\" " + c.getValue()).toList();
      statement.execute(
          "CREATE TABLE answers (id INT, " + String.join(", ", declared).replace("\"", "") + ")");
      for (int i = 0; i < cases.size(); i++) {
        insert(connection, i, List.copyOf(columns.keySet()), SqlText.row(bank, cases.get(i)));
      }
      String select = "SELECT " + String.join(", ", rules) + " FROM answers ORDER BY id";
      List<List<Outcome>> outcomes = new ArrayList<>();
      try (ResultSet rows = statement.executeQuery(select)) {
        while (rows.next()) {
          outcomes.add(row(rows, rules.size()));
        }
      }
      return outcomes;
    }
  }

  private static void insert(
      Connection connection, int id, List<String> columns, Map<String, Object> row)
      throws SQLException {
    String marks = "?" + ", ?".repeat(columns.size());
    String sql =
        "INSERT INTO answers (id, " + String.join(", ", columns) + ") VALUES (" + marks + ")";
    try (PreparedStatement insert = connection.prepareStatement(sql)) {
      insert.setInt(1, id);
      for (int i = 0; i < columns.size(); i++) {
        insert.setObject(i + 2, row.get(columns.get(i)));
      }
      insert.executeUpdate();
    }
  }

  private static List<Outcome> row(ResultSet rows, int count) throws SQLException {
    List<Outcome> outcomes = new ArrayList<>();
    for (int column = 1; column <= count; column++) {
      boolean holds = rows.getBoolean(column);
      outcomes.add(rows.wasNull() ? Outcome.OPEN : holds ? Outcome.TRUE : Outcome.FALSE);
    }
    return outcomes;
  }
}
