package saddlewright.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Notation;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Note;
import saddlewright.design.PostDam;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.UnknownComponent;

/** Wording follows the order and terms of British teaching of design (common practice). */
class ScheduleTest {

  private static ComponentId id(String value) {
    return ComponentId.of(value);
  }

  private static Case lower(Case c, Component... parts) {
    Case out = c;
    for (Component p : parts) {
      out = out.with(out.lowerDesign().plus(p));
    }
    return out;
  }

  private static List<String> lines(Case c) {
    return Schedule.of(Assessment.of(c), Notation.FDI).lines().stream()
        .map(l -> l.number() + " " + l.place() + " " + l.text().replaceAll(", arm [0-9.]+ mm", ""))
        .toList();
  }

  private static Case lowerClassOne() {
    return Mouths.lowerMissing(36, 37, 46, 47)
        .with(
            Mouths.lowerMissing(36, 37, 46, 47)
                .lowerChart()
                .with(
                    Tooth.T35,
                    Mouths.standing()
                        .withUndercut(Zone.MID_BUCCAL, Optional.of(Undercut.of(0.25)))));
  }

  @Test
  void a_free_end_saddle_with_its_releasing_set_reads_as_the_trade_says_it() {
    Case c =
        lower(
            lowerClassOne(),
            Saddle.of(id("s"), Span.of(36, 37)),
            Rest.of(id("r"), Tooth.T35, RestSite.MESIAL_OCCLUSAL),
            new GuidePlate(id("p"), Tooth.T35, End.DISTAL),
            Clasp.of(id("i"), Tooth.T35, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL),
            new MinorConnector(id("m"), Tooth.T35, MinorConnector.Place.MESIAL_EMBRASURE));
    assertThat(lines(c))
        .containsExactly(
            "1 36–37 Free-end saddle, tooth-and-mucosa-borne, acrylic on metal retention, full"
                + " flange, lingual finish acrylic.",
            "2 35 Mesial occlusal rest, on prepared enamel.",
            "3 35 Gingivally approaching I-bar, cast cobalt-chromium, from the distal, tip"
                + " mid-buccal in 0.25 mm undercut. RPI set with the mesial rest and the distal"
                + " guide plate.",
            "4 35 Distal guide plate.",
            "5 35 Minor connector in the mesial embrasure.");
  }

  @Test
  void groups_follow_the_order_of_design_whatever_the_order_of_placing() {
    Case c =
        lower(
            Mouths.lowerMissing(36),
            new Note(id("n"), "mind the\n frenum", 0, 0, Optional.empty(), Optional.empty()),
            new Rest(
                id("ir"),
                Tooth.T33,
                RestSite.CINGULUM,
                Rest.Form.STANDARD,
                Rest.Seat.COMPOSITE,
                true),
            MajorConnector.of(id("c"), ConnectorForm.LINGUAL_BAR, Span.of(45, 35)),
            new ReciprocalArm(id("a"), Tooth.T37, Face.LINGUAL, End.MESIAL),
            new Clasp(
                id("k"),
                Tooth.T37,
                ClaspForm.CIRCUMFERENTIAL,
                Zone.DISTOBUCCAL,
                End.MESIAL,
                ClaspMaterial.WROUGHT_GOLD),
            Rest.of(id("r"), Tooth.T37, RestSite.MESIAL_OCCLUSAL),
            Saddle.of(id("s"), Span.of(36, 36)));
    Schedule schedule = Schedule.of(Assessment.of(c), Notation.FDI);
    assertThat(schedule.lines().stream().map(l -> l.category().title()))
        .containsExactly(
            "Saddles",
            "Support",
            "Retention",
            "Bracing and reciprocation",
            "Connectors",
            "Indirect retention",
            "Notes and other");
    assertThat(schedule.find(Arch.LOWER, id("k")).orElseThrow().text())
        .startsWith("Occlusally approaching arm, wrought gold alloy, from the mesial, tip")
        .contains("no undercut charted there");
    assertThat(schedule.find(Arch.LOWER, id("ir")).orElseThrow().text())
        .isEqualTo("Indirect retainer: cingulum rest, on a composite seat.");
    assertThat(schedule.find(Arch.LOWER, id("n")).orElseThrow().text())
        .isEqualTo("Note: mind the frenum");
    assertThat(schedule.find(Arch.LOWER, id("c")).orElseThrow().text())
        .startsWith("Lingual bar, 4.0 mm high, clear of the gingival margins by at least 3.");
  }

  @Test
  void numbers_run_through_both_arches_so_that_each_is_unique_on_the_sheet() {
    Case c =
        lower(Mouths.lowerMissing(36), Rest.of(id("same"), Tooth.T35, RestSite.DISTAL_OCCLUSAL));
    c =
        c.with(
            c.upperDesign()
                .plus(new PostDam(id("same"), PostDam.Extent.POSTERIOR_BORDER))
                .plus(new Relief(id("t"), Relief.Area.PALATAL_TORUS, 0.5)));
    Schedule schedule = Schedule.of(Assessment.of(c), Notation.UNIVERSAL);
    assertThat(schedule.lines().stream().map(Schedule.Line::number)).containsExactly(1, 2, 3);
    // 35 is number 20 of the Universal system: 17 to 32 run from the lower left third molar
    // (FDI and Universal correspondence, common practice).
    assertThat(schedule.toText())
        .isEqualTo(
            """
            Teeth numbered by the Universal system (1–32).

            UPPER ARCH
            Connectors
               1  arch  Post-dam on the fitting surface along the rear border.
               2  arch  Relief of 0.50 mm over the palatal torus.

            LOWER ARCH
            Support
               3  20    Distal occlusal rest, on prepared enamel.
            """);
  }

  @Test
  void an_unknown_component_is_listed_and_never_dropped() {
    Case c =
        lower(
            Case.blank("X"),
            new UnknownComponent(id("u-9"), "swing-lock gate", "{\"kind\":\"x\"}"));
    assertThat(lines(c))
        .containsExactly(
            "1 arch Unknown component of kind “swing-lock gate” (u-9): kept in the case, neither"
                + " drawn nor described here; ask the prescriber.");
  }

  @Test
  void a_palatal_relief_in_a_lower_arch_is_listed_too() {
    Case c = lower(Case.blank("X"), new Relief(id("t"), Relief.Area.PALATAL_TORUS, 0.5));
    assertThat(lines(c)).containsExactly("1 arch Relief of 0.50 mm over the palatal torus.");
  }
}
