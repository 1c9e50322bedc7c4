package closehand.json;

import closehand.bank.Where;
import closehand.interview.CaseRecord;
import closehand.interview.SavedCase;
import closehand.measure.practice.PracticeRecord;
import closehand.plan.PlanChanges;
import closehand.strain.OwnLimits;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A whole case as one document.
 *
 * @param saved the interview
 * @param record what is kept besides the answers
 * @param plans control plans as they were given, each an object of its own format
 * @param trials what was tried, each an object of its own format
 */
public record CaseDocument(
    SavedCase saved, CaseRecord record, List<JsonValue.Obj> plans, List<JsonValue.Obj> trials) {
  /** The member of a plan that says it no longer holds. */
  private static final String EXPIRED = "expired";

  public CaseDocument {
    plans = List.copyOf(plans);
    trials = List.copyOf(trials);
  }

  /** A case of which nothing but the interview is known. */
  public static CaseDocument of(SavedCase saved) {
    return new CaseDocument(saved, CaseRecord.NONE, List.of(), List.of());
  }

  /** The same case under another name. */
  public CaseDocument named(String name) {
    return new CaseDocument(saved.named(name), record, plans, trials);
  }

  /**
   * The same case with one more control plan, as it was given.
   *
   * @param at when, as an ISO date and time with zone
   * @param bankVersion the version of the bank it was made with
   * @param plan the plan as one JSON object, as {@link PlanWriter} writes it
   */
  public CaseDocument planned(String at, String bankVersion, String plan) {
    Where nowhere = Where.file("");
    JsonValue read =
        JsonReader.read("plan", plan.getBytes(StandardCharsets.UTF_8), new ArrayList<>())
            .orElseThrow(() -> new IllegalArgumentException("no JSON"));
    List<JsonValue.Obj> more = new ArrayList<>(plans);
    more.add(
        new JsonValue.Obj(
            List.of(
                new JsonValue.Member("at", nowhere, new JsonValue.Str(at, nowhere)),
                new JsonValue.Member(
                    "bankVersion", nowhere, new JsonValue.Str(bankVersion, nowhere)),
                new JsonValue.Member("given", nowhere, read)),
            nowhere));
    return new CaseDocument(saved, record, more, trials);
  }

  /** What the player changed by hand in the games and their plans. */
  public PlanChanges changes() {
    return ChangesReader.read(plans, new ArrayList<>());
  }

  /** The same case with these changes by hand, in place of those before. */
  public CaseDocument changing(PlanChanges changes) {
    return instead(
        ChangesReader::isChanges,
        changes.games().isEmpty() ? Optional.empty() : Optional.of(ChangesWriter.write(changes)));
  }

  /** What was said about the body that no question asks. */
  public OwnLimits limits() {
    return OwnLimitsReader.kept(plans);
  }

  /** The same case with this said about the body, in place of what was said before. */
  public CaseDocument limited(OwnLimits limits) {
    return instead(
        OwnLimitsReader::isKept,
        limits.equals(OwnLimits.NONE)
            ? Optional.empty()
            : Optional.of(OwnLimitsWriter.write(limits)));
  }

  /** The same case with one object in the room of plans in place of others. */
  private CaseDocument instead(Predicate<JsonValue.Obj> others, Optional<String> written) {
    List<JsonValue.Obj> next = new ArrayList<>(plans);
    next.removeIf(others);
    written
        .flatMap(
            w -> JsonReader.read("plans", w.getBytes(StandardCharsets.UTF_8), new ArrayList<>()))
        .ifPresent(v -> next.add((JsonValue.Obj) v));
    return new CaseDocument(saved, record, next, trials);
  }

  /**
   * The same case with its plans marked as no longer valid; those marked before stay as they are.
   *
   * @param at when, as an ISO date and time with zone
   */
  public CaseDocument expired(String at, String because) {
    Where nowhere = Where.file("");
    JsonValue.Obj mark =
        new JsonValue.Obj(
            List.of(
                new JsonValue.Member("at", nowhere, new JsonValue.Str(at, nowhere)),
                new JsonValue.Member("because", nowhere, new JsonValue.Str(because, nowhere))),
            nowhere);
    List<JsonValue.Obj> marked = new ArrayList<>();
    for (JsonValue.Obj plan : plans) {
      List<JsonValue.Member> members = new ArrayList<>(plan.members());
      boolean isPlan = !ChangesReader.isChanges(plan) && !OwnLimitsReader.isKept(plan);
      if (plan.member(EXPIRED).isEmpty() && isPlan) {
        members.add(new JsonValue.Member(EXPIRED, nowhere, mark));
      }
      marked.add(new JsonValue.Obj(members, plan.where()));
    }
    return new CaseDocument(saved, record, marked, trials);
  }

  /**
   * The same case with one trial, as {@link TrialWriter} gives it.
   *
   * @param place its place among the trials; the place after the last adds it
   */
  public CaseDocument trying(int place, JsonValue.Obj trial) {
    List<JsonValue.Obj> now = new ArrayList<>(trials);
    if (place == now.size()) {
      now.add(trial);
    } else {
      now.set(place, trial);
    }
    return new CaseDocument(saved, record, plans, now);
  }

  /** The practice runs kept with this case, the oldest first; what cannot be read is left out. */
  public List<PracticeRecord> practised() {
    return PracticeReader.read(trials, new ArrayList<>());
  }

  /** The same case with this practice run; one of the same moment and game gives way to it. */
  public CaseDocument practised(PracticeRecord record) {
    List<JsonValue.Obj> next = new ArrayList<>(trials);
    next.removeIf(
        t ->
            PracticeReader.read(List.of(t), new ArrayList<>()).stream()
                .anyMatch(r -> r.at().equals(record.at()) && r.game() == record.game()));
    return new CaseDocument(saved, this.record, plans, next).tried(PracticeWriter.write(record));
  }

  /**
   * The same case with one more thing that was tried.
   *
   * @param trial one JSON object
   */
  public CaseDocument tried(String trial) {
    JsonValue read =
        JsonReader.read("trial", trial.getBytes(StandardCharsets.UTF_8), new ArrayList<>())
            .orElseThrow(() -> new IllegalArgumentException("no JSON"));
    List<JsonValue.Obj> next = new ArrayList<>(trials);
    next.add((JsonValue.Obj) read);
    return new CaseDocument(saved, record, plans, next);
  }

  /** The same case with the interview as it stands now. */
  public CaseDocument with(SavedCase now, CaseRecord since) {
    return new CaseDocument(now, since, plans, trials);
  }
}
