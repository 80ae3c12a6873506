package saddlewright.design;

/**
 * Work to be done for each kind of component; a new kind breaks the build where it must be handled.
 */
public interface ComponentVisitor<R> {
  R saddle(Saddle saddle);

  R rest(Rest rest);

  R clasp(Clasp clasp);

  R reciprocalArm(ReciprocalArm arm);

  R guidePlate(GuidePlate plate);

  R guidePlane(GuidePlane plane);

  R plating(Plating plating);

  R minorConnector(MinorConnector connector);

  R majorConnector(MajorConnector connector);

  R retentionMesh(RetentionMesh mesh);

  R finishLine(FinishLine line);

  R tissueStop(TissueStop stop);

  R backing(Backing backing);

  R postDam(PostDam dam);

  R relief(Relief relief);

  R note(Note note);

  R unknown(UnknownComponent unknown);
}
