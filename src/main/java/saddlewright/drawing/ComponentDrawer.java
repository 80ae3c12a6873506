package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
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
    Ink ink = component.base() == Saddle.Base.METAL ? Ink.METAL : Ink.ACRYLIC;
    return with(ink, new SaddleDrawer(laid, subject()).saddle(component));
  }

  @Override
  public List<Mark> rest(Rest component) {
    return with(
        Ink.REST, new CastPartDrawer(laid, subject()).rest(component, placed(component.tooth())));
  }

  @Override
  public List<Mark> clasp(Clasp component) {
    return with(
        Ink.RETENTIVE,
        new ClaspDrawer(laid, subject()).marks(component, placed(component.tooth())));
  }

  @Override
  public List<Mark> reciprocalArm(ReciprocalArm component) {
    return with(Ink.RECIPROCAL, new CastPartDrawer(laid, subject()).reciprocalArm());
  }

  @Override
  public List<Mark> guidePlate(GuidePlate component) {
    return with(Ink.GUIDE, new CastPartDrawer(laid, subject()).guidePlate());
  }

  @Override
  public List<Mark> guidePlane(GuidePlane component) {
    return with(Ink.GUIDE, new CastPartDrawer(laid, subject()).guidePlane());
  }

  @Override
  public List<Mark> plating(Plating component) {
    return with(Ink.METAL, List.of());
  }

  @Override
  public List<Mark> minorConnector(MinorConnector component) {
    return with(Ink.METAL, List.of());
  }

  @Override
  public List<Mark> majorConnector(MajorConnector component) {
    return with(Ink.METAL, List.of());
  }

  @Override
  public List<Mark> retentionMesh(RetentionMesh component) {
    return with(Ink.MESH, new SaddleDrawer(laid, subject()).mesh(component));
  }

  @Override
  public List<Mark> finishLine(FinishLine component) {
    return with(Ink.METAL_LINE, new SaddleDrawer(laid, subject()).finishLine());
  }

  @Override
  public List<Mark> tissueStop(TissueStop component) {
    return with(Ink.METAL, new SaddleDrawer(laid, subject()).stop());
  }

  @Override
  public List<Mark> backing(Backing component) {
    return with(Ink.METAL, List.of());
  }

  @Override
  public List<Mark> postDam(PostDam component) {
    return with(Ink.METAL_LINE, new FittingSurfaceDrawer(laid, subject()).postDam());
  }

  @Override
  public List<Mark> relief(Relief component) {
    return with(Ink.RELIEF, new FittingSurfaceDrawer(laid, subject()).relief());
  }

  @Override
  public List<Mark> note(Note component) {
    return new WordsDrawer(laid, subject()).note(component, layout.form().arch() == Arch.UPPER);
  }

  @Override
  public List<Mark> unknown(UnknownComponent component) {
    return new WordsDrawer(laid, subject()).unknown(component, layout);
  }

  /** The marks, with the area by which the component can be picked. */
  private List<Mark> with(Ink ink, List<Mark> marks) {
    List<Mark> out = new ArrayList<>(marks);
    out.addAll(Grip.of(laid, Subject.of(layout.form().arch(), laid.component()), ink));
    return out;
  }

  private PlacedTooth placed(Tooth tooth) {
    return layout.form().tooth(tooth);
  }

  private Optional<Subject> subject() {
    return Optional.of(Subject.of(layout.form().arch(), laid.component()));
  }
}
