package closehand.screen;

import closehand.interview.Message;
import closehand.report.Consultation;
import java.util.List;
import java.util.Optional;

/**
 * Stops or cautions that have to be read before going on.
 *
 * @param notices what is said
 * @param ends whether the session ends with it
 */
record NoticeScreen(List<Consultation.Notice> notices, boolean ends) implements Screen {
  /** The stop that stands when consent is not given. */
  private static final String CONSENT = "C-CONSENT";

  NoticeScreen {
    notices = List.copyOf(notices);
  }

  @Override
  public Shown shown(ScreenModel model) {
    boolean stops = stops();
    Shown.Builder screen = new Shown.Builder(stops ? "STOP. Please read this" : "Take care");
    for (Consultation.Notice notice : notices) {
      Paragraphs.of(notice.lines()).forEach(screen::add);
      screen.gap();
    }
    boolean lowerable = lowerable(model);
    if (ends) {
      ending(screen, lowerable, model.talk().map(t -> t.advisor().isKept()).orElse(true));
    } else {
      screen.offer(1, "I have read this", new Act.Close());
      if (stops) {
        fact().ifPresent(f -> slip(screen, f));
        lower(screen, lowerable);
      }
    }
    return screen.build();
  }

  @Override
  public boolean isReadFirst() {
    return true;
  }

  /** Whether any of these stops something. */
  boolean stops() {
    return notices.stream().anyMatch(Consultation.Notice::stops);
  }

  /** Whether a clinician may lower any of these. */
  private boolean lowerable(ScreenModel model) {
    return model.talk().stream()
        .anyMatch(t -> notices.stream().anyMatch(t.consultation()::mayBeLowered));
  }

  private static void lower(Shown.Builder screen, boolean lowerable) {
    if (lowerable) {
      screen.offer(3, "A clinician lowers it", new Act.Do(Command.LOWER));
    }
  }

  private void ending(Shown.Builder screen, boolean lowerable, boolean kept) {
    boolean consent = notices.stream().anyMatch(n -> n.code().equals(CONSENT));
    screen.say(consent ? "Nothing more is written down." : contact()).gap();
    screen.offer(
        1,
        "End the session",
        new Act.Run(new Effect.Leave(consent ? Effect.Ending.NO_CONSENT : Effect.Ending.STOPPED)));
    fact().ifPresent(f -> slip(screen, f));
    if (consent && kept) {
      screen.offer(
          4, "Delete everything kept so far, and leave", new Act.Show(Menu.of(Menu.Kind.DELETE)));
    } else if (!consent) {
      lower(screen, lowerable);
    }
  }

  /** Whom to call or ask, once more where the session ends. */
  private String contact() {
    return notices.stream()
        .filter(Consultation.Notice::endsSession)
        .map(Consultation.Notice::contact)
        .filter(contact -> !contact.isEmpty())
        .findFirst()
        .orElse("The session ends here.");
  }

  private static void slip(Shown.Builder screen, String fact) {
    screen.offer(2, "That was a slip, or it has changed: answer again", new Act.AnswerAgain(fact));
  }

  private Optional<String> fact() {
    return notices.stream().flatMap(n -> n.facts().stream()).findFirst();
  }

  /** Going back from a stop is answering again; it never just goes away. */
  @Override
  public Act back() {
    return fact().<Act>map(Act.AnswerAgain::new).orElseGet(() -> new Act.Send(new Message.Back()));
  }
}
