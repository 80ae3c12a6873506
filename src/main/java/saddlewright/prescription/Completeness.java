package saddlewright.prescription;

import java.util.ArrayList;
import java.util.List;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.PrescriptionDetails;
import saddlewright.dentition.Arch;
import saddlewright.design.MajorConnector;
import saddlewright.design.UnknownComponent;

/**
 * What a prescription still lacks before a laboratory can work from it, as plain sentences.
 *
 * <p>It looks at what is filled in, never at whether the design is wise; that is for the rules.
 * What is missing stops nothing: the document prints with ruled lines to fill in by hand.
 */
public final class Completeness {
  private Completeness() {}

  /** One sentence for each thing that is missing; empty when nothing is. */
  public static List<String> missing(Assessment assessment) {
    List<String> out = new ArrayList<>();
    PrescriptionDetails d = assessment.subject().prescription();
    blank(out, assessment.subject().reference(), "There is no case reference.");
    blank(out, d.prescriber(), "The prescriber is not named.");
    blank(out, d.practice(), "The prescriber's address or contact is missing.");
    blank(out, d.laboratory(), "The laboratory is not named.");
    blank(out, d.dateIssued(), "The date of issue is missing.");
    blank(out, d.dateRequired(), "The date required is missing; write \"to be agreed\" if it is.");
    blank(out, d.frameworkAlloy(), "The alloy of the framework is not named.");
    blank(out, d.baseMaterial(), "The denture base material is not named.");
    blank(out, d.toothMaterial(), "The material of the artificial teeth is not named.");
    blank(out, d.shade(), "The shade is missing; write \"to follow\" if it is not yet taken.");
    blank(out, d.enclosures(), "Nothing is said of what is sent along.");
    blank(out, d.disinfection(), "Nothing is said of disinfection.");
    design(out, assessment);
    return List.copyOf(out);
  }

  private static void design(List<String> out, Assessment assessment) {
    boolean none = true;
    for (Arch arch : Arch.values()) {
      var design = assessment.arch(arch).design();
      none &= design.components().isEmpty();
      if (!design.components().isEmpty()
          && design.stream(MajorConnector.class).findAny().isEmpty()) {
        out.add("The " + arch.code() + " design has no major connector.");
      }
      long unknown = design.stream(UnknownComponent.class).count();
      if (unknown > 0) {
        out.add(
            "The "
                + arch.code()
                + " design holds "
                + (unknown == 1 ? "a component" : unknown + " components")
                + " of a kind that is not known here.");
      }
    }
    if (none) {
      out.add("Neither arch has a design yet.");
    }
  }

  private static void blank(List<String> out, String value, String sentence) {
    if (value.isBlank()) {
      out.add(sentence);
    }
  }
}
