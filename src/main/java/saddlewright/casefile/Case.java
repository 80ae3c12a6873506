package saddlewright.casefile;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.rules.Profile;
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
 * @param profile the school profile that judges it
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
    Profile profile,
    List<Waiver> waivers,
    PrescriptionDetails prescription,
    Map<String, String> extras) {

  private static final String PROFILE_MEMBER = "/profile";
  private static final String PROFILE = PROFILE_MEMBER + "/";

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
        Profile.UK_TEACHING,
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

  /** The case judged by another profile; what the file kept of an own one stays with it. */
  public Case withProfile(Profile other) {
    return withProfile(
        new ProfileFile(other, bothOwn(other) ? schoolProfile().extras() : Map.of()));
  }

  private boolean bothOwn(Profile other) {
    return profile.standing() == Profile.Standing.OWN && other.standing() == Profile.Standing.OWN;
  }

  /** The case judged by a profile from a file, with all that the file holds. */
  public Case withProfile(ProfileFile other) {
    Map<String, String> kept = new TreeMap<>(extras);
    kept.keySet().removeIf(pointer -> pointer.startsWith(PROFILE));
    other.extras().forEach((pointer, json) -> kept.put(PROFILE_MEMBER + pointer, json));
    return new Case(
        reference,
        title,
        story,
        upperChart,
        lowerChart,
        upperDesign,
        lowerDesign,
        other.profile(),
        waivers,
        prescription,
        kept);
  }

  /** The profile with what the file kept of it, as a file of its own. */
  public ProfileFile schoolProfile() {
    Map<String, String> own = new TreeMap<>();
    extras.forEach(
        (pointer, json) -> {
          if (pointer.startsWith(PROFILE)) {
            own.put(pointer.substring(PROFILE_MEMBER.length()), json);
          }
        });
    return new ProfileFile(profile, own);
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
