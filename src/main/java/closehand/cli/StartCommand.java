package closehand.cli;

import java.io.IOException;

final class StartCommand {
  StartCommand(Surroundings surroundings) {}

  int run() throws IOException {
    return 0;
  }
}
