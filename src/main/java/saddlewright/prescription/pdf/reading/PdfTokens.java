package saddlewright.prescription.pdf.reading;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import saddlewright.prescription.pdf.reading.Allowance.Spent;

/** Reads values of the PDF syntax one after the other, within an allowance. */
final class PdfTokens {
  /** Deeper than any lawful document nests; a guard of the stack. */
  private static final int DEEPEST = 60;

  /** The bytes are no value of the syntax. */
  static final class Broken extends Exception {
    private static final long serialVersionUID = 1L;

    Broken() {
      super("no value of the PDF syntax", null, false, false);
    }
  }

  private final byte[] bytes;
  private final Allowance allowance;
  private int at;

  PdfTokens(byte[] bytes, int from, Allowance allowance) {
    this.bytes = bytes;
    this.at = from;
    this.allowance = allowance;
  }

  /** Where the next value begins, or the white space before it. */
  int at() {
    return at;
  }

  /** The next value. */
  PdfValue value() throws Broken, Spent {
    int from = at;
    try {
      return value(0);
    } finally {
      allowance.steps(at - from + 1L);
    }
  }

  private PdfValue value(int depth) throws Broken, Spent {
    allowance.value();
    if (depth > DEEPEST) {
      throw new Broken();
    }
    skipSpace();
    int c = peek(0);
    if (c == '/') {
      return new PdfValue.Name(name());
    } else if (c == '(') {
      return new PdfValue.Text(string());
    } else if (c == '<' && peek(1) == '<') {
      return entries(depth);
    } else if (c == '<') {
      return new PdfValue.Text(hexadecimal());
    } else if (c == '[') {
      return items(depth);
    }
    return word();
  }

  private PdfValue items(int depth) throws Broken, Spent {
    at++;
    List<PdfValue> out = new ArrayList<>();
    while (true) {
      skipSpace();
      if (peek(0) == ']') {
        at++;
        return new PdfValue.Items(out);
      }
      out.add(value(depth + 1));
    }
  }

  private PdfValue entries(int depth) throws Broken, Spent {
    at += 2;
    Map<String, PdfValue> out = new HashMap<>();
    while (true) {
      skipSpace();
      if (peek(0) == '>' && peek(1) == '>') {
        at += 2;
        return new PdfValue.Entries(out, at, at);
      }
      if (peek(0) != '/') {
        throw new Broken();
      }
      String name = name();
      out.put(name, value(depth + 1));
    }
  }

  /** A number, a reference, or a word such as true and null. */
  private PdfValue word() throws Broken {
    String word = plain();
    if (word.isEmpty()) {
      throw new Broken();
    }
    if (!isWhole(word)) {
      return new PdfValue.Other();
    }
    int after = at;
    skipSpace();
    if (isWhole(plain())) {
      skipSpace();
      if (plain().equals("R")) {
        return new PdfValue.Reference((int) Math.min(Integer.MAX_VALUE, number(word)));
      }
    }
    at = after;
    return new PdfValue.Whole(number(word));
  }

  static boolean isWhole(String word) {
    return !word.isEmpty()
        && word.length() <= 12
        && word.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  private static long number(String word) {
    return Long.parseLong(word);
  }

  /** The next run of regular characters; empty when there is none. */
  String plain() {
    int from = at;
    while (at < bytes.length && isRegular(bytes[at])) {
      at++;
    }
    return new String(bytes, from, at - from, StandardCharsets.ISO_8859_1);
  }

  private String name() {
    at++;
    String raw = plain();
    if (raw.indexOf('#') < 0) {
      return raw;
    }
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < raw.length(); i++) {
      int high = i + 2 < raw.length() ? Character.digit(raw.charAt(i + 1), 16) : -1;
      int low = i + 2 < raw.length() ? Character.digit(raw.charAt(i + 2), 16) : -1;
      if (raw.charAt(i) == '#' && high >= 0 && low >= 0) {
        out.append((char) (16 * high + low));
        i += 2;
      } else {
        out.append(raw.charAt(i));
      }
    }
    return out.toString();
  }

  private String string() throws Broken {
    at++;
    StringBuilder out = new StringBuilder();
    int open = 1;
    while (true) {
      int c = next();
      if (c == '\\') {
        escaped(out);
        continue;
      }
      open += c == '(' ? 1 : c == ')' ? -1 : 0;
      if (open == 0) {
        return text(out);
      }
      out.append((char) c);
    }
  }

  /** What follows a backslash: three octal digits at most, a letter, or the sign itself. */
  private void escaped(StringBuilder out) throws Broken {
    int c = next();
    if (c < '0' || c > '7') {
      int control = "nrtbf".indexOf(c);
      out.append(control >= 0 ? "\n\r\t\b\f".charAt(control) : (char) c);
      return;
    }
    int value = c - '0';
    for (int i = 0; i < 2 && peek(0) >= '0' && peek(0) <= '7'; i++) {
      value = 8 * value + next() - '0';
    }
    out.append((char) (value & 255));
  }

  private String hexadecimal() throws Broken {
    at++;
    StringBuilder digits = new StringBuilder();
    for (int c = next(); c != '>'; c = next()) {
      if (Character.digit(c, 16) >= 0) {
        digits.append((char) c);
      }
    }
    if (digits.length() % 2 == 1) {
      digits.append('0');
    }
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < digits.length(); i += 2) {
      out.append((char) Integer.parseInt(digits.substring(i, i + 2), 16));
    }
    return text(out);
  }

  /** UTF-16 where its mark says so, single bytes otherwise. */
  private static String text(CharSequence bytes) {
    byte[] raw = bytes.toString().getBytes(StandardCharsets.ISO_8859_1);
    boolean wide = raw.length >= 2 && (raw[0] & 255) == 0xFE && (raw[1] & 255) == 0xFF;
    return wide ? new String(raw, 2, raw.length - 2, StandardCharsets.UTF_16BE) : bytes.toString();
  }

  void skipSpace() {
    while (at < bytes.length) {
      if (bytes[at] == '%') {
        while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
          at++;
        }
      } else if (isSpace(bytes[at])) {
        at++;
      } else {
        return;
      }
    }
  }

  private int next() throws Broken {
    if (at >= bytes.length) {
      throw new Broken();
    }
    return bytes[at++] & 255;
  }

  private int peek(int ahead) {
    return at + ahead < bytes.length ? bytes[at + ahead] & 255 : -1;
  }

  static boolean isSpace(byte b) {
    return b == ' ' || b == '\n' || b == '\r' || b == '\t' || b == '\f' || b == 0;
  }

  private static boolean isRegular(byte b) {
    return !isSpace(b) && "()<>[]{}/%".indexOf(b) < 0;
  }
}
