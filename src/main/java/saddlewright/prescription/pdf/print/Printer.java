package saddlewright.prescription.pdf.print;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.print.DocFlavor;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.Media;
import javax.print.attribute.standard.MediaPrintableArea;
import javax.print.attribute.standard.MediaSize;
import javax.print.attribute.standard.MediaSizeName;
import javax.print.attribute.standard.Sides;

/** A printer that is set up on this computer, as far as it tells of itself. */
public final class Printer {
  static final DocFlavor PAGES = DocFlavor.SERVICE_FORMATTED.PAGEABLE;

  private final PrintService service;

  private Printer(PrintService service) {
    this.service = service;
  }

  /** A printer as the system knows it. */
  public static Printer of(PrintService service) {
    return new Printer(service);
  }

  /** The printers of this computer, the usual one first; none where none is set up. */
  public static List<Printer> installed() {
    List<PrintService> all =
        new ArrayList<>(Arrays.asList(PrintServiceLookup.lookupPrintServices(PAGES, null)));
    PrintService usual = PrintServiceLookup.lookupDefaultPrintService();
    if (usual != null && all.remove(usual)) {
      all.add(0, usual);
    }
    return all.stream().map(Printer::of).toList();
  }

  public String name() {
    return service.getName();
  }

  /** Whether it can turn sheets over. */
  public boolean printsBothSides() {
    return service.isAttributeValueSupported(Sides.TWO_SIDED_LONG_EDGE, PAGES, null);
  }

  /** Whether it says that it takes paper of a size. */
  boolean takes(PageSize paper) {
    return media(paper).isPresent();
  }

  /** The printer's name of a paper. */
  Optional<MediaSizeName> media(PageSize paper) {
    Object all = service.getSupportedAttributeValues(Media.class, PAGES, null);
    if (!(all instanceof Media[] media)) {
      return Optional.empty();
    }
    return Arrays.stream(media)
        .filter(MediaSizeName.class::isInstance)
        .map(MediaSizeName.class::cast)
        .filter(m -> size(m).filter(paper::isSamePaperAs).isPresent())
        .findFirst();
  }

  private static Optional<PageSize> size(MediaSizeName name) {
    return Optional.ofNullable(MediaSize.getMediaSizeForName(name))
        .map(s -> new PageSize(s.getX(MediaSize.MM), s.getY(MediaSize.MM)));
  }

  /**
   * How far from the edges of a paper, held as the page is, this printer leaves it blank; empty
   * where it does not say.
   */
  Optional<Margins> unprinted(PageSize paper) {
    Optional<MediaSizeName> name = media(paper);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    PrintRequestAttributeSet on = new HashPrintRequestAttributeSet(name.get());
    Object areas = service.getSupportedAttributeValues(MediaPrintableArea.class, PAGES, on);
    if (!(areas instanceof MediaPrintableArea[] all)) {
      return Optional.empty();
    }
    // Some printers name an area for every way of feeding: the most generous one is offered.
    return Arrays.stream(all)
        .max((a, b) -> Double.compare(extent(a), extent(b)))
        .map(a -> margins(a, size(name.get()).orElse(paper), paper));
  }

  private static double extent(MediaPrintableArea a) {
    return a.getWidth(MediaPrintableArea.MM) * (double) a.getHeight(MediaPrintableArea.MM);
  }

  private static Margins margins(MediaPrintableArea area, PageSize sheet, PageSize page) {
    double left = area.getX(MediaPrintableArea.MM);
    double top = area.getY(MediaPrintableArea.MM);
    double right = sheet.width() - left - area.getWidth(MediaPrintableArea.MM);
    double bottom = sheet.height() - top - area.getHeight(MediaPrintableArea.MM);
    // A page that lies across the sheet has its left edge at the foot of the sheet, as Java turns
    // it
    // (java.awt.print.PageFormat.LANDSCAPE).
    boolean across = page.width() > page.height() && sheet.width() <= sheet.height();
    return across ? new Margins(bottom, left, top, right) : new Margins(left, top, right, bottom);
  }

  PrintService service() {
    return service;
  }

  @Override
  public String toString() {
    return name();
  }
}
