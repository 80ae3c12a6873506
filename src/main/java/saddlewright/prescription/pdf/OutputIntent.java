package saddlewright.prescription.pdf;

import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

/**
 * What the colours of the document mean: sRGB (IEC 61966-2-1), by a profile that comes with the
 * program, since the profiles of Java versions differ.
 */
final class OutputIntent {
  private static final String PROFILE = "/saddlewright/colour/sRGB.icc";
  private static final String NAME = "sRGB IEC61966-2.1";

  private OutputIntent() {}

  static void into(PDDocument document) throws IOException {
    PDStream profile;
    try (InputStream in = OutputIntent.class.getResourceAsStream(PROFILE)) {
      profile = new PDStream(document, in, COSName.FLATE_DECODE);
    }
    profile.getCOSObject().setInt(COSName.N, 3);
    // By hand: the library's constructor would start the image toolkit to count three channels.
    COSDictionary intent = new COSDictionary();
    intent.setItem(COSName.TYPE, COSName.OUTPUT_INTENT);
    intent.setItem(COSName.S, COSName.GTS_PDFA1);
    intent.setString(COSName.OUTPUT_CONDITION_IDENTIFIER, NAME);
    intent.setString(COSName.INFO, NAME);
    intent.setItem(COSName.DEST_OUTPUT_PROFILE, profile.getCOSObject());
    document.getDocumentCatalog().addOutputIntent(new PDOutputIntent(intent));
  }
}
