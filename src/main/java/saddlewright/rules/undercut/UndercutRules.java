package saddlewright.rules.undercut;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of undercuts, sorted by name. */
public final class UndercutRules {
  public static final List<Rule> ALL =
      List.of(
          new AbsentUndercutsAreMade(),
          new ArmsStartAwayFromTheirUndercut(),
          new CastArmsAreLongEnough(),
          new IBarTipsLieMidBuccalOrMesially(),
          new IBarsHaveTheirUndercut(),
          new LinguallyUndercutMolarsTakeRingClasps(),
          new RigidPartsStayAboveTheSurveyLine(),
          new TipsAheadOfTheAxisAreWrought(),
          new TipsClearTheGingivalMargin(),
          new TipsEndInUndercuts(),
          new TipsReachTheTerminalThird(),
          new ToothBorneSaddlesTakeCastClasps(),
          new UndercutsSuitTheMaterial());

  private UndercutRules() {}
}
