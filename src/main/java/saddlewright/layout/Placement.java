package saddlewright.layout;

import saddlewright.dentition.Arch;
import java.util.List;
import saddlewright.design.*;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
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
    return RestPlacement.lay(rest, ground.tooth(rest.tooth()));
  }

  @Override
  public Laid clasp(Clasp clasp) {
    return clasp.form().isOcclusallyApproaching()
        ? OcclusalArm.lay(clasp, ground)
        : GingivalArm.lay(clasp, ground);
  }

  @Override
  public Laid reciprocalArm(ReciprocalArm arm) {
    return BracingPlacement.arm(arm, ground.tooth(arm.tooth()));
  }

  @Override
  public Laid guidePlate(GuidePlate plate) {
    return BracingPlacement.plate(plate, ground.tooth(plate.tooth()));
  }

  @Override
  public Laid guidePlane(GuidePlane plane) {
    return BracingPlacement.plane(plane, ground.tooth(plane.tooth()));
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
    Laid laid = nowhere(note);
    return note.pointsAtX().isEmpty()
        ? laid
        : laid.withDetails(
            List.of(
                Path.of(
                    new Point(note.x(), note.y()),
                    new Point(note.pointsAtX().get(), note.pointsAtY().get()))));
  }

  @Override
  public Laid unknown(UnknownComponent unknown) {
    return nowhere(unknown);
  }

  private static Laid nowhere(Component component) {
    return Laid.of(component, Substance.NONE, Region.EMPTY);
  }
}
