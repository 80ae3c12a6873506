package saddlewright.interchange;

import java.util.List;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
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

/** Tells the code of the kind of a component. */
final class ComponentKind implements ComponentVisitor<String> {
  static final ComponentKind FINDER = new ComponentKind();

  static final List<Code> CODES =
      List.of(
          Code.of("saddle", "Saddle"),
          Code.of("rest", "Rest"),
          new Code(
              "indirect-retainer", "Indirect retainer", "A rest that guards against rotation."),
          Code.of("clasp", "Clasp arm"),
          Code.of("reciprocal-arm", "Reciprocal arm"),
          Code.of("guide-plate", "Guide plate"),
          Code.of("guide-plane", "Guide plane"),
          Code.of("plating", "Plating"),
          Code.of("minor-connector", "Minor connector"),
          Code.of("major-connector", "Major connector"),
          Code.of("retention-mesh", "Retention mesh"),
          Code.of("finish-line", "Finish line"),
          Code.of("tissue-stop", "Tissue stop"),
          Code.of("backing", "Backing"),
          Code.of("post-dam", "Post dam"),
          Code.of("relief", "Relief"),
          Code.of("note", "Note on the drawing"),
          new Code(
              "unknown", "Unknown component", "Of a kind that this version of the program lacks."));

  private ComponentKind() {}

  @Override
  public String saddle(Saddle saddle) {
    return "saddle";
  }

  @Override
  public String rest(Rest rest) {
    return rest.indirectRetainer() ? "indirect-retainer" : "rest";
  }

  @Override
  public String clasp(Clasp clasp) {
    return "clasp";
  }

  @Override
  public String reciprocalArm(ReciprocalArm arm) {
    return "reciprocal-arm";
  }

  @Override
  public String guidePlate(GuidePlate plate) {
    return "guide-plate";
  }

  @Override
  public String guidePlane(GuidePlane plane) {
    return "guide-plane";
  }

  @Override
  public String plating(Plating plating) {
    return "plating";
  }

  @Override
  public String minorConnector(MinorConnector connector) {
    return "minor-connector";
  }

  @Override
  public String majorConnector(MajorConnector connector) {
    return "major-connector";
  }

  @Override
  public String retentionMesh(RetentionMesh mesh) {
    return "retention-mesh";
  }

  @Override
  public String finishLine(FinishLine line) {
    return "finish-line";
  }

  @Override
  public String tissueStop(TissueStop stop) {
    return "tissue-stop";
  }

  @Override
  public String backing(Backing backing) {
    return "backing";
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
    return "unknown";
  }
}
