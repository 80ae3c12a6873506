package saddlewright.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.DataTable;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Point;

/** The unworn arch against norms that were not used to build it. */
class ArchFormNormsTest {
  private static final ArchForm UPPER = ArchForm.of(ArchChart.full(Arch.UPPER));
  private static final ArchForm LOWER = ArchForm.of(ArchChart.full(Arch.LOWER));

  private static ArchForm form(Arch arch) {
    return arch == Arch.UPPER ? UPPER : LOWER;
  }

  private static Point facialAxis(ArchForm form, int fdi) {
    PlacedTooth t = form.tooth(Tooth.of(fdi));
    return t.rim(t.degreesAcross(Face.BUCCAL));
  }

  /** Mina et al., Odontology 2017;105:229-36: facial-axis points of first molars, mean and SD. */
  @ParameterizedTest
  @CsvSource({"UPPER,16,26,57.92,4.75", "LOWER,46,36,54.19,5.31"})
  void facialWidthAtFirstMolarsIsWithinOneSd(
      Arch arch, int right, int left, double mean, double sd) {
    double width = facialAxis(form(arch), left).x() - facialAxis(form(arch), right).x();
    assertThat(width).isCloseTo(mean, within(sd));
  }

  /** The same study: depth from the incisors' facial axis to that of the first molars. */
  @ParameterizedTest
  @CsvSource({"UPPER,16,11,31.59,2.90", "LOWER,46,41,28.10,2.59"})
  void depthAtFirstMolarsIsWithinOneSd(Arch arch, int molar, int incisor, double mean, double sd) {
    double depth = facialAxis(form(arch), molar).y() - facialAxis(form(arch), incisor).y();
    assertThat(depth).isCloseTo(mean, within(sd));
  }

  /** Moorrees 1959 and Bishara 1997, ranges from memory. */
  @ParameterizedTest
  @CsvSource({"UPPER,13,23,31,37", "LOWER,43,33,23,29"})
  void canineCuspsAreAsFarApartAsInAdults(
      Arch arch, int right, int left, double least, double most) {
    double width =
        form(arch).tooth(Tooth.of(left)).landmark("cusp").orElseThrow().x()
            - form(arch).tooth(Tooth.of(right)).landmark("cusp").orElseThrow().x();
    assertThat(width).isBetween(least, most);
  }

  /** Bishara 1997, ranges from memory. */
  @ParameterizedTest
  @CsvSource({"UPPER,16,26,47,57", "LOWER,46,36,42,50"})
  void mesiobuccalCuspsOfFirstMolarsAreAsFarApartAsInAdults(
      Arch arch, int right, int left, double least, double most) {
    double width =
        form(arch).tooth(Tooth.of(left)).landmark("MB").orElseThrow().x()
            - form(arch).tooth(Tooth.of(right)).landmark("MB").orElseThrow().x();
    assertThat(width).isBetween(least, most);
  }

  /**
   * Contact points of the arch-form table, worked out independently from the same curve. A crown
   * lies so that its two contacts straddle the curve evenly, whence the tolerance.
   */
  @Test
  void distalContactsLieWhereTheTableHasThem() {
    int seen = 0;
    for (Map<String, String> row : DataTable.rows("arch-form")) {
      if (!row.get("item").startsWith("distal contact")) {
        continue;
      }
      Tooth t = Tooth.of(Integer.parseInt(row.get("item").substring(15)));
      String[] xy = row.get("value").split(";");
      Point expected = new Point(-Double.parseDouble(xy[0]), Double.parseDouble(xy[1]));
      Point contact = form(t.arch()).tooth(t).contact(End.DISTAL);
      assertThat(contact.distanceTo(expected)).as("contact of " + t).isLessThan(0.6);
      seen++;
    }
    assertThat(seen).isEqualTo(16);
  }

  /** Crown sizes of Wheeler's table (Ash and Nelson). */
  @ParameterizedTest
  @EnumSource(Tooth.class)
  void outlinesHaveThePublishedWidthAndDepth(Tooth tooth) {
    PlacedTooth t = form(tooth.arch()).tooth(tooth);
    double front = 0;
    double back = 0;
    double out = 0;
    double in = 0;
    for (Point p : t.outline().points()) {
      double m = t.centre().to(p).dot(t.mesial());
      double b = t.centre().to(p).dot(t.buccal());
      front = Math.max(front, m);
      back = Math.max(back, -m);
      out = Math.max(out, b);
      in = Math.max(in, -b);
    }
    CrownSize size = CrownSize.mean(tooth);
    assertThat(front + back).isCloseTo(size.width(), within(1e-6));
    assertThat(out + in).isCloseTo(size.depth(), within(1e-6));
  }

  /** ISO 3950 numbers, seen from above: the patient's right is on the viewer's left. */
  @ParameterizedTest
  @EnumSource(Tooth.class)
  void patientsRightIsOnTheViewersLeft(Tooth tooth) {
    PlacedTooth t = form(tooth.arch()).tooth(tooth);
    int quadrant = tooth.fdi() / 10;
    boolean right = quadrant == 1 || quadrant == 4;
    assertThat(t.centre().x() < 0).isEqualTo(right);
    // Mesial leads to the midline along the arch, buccal away from the tongue.
    if (tooth.position() > 1) {
      Tooth before = Tooth.of(tooth.fdi() - 1);
      assertThat(t.mesial().dot(t.centre().to(form(tooth.arch()).tooth(before).centre())))
          .isPositive();
    }
    assertThat(t.buccal().dot(t.centre().to(new Point(0, 25)))).isNegative();
  }

  /**
   * Contacts of posterior teeth lie slightly buccal of the middle (from memory, Ash and Nelson).
   */
  @ParameterizedTest
  @EnumSource(Tooth.class)
  void contactsOfPosteriorTeethLieSlightlyBuccal(Tooth tooth) {
    if (tooth.isAnterior()) {
      return;
    }
    PlacedTooth t = form(tooth.arch()).tooth(tooth);
    for (End end : End.values()) {
      double share = t.centre().to(t.contact(end)).dot(t.buccal()) / t.halfDepth();
      assertThat(share).isBetween(-0.1, 0.35);
    }
    assertThat(t.centre().to(t.contact(End.MESIAL)).dot(t.buccal())).isPositive();
  }
}
