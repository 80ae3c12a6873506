package saddlewright.prescription.pdf.print;

import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.print.PrintException;
import javax.print.SimpleDoc;
import javax.print.attribute.Attribute;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.Copies;
import javax.print.attribute.standard.JobName;
import javax.print.attribute.standard.SheetCollate;
import javax.print.attribute.standard.Sides;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/**
 * Sends pages to a printer at true scale: each at the place on the sheet that it has in the
 * document, whatever margins the printer has. What a printer then cannot print is told beforehand
 * by {@link PrintFit}; nothing is ever made smaller.
 */
public final class PagePrinter {
  private PagePrinter() {}

  /** That a printer did not take the pages, in a sentence to show. */
  public static final class NotPrinted extends Exception {
    private static final long serialVersionUID = 1;

    NotPrinted(String sentence, Throwable cause) {
      super(sentence, cause);
    }
  }

  /**
   * Prints; returns when the printer's queue has the pages.
   *
   * @param pdf the document
   * @throws NotPrinted when the queue does not take them
   */
  public static void print(byte[] pdf, Printer printer, PrintOrder order) throws NotPrinted {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFPageable pages = new PDFPageable(document);
      List<PageSize> sizes = sizes(pdf);
      int from = order.first();
      while (from <= order.last()) {
        // A job is told one paper; a page of another size goes in a job of its own.
        int to = from;
        while (to < order.last() && sizes.get(to + 1).isSamePaperAs(sizes.get(from))) {
          to++;
        }
        Run run = new Run(pages, from, to - from + 1);
        PrintRequestAttributeSet wishes = attributes(printer, sizes.get(from), order);
        int jobs = wishes.containsKey(Copies.class) ? 1 : order.copies();
        for (int i = 0; i < jobs; i++) {
          printer.service().createPrintJob().print(new SimpleDoc(run, Printer.PAGES, null), wishes);
        }
        from = to + 1;
      }
    } catch (PrintException e) {
      throw new NotPrinted(
          printer.name()
              + " did not take the pages"
              + reason(e)
              + ". See that it is switched on and connected, or save the PDF and print it"
              + " elsewhere.",
          e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<PageSize> sizes(byte[] pdf) {
    try (PageImages images = PageImages.of(pdf)) {
      return images.sizes();
    }
  }

  private static String reason(PrintException e) {
    return e.getMessage() == null || e.getMessage().isBlank()
        ? ""
        : " (" + e.getMessage().strip().toLowerCase(Locale.ROOT) + ")";
  }

  private static PrintRequestAttributeSet attributes(
      Printer printer, PageSize paper, PrintOrder order) {
    PrintRequestAttributeSet out = new HashPrintRequestAttributeSet();
    printer.media(paper).ifPresent(out::add);
    add(out, printer, new JobName(order.name(), Locale.UK));
    add(out, printer, order.bothSides() ? Sides.TWO_SIDED_LONG_EDGE : Sides.ONE_SIDED);
    if (order.copies() > 1) {
      add(out, printer, new Copies(order.copies()));
      add(out, printer, SheetCollate.COLLATED);
    }
    return out;
  }

  /** Some drivers refuse a whole job for one wish that they do not know. */
  private static void add(PrintRequestAttributeSet out, Printer printer, Attribute wish) {
    if (printer.service().isAttributeCategorySupported(wish.getCategory())
        && Optional.of(wish)
            .filter(w -> printer.service().isAttributeValueSupported(w, Printer.PAGES, null))
            .isPresent()) {
      out.add(wish);
    }
  }

  /** Some pages of a document that follow each other. */
  private record Run(PDFPageable all, int first, int count) implements Pageable {
    @Override
    public int getNumberOfPages() {
      return count;
    }

    @Override
    public PageFormat getPageFormat(int page) {
      return all.getPageFormat(first + page);
    }

    @Override
    public Printable getPrintable(int page) {
      Printable printable = all.getPrintable(first + page);
      return (g, format, asked) -> printable.print(g, format, first + asked);
    }
  }
}
