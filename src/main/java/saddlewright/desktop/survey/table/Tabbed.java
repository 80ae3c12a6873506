package saddlewright.desktop.survey.table;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Rows of cells as spreadsheets pass them on: a tab between cells, a line for each row, and quotes
 * round a cell that holds either.
 */
final class Tabbed {
  private Tabbed() {}

  static String write(List<List<String>> rows) {
    return rows.stream()
        .map(r -> r.stream().map(Tabbed::quoted).collect(Collectors.joining("\t")))
        .collect(Collectors.joining("\n"));
  }

  private static String quoted(String cell) {
    return cell.matches("(?s).*[\t\n\"].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }

  /** The rows of a text; a line break at its very end starts no further row. */
  static List<List<String>> read(String text) {
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    String plain = text.replace("\r\n", "\n").replace('\r', '\n');
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (quoted) {
        if (c != '"') {
          cell.append(c);
        } else if (i + 1 < plain.length() && plain.charAt(i + 1) == '"') {
          cell.append(c);
          i++;
        } else {
          quoted = false;
        }
      } else if (c == '"' && cell.isEmpty()) {
        quoted = true;
      } else if (c == '\t' || c == '\n') {
        row.add(cell.toString());
        cell.setLength(0);
        if (c == '\n') {
          rows.add(row);
          row = new ArrayList<>();
        }
      } else {
        cell.append(c);
      }
    }
    if (!row.isEmpty() || !cell.isEmpty()) {
      row.add(cell.toString());
      rows.add(row);
    }
    return rows;
  }
}
