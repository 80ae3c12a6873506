package saddlewright.prescription;

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

/**
 * Where a component stands in a schedule.
 *
 * @param category its group
 * @param wholeArch belongs to the arch as a whole and comes before what stands on single teeth
 * @param rank order among the components of one tooth in one group
 */
record ComponentPlace(Category category, boolean wholeArch, int rank) {

  private static ComponentPlace at(Category category, int rank) {
    return new ComponentPlace(category, false, rank);
  }

  /** Finds the place of each kind of component. */
  static final ComponentVisitor<ComponentPlace> FINDER =
      new ComponentVisitor<>() {
        @Override
        public ComponentPlace saddle(Saddle saddle) {
          return at(Category.SADDLES, 0);
        }

        @Override
        public ComponentPlace retentionMesh(RetentionMesh mesh) {
          return at(Category.SADDLES, 1);
        }

        @Override
        public ComponentPlace finishLine(FinishLine line) {
          return at(Category.SADDLES, 2);
        }

        @Override
        public ComponentPlace tissueStop(TissueStop stop) {
          return at(Category.SADDLES, 3);
        }

        @Override
        public ComponentPlace backing(Backing backing) {
          return at(Category.SADDLES, 4);
        }

        @Override
        public ComponentPlace rest(Rest rest) {
          return at(
              rest.indirectRetainer() ? Category.INDIRECT_RETENTION : Category.SUPPORT,
              rest.site().ordinal());
        }

        @Override
        public ComponentPlace clasp(Clasp clasp) {
          return at(Category.RETENTION, 0);
        }

        @Override
        public ComponentPlace reciprocalArm(ReciprocalArm arm) {
          return at(Category.BRACING, 0);
        }

        @Override
        public ComponentPlace guidePlate(GuidePlate plate) {
          return at(Category.BRACING, 1);
        }

        @Override
        public ComponentPlace guidePlane(GuidePlane plane) {
          return at(Category.BRACING, 2);
        }

        @Override
        public ComponentPlace plating(Plating plating) {
          return at(Category.BRACING, 3);
        }

        @Override
        public ComponentPlace majorConnector(MajorConnector connector) {
          return new ComponentPlace(Category.CONNECTORS, true, 0);
        }

        @Override
        public ComponentPlace postDam(PostDam dam) {
          return new ComponentPlace(Category.CONNECTORS, true, 1);
        }

        @Override
        public ComponentPlace relief(Relief relief) {
          return new ComponentPlace(Category.CONNECTORS, true, 2);
        }

        @Override
        public ComponentPlace minorConnector(MinorConnector connector) {
          return at(Category.CONNECTORS, 3);
        }

        @Override
        public ComponentPlace note(Note note) {
          return new ComponentPlace(Category.OTHER, true, 0);
        }

        @Override
        public ComponentPlace unknown(UnknownComponent unknown) {
          return new ComponentPlace(Category.OTHER, true, 1);
        }
      };
}
