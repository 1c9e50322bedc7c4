package closehand.json;

import closehand.bank.Problem;
import closehand.measure.practice.PointingRecord;
import java.util.ArrayList;
import java.util.List;

/** Reads of pointing what the limits and stops of a day need. */
final class PointingReader {
  /** The longest timed work, in seconds, that is taken. */
  private static final int HOUR = 3_600;

  private PointingReader() {}

  /**
   * All pointing in the room of trials, in order; anything else is passed over.
   *
   * @param problems receives whatever is wrong
   */
  static List<PointingRecord> read(List<JsonValue.Obj> trials, List<Problem> problems) {
    List<PointingRecord> records = new ArrayList<>();
    for (JsonValue.Obj trial : trials) {
      if (PracticeReader.isOfKind(trial, PointingWriter.KIND)) {
        List<Problem> found = new ArrayList<>();
        ObjectReading in = new ObjectReading(trial, found);
        PointingRecord record =
            new PointingRecord(
                PracticeReader.moment(in),
                PracticeReader.stop(in),
                in.optional("timedSeconds").isPresent() ? in.whole("timedSeconds", 0, HOUR) : 0);
        if (!Problem.anyError(found)) {
          records.add(record);
        }
        problems.addAll(found);
      }
    }
    return records;
  }
}
