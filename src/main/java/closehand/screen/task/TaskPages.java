package closehand.screen.task;

import closehand.bank.TaskBook;
import closehand.measure.task.Step;
import closehand.measure.task.TaskWords;
import closehand.measure.task.TaskWords.Wants;
import closehand.screen.view.Content;
import java.util.List;

/** The pages of a task. 9 is always stop, 0 always leaves, except while a number is typed. */
final class TaskPages {
  /** Choices on one page, so that every one has a digit. */
  static final int CHOICES_A_PAGE = 6;

  private static final Content.Hint SPACE = new Content.Hint("Space", "next");
  private static final Content.Hint ENTER = new Content.Hint("Enter", "take");
  private static final Content.Hint PAIN = new Content.Hint("9", "stop: pain");
  private static final String HEADING = "A task, measured";

  private TaskPages() {}

  static Page of(TaskModel model) {
    TaskWords.Said said = TaskWords.of(model.run());
    if (model.choosingStop()) {
      return stops(model);
    }
    if (said.wants() == Wants.QUIET) {
      return new Page.Builder(HEADING)
          .say(said.paragraphs())
          .status(said.hint())
          .build(going(model));
    }
    Page.Builder page = new Page.Builder(HEADING).say(said.paragraphs());
    if (said.wants() == Wants.NUMBER) {
      return number(page, said, model);
    }
    if (said.wants() == Wants.NEXT) {
      page.offer(1, "Go on", false, new Page.Doing.Next());
    } else {
      choices(page, said, model);
    }
    boolean ended = model.run().ended().isPresent();
    return ended ? page.build(SPACE, ENTER) : ends(page, model, said).build(PAIN, SPACE, ENTER);
  }

  private static Content.Hint going(TaskModel model) {
    if (model.run().keys()) {
      return new Content.Hint("any other key", "stops");
    }
    return model.run().endsAt().isPresent()
        ? new Content.Hint("any key", "stops")
        : new Content.Hint("Enter", "it is over; any other key stops");
  }

  private static Page.Builder ends(Page.Builder page, TaskModel model, TaskWords.Said said) {
    page.gap();
    page.offer(9, "Stop: pain", false, new Page.Doing.Pain());
    if (!(model.run().step() instanceof Step.Why)) {
      int digit = said.wants() == Wants.PICKS ? -1 : 8;
      page.offer(digit, "Stop: anything else", false, new Page.Doing.Stop());
    }
    return page.offer(0, "Leave the task", false, new Page.Doing.Leave());
  }

  private static void choices(Page.Builder page, TaskWords.Said said, TaskModel model) {
    int first = model.page() * CHOICES_A_PAGE;
    int last = Math.min(first + CHOICES_A_PAGE, said.choices().size());
    boolean picks = said.wants() == Wants.PICKS;
    for (int i = first; i < last; i++) {
      page.offer(
          i - first + 1,
          said.choices().get(i),
          picks && model.picks().contains(i),
          new Page.Doing.Take(i));
    }
    if (said.choices().size() > CHOICES_A_PAGE) {
      page.offer(7, "More of them", false, new Page.Doing.More());
    }
    if (picks) {
      page.offer(8, "That is all", false, new Page.Doing.Picked());
    }
  }

  private static Page number(Page.Builder page, TaskWords.Said said, TaskModel model) {
    if (model.checking()) {
      page.typed("You typed", model.typed());
      page.offer(1, "That is right", false, new Page.Doing.Right());
      page.offer(2, "Type it again", false, new Page.Doing.Again());
      return ends(page, model, said).build(PAIN, SPACE, ENTER);
    }
    page.hint(said.hint() + " " + digitsAlone(said));
    page.typed("Number", model.typed());
    page.offer(-1, "Take the number", false, new Page.Doing.Right());
    page.offer(-1, "Not sure, or not counted", false, new Page.Doing.NotKnown());
    page.offer(-1, "Stop: pain", false, new Page.Doing.Pain());
    page.offer(-1, "Stop: anything else", false, new Page.Doing.Stop());
    page.offer(-1, "Leave the task", false, new Page.Doing.Leave());
    return page.build(new Content.Hint("p", "stop: pain"), SPACE, ENTER);
  }

  private static String digitsAlone(TaskWords.Said said) {
    int figures = said.most().map(m -> Integer.toString(m).length()).orElse(1);
    return figures < 2
        ? ""
        : "With digits alone, type "
            + figures
            + " figures, such as "
            + "0".repeat(figures - 1)
            + "7.";
  }

  private static Page stops(TaskModel model) {
    Page.Builder page = new Page.Builder(HEADING).say(List.of("Stopped. What was it?"));
    List<TaskBook.Stop> stops = model.run().setup().book().stops().all();
    int first = model.page() * CHOICES_A_PAGE;
    for (int i = first; i < Math.min(first + CHOICES_A_PAGE, stops.size()); i++) {
      page.offer(i - first + 1, stops.get(i).words(), false, new Page.Doing.Take(i));
    }
    page.offer(7, "More of them", false, new Page.Doing.More());
    page.gap().offer(9, "Stop: pain", false, new Page.Doing.Pain());
    page.offer(0, "Back", false, new Page.Doing.Back());
    return page.build(PAIN, SPACE, ENTER);
  }
}
