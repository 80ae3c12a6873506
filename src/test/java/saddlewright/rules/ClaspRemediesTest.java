package saddlewright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import saddlewright.chart.Tilt;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;

/**
 * On any design, however mad, the rules of clasps name a fault once and offer no edit that leaves
 * it standing.
 */
class ClaspRemediesTest {
  private static final int DESIGNS = 200;

  private static final List<Rule> RULES =
      Stream.of(RuleGroup.RETENTION, RuleGroup.CLASPING, RuleGroup.UNDERCUT)
          .flatMap(g -> g.rules().stream())
          .toList();

  private final Random random = new Random(20261125);

  @Test
  void every_remedy_clears_its_finding() {
    int tried = 0;
    for (int i = 0; i < DESIGNS; i++) {
      Situation s = design().situation();
      for (Rule rule : RULES) {
        List<Finding> found = rule.judge(s).findings();
        assertThat(found).extracting(Finding::key).doesNotHaveDuplicates();
        for (Finding f : found) {
          for (Remedy r : f.remedies()) {
            tried++;
            Situation after =
                Situation.of(s.chart(), s.opposing(), r.edit().applyTo(s.design()), s.profile());
            assertThat(rule.judge(after).findings())
                .as("%s: %s", f.sentence(), r.label())
                .extracting(Finding::key)
                .doesNotContain(f.key());
          }
        }
      }
    }
    assertThat(tried).isGreaterThan(DESIGNS);
  }

  private Designs design() {
    Designs d = random.nextBoolean() ? Designs.upper() : Designs.lower();
    List<Tooth> arch = Tooth.in(d.design().arch());
    times(8, () -> d.missing(any(arch).fdi()));
    times(4, () -> saddle(d, arch));
    times(6, () -> survey(d, any(arch).fdi()));
    times(5, () -> clasp(d, any(arch).fdi()));
    times(3, () -> d.rest(any(arch).fdi(), any(RestSite.values())));
    return d;
  }

  private void saddle(Designs d, List<Tooth> arch) {
    int from = random.nextInt(arch.size());
    int to = Math.min(arch.size() - 1, from + random.nextInt(4));
    d.saddle(arch.get(from).fdi(), arch.get(to).fdi());
  }

  private void survey(Designs d, int tooth) {
    d.undercut(tooth, any(Zone.values()), random.nextInt(4) * 0.25, random.nextInt(4));
    times(2, () -> d.mobile(tooth, random.nextInt(4)));
    times(2, () -> d.leaning(tooth, any(Tilt.values()), 2 + random.nextInt(30)));
    times(2, () -> d.buccalDepth(random.nextInt(9), tooth));
  }

  private void clasp(Designs d, int tooth) {
    d.clasp(
        tooth,
        any(ClaspForm.values()),
        any(Zone.values()),
        any(End.values()),
        any(ClaspMaterial.values()));
    times(2, () -> d.rest(tooth, any(RestSite.values())));
    times(2, () -> d.guidePlate(tooth, any(End.values())));
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
