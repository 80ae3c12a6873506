package saddlewright.rules;

import java.util.List;
import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Zone;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Rest;
import saddlewright.rules.framework.ConnectorsClearTheGingivalMargins;
import saddlewright.rules.framework.DenturesAreNotOneSided;
import saddlewright.rules.framework.DenturesHaveOneMajorConnector;
import saddlewright.rules.framework.EveryComponentIsJoined;

/** Cases for the rules of the framework. */
final class FrameworkCases {
  private FrameworkCases() {}

  private static ConnectorShape shape() {
    return ConnectorShape.DEFAULT;
  }

  static List<RuleCase> all() {
    return List.of(
        RuleCase.of(new ConnectorsClearTheGingivalMargins())
            .fires(
                "a bar set 1 mm from the margins",
                Designs.lowerClassOne()
                    .without(MajorConnector.class)
                    .add(
                        MajorConnector.of(
                                ComponentId.of("bar"), ConnectorForm.LINGUAL_BAR, Span.of(45, 35))
                            .withShape(shape().withClearance(Optional.of(1.0)))),
                "Lingual bar: its border lies close to the gingival margins (# mm"
                    + " against at least 3 mm)")
            .fires(
                "a strap set 4 mm from the margins",
                Designs.upperClassThree()
                    .without(MajorConnector.class)
                    .add(
                        MajorConnector.of(
                                ComponentId.of("strap"),
                                ConnectorForm.PALATAL_STRAP,
                                Span.of(15, 25))
                            .withShape(shape().withClearance(Optional.of(4.0)))),
                Severity.SHOULD,
                "Palatal strap: its border lies close to the gingival margins (# mm"
                    + " against at least 6 mm)")
            .fires(
                "a bar at the usual 3 mm, in a school that asks for 4 (notes after McCracken)",
                Designs.lowerClassOne().judgedBy(Profile.NORTH_AMERICAN_TEACHING),
                Severity.SHOULD,
                "Lingual bar: its border lies close to the gingival margins (# mm"
                    + " against at least 4 mm)")
            .quiet("a bar at its usual clearance", Designs.lowerClassOne())
            .quiet("a strap at its usual clearance", Designs.upperClassThree()),
        RuleCase.of(new DenturesAreNotOneSided())
            .fires(
                "all on the right",
                Designs.upper()
                    .missing(15, 16)
                    .saddle(15, 16)
                    .threeArm(17, RestSite.MESIAL_OCCLUSAL, End.MESIAL, Zone.DISTOBUCCAL)
                    .rest(14, RestSite.DISTAL_OCCLUSAL),
                "Upper denture: all parts lie on the patient's right: it could be swallowed or"
                    + " inhaled (1 side against 2 sides, joined)")
            .fires(
                "a connector that stays on one side",
                Designs.lowerClassOne()
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_BAR, 31, 35),
                "Lower denture: its connector does not cross the midline: it could be swallowed or"
                    + " inhaled (connector on 1 side against connector on both sides)")
            .quiet("joined across", Designs.lowerClassOne())
            .quiet("nothing designed", Designs.lower().missing(36)),
        RuleCase.of(new DenturesHaveOneMajorConnector())
            .fires(
                "none",
                Designs.lowerClassOne().without(MajorConnector.class),
                "Lower denture: nothing joins its parts (0 major connectors against 1 major"
                    + " connector)")
            .fires(
                "two",
                Designs.lowerClassOne().connector(ConnectorForm.DENTAL_BAR, 43, 33),
                "Lower denture: more than one major connector (2 major connectors against 1 major"
                    + " connector)")
            .quiet("one", Designs.lowerClassOne())
            .quiet("nothing designed", Designs.lower().missing(36)),
        RuleCase.of(new EveryComponentIsJoined())
            .fires(
                "a bar that stops at the canines",
                Designs.lowerClassOne()
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_BAR, 43, 33),
                "Saddle 36–37: not joined to the framework (# mm away against 0 mm)")
            .fires(
                "a rest whose strut was taken away",
                Designs.lowerClassOne().without(MinorConnector.class, 33),
                "Cingulum rest on 33: not joined to the framework (# mm away against 0 mm)")
            .fires(
                "an arm without a rest to come from",
                Designs.lowerClassTwo().without(Rest.class, 46).without(MinorConnector.class, 46),
                "Clasp arm on 46: not joined to the framework (# mm away against 0 mm)")
            .quiet("one casting", Designs.lowerClassOne())
            .quiet(
                "a part on a lost tooth is another rule's",
                Designs.lowerClassOne().rest(38, RestSite.MESIAL_OCCLUSAL))
            .quiet("no connector yet", Designs.lowerClassOne().without(MajorConnector.class)));
  }
}
