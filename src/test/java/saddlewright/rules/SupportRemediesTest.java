package saddlewright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import saddlewright.chart.Condition;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.Tilt;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ClaspForm;
import saddlewright.design.ConnectorForm;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlane;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;

/**
 * On any design, however mad, the rules of placing, saddles and support name a fault once and offer
 * no edit that leaves it standing.
 */
class SupportRemediesTest {
  private static final int DESIGNS = 200;

  private static final List<Rule> RULES =
      Stream.of(RuleGroup.PLACING, RuleGroup.SADDLES, RuleGroup.SUPPORT)
          .flatMap(g -> g.rules().stream())
          .toList();

  private final Random random = new Random(20261126);

  @Test
  void every_remedy_clears_its_finding() {
    int tried = 0;
    Set<String> wrong = new TreeSet<>();
    for (int i = 0; i < DESIGNS; i++) {
      Situation s = design().situation();
      for (Rule rule : RULES) {
        List<Finding> found = rule.judge(s).findings();
        Set<String> keys = new TreeSet<>();
        for (Finding f : found) {
          if (!keys.add(f.key())) {
            wrong.add("twice: " + f.key());
          }
          for (Remedy r : f.remedies()) {
            tried++;
            Situation after =
                Situation.of(s.chart(), s.opposing(), r.edit().applyTo(s.design()), s.profile());
            if (rule.judge(after).findings().stream().anyMatch(x -> x.key().equals(f.key()))) {
              wrong.add(f.ruleId() + ": " + f.sentence() + ": " + r.label());
            }
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(tried).isGreaterThan(DESIGNS);
  }

  private Designs design() {
    Designs d = random.nextBoolean() ? Designs.upper() : Designs.lower();
    List<Tooth> arch = Tooth.in(d.design().arch());
    times(9, () -> d.missing(any(arch).fdi()));
    times(2, () -> d.notReplaced(any(arch).fdi()));
    times(2, () -> d.closed(any(arch).fdi()));
    times(2, () -> d.root(any(arch).fdi()));
    times(2, () -> d.toBeExtracted(any(arch).fdi()));
    times(2, () -> d.standing(any(arch).fdi()));
    times(5, () -> saddle(d, arch));
    times(6, () -> survey(d, any(arch).fdi()));
    times(7, () -> rest(d, any(arch).fdi()));
    times(4, () -> clasp(d, any(arch).fdi()));
    times(3, () -> metal(d, any(arch).fdi()));
    times(2, () -> connector(d, arch));
    return d;
  }

  private void saddle(Designs d, List<Tooth> arch) {
    int from = random.nextInt(arch.size());
    int to = Math.min(arch.size() - 1, from + random.nextInt(4));
    Span span = Span.of(arch.get(from), arch.get(to));
    d.add(
        new Saddle(
            d.design().freshId("saddle"),
            span,
            any(Saddle.Base.values()),
            any(Saddle.Flange.values()),
            any(Saddle.Finish.values())));
    times(2, () -> d.mesh(span.first().fdi(), span.last().fdi()));
    times(2, () -> d.mesh(span.first().fdi(), span.first().fdi()));
    times(
        2,
        () -> d.finishLine(span.first().fdi(), span.last().fdi(), any(FinishLine.Level.values())));
  }

  private void survey(Designs d, int tooth) {
    times(2, () -> d.mobile(tooth, random.nextInt(4)));
    times(2, () -> d.tilted(tooth, any(Tilt.values())));
    times(2, () -> d.doubtful(tooth));
    times(3, () -> d.room(tooth, any(RestSite.values()), random.nextInt(5) * 0.5));
    times(2, () -> d.saddleSpace(random.nextInt(7), tooth));
    times(2, () -> d.tissueUndercut(random.nextInt(4), tooth));
    times(2, () -> d.condition(tooth, any(Condition.values())));
    times(
        2,
        () ->
            d.tissues(
                t ->
                    t.withRidge(
                        any(Side.values()), Optional.of(any(SoftTissues.RidgeState.values())))));
  }

  private void rest(Designs d, int tooth) {
    d.rest(tooth, any(RestSite.values()), any(Rest.Form.values()), any(Rest.Seat.values()));
  }

  private void clasp(Designs d, int tooth) {
    d.clasp(tooth, any(ClaspForm.values()), any(Zone.values()), any(End.values()));
  }

  private void metal(Designs d, int tooth) {
    times(2, () -> d.guidePlate(tooth, any(End.values())));
    times(2, () -> d.guidePlane(tooth, any(GuidePlane.Surface.values())));
    times(2, () -> d.stop(tooth));
    times(2, () -> d.backing(tooth));
    times(2, () -> d.plating(tooth, tooth));
  }

  private void connector(Designs d, List<Tooth> arch) {
    List<ConnectorForm> forms =
        Stream.of(ConnectorForm.values()).filter(f -> f.arch() == d.design().arch()).toList();
    d.connector(any(forms), arch.get(random.nextInt(5)).fdi(), arch.get(11).fdi());
  }

  private void times(int fewerThan, Runnable what) {
    for (int k = random.nextInt(fewerThan); k > 0; k--) {
      what.run();
    }
  }

  private <T> T any(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }

  @SafeVarargs
  private <T> T any(T... from) {
    return from[random.nextInt(from.length)];
  }
}
