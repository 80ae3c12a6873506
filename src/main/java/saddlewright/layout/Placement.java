package saddlewright.layout;

import saddlewright.dentition.Arch;
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
    return new SaddlePlacement(ground).lay(saddle);
  }

  @Override
  public Laid rest(Rest rest) {
    return new RestPlacement(ground).lay(rest);
  }

  @Override
  public Laid clasp(Clasp clasp) {
    return clasp.form().isOcclusallyApproaching()
        ? new OcclusalArm(ground, clasp).lay()
        : new GingivalArm(ground, clasp).lay();
  }

  @Override
  public Laid reciprocalArm(ReciprocalArm arm) {
    return new BracingArm(ground, arm).lay();
  }

  @Override
  public Laid guidePlate(GuidePlate plate) {
    return new GuidePlacement(ground).plate(plate);
  }

  @Override
  public Laid guidePlane(GuidePlane plane) {
    return new GuidePlacement(ground).plane(plane);
  }

  @Override
  public Laid plating(Plating plating) {
    return new PlatingPlacement(ground).lay(plating);
  }

  @Override
  public Laid minorConnector(MinorConnector connector) {
    return new MinorConnectorPlacement(ground).lay(connector);
  }

  @Override
  public Laid majorConnector(MajorConnector connector) {
    return connector.form().arch() == Arch.UPPER
        ? new UpperConnector(ground, connector).lay()
        : new LowerConnector(ground, connector).lay();
  }

  @Override
  public Laid retentionMesh(RetentionMesh mesh) {
    return new MeshPlacement(ground).lay(mesh);
  }

  @Override
  public Laid finishLine(FinishLine line) {
    return new SaddleFittings(ground).finishLine(line);
  }

  @Override
  public Laid tissueStop(TissueStop stop) {
    return new SaddleFittings(ground).tissueStop(stop);
  }

  @Override
  public Laid backing(Backing backing) {
    return new SaddleFittings(ground).backing(backing);
  }

  @Override
  public Laid postDam(PostDam dam) {
    return new PalateDetails(ground).postDam(dam);
  }

  @Override
  public Laid relief(Relief relief) {
    return new PalateDetails(ground).relief(relief);
  }

  @Override
  public Laid note(Note note) {
    return NotePlacement.lay(note);
  }

  @Override
  public Laid unknown(UnknownComponent unknown) {
    return nowhere(unknown);
  }

  private static Laid nowhere(Component component) {
    return Laid.of(component, Substance.NONE, Region.EMPTY);
  }
}
