package closehand.bank;

import java.util.List;

/**
 * A part of the interview that belongs together, such as the safety screen.
 *
 * @param id short code, such as {@code SAF}
 * @param title plain words
 * @param questions in the order asked
 */
public record Section(String id, String title, List<Question> questions) {
  public Section {
    questions = List.copyOf(questions);
  }
}
