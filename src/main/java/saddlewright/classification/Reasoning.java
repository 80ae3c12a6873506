package saddlewright.classification;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/**
 * The sentences that lead from a chart to its Kennedy class. A rule is named only where it changed
 * something; the numbers are those of Applegate's eight rules in their usual order.
 */
final class Reasoning {
  private static final int SECOND_AND_THIRD_MOLARS = 0xC003;

  private final ArchChart chart;
  private final Arch arch;
  private final ArchPattern pattern;
  private final KennedyVerdict verdict;
  private final List<EdentulousArea> areas;
  private final List<String> said = new ArrayList<>(8);

  Reasoning(
      ArchChart chart, ArchPattern pattern, KennedyVerdict verdict, List<EdentulousArea> areas) {
    this.chart = chart;
    this.arch = chart.arch();
    this.pattern = pattern;
    this.verdict = verdict;
    this.areas = areas;
  }

  List<String> sentences() {
    sayStates();
    if (verdict.kennedy() == KennedyClass.EDENTULOUS) {
      said.add(
          "No tooth stands in the "
              + arch.code()
              + " arch: it needs a complete denture, and a complete denture has no Kennedy class.");
      return said;
    }
    sayThirdMolars();
    sayUnreplaced();
    if (verdict.kennedy() == KennedyClass.NONE) {
      said.add("No tooth is to be replaced, so there is no Kennedy class.");
      return said;
    }
    areas.forEach(this::sayArea);
    sayClass();
    sayModifications();
    sayRemainingTeeth();
    return said;
  }

  private void sayStates() {
    int extracted = 0;
    int roots = 0;
    int unerupted = 0;
    int buried = 0;
    int crowned = 0;
    for (Tooth tooth : Tooth.in(arch)) {
      int bit = 1 << tooth.place();
      ToothStatus status = chart.tooth(tooth).status();
      if (status == ToothStatus.TO_BE_EXTRACTED) {
        extracted |= bit;
      } else if (status == ToothStatus.RETAINED_ROOT) {
        roots |= bit;
      } else if (status == ToothStatus.UNERUPTED) {
        unerupted |= bit;
      } else if (status == ToothStatus.IMPLANT && (pattern.standing() & bit) != 0) {
        crowned |= bit;
      } else if (status == ToothStatus.IMPLANT) {
        buried |= bit;
      }
    }
    if (extracted != 0) {
      said.add(
          names(extracted)
              + are(extracted, " is", " are")
              + " to be extracted and"
              + are(extracted, " counts", " count")
              + " as lost (Applegate's rule 1); until then "
              + beforeExtraction(extracted)
              + ".");
    }
    if (roots != 0) {
      said.add(
          names(roots)
              + are(roots, " is a retained root", " are retained roots")
              + ": no crown stands, so"
              + are(roots, " its place counts", " their places count")
              + " as edentulous; no clasp can go there, though the root can help to carry a saddle.");
    }
    if (unerupted != 0) {
      said.add(
          names(unerupted)
              + are(unerupted, " is", " are")
              + " unerupted and"
              + are(unerupted, " counts", " count")
              + " as lost.");
    }
    if (buried != 0) {
      said.add(
          names(buried)
              + are(buried, " is an implant", " are implants")
              + " under the denture:"
              + are(buried, " its place counts", " their places count")
              + " as edentulous, and the class is that of the natural teeth.");
    }
    if (crowned != 0) {
      said.add(
          names(crowned)
              + are(crowned, " is an implant", " are implants")
              + " with"
              + are(crowned, " a crown of its own and counts", " crowns of their own and count")
              + " as standing.");
    }
    int closed = pattern.closed() & ~pattern.standing();
    if (closed != 0) {
      said.add(
          "The space of "
              + names(closed)
              + " has closed, so it is cut out of the arch and nothing is placed there.");
    }
  }

  private String beforeExtraction(int extracted) {
    KennedyVerdict now =
        new ArchPattern(
                pattern.standing() | extracted,
                pattern.replaced(),
                pattern.closed(),
                pattern.abutments() | chartedAbutments(extracted))
            .verdict();
    return now.kennedy() == KennedyClass.NONE
        ? "nothing is to be replaced"
        : "the arch is " + now.label();
  }

