package saddlewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import saddlewright.classification.ArchPattern;
import saddlewright.classification.KennedyVerdict;
import saddlewright.dentition.Arch;

/**
 * A table with one arch a row, read and answered row by row: its own columns, then the class and
 * the number of modifications. The columns are found by name; others are passed on.
 */
final class ClassifyTable {
  private static final int ALL = 0xFFFF;
  private static final int CHUNK = 1 << 16;
  private static final List<String> COLUMNS =
      List.of("arch", "missing", "not_replaced", "abutments", "closed");

  private final String source;
  private final PrintWriter out;
  private final StringBuilder text = new StringBuilder(CHUNK + 1024);
  private int[] columns = {};
  private int width;
  private long oddRows;
  private long firstOddLine;

  /**
   * @param source name of the table for error sentences
   * @param out takes the answer
   */
  ClassifyTable(String source, PrintWriter out) {
    this.source = source;
    this.out = out;
  }

  /**
   * Reads the whole table and writes the answer; what was answered before a fault stays written.
   *
   * @return a note on rows that name a tooth as not replaced though it stands, or as an abutment
   *     though it does not
   * @throws TableFault when a row or the header cannot be understood
   * @throws IOException when the table cannot be read
   */
  Optional<String> answer(Reader in) throws IOException, TableFault {
    CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
    try (CSVParser rows = CSVParser.builder().setReader(in).setFormat(format).get()) {
      Iterator<CSVRecord> iterator = rows.iterator();
      if (!next(iterator, rows)) {
        throw new TableFault(
            source + " is empty; its first line must name the columns " + wanted());
      }
      readHeader(iterator.next());
      while (next(iterator, rows)) {
        answerRow(iterator.next(), rows.getCurrentLineNumber());
        if (text.length() >= CHUNK) {
          flush();
        }
      }
    } finally {
      flush();
    }
    return note();
  }

  private boolean next(Iterator<CSVRecord> rows, CSVParser parser) throws IOException, TableFault {
    try {
      return rows.hasNext();
    } catch (UncheckedIOException e) {
      if (e.getCause() instanceof CSVException) {
        throw new TableFault(
            source
                + ", near line "
                + Math.max(1, parser.getCurrentLineNumber())
                + ": not a readable CSV row; check its quotation marks");
      }
      throw e.getCause();
    }
  }

  private void readHeader(CSVRecord header) throws TableFault {
    List<String> names = new ArrayList<>();
    for (String name : header) {
      names.add(name.replace("\uFEFF", "").strip().toLowerCase(Locale.ROOT));
    }
    columns = new int[COLUMNS.size()];
    for (int i = 0; i < columns.length; i++) {
      String name = COLUMNS.get(i);
      columns[i] = names.indexOf(name);
      if (columns[i] < 0) {
        throw new TableFault(
            source + ", line 1: no column " + name + "; the first line must name " + wanted());
      }
      if (names.lastIndexOf(name) != columns[i]) {
        throw new TableFault(
            source + ", line 1: the column " + name + " stands there twice; remove one");
      }
    }
    width = names.size();
    for (int i = 0; i < width; i++) {
      append(i == 0 ? header.get(i).replace("\uFEFF", "") : header.get(i));
      text.append(',');
    }
    text.append("class,modifications\n");
  }

  private void answerRow(CSVRecord row, long line) throws TableFault {
    if (row.size() != width) {
      throw new TableFault(
          source
              + ", line "
              + line
              + ": "
              + row.size()
              + " fields where the first line has "
              + width
              + "; separate teeth by ; and fields by commas");
    }
    int column = 0;
    ArchPattern pattern;
    try {
      Arch arch = ToothList.arch(row.get(columns[0]));
      int missing = ToothList.places(row.get(columns[column = 1]), arch);
      int notReplaced = ToothList.places(row.get(columns[column = 2]), arch);
      int abutments = ToothList.places(row.get(columns[column = 3]), arch);
      int closed = ToothList.places(row.get(columns[column = 4]), arch);
      int lost = missing | closed;
      if ((notReplaced & ~lost) != 0 || (abutments & lost) != 0) {
        firstOddLine = oddRows++ == 0 ? line : firstOddLine;
      }
      pattern = new ArchPattern(ALL & ~lost, lost & ~notReplaced, closed, abutments);
    } catch (IllegalArgumentException e) {
      throw new TableFault(
          source + ", line " + line + ", column " + COLUMNS.get(column) + ": " + e.getMessage());
    }
    KennedyVerdict verdict = pattern.verdict();
    for (int i = 0; i < width; i++) {
      append(row.get(i));
      text.append(',');
    }
    text.append(verdict.kennedy().word()).append(',').append(verdict.modifications()).append('\n');
  }

  private void append(String field) {
    boolean plain = true;
    for (int i = 0; plain && i < field.length(); i++) {
      char c = field.charAt(i);
      plain = c != ',' && c != '"' && c != '\n' && c != '\r';
    }
    if (plain) {
      text.append(field);
    } else {
      text.append('"').append(field.replace("\"", "\"\"")).append('"');
    }
  }

  private void flush() throws IOException {
    out.append(text);
    text.setLength(0);
    if (out.checkError()) {
      throw new IOException("standard output is closed or full");
    }
  }

  private Optional<String> note() {
    return oddRows == 0
        ? Optional.empty()
        : Optional.of(
            "Note: "
                + source
                + (oddRows == 1 ? ", line " : ": " + oddRows + " rows, the first in line ")
                + firstOddLine
                + ", not_replaced names a standing tooth or abutments a lost one; "
                + "that had no effect.");
  }

  private static String wanted() {
    return String.join(",", COLUMNS);
  }

  /** A table that cannot be understood; its message is a sentence without a full stop. */
  static final class TableFault extends Exception {
    private static final long serialVersionUID = 1;

    TableFault(String sentence) {
      super(sentence);
    }
  }
}
