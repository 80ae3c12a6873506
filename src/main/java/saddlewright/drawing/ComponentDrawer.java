package saddlewright.drawing;

import java.util.List;
import saddlewright.design.*;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

/** Hands each kind of component to the drawer that knows its look. */
final class ComponentDrawer implements ComponentVisitor<List<Mark>> {
  private final Laid laid;
  private final Layout layout;

  ComponentDrawer(Laid laid, Layout layout) {
    this.laid = laid;
    this.layout = layout;
  }

  @Override
  public List<Mark> saddle(Saddle component) {
    return List.of();
  }

  @Override
  public List<Mark> rest(Rest component) {
    return List.of();
  }

  @Override
  public List<Mark> clasp(Clasp component) {
    return List.of();
  }

  @Override
  public List<Mark> reciprocalArm(ReciprocalArm component) {
    return List.of();
  }

  @Override
  public List<Mark> guidePlate(GuidePlate component) {
    return List.of();
  }

  @Override
  public List<Mark> guidePlane(GuidePlane component) {
    return List.of();
  }

  @Override
  public List<Mark> plating(Plating component) {
    return List.of();
  }

  @Override
  public List<Mark> minorConnector(MinorConnector component) {
    return List.of();
  }

  @Override
  public List<Mark> majorConnector(MajorConnector component) {
    return List.of();
  }

  @Override
  public List<Mark> retentionMesh(RetentionMesh component) {
    return List.of();
  }

  @Override
  public List<Mark> finishLine(FinishLine component) {
    return List.of();
  }

  @Override
  public List<Mark> tissueStop(TissueStop component) {
    return List.of();
  }

  @Override
  public List<Mark> backing(Backing component) {
    return List.of();
  }

  @Override
  public List<Mark> postDam(PostDam component) {
    return List.of();
  }

  @Override
  public List<Mark> relief(Relief component) {
    return List.of();
  }

  @Override
  public List<Mark> note(Note component) {
    return List.of();
  }

  @Override
  public List<Mark> unknown(UnknownComponent component) {
    return List.of();
  }
}
