package saddlewright.casefile.json;

import java.util.Map;
import java.util.Set;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Condition;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;

/** The chart of an arch in the file: only what was found; a tooth that is not named just stands. */
final class ChartFormat {
  private ChartFormat() {}

  static ArchChart read(MembersIn arch, Arch which) {
    Map<Tooth, ToothFindings> teeth = arch.objectsByTooth("teeth", which, ChartFormat::readTooth);
    SoftTissues tissues =
        arch.object("softTissues", m -> readTissues(m, which)).orElse(SoftTissues.UNCHARTED);
    return new ArchChart(which, teeth, tissues);
  }

  static void write(ArchChart chart, MembersOut arch) {
    arch.object(
        "teeth",
        teeth -> {
          for (Tooth t : Tooth.in(chart.arch())) {
            teeth.objectAt(
                t.toString(), teeth.place().member(t.toString()), m -> write(chart.tooth(t), m));
          }
        });
    arch.object("softTissues", m -> write(chart.softTissues(), m));
  }

  private static ToothFindings readTooth(MembersIn m) {
    return new ToothFindings(
        m.word("status", ToothStatus.class).orElse(ToothStatus.STANDING),
        m.word("gap", GapDecision.class).orElse(GapDecision.REPLACED),
        m.flag("abutment"),
        m.word("tilt", Tilt.class),
        m.number("tiltDegrees"),
        m.number("rotationDegrees"),
        m.whole("mobility"),
        m.number("boneSupportPercent"),
        m.number("crownRoot"),
        m.number("crownHeight"),
        m.number("mesiodistal"),
        m.number("buccolingual"),
        m.word("condition", Condition.class),
        m.flag("doubtful"),
        m.objectsByWord("undercuts", Zone.class, ChartFormat::readUndercut),
        m.numbersByWord("clearances", RestSite.class),
        m.number("saddleSpace"),
        m.flag("visible"));
  }

  private static void write(ToothFindings f, MembersOut m) {
    boolean stands = f.status() == ToothStatus.STANDING;
    if (!stands) {
      m.word("status", f.status());
    }
    if (!stands || f.gap() != GapDecision.REPLACED) {
      m.word("gap", f.gap());
    }
    m.flagIfSet("abutment", f.abutment());
    m.word("tilt", f.tilt());
    m.number("tiltDegrees", f.tiltDegrees());
    m.number("rotationDegrees", f.rotationDegrees());
    m.whole("mobility", f.mobility());
    m.number("boneSupportPercent", f.boneSupportPercent());
    m.number("crownRoot", f.crownRoot());
    m.number("crownHeight", f.crownHeight());
    m.number("mesiodistal", f.mesiodistal());
    m.number("buccolingual", f.buccolingual());
    m.word("condition", f.condition());
    m.flagIfSet("doubtful", f.doubtful());
    m.object(
        "undercuts",
        zones -> f.undercuts().forEach((z, u) -> zones.object(Word.of(z), o -> write(u, o))));
    m.object(
        "clearances", sites -> f.clearances().forEach((s, mm) -> sites.number(Word.of(s), mm)));
    m.number("saddleSpace", f.saddleSpace());
    m.flagIfSet("visible", f.visible());
  }

  private static Undercut readUndercut(MembersIn m) {
    return new Undercut(m.requiredNumber("depth"), m.number("height"));
  }

  private static void write(Undercut u, MembersOut m) {
    m.number("depth", u.depth());
    m.number("height", u.height());
  }

  private static SoftTissues readTissues(MembersIn m, Arch arch) {
    return new SoftTissues(
        m.numbersByTooth("lingualDepth", arch),
        m.numbersByTooth("buccalDepth", arch),
        m.numbersByTooth("tissueUndercut", arch),
        Set.copyOf(m.teeth("frena", arch)),
        m.flag("highLingualFrenum"),
        Set.copyOf(m.words("tori", SoftTissues.Torus.class)),
        m.word("palate", SoftTissues.PalateForm.class),
        m.wordsByWord("ridges", Side.class, SoftTissues.RidgeState.class),
        m.number("palateLimit"));
  }

  private static void write(SoftTissues s, MembersOut m) {
    write("lingualDepth", s.lingualDepth(), m);
    write("buccalDepth", s.buccalDepth(), m);
    write("tissueUndercut", s.tissueUndercut(), m);
    m.teeth("frena", s.frena());
    m.flagIfSet("highLingualFrenum", s.highLingualFrenum());
    m.words("tori", s.tori());
    m.word("palate", s.palate());
    m.object("ridges", sides -> s.ridges().forEach((k, v) -> sides.word(Word.of(k), v)));
    m.number("palateLimit", s.palateLimit());
  }

  private static void write(String name, Map<Tooth, Double> byTooth, MembersOut m) {
    m.object(name, teeth -> byTooth.forEach((t, mm) -> teeth.number(t.toString(), mm)));
  }
}
