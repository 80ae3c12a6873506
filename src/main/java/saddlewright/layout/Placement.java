package saddlewright.layout;

import saddlewright.design.*;
import saddlewright.geometry.Region;

/** Hands each kind of component to the class that knows where it lies. */
final class Placement implements ComponentVisitor<Laid> {
  private final Ground ground;

  Placement(Ground ground) {
    this.ground = ground;
  }

  @Override
  public Laid saddle(Saddle saddle) {
    return nowhere(saddle);
  }

  @Override
  public Laid rest(Rest rest) {
    return nowhere(rest);
  }

  @Override
  public Laid clasp(Clasp clasp) {
    return nowhere(clasp);
  }

  @Override
  public Laid reciprocalArm(ReciprocalArm arm) {
    return nowhere(arm);
  }

  @Override
  public Laid guidePlate(GuidePlate plate) {
    return nowhere(plate);
  }

  @Override
  public Laid guidePlane(GuidePlane plane) {
    return nowhere(plane);
  }

  @Override
  public Laid plating(Plating plating) {
    return nowhere(plating);
  }

  @Override
  public Laid minorConnector(MinorConnector connector) {
    return nowhere(connector);
  }

  @Override
  public Laid majorConnector(MajorConnector connector) {
    return nowhere(connector);
  }

  @Override
  public Laid retentionMesh(RetentionMesh mesh) {
    return nowhere(mesh);
  }

  @Override
  public Laid finishLine(FinishLine line) {
    return nowhere(line);
  }

  @Override
  public Laid tissueStop(TissueStop stop) {
    return nowhere(stop);
  }

  @Override
  public Laid backing(Backing backing) {
    return nowhere(backing);
  }

  @Override
  public Laid postDam(PostDam dam) {
    return nowhere(dam);
  }

  @Override
  public Laid relief(Relief relief) {
    return nowhere(relief);
  }

  @Override
  public Laid note(Note note) {
    return nowhere(note);
  }

  @Override
  public Laid unknown(UnknownComponent unknown) {
    return nowhere(unknown);
  }

  private static Laid nowhere(Component component) {
    return Laid.of(component, Substance.NONE, Region.EMPTY);
  }
}
