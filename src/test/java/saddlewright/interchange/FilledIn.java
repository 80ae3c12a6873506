package saddlewright.interchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.json.Fingerprint;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.Disinfection;
import saddlewright.casefile.order.Enclosure;
import saddlewright.casefile.order.IssuedRevision;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.OwnPreparation;
import saddlewright.casefile.order.PlannedStage;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.Preparations;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.Signature;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.dentition.Tooth;
import saddlewright.prescription.Issue;
import saddlewright.prescription.MouthPreparations;
import saddlewright.prescription.PreparationPlan;

/** Cases that the bundles of these tests are made from. */
final class FilledIn {
  static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  /** Key of a rest seat that the design of {@link #order} does not ask for. */
  static final String FORMER = "lower/rest-seat/44/distal-occlusal/rest";

  private FilledIn() {}

  static List<Path> demoCases() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo-cases"))) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }

  /**
   * A lower Class I, answered in every way that a field can be, signed, and issued as revision 3.
   */
  static Case order() throws Exception {
    return issued(draft());
  }

  static Case issued(Case c) {
    return new Issue(Assessment.of(c), Optional.empty(), DAY).recorded().subject();
  }

  /** The same before it is issued. */
  static Case draft() throws Exception {
    Case c = CaseStore.load(Path.of("demo-cases", "01-lower-class-1-rpi.json"));
    PrescriptionDetails d = PrescriptionDetails.EMPTY;
    for (Item i : Item.values()) {
      d = d.with(i, i.form() == Item.Form.DATE ? "2026-04-17" : "words of " + i.key());
    }
    d =
        d.with(Item.PRESCRIBER_NAME, "R. Quill")
            .with(Item.PRESCRIBER_REGISTRATION, "0000001")
            .with(Item.PRESCRIBER_CONTACT, "desk@practice.example")
            .with(Item.PRACTICE, "Fell Lane Practice\n1 Fell Lane\nUpper Wold")
            .with(Item.DATE_REQUIRED, "to be agreed")
            .with(Item.NICKEL_FREE, "yes")
            .with(Item.ALLERGIES, Answer.NONE)
            .with(Item.IDENTIFICATION_MARK, Answer.NOT_APPLICABLE)
            .with(Item.TOOTH_MOULD, Answer.toFollow(Optional.of(LocalDate.of(2026, 3, 20))))
            .withEnclosures(
                List.of(
                    new Enclosure(Enclosure.Kind.IMPRESSION, 2, "addition silicone, special trays"),
                    new Enclosure(Enclosure.Kind.BITE_RECORD, 1, "")))
            .withDisinfections(
                List.of(
                    new Disinfection(
                        "both impressions",
                        "hypochlorite",
                        Optional.of(10),
                        "nurse",
                        Optional.of(DAY))))
            .with(prepared(c))
            .with(
                StagePlan.EMPTY
                    .withFitting(Optional.of(LocalDate.of(2026, 5, 8)))
                    .withRequested(Optional.of(TreatmentStage.FRAMEWORK))
                    .with(
                        TreatmentStage.PRIMARY_IMPRESSION,
                        PlannedStage.OPEN.withDone(
                            Optional.of(LocalDate.of(2026, 2, 1)), "R. Quill"))
                    .with(
                        TreatmentStage.FRAMEWORK,
                        PlannedStage.OPEN
                            .withDue(Optional.of(LocalDate.of(2026, 4, 1)))
                            .withTime(Optional.of(LocalTime.of(9, 30))))
                    .with(TreatmentStage.TOOTH_TRY_IN, PlannedStage.OPEN.withLeftOut(true)))
            .withSignature(
                Optional.of(
                    new Signature(
                        Signature.Manner.ELECTRONIC,
                        "R. Quill",
                        "0000001",
                        DAY,
                        Fingerprint.ofDesign(c))))
            .withIssued(
                List.of(
                    new IssuedRevision(1, LocalDate.of(2026, 1, 12), "0badcafe0badcafe"),
                    new IssuedRevision(2, LocalDate.of(2026, 2, 11), "feedfacefeedface")));
    return c.with(d);
  }

  /** All checked but the last, which was declined; one added by hand, one no longer asked for. */
  private static Preparations prepared(Case c) {
    List<String> keys = new ArrayList<>();
    MouthPreparations.of(Assessment.of(c)).forEach(p -> keys.add(p.key().text()));
    keys.add(PreparationPlan.OWN + "crown");
    keys.add(FORMER);
    Preparations out =
        Preparations.NONE.withOwn(
            List.of(
                new OwnPreparation(
                    "crown",
                    PreparationKind.RESTORATION,
                    List.of(Tooth.T45),
                    "",
                    "recement the crown",
                    "")));
    for (String key : keys) {
      out =
          out.with(
              new PreparationMark(
                  key,
                  PreparationMark.State.CHECKED,
                  Optional.of(DAY),
                  "R. Quill",
                  "T. Reed",
                  "",
                  ""));
    }
    String last = keys.get(keys.size() - 3);
    return out.with(
        out.mark(last).withState(PreparationMark.State.DECLINED).withNote("the patient declines"));
  }
}
