package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Provenance;

/** People and routes in words. */
final class People {
  private People() {}

  static String asking(Provenance.By by) {
    return switch (by) {
      case PLAYER -> "I am the player, and I do this on my own";
      case HELPER -> "A helper or family member";
      case VOLUNTEER -> "A volunteer";
      case CLINICIAN -> "A clinician, such as an occupational therapist";
    };
  }

  static String answering(Provenance.By by) {
    return switch (by) {
      case PLAYER -> "The player";
      case HELPER -> "A helper or family member";
      case VOLUNTEER -> "A volunteer, by watching";
      case CLINICIAN -> "A clinician";
    };
  }

  static String known(Provenance.How how) {
    return switch (how) {
      case TOLD -> "Told";
      case SEEN -> "Seen";
      case MEASURED -> "Measured";
    };
  }

  /** The routes offered here; the briefest needs proposals, which this face does not follow yet. */
  static final java.util.List<Interview.Route> ROUTES =
      java.util.List.of(Interview.Route.CORE, Interview.Route.FULL);

  static String route(Interview.Route route) {
    return switch (route) {
      case CORE -> "The short interview, about 40 minutes";
      case FULL -> "The whole interview, about an hour or in parts";
      case BRIEF -> "The briefest: warning signs, then only what tells most";
    };
  }
}
