package saddlewright.prescription.pdf.print;

/**
 * What is to be printed of a document.
 *
 * @param name what the queue of the printer calls it
 * @param first first page, from 0
 * @param last last page, from 0
 * @param copies how often
 * @param bothSides whether sheets are turned over, on printers that can
 */
public record PrintOrder(String name, int first, int last, int copies, boolean bothSides) {
  public PrintOrder {
    if (first < 0 || last < first || copies < 1) {
      throw new IllegalArgumentException(
          "pages " + first + " to " + last + ", " + copies + " copies");
    }
  }
}
