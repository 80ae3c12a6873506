package saddlewright.casefile.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import saddlewright.casefile.CaseFileException.Kind;

/** JSON as text: strict when read, always in the same layout when written. */
final class JsonText {
  /** Levels of brackets within brackets; a case needs seven. */
  static final int MAX_DEPTH = 64;

  private static final ObjectMapper MAPPER =
      JsonMapper.builder(
              new com.fasterxml.jackson.core.JsonFactoryBuilder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder().maxNestingDepth(MAX_DEPTH).build())
                  .build())
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          // NaN is let through here only so that the refusal can name the place.
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          // Numbers that this version does not understand keep every digit.
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .disable(JsonWriteFeature.ESCAPE_FORWARD_SLASHES)
          .nodeFactory(JsonNodeFactory.withExactBigDecimals(true))
          .build();

  private static final ObjectWriter PRETTY =
      MAPPER.writer(
          new DefaultPrettyPrinter(
                  Separators.createDefaultInstance()
                      .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                      .withObjectEmptySeparator("")
                      .withArrayEmptySeparator(""))
              .withObjectIndenter(new DefaultIndenter("  ", "\n"))
              .withArrayIndenter(new DefaultIndenter("  ", "\n")));

  private JsonText() {}

  /** The tree of a file's bytes, which must be one JSON value in UTF-8. */
  static JsonNode parse(byte[] bytes) {
    String text = decode(bytes);
    if (text.isBlank()) {
      throw Refusal.ofFile(
          Kind.NOT_JSON, "is empty. Open another file, or an earlier copy of this one.");
    }
    try {
      return MAPPER.readTree(text);
    } catch (StreamConstraintsException e) {
      throw tooMuch(e);
    } catch (JsonProcessingException e) {
      throw notJson(e);
    } catch (NumberFormatException e) {
      // Lawful JSON has no bound on exponents; decimal numbers of the library have.
      throw Refusal.ofFile(
          Kind.TOO_LARGE,
          "holds a number with an exponent far beyond any size in a case. Correct it, or open an"
              + " earlier copy.");
    }
  }

  /** The tree of a piece of JSON that was kept from a file; it was JSON then. */
  static JsonNode parseKept(String json) {
    try {
      return MAPPER.readTree(json);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("what was kept of the file is not JSON: " + json, e);
    }
  }

  /** A node as text on one line. */
  static String compact(JsonNode node) {
    try {
      return MAPPER.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }

  /** A node as text in the layout of the case file: two spaces, one member a line. */
  static String pretty(JsonNode node) {
    try {
      return PRETTY.writeValueAsString(node) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private static String decode(byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    if (bytes.length >= 3
        && bytes[0] == (byte) 0xEF
        && bytes[1] == (byte) 0xBB
        && bytes[2] == (byte) 0xBF) {
      in.position(3); // the byte order mark that some editors put in front
    }
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CoderResult result = decoder.decode(in, out, true);
    if (result.isError()) {
      int line = 1;
      for (int i = 0; i < in.position(); i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      throw Refusal.ofFile(
          Kind.NOT_JSON,
          "is not UTF-8 text: line "
              + line
              + " holds a byte that cannot be read. Save it as UTF-8 and open it again.");
    }
    return out.flip().toString();
  }

  private static Refusal tooMuch(StreamConstraintsException e) {
    String what =
        e.getOriginalMessage().contains("nesting depth")
            ? "is nested more than " + MAX_DEPTH + " levels deep, which no case is"
            : "holds a number, name or text longer than any in a case" + at(e.getLocation());
    return Refusal.ofFile(Kind.TOO_LARGE, what + ". Check that this is the right file.");
  }

  private static Refusal notJson(JsonProcessingException e) {
    String said = e.getOriginalMessage();
    if (said.startsWith("Duplicate field")) {
      String name = said.replaceFirst("Duplicate field '(.*)'", "$1");
      return Refusal.ofFile(
          Kind.NOT_JSON,
          "names \""
              + name
              + "\" twice in one place"
              + at(e.getLocation())
              + ". Remove the one that is wrong and open it again.");
    }
    return Refusal.ofFile(
        Kind.NOT_JSON,
        "is not JSON"
            + at(e.getLocation())
            + ". Look there for a missing comma, quote or bracket, or open an earlier copy.");
  }

  private static String at(JsonLocation location) {
    return location == null || location.getLineNr() < 1
        ? ""
        : ": line " + location.getLineNr() + ", column " + location.getColumnNr();
  }
}