  private int chartedAbutments(int places) {
    int bits = 0;
    for (Tooth tooth : Classification.teeth(arch, places & ArchPattern.THIRD_MOLARS)) {
      if (chart.tooth(tooth).abutment()) {
        bits |= 1 << tooth.place();
      }
    }
    return bits;
  }

  private void sayThirdMolars() {
    int third = pattern.standing() & ArchPattern.THIRD_MOLARS;
    for (Tooth molar : Classification.teeth(arch, third)) {
      boolean counts = (pattern.counted() & 1 << molar.place()) != 0;
      Optional<EdentulousArea> inFront = areaInFrontOf(molar);
      if (inFront.isEmpty()) {
        continue;
      }
      said.add(
          counts
              ? molar
                  + " stands and serves as an abutment, so it counts (Applegate's rule 3) and bounds "
                  + inFront.get().span()
                  + "."
              : molar
                  + " stands but is no abutment, so it does not count (Applegate's rule 3) and the "
                  + "area in front of it is free-end.");
    }
  }

  /** The area that has only this third molar behind it on its side. */
  private Optional<EdentulousArea> areaInFrontOf(Tooth molar) {
    boolean right = molar.place() == 0;
    for (EdentulousArea area : areas) {
      Optional<Tooth> behind =
          right ? pattern.countedBefore(area.span()) : pattern.countedAfter(area.span());
      if (behind.isEmpty() || behind.get() == molar) {
        return Optional.of(area);
      }
    }
    return Optional.empty();
  }

  private void sayUnreplaced() {
    int left = pattern.gaps() & ~pattern.replaced();
    int inside = 0;
    for (EdentulousArea area : areas) {
      int span = ArchPattern.places(area.span().first().place(), area.span().last().place() + 1);
      inside |= left & span;
    }
    int dropped = left & ~inside & SECOND_AND_THIRD_MOLARS;
    int noArea = left & ~inside & ~dropped;
    if (dropped != 0) {
      said.add(
          names(dropped)
              + are(dropped, " is missing and", " are missing and")
              + " not replaced, so"
              + are(dropped, " it is", " they are")
              + " not considered ("
              + molarRules(dropped)
              + ").");
    }
    if (noArea != 0) {
      said.add(
          names(noArea)
              + are(noArea, " is", " are")
              + " missing and not replaced, and"
              + are(noArea, " makes", " make")
              + " no area.");
    }
    if (inside != 0) {
      said.add(
          names(inside)
              + are(inside, " is", " are")
              + " not replaced but"
              + are(inside, " lies", " lie")
              + " in the same run of lost teeth as places that are; the run is not split.");
    }
  }

  private static String molarRules(int dropped) {
    boolean thirds = (dropped & ArchPattern.THIRD_MOLARS) != 0;
    boolean seconds = (dropped & ~ArchPattern.THIRD_MOLARS) != 0;
    if (thirds && seconds) {
      return "Applegate's rules 2 and 4";
    }
    return thirds ? "Applegate's rule 2" : "Applegate's rule 4";
  }

  private void sayArea(EdentulousArea area) {
    Optional<Tooth> before = pattern.countedBefore(area.span());
    Optional<Tooth> after = pattern.countedAfter(area.span());
    if (before.isPresent() && after.isPresent()) {
      said.add(
          area.span()
              + " lies between "
              + before.get()
              + " and "
              + after.get()
              + ", so it is a bounded area"
              + (area.crossesMidline() ? "; it crosses the midline." : "."));
    } else if (before.isEmpty() && after.isEmpty()) {
      said.add(area.span() + " has no counted tooth behind it on either side: free-end on both.");
    } else {
      String side =
          area.crossesMidline() ? (before.isEmpty() ? " on the right" : " on the left") : "";
      said.add(
          area.span()
              + (idleMolarBehind(before.isEmpty()) ? " has no counted tooth" : " has no tooth")
              + " behind it"
              + side
              + ", so it is a free-end area"
              + (area.crossesMidline() ? "; it reaches across the midline." : "."));
    }
  }

