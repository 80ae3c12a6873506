package saddlewright.prescription.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import saddlewright.prescription.pdf.reading.CaseDocument;

/**
 * The case file inside the document, as its source (an associated file of ISO 19005-3), so that the
 * paper's record can be opened and worked on again.
 */
final class EnclosedCase {
  private EnclosedCase() {}

  /** Puts the bytes of the case file into the document. */
  static void into(PDDocument document, byte[] bytes, LocalDate date) throws IOException {
    var day = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
    PDEmbeddedFile file =
        new PDEmbeddedFile(document, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE);
    file.setSubtype("application/json");
    file.setSize(bytes.length);
    file.setCreationDate(day);
    file.setModDate(day);
    PDComplexFileSpecification specification = new PDComplexFileSpecification();
    specification.setFile(CaseDocument.ENCLOSED);
    specification.setFileUnicode(CaseDocument.ENCLOSED);
    specification.setFileDescription("The case that this document was made from");
    specification.setEmbeddedFile(file);
    specification.setEmbeddedFileUnicode(file);
    specification
        .getCOSObject()
        .setItem(COSName.getPDFName("AFRelationship"), COSName.getPDFName("Source"));
    PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
    tree.setNames(Map.of(CaseDocument.ENCLOSED, specification));
    PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
    names.setEmbeddedFiles(tree);
    document.getDocumentCatalog().setNames(names);
    COSArray associated = new COSArray();
    associated.add(specification.getCOSObject());
    document.getDocumentCatalog().getCOSObject().setItem(COSName.getPDFName("AF"), associated);
  }
}
