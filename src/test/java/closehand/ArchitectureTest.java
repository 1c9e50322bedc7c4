package closehand;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The package table: what may know what, and what the pure core must stay clear of. */
@AnalyzeClasses(packages = "closehand", importOptions = ArchitectureTest.WithoutTests.class)
class ArchitectureTest {
  private static final String[] JDK = {
    "java.lang..", "java.util..", "java.math..", "java.text..", "org.jspecify.annotations.."
  };

  /** Leaves out what was compiled together with this test, whatever folder a build puts it in. */
  static final class WithoutTests implements ImportOption {
    private static final String HERE =
        ArchitectureTest.class.getProtectionDomain().getCodeSource().getLocation().getPath();

    @Override
    public boolean includes(Location location) {
      return !location.asURI().getPath().startsWith(HERE);
    }
  }

  /** Package and the project's packages it may use besides itself. */
  private static final Map<String, List<String>> MAY_USE =
      Map.of(
          "bank", List.of(),
          "interview", List.of("bank"),
          "rules", List.of("bank", "interview"),
          "plan", List.of("bank", "interview", "rules"),
          "strain", List.of("bank", "interview", "plan"),
          "measure", List.of("bank", "interview"),
          "report", List.of("bank", "interview", "rules", "plan", "strain", "measure"));

  @ArchTest static final ArchRule BANK = onlyUses("bank");
  @ArchTest static final ArchRule INTERVIEW = onlyUses("interview");
  @ArchTest static final ArchRule RULES = onlyUses("rules");
  @ArchTest static final ArchRule PLAN = onlyUses("plan");
  @ArchTest static final ArchRule STRAIN = onlyUses("strain");
  @ArchTest static final ArchRule MEASURE = onlyUses("measure");
  @ArchTest static final ArchRule REPORT = onlyUses("report");

  @ArchTest
  static final ArchRule FULL_SCREEN_ONLY_IN_SCREEN =
      noClasses()
          .that(resideOutsideOfPackages("closehand.screen.."))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.googlecode.lanterna..");

  @ArchTest
  static final ArchRule SEALING_ONLY_IN_CASE_FILES =
      noClasses()
          .that(resideOutsideOfPackages("closehand.casefile.."))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.bouncycastle..");

  @ArchTest
  static final ArchRule JACKSON_ONLY_IN_JSON =
      noClasses()
          .that(resideOutsideOfPackages("closehand.json.."))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.fasterxml..");

  @ArchTest
  static final ArchRule COMMAND_LINE_ONLY_IN_CLI =
      noClasses()
          .that(resideOutsideOfPackages("closehand.cli.."))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("picocli..", "closehand.cli..");

  @ArchTest
  static final ArchRule FACES_READ_NO_FILES =
      noClasses()
          .that(resideInAnyPackage("closehand.line..", "closehand.screen.."))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.nio.file..", "closehand.json..", "closehand.casefile..");

  @ArchTest
  static final ArchRule CORE_HAS_NO_MUTABLE_STATE =
      fields()
          .that()
          .areStatic()
          .and()
          .areDeclaredInClassesThat()
          .resideInAnyPackage(
              "closehand.bank..",
              "closehand.interview..",
              "closehand.rules..",
              "closehand.plan..",
              "closehand.strain..",
              "closehand.measure..",
              "closehand.report..")
          .should()
          .beFinal();

  @ArchTest
  static final ArchRule CORE_HAS_NO_CLOCK_OR_CHANCE =
      noClasses()
          .that(
              resideInAnyPackage(
                  "closehand.bank..",
                  "closehand.interview..",
                  "closehand.rules..",
                  "closehand.plan..",
                  "closehand.strain..",
                  "closehand.measure..",
                  "closehand.report.."))
          .should()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.util.Random")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime");

  private static ArchRule onlyUses(String name) {
    List<String> allowed = new ArrayList<>(List.of(JDK));
    allowed.add("closehand." + name + "..");
    MAY_USE
        .getOrDefault(name, List.of())
        .forEach(other -> allowed.add("closehand." + other + ".."));
    return classes()
        .that(resideInAnyPackage("closehand." + name + ".."))
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(allowed.toArray(new String[0]))
        .allowEmptyShould(true);
  }

  @Test
  void noSourceFileIsTooLongToReadInOneSitting() throws IOException {
    assertEquals(List.of(), javaFiles().filter(f -> lines(f) > 400).map(Path::toString).toList());
  }

  @Test
  void everyPackageSaysWhatLivesThere() throws IOException {
    List<Path> folders = javaFiles().map(Path::getParent).distinct().toList();
    assertEquals(
        List.of(),
        folders.stream().filter(f -> !Files.exists(f.resolve("package-info.java"))).toList());
  }

  private static Stream<Path> javaFiles() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      return files.filter(f -> f.toString().endsWith(".java")).toList().stream();
    }
  }

  private static long lines(Path file) {
    try {
      return Files.readAllLines(file).size();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
