package closehand.cli;

import closehand.report.ClinicianPage;
import closehand.report.Glyphs;
import closehand.report.PageInput;
import closehand.report.PlayerPage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * The two pages of a case, beside its file.
 *
 * @param folder the folder of cases
 * @param name the case's pseudonym
 */
record PageFiles(Path folder, String name) {

  Path player() {
    return folder.resolve(name + "-player.txt");
  }

  Path clinician() {
    return folder.resolve(name + "-clinician.txt");
  }

  /**
   * Writes both pages in place of earlier ones, readable by their owner alone where the system can
   * say so.
   */
  void write(PageInput input, boolean forClinician) throws IOException {
    replace(player(), PlayerPage.of(input, Glyphs.UNICODE));
    if (forClinician) {
      replace(clinician(), ClinicianPage.of(input, Glyphs.UNICODE));
    } else {
      Files.deleteIfExists(clinician());
    }
  }

  void delete() throws IOException {
    Files.deleteIfExists(player());
    Files.deleteIfExists(clinician());
  }

  private void replace(Path target, String page) throws IOException {
    Path temporary = Files.createTempFile(folder, ".save-page-", ".tmp");
    try {
      Files.write(temporary, page.getBytes(StandardCharsets.UTF_8));
      Files.move(
          temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      if (Files.exists(temporary, LinkOption.NOFOLLOW_LINKS)) {
        Files.delete(temporary);
      }
    }
  }
}
