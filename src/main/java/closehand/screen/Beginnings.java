package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.screen.view.Block;
import java.util.List;

/** What stands before an interview: the start, saved cases, who asks, how long it may take. */
final class Beginnings {
  private static final int BACK = 0;

  private Beginnings() {}

  static Shown of(Menu menu, ScreenModel model) {
    return switch (menu.kind()) {
      case CASES -> cases(menu, model.cases());
      case WHO_ASKS -> whoAsks();
      case HOW_LONG -> howLong(menu);
      default -> start(model);
    };
  }

  private static Shown start(ScreenModel model) {
    Shown.Builder start = new Shown.Builder("Closehand");
    start.add(Block.strong("A guided interview about game controls that fit."));
    start.say("Nothing here needs speed, colour or two keys at once. The player leads.");
    start.gap();
    start.offer(1, "Start a new interview", new Act.Show(Menu.of(Menu.Kind.WHO_ASKS)));
    if (!model.cases().isEmpty()) {
      String some = model.cases().size() == 1 ? "1 case" : model.cases().size() + " cases";
      start.offer(
          2, "Go on with a saved case (" + some + ")", new Act.Show(Menu.of(Menu.Kind.CASES)));
    }
    start.offer(3, "Try it with an invented player", new Act.Run(new Effect.Example()));
    start.offer(4, "Check the question bank", new Act.Run(new Effect.CheckBank()));
    start.offer(5, "Settings", new Act.Show(Menu.of(Menu.Kind.SETTINGS)));
    start.offer(BACK, "Leave", new Act.Run(new Effect.Leave(Effect.Ending.LEFT)));
    return start.build();
  }

  private static Shown cases(Menu menu, List<String> names) {
    Shown.Builder cases = new Shown.Builder("Saved cases");
    cases.add(Block.strong("Which case?")).gap();
    int digit = 0;
    for (String name : Pages.entries(names, menu.page(), Pages.OF_SEVEN)) {
      cases.offer(++digit, name, new Act.Run(new Effect.Open(name)));
    }
    Pages.turn(
        cases,
        Pages.OF_SEVEN + 1,
        names.size(),
        menu.page(),
        Pages.OF_SEVEN,
        next -> new Act.Swap(menu.turned(next)));
    return cases.offer(BACK, "Back", new Act.Close()).build();
  }

  private static Shown whoAsks() {
    Shown.Builder who = new Shown.Builder("A new interview");
    who.add(Block.strong("Who asks the questions?")).gap();
    int digit = 0;
    for (Provenance.By by : Provenance.By.values()) {
      Menu next = new Menu(Menu.Kind.HOW_LONG, 0, java.util.Optional.of(by));
      who.offer(++digit, People.asking(by), new Act.Show(next));
    }
    return who.offer(BACK, "Back", new Act.Close()).build();
  }

  private static Shown howLong(Menu menu) {
    Shown.Builder how = new Shown.Builder("A new interview");
    how.add(Block.strong("How long may it take?")).gap();
    Provenance.By by = menu.by().orElse(Provenance.By.VOLUNTEER);
    int digit = 0;
    for (Interview.Route route : People.ROUTES) {
      how.offer(++digit, People.route(route), new Act.Show(SealScreen.of(by, route)));
    }
    return how.offer(BACK, "Back", new Act.Close()).build();
  }
}
