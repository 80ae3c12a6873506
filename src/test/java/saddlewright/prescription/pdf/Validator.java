package saddlewright.prescription.pdf;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.TreeSet;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * The judgement of veraPDF, the reference validator of the PDF Association: which clauses of a
 * standard a document breaks.
 */
enum Validator {
  PDF_A_3A(PDFAFlavour.PDFA_3_A),
  PDF_UA_1(PDFAFlavour.PDFUA_1);

  static {
    Logger.getLogger("org.verapdf").setLevel(Level.OFF);
    VeraGreenfieldFoundryProvider.initialise();
  }

  private final PDFAFlavour flavour;

  Validator(PDFAFlavour flavour) {
    this.flavour = flavour;
  }

  /** Such as "6.8 test 1: …", sorted; none when the document conforms. */
  List<String> brokenClauses(byte[] document) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(document), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      TreeSet<String> out = new TreeSet<>();
      for (TestAssertion a : result.getTestAssertions()) {
        if (a.getStatus() == TestAssertion.Status.FAILED) {
          out.add(
              a.getRuleId().getClause()
                  + " test "
                  + a.getRuleId().getTestNumber()
                  + ": "
                  + a.getMessage());
        }
      }
      if (out.isEmpty() && !result.isCompliant()) {
        out.add("not compliant");
      }
      return List.copyOf(out);
    }
  }
}
