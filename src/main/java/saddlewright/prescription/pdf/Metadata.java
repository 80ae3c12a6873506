package saddlewright.prescription.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Title, language and dates of the file; fixed by the case and the day, so that bytes repeat. */
final class Metadata {
  private static final String PRODUCER = "Saddlewright";
  private static final String LANGUAGE = "en-GB";

  private Metadata() {}

  static void write(PDDocument document, String title, LocalDate date) throws IOException {
    Calendar day = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
    PDDocumentInformation info = document.getDocumentInformation();
    info.setTitle(title);
    info.setCreator(PRODUCER);
    info.setProducer(PRODUCER);
    info.setCreationDate(day);
    info.setModificationDate(day);
    var catalog = document.getDocumentCatalog();
    catalog.setLanguage(LANGUAGE);
    PDViewerPreferences viewer = new PDViewerPreferences(new COSDictionary());
    viewer.setDisplayDocTitle(true);
    // A viewer that fits pages to the paper would spoil the scale.
    viewer.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    catalog.setViewerPreferences(viewer);
    PDMetadata xmp =
        new PDMetadata(
            document, new ByteArrayInputStream(xmp(title, date).getBytes(StandardCharsets.UTF_8)));
    catalog.setMetadata(xmp);
    document.setDocumentId((long) (title + date).hashCode());
  }

  private static String xmp(String title, LocalDate date) {
    return """
        <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
          xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
        <dc:format>application/pdf</dc:format>
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
        <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
        <xmp:CreateDate>%sT00:00:00Z</xmp:CreateDate>
        <xmp:ModifyDate>%sT00:00:00Z</xmp:ModifyDate>
        <xmp:CreatorTool>%s</xmp:CreatorTool>
        <pdf:Producer>%s</pdf:Producer>
        </rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="w"?>
        """
        .formatted(escaped(title), LANGUAGE, date, date, PRODUCER, PRODUCER);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
