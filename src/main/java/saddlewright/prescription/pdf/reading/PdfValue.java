package saddlewright.prescription.pdf.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A value of the PDF syntax (ISO 32000-1, 7.3), as far as the case inside a document needs it. */
sealed interface PdfValue {
  /** A name without its slash, its escapes undone. */
  record Name(String text) implements PdfValue {}

  /** A string; its bytes as Latin letters where it is not said to be UTF-16. */
  record Text(String text) implements PdfValue {}

  record Whole(long value) implements PdfValue {}

  record Items(List<PdfValue> values) implements PdfValue {}

  record Reference(int number) implements PdfValue {}

  /** What is neither of these: fractions, truth values, null. */
  record Other() implements PdfValue {}

  /**
   * A dictionary, with the packed data that follow it when it is a stream.
   *
   * @param from first byte of the data in the file
   * @param to one past the last; equal to from when there are none
   */
  record Entries(Map<String, PdfValue> values, int from, int to) implements PdfValue {
    Optional<PdfValue> get(String name) {
      return Optional.ofNullable(values.get(name));
    }

    boolean isOfType(String type) {
      return get("Type").filter(new Name(type)::equals).isPresent();
    }
  }
}
