package saddlewright.command;

import java.io.PrintWriter;
import java.io.StringWriter;

/** One run of the command line: exit code and what it printed. */
record Run(int code, String out, String err) {
  static Run of(Object... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] args = java.util.Arrays.stream(words).map(Object::toString).toArray(String[]::new);
    int code =
        SaddlewrightCommand.line()
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute(args);
    return new Run(code, out.toString(), err.toString());
  }
}
