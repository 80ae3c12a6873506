package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Tooth;

/** One part of a removable partial denture, or a note on its sheet. */
public sealed interface Component
    permits Saddle,
        Rest,
        Clasp,
        ReciprocalArm,
        GuidePlate,
        GuidePlane,
        Plating,
        MinorConnector,
        MajorConnector,
        RetentionMesh,
        FinishLine,
        TissueStop,
        Backing,
        PostDam,
        Relief,
        Note,
        UnknownComponent {

  ComponentId id();

  /** The same component under another id. */
  Component withId(ComponentId id);

  <R> R accept(ComponentVisitor<R> visitor);

  /** The same component on the other side of the arch, under another id. */
  Component mirrored(ComponentId id);

  /** The tooth positions that it stands on or belongs to, in arch order; empty for notes. */
  List<Tooth> teeth();
}
