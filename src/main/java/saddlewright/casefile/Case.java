package saddlewright.casefile;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.rules.Waiver;

/**
 * Everything that is stored of a case. All else is derived from it.
 *
 * @param reference pseudonymous case reference
 * @param title a line that tells the case from others
 * @param story what the case is about: history, wishes, teaching aim; may be empty
 * @param upperChart chart of the upper arch
 * @param lowerChart chart of the lower arch
 * @param upperDesign design of the upper arch
 * @param lowerDesign design of the lower arch
 * @param profile id of the school profile that judges it
 * @param waivers accepted findings
 * @param prescription what the prescription says besides the design
 * @param extras members of the file that this version does not know, as JSON text, by JSON pointer
 *     in which components stand under their id
 */
public record Case(
    String reference,
    String title,
    String story,
    ArchChart upperChart,
    ArchChart lowerChart,
    ArchDesign upperDesign,
    ArchDesign lowerDesign,
    String profile,
    List<Waiver> waivers,
    PrescriptionDetails prescription,
    Map<String, String> extras) {

  public static final String DEFAULT_PROFILE = "uk-teaching";

  public Case {
    refuseWrongArch(upperChart.arch(), upperDesign.arch(), Arch.UPPER);
    refuseWrongArch(lowerChart.arch(), lowerDesign.arch(), Arch.LOWER);
    waivers = List.copyOf(waivers);
    extras = java.util.Collections.unmodifiableMap(new TreeMap<>(extras));
  }

  private static void refuseWrongArch(Arch chart, Arch design, Arch expected) {
    if (chart != expected || design != expected) {
      throw new IllegalArgumentException(
          "the " + expected.code() + " arch needs a chart and a design of its own");
    }
  }

  /** A new case: full arches, no design. */
  public static Case blank(String reference) {
    return new Case(
        reference,
        "",
        "",
        ArchChart.full(Arch.UPPER),
        ArchChart.full(Arch.LOWER),
        ArchDesign.empty(Arch.UPPER),
        ArchDesign.empty(Arch.LOWER),
        DEFAULT_PROFILE,
        List.of(),
        PrescriptionDetails.EMPTY,
        Map.of());
  }

  public ArchChart chart(Arch arch) {
    return arch == Arch.UPPER ? upperChart : lowerChart;
  }

  public ArchDesign design(Arch arch) {
    return arch == Arch.UPPER ? upperDesign : lowerDesign;
  }

  public Case with(ArchChart chart) {
    boolean upper = chart.arch() == Arch.UPPER;
    return new Case(
        reference,
        title,
        story,
        upper ? chart : upperChart,
        upper ? lowerChart : chart,
        upperDesign,
        lowerDesign,
        profile,
        waivers,
        prescription,
        extras);
  }

  /** The case with another design; what the file kept of a component that is gone goes with it. */
  public Case with(ArchDesign design) {
    boolean upper = design.arch() == Arch.UPPER;
    return new Case(
        reference,
        title,
        story,
        upperChart,
        lowerChart,
        upper ? design : upperDesign,
        upper ? lowerDesign : design,
        profile,
        waivers,
        prescription,
        extrasWithout(design));
  }

  private Map<String, String> extrasWithout(ArchDesign design) {
    if (extras.isEmpty()) {
      return extras;
    }
    // Otherwise a later component that is given the same id would inherit them.
    String components = "/" + design.arch().code() + "/design/components/";
    Map<String, String> left = new TreeMap<>(extras);
    left.keySet()
        .removeIf(
            pointer ->
                pointer.startsWith(components)
                    && design
                        .find(ComponentId.of(pointer.substring(components.length()).split("/")[0]))
                        .isEmpty());
    return left;
  }

  public Case with(Arch arch, DesignEdit edit) {
    return with(edit.applyTo(design(arch)));
  }

  public Case with(PrescriptionDetails details) {
    return new Case(
        reference,
        title,
        story,
        upperChart,
        lowerChart,
        upperDesign,
        lowerDesign,
        profile,
        waivers,
        details,
        extras);
  }

  public Case withWaivers(List<Waiver> other) {
    return new Case(
        reference,
        title,
        story,
        upperChart,
        lowerChart,
        upperDesign,
        lowerDesign,
        profile,
        other,
        prescription,
        extras);
  }

  public Case withIdentity(String newReference, String newTitle, String newStory) {
    return new Case(
        newReference,
        newTitle,
        newStory,
        upperChart,
        lowerChart,
        upperDesign,
        lowerDesign,
        profile,
        waivers,
        prescription,
        extras);
  }

  public Case withProfile(String id) {
    return new Case(
        reference,
        title,
        story,
        upperChart,
        lowerChart,
        upperDesign,
        lowerDesign,
        id,
        waivers,
        prescription,
        extras);
  }

  /** The same case with other members kept from a file, by JSON pointer. */
  public Case withExtras(Map<String, String> other) {
    return new Case(
        reference,
        title,
        story,
        upperChart,
        lowerChart,
        upperDesign,
        lowerDesign,
        profile,
        waivers,
        prescription,
        other);
  }
}
