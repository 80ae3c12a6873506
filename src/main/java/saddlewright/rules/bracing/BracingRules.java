package saddlewright.rules.bracing;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of bracing and reciprocation, sorted by name. */
public final class BracingRules {
  public static final List<Rule> ALL =
      List.of(
          new ClaspUnitsEncloseMoreThanHalf(),
          new EachSideIsBracedOnTwoTeeth(),
          new EveryClaspIsReciprocated(),
          new GuidePlanesAreTallEnough(),
          new GuidePlatesStandOnUprightSurfaces(),
          new GuideSurfacesComeInPairs(),
          new PlatesUnderBarArmsEndAtTheSurveyLine(),
          new ReciprocalArmsFaceATip(),
          new ReciprocalArmsStayAboveTheSurveyLine(),
          new ReciprocationLastsAsLongAsTheFlexing(),
          new ShortCrownsAreReciprocatedByPlates());

  private BracingRules() {}
}
