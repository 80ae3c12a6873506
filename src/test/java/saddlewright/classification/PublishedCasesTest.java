package saddlewright.classification;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.dentition.Arch;

/**
 * Arches whose class was published. Each row of the table names its source; a row where the source
 * gives no third molars stands as the source lists it.
 */
class PublishedCasesTest {

  record Published(String id, Arch arch, int[] missing, String expected, String source) {
    @Override
    public String toString() {
      return id + ", " + source;
    }
  }

  static List<Published> cases() throws Exception {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in =
        new InputStreamReader(
            PublishedCasesTest.class.getResourceAsStream("classified-cases.csv"),
            StandardCharsets.UTF_8)) {
      return format.parse(in).stream().map(PublishedCasesTest::read).toList();
    }
  }

  private static Published read(CSVRecord row) {
    return new Published(
        row.get("id"),
        row.get("arch").equals("upper") ? Arch.UPPER : Arch.LOWER,
        Arrays.stream(row.get("missing_fdi").split(";")).mapToInt(Integer::parseInt).toArray(),
        row.get("kennedy_class") + " " + row.get("modifications"),
        row.get("source"));
  }

  @Test
  void there_are_seven() throws Exception {
    assertThat(cases()).hasSize(7);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void has_its_published_class(Published published) {
    Mouths mouth = published.arch() == Arch.UPPER ? Mouths.upper() : Mouths.lower();
    Classification found = mouth.missing(published.missing()).classified();
    assertThat(found.kennedy().word() + " " + found.modifications())
        .isEqualTo(published.expected());
  }
}
