package saddlewright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds the package table of DEVELOPERS.md: who may import whom, and why. */
class ArchitectureTest {

  private static final JavaClasses MAIN_CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("saddlewright");

  private static final String[] TOOLKIT = {
    "javafx..", "com.sun.javafx..", "com.sun.glass..", "com.sun.prism.."
  };
  private static final String[] PDF_LIBRARY = {
    "org.apache.pdfbox..", "org.apache.fontbox..", "org.apache.xmpbox.."
  };

  /** One row of the table. Packages stand in it lowest first. */
  private record Row(String name, Set<String> mayImport, String because) {

    Row(String name, String mayImport, String because) {
      this(
          name,
          mayImport.isEmpty() ? Set.of() : new TreeSet<>(List.of(mayImport.split(" "))),
          because);
    }
  }

  private static final String BELOW_RULES =
      "geometry dentition chart classification archform design layout mechanics";
  private static final String BELOW_CASEFILE = BELOW_RULES + " rules";

  private static final List<Row> TABLE =
      List.of(
          new Row(
              "geometry",
              "",
              "lengths and shapes in millimetres must be usable, and testable, without knowing of"
                  + " teeth"),
          new Row(
              "dentition", "", "teeth have names and surfaces before anything is drawn of them"),
          new Row(
              "chart",
              "dentition",
              "a finding in the mouth is recorded by tooth, not by where it is drawn"),
          new Row(
              "classification",
              "chart dentition",
              "the class follows from the missing teeth alone, never from the design"),
          new Row(
              "archform",
              "chart dentition geometry",
              "where a tooth lies depends on the mouth, not on the denture"),
          new Row(
              "design",
              "chart dentition",
              "a component names teeth and surfaces; its millimetres are derived in layout and never"
                  + " stored"),
          new Row(
              "layout",
              "design archform chart geometry dentition",
              "it places components; it neither judges nor paints them"),
          new Row(
              "mechanics",
              "layout design chart archform geometry dentition",
              "it gives numbers with their assumptions; opinions belong to rules"),
          new Row(
              "rules",
              BELOW_RULES,
              "a rule is a function of the situation, so that window, command line and sheet cannot"
                  + " disagree"),
          new Row(
              "drawing",
              "layout design archform chart geometry dentition",
              "the drawing shows what is designed, whether the rules like it or not"),
          new Row(
              "casefile",
              BELOW_CASEFILE,
              "a case is stored as it is; how it is drawn, printed or marked is derived from it"),
          new Row(
              "prescription",
              BELOW_CASEFILE + " drawing casefile",
              "the sheet is a view of a case; it knows neither window nor marks"),
          new Row(
              "marking",
              BELOW_CASEFILE + " casefile",
              "an answer is compared as a design, not as a picture or a sheet"),
          new Row(
              "proposals",
              BELOW_CASEFILE + " casefile",
              "the search ranks designs by the same rules that judge a person's"),
          new Row(
              "interchange",
              BELOW_CASEFILE + " drawing casefile prescription",
              "what other systems are told is what the prescription says, which knows of none of"
                  + " them"),
          new Row(
              "command",
              BELOW_CASEFILE + " drawing casefile prescription marking proposals interchange",
              "the command line must run where there is no display"),
          new Row(
              "desktop",
              BELOW_CASEFILE + " drawing casefile prescription marking proposals interchange",
              "the window calls the same functions as the command line, not the command line"));

  @TestFactory
  Stream<DynamicTest> each_package_imports_only_what_the_table_names() {
    return TABLE.stream()
        .map(
            row ->
                dynamicTest(
                    row.name() + " imports " + row.mayImport(),
                    () -> {
                      List<String> allowed = new ArrayList<>();
                      allowed.add(tree(row.name()));
                      row.mayImport().forEach(name -> allowed.add(tree(name)));
                      hold(
                          noClasses()
                              .that()
                              .resideInAPackage(tree(row.name()))
                              .should()
                              .dependOnClassesThat(
                                  resideInAPackage("saddlewright..")
                                      .and(not(resideInAnyPackage(allowed.toArray(String[]::new)))))
                              .because(row.because()));
                    }));
  }

  @Test
  void the_table_goes_upwards_only() {
    Set<String> below = new TreeSet<>();
    for (Row row : TABLE) {
      assertThat(below).as("below " + row.name()).containsAll(row.mayImport());
      below.add(row.name());
    }
  }

  @Test
  void the_root_imports_only_window_and_command_line() {
    hold(
        noClasses()
            .that()
            .resideInAPackage("saddlewright")
            .should()
            .dependOnClassesThat(
                resideInAPackage("saddlewright..")
                    .and(not(resideInAnyPackage("saddlewright", tree("desktop"), tree("command")))))
            .because("Main only chooses between the two"));
  }

