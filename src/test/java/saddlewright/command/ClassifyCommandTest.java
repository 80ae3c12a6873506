package saddlewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClassifyCommandTest {
  private static final String HEADER = "arch,missing,not_replaced,abutments,closed\n";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder;

  private int run(String... args) {
    return SaddlewrightCommand.line()
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err, true))
        .execute(args);
  }

  private int classifyTable(String text) throws IOException {
    Path table = folder.resolve("arches.csv");
    Files.writeString(table, text);
    return run("classify", "--csv", table.toString());
  }

  /** The fault as printed, with the folder of this test run left out. */
  private String fault() {
    return err.toString().replace(folder + "/", "").strip();
  }

  @Test
  void prints_the_class_and_why() {
    int code =
        run(
            "classify",
            "--arch",
            "upper",
            "--missing",
            "15,16,17,18,27,28,12",
            "--not-replaced",
            "17,18,27,28");
    assertThat(err.toString()).isEmpty();
    assertThat(code).isZero();
    assertThat(out.toString())
        .isEqualTo(
            """
            upper arch: Kennedy Class II modification 1
            class: II
            modifications: 1
            areas:
              16–15 free-end, replacing 16, 15
              12 bounded, replacing 12
            reasoning:
              18, 17, 27 and 28 are missing and not replaced, so they are not considered \
            (Applegate's rules 2 and 4).
              16–15 has no tooth behind it, so it is a free-end area.
              12 lies between 13 and 11, so it is a bounded area.
              A free-end area on one side only, the right, makes Class II.
              The free-end area is the most posterior and decides (Applegate's rule 5).
              The other area, 12, is 1 modification: areas count, not the teeth in them \
            (Applegate's rules 6 and 7).
            """);
  }

  @Test
  void takes_every_option_at_once() {
    int code =
        run(
            "classify",
            "--arch",
            "upper",
            "--missing",
            "15,16",
            "--not-replaced",
            "18,28",
            "--abutment",
            "28",
            "--closed",
            "25",
            "--extract",
            "14");
    assertThat(code).isZero();
    assertThat(out.toString())
        .startsWith("upper arch: Kennedy Class III\nclass: III\nmodifications: 0\n")
        .contains("  16–14 bounded, replacing 16, 15, 14\n")
        .contains("14 is to be extracted and counts as lost")
        .contains("The space of 25 has closed");
    assertThat(fault())
        .isEqualTo(
            "Note: --not-replaced names 18, 28, not named as missing and so taken as standing;"
                + " this had no effect.");
  }

  @Test
  void an_arch_with_nothing_to_replace() {
    assertThat(run("classify", "--arch", "lower")).isZero();
    assertThat(out.toString())
        .isEqualTo(
            """
            lower arch: no class: nothing to replace
            class: none
            modifications: 0
            areas: none
            reasoning:
              No tooth is to be replaced, so there is no Kennedy class.
            """);
  }

  @Test
  void says_when_an_abutment_is_lost() {
    assertThat(run("classify", "--arch=lower", "--missing=37,38", "--abutment=38")).isZero();
    assertThat(out.toString()).startsWith("lower arch: Kennedy Class II\n");
    assertThat(fault()).isEqualTo("Note: --abutment names 38, named as lost; this had no effect.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--arch upper --missing 36 | --missing: 36 is not a tooth of the upper arch; use 11–18 and"
            + " 21–28, or name the other arch.",
        "--arch lower --missing 36,99 | --missing: \"99\" is not an FDI tooth number; use 31–38 and"
            + " 41–48.",
        "--arch lower --closed 3x | --closed: \"3x\" is not an FDI tooth number; use 31–38 and"
            + " 41–48.",
        "--arch lower --extract -3 | --extract: \"-3\" is not an FDI tooth number; use 31–38 and"
            + " 41–48.",
        "--arch middle --missing 11 | --arch: \"middle\" is no arch; use upper or lower.",
        "--missing 11 | Give --arch upper or --arch lower with --missing and the missing teeth, or"
            + " --csv with a table of arches.",
        "--csv - --missing 11 | --csv reads its arches from the table; give no other option beside"
            + " it.",
        "--csv no-such-file.csv | no-such-file.csv: there is no such file; check its name and"
            + " folder.",
        "--csv src | src: is a folder; name a CSV file in it.",
        "--what | Unknown option: '--what'. See saddlewright classify --help."
      })
  void refuses_wrong_usage_in_a_sentence(String args, String sentence) {
    assertThat(run(("classify " + args).split(" "))).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(fault()).isEqualTo(sentence);
  }

  @Test
  void answers_a_table_row_by_row() throws IOException {
    int code =
        classifyTable(
            HEADER
                + "lower,36;37;38;46;47;48,,,\n"
                + "upper,15;16;17;18;27;28,17;18;27;28,,\n"
                + "lower,36;37,,,\n"
                + "lower,36;37,,38,\n"
                + "upper,11;21,,,\n"
                + "upper,12;11;21;22;15,,,\n"
                + "lower,46,,,46\n"
                + "lower,,,,46\n"
                + "upper,18;17;16;15;14;13;12;11;21;22;23;24;25;26;27;28,,,\n"
                + "upper,,,,\n");
    assertThat(fault()).isEmpty();
    assertThat(code).isZero();
    assertThat(out.toString())
        .isEqualTo(
            """
            arch,missing,not_replaced,abutments,closed,class,modifications
            lower,36;37;38;46;47;48,,,,I,0
            upper,15;16;17;18;27;28,17;18;27;28,,,II,0
            lower,36;37,,,,II,0
            lower,36;37,,38,,III,0
            upper,11;21,,,,IV,0
            upper,12;11;21;22;15,,,,III,1
            lower,46,,,46,none,0
            lower,,,,46,none,0
            upper,18;17;16;15;14;13;12;11;21;22;23;24;25;26;27;28,,,,edentulous,0
            upper,,,,,none,0
            """);
  }

  @Test
  void finds_columns_by_name_and_passes_others_on() throws IOException {
    int code =
        classifyTable(
            "\uFEFFid,closed,Arch,missing,abutments,not_replaced\r\n"
                + "\"one, \"\"two\"\"\",,UPPER,\"15;16\",,\r\n"
                + "\r\n"
                + "x,,lower, 36 ; 37 ,,\r\n");
    assertThat(code).isZero();
    assertThat(out.toString())
        .isEqualTo(
            """
            id,closed,Arch,missing,abutments,not_replaced,class,modifications
            "one, ""two\""",,UPPER,15;16,,,III,0
            x,,lower, 36 ; 37 ,,,II,0
            """);
  }

  @Test
  void reads_standard_input() {
    InputStream before = System.in;
    System.setIn(
        new ByteArrayInputStream((HEADER + "lower,31;41,,,\n").getBytes(StandardCharsets.UTF_8)));
    try {
      assertThat(run("classify", "--csv", "-")).isZero();
    } finally {
      System.setIn(before);
    }
    assertThat(out.toString()).endsWith("\nlower,31;41,,,,IV,0\n");
  }

  @Test
  void notes_rows_that_contradict_themselves_once() throws IOException {
    assertThat(classifyTable(HEADER + "lower,36,,,\nlower,36,37,,\nlower,38,,38,\n")).isZero();
    assertThat(out.toString()).endsWith("lower,36,37,,,III,0\nlower,38,,38,,II,0\n");
    assertThat(fault())
        .isEqualTo(
            "Note: arches.csv: 2 rows, the first in line 3, not_replaced names a standing tooth or"
                + " abutments a lost one; that had no effect.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lower,36;x9,,, | arches.csv, line 2, column missing: \"x9\" is not an FDI tooth number; use"
            + " 31–38 and 41–48.",
        "lower,36,,,16 | arches.csv, line 2, column closed: 16 is not a tooth of the lower arch; use"
            + " 31–38 and 41–48, or name the other arch.",
        "both,36,,, | arches.csv, line 2, column arch: \"both\" is no arch; use upper or lower.",
        "lower,36,37,,, | arches.csv, line 2: 6 fields where the first line has 5; separate teeth by"
            + " ; and fields by commas.",
        "lower,\"36 | arches.csv, near line 2: not a readable CSV row; check its quotation marks."
      })
  void refuses_a_bad_row_by_line_and_column(String row, String sentence) throws IOException {
    assertThat(classifyTable(HEADER + row + "\n")).isEqualTo(2);
    assertThat(fault()).isEqualTo(sentence);
  }

  @Test
  void keeps_the_answers_before_a_bad_row() throws IOException {
    assertThat(classifyTable(HEADER + "lower,36,,,\nlower,99,,,\n")).isEqualTo(2);
    assertThat(out.toString()).endsWith("\nlower,36,,,,III,0\n");
  }

  @Test
  void refuses_a_table_without_its_columns() throws IOException {
    assertThat(classifyTable("arch,missing\nlower,36\n")).isEqualTo(2);
    assertThat(fault())
        .isEqualTo(
            "arches.csv, line 1: no column not_replaced; the first line must name"
                + " arch,missing,not_replaced,abutments,closed.");
  }

  @Test
  void refuses_an_empty_table() throws IOException {
    assertThat(classifyTable("")).isEqualTo(2);
    assertThat(fault())
        .isEqualTo(
            "arches.csv is empty; its first line must name the columns"
                + " arch,missing,not_replaced,abutments,closed.");
  }
}
