package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.rules.Advice;
import closehand.rules.RuleBook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/**
 * However a bank is damaged, reading and checking it end in findings or in a bank that works.
 *
 * <p>{@code -Ddamage.runs} and {@code -Ddamage.seed} ask for a longer or another session.
 */
class DamagedBankTest {
  private static final int RUNS = Integer.getInteger("damage.runs", 1500);
  private static final long SEED = Long.getLong("damage.seed", 1);
  private static final Path FOLDER =
      Path.of(System.getProperty("damage.bank", FixtureBank.TINY.toString()));

  @Test
  void endsInFindingsOrInAWorkingBank() throws IOException {
    Map<String, byte[]> files = MemoryBank.of(FOLDER).files();
    List<String> names = files.keySet().stream().sorted().toList();
    AtomicInteger sound = new AtomicInteger();
    InBatches.seeds(
        RUNS,
        run -> {
          long seed = SEED + run - 1;
          Mutation mutation = new Mutation(seed);
          Map<String, byte[]> damaged = new HashMap<>(files);
          for (int times = 1 + mutation.next(2); times > 0; times--) {
            String name = names.get(mutation.next(names.size()));
            byte[] donor = files.getOrDefault(names.get(mutation.next(names.size())), new byte[0]);
            damaged.put(name, mutation.damage(damaged.getOrDefault(name, new byte[0]), donor));
          }
          sound.addAndGet(inspect(new MemoryBank(damaged), seed) ? 1 : 0);
        });
    int found = sound.get();
    assertTrue(found > 0, "some damage is harmless, such as another word in a text");
    assertTrue(found < RUNS / 2, "most damage is found; harmless: " + found + " of " + RUNS);
  }

  private static boolean inspect(MemoryBank bank, long seed) throws IOException {
    try {
      List<Problem> problems = BankInspection.of(bank).problems();
      problems.forEach(problem -> readable(problem, seed));
      if (problems.isEmpty()) {
        works(BankReader.read(bank, BankReader.Extent.FOR_USE).bank().orElseThrow());
      }
      return problems.isEmpty();
    } catch (RuntimeException | StackOverflowError e) {
      throw new AssertionError("seed " + seed, e);
    }
  }

  private static void works(Bank bank) {
    Advice advice = RuleBook.of(bank).advise(Answers.NONE);
    assertEquals(bank.approaches().size(), advice.standings().size());
  }

  private static void readable(Problem problem, long seed) {
    String text = problem.toString();
    assertTrue(
        UncleanText.firstUnclean(text) < 0 && text.indexOf('\n') < 0, "seed " + seed + ": " + text);
    assertFalse(problem.what().isBlank(), "seed " + seed + ": says what");
    assertTrue(problem.what().endsWith("."), "seed " + seed + ": a whole sentence: " + text);
    assertTrue(
        !problem.code().equals("too-fine") || text.contains("cells"), "seed " + seed + ": " + text);
  }
}
