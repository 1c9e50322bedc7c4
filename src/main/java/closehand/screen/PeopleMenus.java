package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.report.Consultation;
import closehand.screen.view.Block;
import java.util.List;
import java.util.Optional;

/** Who asks, who answers, and what only a clinician may do. */
final class PeopleMenus {
  private PeopleMenus() {}

  static Shown of(Menu menu, ScreenModel model) {
    Talk talk = model.talk().orElseThrow();
    return switch (menu.kind()) {
      case WHO_ANSWERS -> whoAnswers(talk);
      case HOW_KNOWN -> howKnown(menu, talk);
      case LOWER -> lower(menu, talk);
      default -> conduct(talk);
    };
  }

  private static Shown conduct(Talk talk) {
    Shown.Builder menu = new Shown.Builder("Who asks, and how long");
    menu.add(Block.strong("Who asks from here on, and how long may it take?")).gap();
    int digit = 0;
    for (Provenance.By by : Provenance.By.values()) {
      boolean now = talk.interview().asker() == by;
      menu.offer(
          new Offer(
              ++digit,
              People.asking(by),
              now ? "(now)" : "",
              new Act.Send(new Message.Conduct(by))));
    }
    menu.gap();
    for (Interview.Route route : People.ROUTES) {
      boolean now = talk.interview().route() == route;
      menu.offer(
          new Offer(
              ++digit,
              People.route(route),
              now ? "(now)" : "",
              new Act.Send(new Message.TakeRoute(route))));
    }
    menu.gap();
    menu.offer(++digit, "A clinician lowers a stop or caution", new Act.Do(Command.LOWER));
    return menu.offer(0, "Back", new Act.Close()).build();
  }

  private static Shown whoAnswers(Talk talk) {
    Shown.Builder menu = new Shown.Builder("Who answers");
    menu.add(Block.strong("Who gives the answers from here on?")).gap();
    int digit = 0;
    for (Provenance.By by : Provenance.By.values()) {
      Menu next = new Menu(Menu.Kind.HOW_KNOWN, 0, Optional.of(by));
      boolean now = talk.by().equals(Optional.of(by));
      menu.offer(new Offer(++digit, People.answering(by), now ? "(now)" : "", new Act.Swap(next)));
    }
    return menu.offer(0, "Back", new Act.Close()).build();
  }

  private static Shown howKnown(Menu chosen, Talk talk) {
    Shown.Builder menu = new Shown.Builder("Who answers");
    menu.add(Block.strong("How are the answers known?")).gap();
    int digit = 0;
    for (Provenance.How how : Provenance.How.values()) {
      boolean now = talk.how().equals(Optional.of(how));
      menu.offer(
          new Offer(
              ++digit,
              People.known(how),
              now ? "(now)" : "",
              new Act.Source(chosen.by(), Optional.of(how))));
    }
    menu.offer(++digit, "As before", new Act.Source(chosen.by(), Optional.empty()));
    return menu.offer(0, "Back", new Act.Swap(Menu.of(Menu.Kind.WHO_ANSWERS))).build();
  }

  private static Shown lower(Menu menu, Talk talk) {
    Shown.Builder lower = new Shown.Builder("Lower a stop or caution");
    List<Consultation.Lowerable> some = talk.consultation().lowerable();
    if (some.isEmpty()) {
      lower.add(Block.strong("Nothing stands that could be lowered.")).gap();
    } else if (talk.interview().asker() != Provenance.By.CLINICIAN) {
      lower.add(Block.strong("Only a clinician can lower a stop or caution.")).gap();
      lower.offer(1, "A clinician takes over now", new Act.Show(Menu.of(Menu.Kind.CONDUCT)));
    } else {
      lower.add(Block.strong("Which one do you lower?"));
      lower.say("It needs your name and your reason. The page will show both.").gap();
      int digit = 0;
      for (Consultation.Lowerable one : Pages.entries(some, menu.page(), Pages.OF_SEVEN)) {
        lower.offer(
            ++digit,
            one.title() + " (" + one.code() + ")",
            new Act.Show(TextScreen.nameFor(one.code())));
      }
      Pages.turn(
          lower,
          Pages.OF_SEVEN + 1,
          some.size(),
          menu.page(),
          Pages.OF_SEVEN,
          next -> new Act.Swap(menu.turned(next)));
    }
    return lower.offer(0, "Back", new Act.Close()).build();
  }
}