  private boolean idleMolarBehind(boolean right) {
    int molar = ArchPattern.THIRD_MOLARS & (right ? ArchPattern.RIGHT : ArchPattern.LEFT);
    return (pattern.standing() & ~pattern.counted() & molar) != 0;
  }

  private void sayClass() {
    switch (verdict.kennedy()) {
      case I -> said.add("Free-end areas on both sides make Class I.");
      case II -> {
        String side = freeOnTheRight() ? "right" : "left";
        said.add("A free-end area on one side only, the " + side + ", makes Class II.");
      }
      case III -> {
        if (areas.size() > 1) {
          said.add("No area is free-end, so the arch is Class III.");
        } else {
          said.add("The only area is bounded and does not cross the midline: Class III.");
        }
      }
      default ->
          said.add("The only area is bounded and crosses the midline, which makes Class IV.");
    }
    if (verdict.kennedy() != KennedyClass.IV) {
      sayWhyNotFour();
    }
  }

  private void sayWhyNotFour() {
    if (areas.size() < 2) {
      return;
    }
    for (EdentulousArea area : areas) {
      if (area.crossesMidline() && !area.freeEnd()) {
        said.add(
            "Class IV has no modifications (Applegate's rule 8): with another area to restore, "
                + area.span()
                + " does not make it Class IV.");
      }
    }
  }

  private boolean freeOnTheRight() {
    return pattern.countedBefore(areas.get(0).span()).isEmpty();
  }

  private void sayModifications() {
    int n = verdict.modifications();
    if (n == 0) {
      return;
    }
    List<EdentulousArea> others = new ArrayList<>(areas);
    if (verdict.kennedy() == KennedyClass.III) {
      EdentulousArea decides = areas.get(0);
      for (EdentulousArea area : areas) {
        decides = area.farthestBack() > decides.farthestBack() ? area : decides;
      }
      others.remove(decides);
      said.add("The most posterior area, " + decides.span() + ", decides (Applegate's rule 5).");
    } else {
      others.removeIf(EdentulousArea::freeEnd);
      said.add(
          verdict.kennedy() == KennedyClass.I
              ? "The free-end areas are the most posterior and decide (Applegate's rule 5)."
              : "The free-end area is the most posterior and decides (Applegate's rule 5).");
    }
    StringBuilder spans = new StringBuilder();
    for (int i = 0; i < others.size(); i++) {
      spans.append(i == 0 ? "" : i == others.size() - 1 ? " and " : ", ");
      spans.append(others.get(i).span());
    }
    said.add(
        (n == 1 ? "The other area, " : "The other areas, ")
            + spans
            + (n == 1 ? ", is 1 modification" : ", are " + n + " modifications")
            + ": areas count, not the teeth in them (Applegate's rules 6 and 7).");
  }

  private void sayRemainingTeeth() {
    int counted = pattern.counted();
    if (counted == 0) {
      said.add(
          "Only "
              + names(pattern.standing())
              + are(
                  pattern.standing(),
                  " stands, and it is no abutment",
                  " stand, and neither is an abutment")
              + ": a partial denture has nothing to hold on to. Use"
              + are(pattern.standing(), " it", " them")
              + " as"
              + are(pattern.standing(), " an abutment", " abutments")
              + " or consider a complete denture.");
    } else if (Integer.bitCount(counted) == 1) {
      said.add(
          names(counted)
              + " is the only tooth that counts: a single abutment, which is unfavourable for a"
              + " partial denture.");
    } else if ((counted & ArchPattern.LEFT) == 0 || (counted & ArchPattern.RIGHT) == 0) {
      String side = (counted & ArchPattern.LEFT) == 0 ? "right" : "left";
      said.add("All teeth that count stand on the " + side + ".");
    }
  }

  private String names(int places) {
    StringBuilder names = new StringBuilder();
    for (int rest = places; rest != 0; rest &= rest - 1) {
      if (names.length() > 0) {
        names.append((rest & (rest - 1)) == 0 ? " and " : ", ");
      }
      names.append(Tooth.at(arch, Integer.numberOfTrailingZeros(rest)));
    }
    return names.toString();
  }

  private static String are(int places, String one, String several) {
    return Integer.bitCount(places) == 1 ? one : several;
  }
}
