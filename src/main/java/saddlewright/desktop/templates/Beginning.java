package saddlewright.desktop.templates;

import saddlewright.casefile.Case;
import saddlewright.casefile.CaseReference;
import saddlewright.chart.ArchChart;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/**
 * A new case that begins with the charts and designs of another, and with nothing of its patient.
 */
public final class Beginning {
  /** The reference of a template: that of no case. */
  static final String NO_CASE = "SW-TEMPLATE";

  private Beginning() {}

  /**
   * Charts, designs and school of a case under a new reference. Title and story may tell of the
   * patient, what the prescription says was said for the other case, signature and issued revisions
   * attest that one, and so do waivers: a judgement is signed for the facts it was given for.
   */
  public static Case of(Case other) {
    return bare(other, CaseReference.fresh(), "", "");
  }

  /** The same without what was measured, so that it is asked for in the mouth at hand. */
  static Case unsurveyed(Case other) {
    Case bare = of(other);
    for (Arch arch : Arch.values()) {
      bare = bare.with(unsurveyed(bare.chart(arch)));
    }
    return bare;
  }

  /** A template out of a case. */
  static Case template(Case other, String name, String words) {
    return bare(other, NO_CASE, name, words);
  }

  private static Case bare(Case other, String reference, String title, String story) {
    Case blank = Case.blank(reference).withIdentity(reference, title, story);
    for (Arch arch : Arch.values()) {
      blank = blank.with(other.chart(arch)).with(other.design(arch));
    }
    return blank.withProfile(other.schoolProfile());
  }

  /** The chart with what has been lost and is replaced, and no more. */
  private static ArchChart unsurveyed(ArchChart chart) {
    ArchChart out = ArchChart.full(chart.arch());
    for (Tooth t : Tooth.in(chart.arch())) {
      ToothFindings f = chart.tooth(t);
      out = out.with(t, ToothFindings.of(f.status(), f.gap()).withAbutment(f.abutment()));
    }
    return out.with(SoftTissues.UNCHARTED.withTori(chart.softTissues().tori()));
  }
}
