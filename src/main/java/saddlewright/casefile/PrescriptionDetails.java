package saddlewright.casefile;

/**
 * What a prescription says besides the design; every text may be empty until it is filled in.
 *
 * @param prescriber name and registration of the licensed prescriber
 * @param practice address or contact of the prescriber
 * @param laboratory name and address of the laboratory
 * @param dateIssued ISO date, or empty
 * @param dateRequired ISO date, or empty
 * @param frameworkAlloy alloy of the framework
 * @param baseMaterial denture base polymer
 * @param toothMaterial artificial teeth
 * @param shade shade and guide
 * @param enclosures what is sent along
 * @param disinfection what was disinfected, how and when
 * @param instructions anything else
 */
public record PrescriptionDetails(
    String prescriber,
    String practice,
    String laboratory,
    String dateIssued,
    String dateRequired,
    String frameworkAlloy,
    String baseMaterial,
    String toothMaterial,
    String shade,
    String enclosures,
    String disinfection,
    String instructions) {

  public static final PrescriptionDetails EMPTY =
      new PrescriptionDetails("", "", "", "", "", "", "", "", "", "", "", "");
}
