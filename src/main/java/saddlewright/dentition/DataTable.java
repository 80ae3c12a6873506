package saddlewright.dentition;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** A published table shipped with the program, one map from column to text a row. */
public final class DataTable {
  private DataTable() {}

  /** The rows of a table such as "tooth-dimensions"; every table keeps its source column. */
  public static List<Map<String, String>> rows(String name) {
    String resource = "/saddlewright/data/" + name + ".csv";
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream in = DataTable.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalArgumentException("no data table " + resource);
      }
      return format.parse(new InputStreamReader(in, StandardCharsets.UTF_8)).stream()
          .map(CSVRecord::toMap)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
