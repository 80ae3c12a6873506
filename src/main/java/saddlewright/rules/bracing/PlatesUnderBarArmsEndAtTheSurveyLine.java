package saddlewright.rules.bracing;

import java.util.Locale;
import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Note;
import saddlewright.design.Plating;
import saddlewright.design.Subject;
import saddlewright.geometry.Point;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/**
 * On the last tooth before a free end a plate above the survey line is a rest on a slope behind the
 * bar, and one below it traps food.
 */
public final class PlatesUnderBarArmsEndAtTheSurveyLine implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "plates-under-bar-arms-end-at-the-survey-line",
          "Where a plate covers a free-end abutment with a bar arm, the sheet says that it ends"
              + " exactly at the survey line.",
          Severity.CONSIDER,
          Source.read(Literature.OKLAHOMA + ": tori beside RPI units"));

  private static final String WORDS = "Plate on %s: upper edge exactly at the survey line";

  /** How far to the inside of the tooth the words stand, mm. */
  private static final double INWARDS = 14;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (AreaSupport a : AreaSupport.all(s)) {
      if (!a.isFreeEnd()) {
        continue;
      }
      Tooth t = a.ends().get(0).abutment();
      boolean barred =
          s.design().stream(Clasp.class)
              .anyMatch(c -> c.tooth() == t && c.form().isGingivallyApproaching());
      plate(s, t).filter(p -> barred).ifPresent(p -> weigh(s, t, p, on));
    }
  }

  private static void weigh(Situation s, Tooth t, Component plate, Judging on) {
    Optional<Note> note =
        s.design().stream(Note.class)
            .filter(n -> n.text().toLowerCase(Locale.ROOT).contains("survey line"))
            .findFirst();
    if (note.isPresent()) {
      on.upheld("says where the plate on " + t + " ends", Subject.of(s.arch(), note.get()));
      return;
    }
    on.finding(t.toString(), Subject.of(t), Subject.of(s.arch(), plate))
        .fact(
            Naming.of(plate)
                + " covers it behind a bar arm; above the survey line it would act as a rest before"
                + " the mesial one, below it food packs")
        .measured("no note", "upper edge at the survey line noted")
        .remedy("Note where the plate ends", new DesignEdit.Place(note(s, t)))
        .done();
  }

  private static Note note(Situation s, Tooth t) {
    PlacedTooth crown = s.form().tooth(t);
    Point at = crown.centre().minus(crown.outward().times(INWARDS));
    Point rim = crown.rim(crown.degreesAcross(Face.LINGUAL));
    return new Note(
        s.design().freshId("note"),
        String.format(Locale.ROOT, WORDS, t),
        at.x(),
        at.y(),
        Optional.of(rim.x()),
        Optional.of(rim.y()));
  }

  private static Optional<Component> plate(Situation s, Tooth t) {
    return s.design().components().stream()
        .filter(c -> c.teeth().contains(t))
        .filter(
            c ->
                c instanceof Plating
                    || c instanceof MajorConnector m && m.form() == ConnectorForm.LINGUAL_PLATE)
        .findFirst();
  }
}
