package closehand.cli;

import closehand.report.ClinicianPage;
import closehand.report.Glyphs;
import closehand.report.PageInput;
import closehand.report.PlayerPage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The two pages of a case, beside its file.
 *
 * @param cases the folder of cases
 * @param name the case's pseudonym
 */
record PageFiles(Cases cases, String name) {

  Path player() {
    return cases.folder().resolve(name + "-player.txt");
  }

  Path clinician() {
    return cases.folder().resolve(name + "-clinician.txt");
  }

  /** Writes both pages in place of earlier ones, readable by their owner alone. */
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
    cases.store().putBeside(name, target, page.getBytes(StandardCharsets.UTF_8));
  }
}
