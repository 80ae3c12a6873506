package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.Enclosure;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.prescription.FormField;
import saddlewright.prescription.Timetable;

/** The code lists of the program, each with all of its codes. */
final class LocalCodes {
  static final CodeList TOOTH =
      new CodeList(
          "tooth",
          "Permanent teeth",
          "Permanent teeth by their two-digit designation (ISO 3950:2016). The code is the"
              + " designation; it names the tooth by its anatomy, wherever it has drifted to.",
          Arrays.stream(Tooth.values())
              .map(t -> Code.of(t.toString(), ToothNames.full(t)))
              .toList());

  static final CodeList TOOTH_SITE =
      new CodeList(
          "tooth-site",
          "Places on a tooth",
          "Places on a crown where it is prepared. Buccal is also labial, and lingual also palatal.",
          ToothSite.CODES);

  static final CodeList TOOTH_STATE =
      CodeList.of(
          "tooth-state",
          "States of a tooth",
          "Whether and how a tooth stands in its place, and whether it is to carry a denture.",
          ToothState.class,
          ToothState::words);

  static final CodeList DEVICE =
      new CodeList(
          "device",
          "Dentures",
          "What is ordered for an arch.",
          List.of(
              Code.of("upper-partial-denture", "Upper removable partial denture"),
              Code.of("lower-partial-denture", "Lower removable partial denture")));

  static final CodeList COMPONENT =
      new CodeList(
          "component",
          "Components of a denture",
          "Kinds of component of a removable partial denture, as the case file names them.",
          ComponentKind.CODES);

  static final CodeList FIELD =
      new CodeList(
          "prescription-field",
          "Fields of a prescription",
          "The fields of a prescription to a dental laboratory, numbered as on the form.",
          FormField.ALL.stream()
              .map(f -> new Code(f.key(), f.title(), "Field " + f.number() + " of the form."))
              .toList());

  static final CodeList ANSWER =
      new CodeList(
          "answer",
          "Answers without words",
          "How a field is answered in which nothing stands.",
          List.of(
              new Code("none", "None", "There is none of what the field asks for."),
              new Code("not-applicable", "Not applicable", "The field does not concern this case."),
              new Code("to-follow", "To follow", "It will be told later.")));

  static final CodeList KENNEDY =
      CodeList.of(
          "kennedy-class",
          "Kennedy classes",
          "Kennedy's class of an arch by Applegate's rules, or why it has none.",
          KennedyClass.class,
          k -> k.isClass() ? "Kennedy Class " + k.word() : "No class: " + reason(k));

  static final CodeList ENCLOSURE =
      CodeList.of(
          "enclosure",
          "Enclosures",
          "What is sent to the laboratory along with a prescription.",
          Enclosure.Kind.class,
          Enclosure.Kind::words);

  static final CodeList PREPARATION =
      CodeList.of(
          "mouth-preparation",
          "Mouth preparations",
          "What is done in the mouth before the master impression, in the order of treatment.",
          PreparationKind.class,
          PreparationKind::title);

  static final CodeList STAGE =
      CodeList.of(
          "stage",
          "Stages of treatment",
          "Stages from the first impression to the review, in the order in which they follow one"
              + " another.",
          TreatmentStage.class,
          TreatmentStage::title);

  static final CodeList PROGRESS =
      CodeList.of(
          "stage-progress",
          "Progress of a stage",
          "How far a stage is, on the day of the bundle. One that waits is barred by another that"
              + " has to come before it.",
          Timetable.State.class,
          Timetable.State::words);

  static final CodeList ALLERGY =
      new CodeList(
          "material-allergy",
          "Allergies to materials",
          "What is said where no allergy is recorded.",
          List.of(
              new Code(
                  "none-known",
                  "No known allergy to materials",
                  "It was asked for, and none is known to metals or resins of dentures.")));

  static final CodeList DOCUMENT =
      CodeList.of(
          "document",
          "Kinds of document",
          "What a paper is: an order to a laboratory, or an exercise that must never be taken for"
              + " one.",
          DocumentKind.class,
          DocumentKind::title);

  static final CodeList ATTACHMENT =
      new CodeList(
          "attachment",
          "Attachments",
          "What is attached to an order.",
          List.of(
              new Code(
                  "design-sheet",
                  "Design sheet",
                  "The document with drawing, schedule and all particulars, as PDF."),
              new Code("case-file", "Case file", "The case as Saddlewright keeps it, as JSON.")));

  static final List<CodeList> ALL =
      List.of(
          TOOTH,
          TOOTH_SITE,
          TOOTH_STATE,
          DEVICE,
          COMPONENT,
          FIELD,
          ANSWER,
          KENNEDY,
          ENCLOSURE,
          PREPARATION,
          STAGE,
          PROGRESS,
          ALLERGY,
          DOCUMENT,
          ATTACHMENT);

  private LocalCodes() {}

  /** A tooth as a concept that is read with its number. */
  static ObjectNode tooth(Tooth tooth) {
    return TOOTH.concept(tooth.toString(), tooth + ", " + ToothNames.full(tooth));
  }

  private static String reason(KennedyClass k) {
    return k == KennedyClass.NONE ? "nothing to be replaced" : "no tooth stands";
  }
}
