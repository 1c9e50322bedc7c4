package closehand.screen;

import closehand.interview.Interview;
import closehand.report.Advisor;

/** Somebody who follows what happens on the screen, such as a transcript for speech or braille. */
public interface Follower {
  /** Nobody follows. */
  Follower NOBODY =
      new Follower() {
        @Override
        public void begun(Advisor advisor, Interview interview) {}

        @Override
        public void heard(Effect effect) {}
      };

  /** An interview begins, or goes on after a break. */
  void begun(Advisor advisor, Interview interview);

  /** Something was said to it, taken back, or brought up to be read. */
  void heard(Effect effect);
}
