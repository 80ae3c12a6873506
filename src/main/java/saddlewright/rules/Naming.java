package saddlewright.rules;

import java.util.Locale;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ComponentVisitor;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Note;
import saddlewright.design.Plating;
import saddlewright.design.PostDam;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;
import saddlewright.design.UnknownComponent;

/** The name of a component as a finding calls it, such as "rest on 35". */
public final class Naming implements ComponentVisitor<String> {
  private static final Naming NAMING = new Naming();

  private Naming() {}

  public static String of(Component component) {
    return component.accept(NAMING);
  }

  @Override
  public String saddle(Saddle saddle) {
    return "saddle " + saddle.span();
  }

  @Override
  public String rest(Rest rest) {
    String site =
        switch (rest.site()) {
          case MESIAL_OCCLUSAL -> "mesial rest";
          case DISTAL_OCCLUSAL -> "distal rest";
          case CINGULUM -> "cingulum rest";
          case MESIAL_INCISAL, DISTAL_INCISAL -> "incisal rest";
        };
    return site + " on " + rest.tooth();
  }

  @Override
  public String clasp(Clasp clasp) {
    String form =
        switch (clasp.form()) {
          case CIRCUMFERENTIAL, COMBINATION -> "clasp arm";
          case RING -> "ring clasp";
          case BACK_ACTION -> "back-action clasp";
          case EMBRASURE -> "embrasure clasp";
          case I_BAR -> "I-bar";
          case T_BAR -> "T-bar";
          case HALF_T -> "half-T bar";
          case L_BAR -> "L-bar";
        };
    return form + " on " + clasp.tooth();
  }

  @Override
  public String reciprocalArm(ReciprocalArm arm) {
    return "reciprocal arm on " + arm.tooth();
  }

  @Override
  public String guidePlate(GuidePlate plate) {
    return "guide plate on " + plate.tooth();
  }

  @Override
  public String guidePlane(GuidePlane plane) {
    return "guide plane on " + plane.tooth();
  }

  @Override
  public String plating(Plating plating) {
    return "plating " + plating.span();
  }

  @Override
  public String minorConnector(MinorConnector connector) {
    return "minor connector at " + connector.tooth();
  }

  @Override
  public String majorConnector(MajorConnector connector) {
    return connector.form().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  @Override
  public String retentionMesh(RetentionMesh mesh) {
    return "mesh " + mesh.span();
  }

  @Override
  public String finishLine(FinishLine line) {
    return "finish line " + line.span();
  }

  @Override
  public String tissueStop(TissueStop stop) {
    return "tissue stop at " + stop.tooth();
  }

  @Override
  public String backing(Backing backing) {
    return "backing at " + backing.tooth();
  }

  @Override
  public String postDam(PostDam dam) {
    return "post-dam";
  }

  @Override
  public String relief(Relief relief) {
    return "relief";
  }

  @Override
  public String note(Note note) {
    return "note";
  }

  @Override
  public String unknown(UnknownComponent unknown) {
    return "unknown component \"" + unknown.id() + "\"";
  }
}