  @Test
  void rules_and_drawing_never_meet() {
    neverMeet("rules", "drawing", "a picture must not depend on an opinion, nor an opinion on ink");
  }

  @Test
  void prescription_and_marking_never_meet() {
    neverMeet(
        "prescription", "marking", "what goes to the laboratory must not carry a student's mark");
  }

  @Test
  void desktop_and_command_never_meet() {
    neverMeet("desktop", "command", "each must work where the other cannot");
  }

  @Test
  void only_the_window_sees_javafx() {
    onlyIn(
        List.of("desktop"),
        "everything else must run, and be tested, without a display or a toolkit thread",
        TOOLKIT);
  }

  @Test
  void only_the_pdf_painter_sees_pdfbox() {
    onlyIn(
        List.of("prescription.pdf"),
        "the sheet is laid out as data, so that another painter can take it",
        PDF_LIBRARY);
  }

  @Test
  void reading_back_does_without_pdfbox() {
    hold(
        noClasses()
            .that()
            .resideInAPackage(tree("prescription.pdf.reading"))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(PDF_LIBRARY)
            .because("files of strangers are opened within bounds that the library does not keep"));
  }

  @Test
  void only_those_that_write_json_see_jackson() {
    onlyIn(
        List.of("casefile.json", "command", "interchange"),
        "the file format must be able to outlive the library and the shape of the classes",
        "com.fasterxml.jackson..");
  }

  @Test
  void only_the_codecs_users_see_the_codec() {
    hold(
        noClasses()
            .that()
            .resideOutsideOfPackages(
                tree("casefile.json"),
                tree("command"),
                tree("desktop"),
                tree("interchange"),
                tree("prescription"))
            .should()
            .dependOnClassesThat(resideInAPackage(tree("casefile.json")))
            .because("only those that open, save or embed a file need its format"));
  }

  @Test
  void only_image_files_and_printed_pages_see_awt() {
    onlyIn(
        List.of("drawing.raster", "prescription.pdf"),
        "image files, pictures of pages and the printer's queue need it; elsewhere it would drag a"
            + " second toolkit in",
        "java.awt..",
        "javax.imageio..",
        "javax.print..",
        "javax.swing..");
  }

  @Test
  void only_geometry_sees_jts() {
    onlyIn(
        List.of("geometry"),
        "unions and offsets hide behind our own millimetre types",
        "org.locationtech.jts..");
  }

  @Test
  void only_the_command_line_sees_picocli() {
    onlyIn(List.of("command"), "arguments are parsed in one place", "picocli..");
  }

  @Test
  void packages_are_free_of_cycles() {
    slices()
        .matching("saddlewright.(*)..")
        .should()
        .beFreeOfCycles()
        .because("a datum walks through the house once, in one direction")
        .allowEmptyShould(true)
        .check(MAIN_CLASSES);
  }

  @Test
  void every_package_is_in_the_table() {
    hold(
        classes()
            .should()
            .resideInAnyPackage(
                Stream.concat(
                        Stream.of("saddlewright"), TABLE.stream().map(row -> tree(row.name())))
                    .toArray(String[]::new))
            .because("a new package is a decision: give it a row and a reason"));
  }

  @Test
  void the_root_package_holds_main_alone() {
    hold(
        noClasses()
            .that(not(nameMatching("saddlewright\\.(Main(\\$.*)?|package-info)")))
            .should()
            .resideInAPackage("saddlewright")
            .because("a root package full of odds and ends has no name for what it holds"));
  }

  @Test
  void no_package_is_named_after_nothing() {
    hold(
        noClasses()
            .should()
            .resideInAnyPackage(
                Stream.of(
                        "util",
                        "utils",
                        "common",
                        "helper",
                        "helpers",
                        "manager",
                        "managers",
                        "impl")
                    .map(name -> ".." + name + "..")
                    .toArray(String[]::new))
            .because("what everything imports, nobody can find or change"));
  }

  private static void neverMeet(String one, String other, String because) {
    for (List<String> way : List.of(List.of(one, other), List.of(other, one))) {
      hold(
          noClasses()
              .that()
              .resideInAPackage(tree(way.get(0)))
              .should()
              .dependOnClassesThat(resideInAPackage(tree(way.get(1))))
              .because(because));
    }
  }

  private static void onlyIn(List<String> packages, String because, String... libraries) {
    hold(
        noClasses()
            .that()
            .resideOutsideOfPackages(
                packages.stream().map(ArchitectureTest::tree).toArray(String[]::new))
            .should()
            .dependOnClassesThat(resideInAnyPackage(libraries))
            .because(because + "; allowed in " + packages.stream().collect(joining(", "))));
  }

  /** Checks a rule; one for a package that is still empty passes. */
  private static void hold(ArchRule rule) {
    rule.allowEmptyShould(true).check(MAIN_CLASSES);
  }

  private static String tree(String name) {
    return "saddlewright." + name + "..";
  }
}
