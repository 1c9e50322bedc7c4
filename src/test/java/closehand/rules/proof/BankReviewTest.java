package closehand.rules.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.rules.GoldAnswers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every finding of the deep check on the core bank is named in {@code docs/bank-review.md}. */
class BankReviewTest {
  @Test
  void everyFindingIsExplained() throws IOException {
    String review = Files.readString(Path.of("docs/bank-review.md"));
    List<String> unexplained =
        DeepCheck.of(GoldAnswers.bank()).stream()
            .filter(a -> a.kind() != Advisory.Kind.ANSWERS_ALIKE)
            .filter(
                a ->
                    !review.contains(a.kind().code())
                        || !a.subjects().stream().allMatch(s -> review.contains(name(s))))
            .map(a -> a.kind().code() + " " + a.subjects())
            .toList();
    assertEquals(List.of(), unexplained);
  }

  /** A rule's key without its side or digit. */
  private static String name(String subject) {
    return subject.matches("R[0-9]+[a-z]?\\..*")
        ? subject.substring(0, subject.indexOf('.'))
        : subject;
  }
}
