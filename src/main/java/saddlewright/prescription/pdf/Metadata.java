package saddlewright.prescription.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.UUID;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import saddlewright.drawing.Ink;

/**
 * What the file says of itself: title, language, dates and the standards that it keeps, PDF/A-3a
 * (ISO 19005-3) and PDF/UA-1 (ISO 14289-1).
 *
 * @param title of the document
 * @param reference of the case; may be empty
 * @param date the day the document is made
 * @param identity the same for the same content; another for any other
 */
record Metadata(String title, String reference, LocalDate date, UUID identity) {
  private static final String PRODUCER = "Saddlewright";
  private static final String LANGUAGE = "en-GB";

  /**
   * Of a printout.
   *
   * @param file the case file that goes into the document
   */
  static Metadata of(Printout p, byte[] file) {
    PrintOptions o = p.options();
    String manner =
        p.title()
            + o.date()
            + o.notation()
            + o.paper()
            + o.patient().isPresent()
            + o.signs()
            + Arrays.stream(Ink.values()).map(o.palette()::hex).toList();
    byte[] rest = manner.getBytes(StandardCharsets.UTF_8);
    byte[] all = Arrays.copyOf(file, file.length + rest.length);
    System.arraycopy(rest, 0, all, file.length, rest.length);
    return new Metadata(
        p.title(), p.subject().reference().strip(), o.date(), UUID.nameUUIDFromBytes(all));
  }

  void into(PDDocument document) throws IOException {
    Calendar day = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
    PDDocumentInformation info = document.getDocumentInformation();
    info.setTitle(lawful(title));
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
    catalog.setMetadata(
        new PDMetadata(document, new ByteArrayInputStream(xmp().getBytes(StandardCharsets.UTF_8))));
    document.setVersion(1.7f);
    document.setDocumentId(identity.getMostSignificantBits());
  }

  /** The packet of ISO 16684-1; PDF/UA's own mark has to be described for PDF/A. */
  private String xmp() {
    return """
        <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
          xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:xmpMM="http://ns.adobe.com/xap/1.0/mm/"
          xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
          xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
          xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
          xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
          xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
          xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
        <pdfaid:part>3</pdfaid:part>
        <pdfaid:conformance>A</pdfaid:conformance>
        <pdfuaid:part>1</pdfuaid:part>
        <dc:format>application/pdf</dc:format>
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1$s</rdf:li></rdf:Alt></dc:title>
        <dc:identifier>%2$s</dc:identifier>
        <dc:date><rdf:Seq><rdf:li>%3$s</rdf:li></rdf:Seq></dc:date>
        <dc:language><rdf:Bag><rdf:li>%4$s</rdf:li></rdf:Bag></dc:language>
        <xmp:CreateDate>%3$sT00:00:00Z</xmp:CreateDate>
        <xmp:ModifyDate>%3$sT00:00:00Z</xmp:ModifyDate>
        <xmp:CreatorTool>%5$s</xmp:CreatorTool>
        <xmpMM:DocumentID>uuid:%6$s</xmpMM:DocumentID>
        <pdf:Producer>%5$s</pdf:Producer>
        <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
          <pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
          <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
          <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
          <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
            <pdfaProperty:name>part</pdfaProperty:name>
            <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
            <pdfaProperty:category>internal</pdfaProperty:category>
            <pdfaProperty:description>Part of ISO 14289 that is kept</pdfaProperty:description>
          </rdf:li></rdf:Seq></pdfaSchema:property>
        </rdf:li></rdf:Bag></pdfaExtension:schemas>
        </rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="w"?>
        """
        .formatted(
            escaped(title),
            escaped(reference.isBlank() ? "uuid:" + identity : reference),
            date,
            LANGUAGE,
            PRODUCER,
            identity);
  }

  private static String escaped(String text) {
    return lawful(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  /** The text on one line with nothing that XML 1.0 forbids. */
  private static String lawful(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              boolean forbidden =
                  c < 0x20 || c >= 0xD800 && c <= 0xDFFF || c == 0xFFFE || c == 0xFFFF;
              out.appendCodePoint(forbidden ? ' ' : c);
            });
    return out.toString().strip();
  }
}
