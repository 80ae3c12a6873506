package saddlewright.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.IssuedRevision;
import saddlewright.casefile.order.Item;

class RevisionTest {
  private static Case issue(Case c) {
    Revision r = Revision.of(c);
    List<IssuedRevision> out = new java.util.ArrayList<>(c.prescription().issued());
    out.add(new IssuedRevision(r.number(), LocalDate.of(2026, 11, 2), r.hash()));
    return c.with(c.prescription().withIssued(out));
  }

  @Test
  void a_revision_replaces_the_one_before_by_number_and_hash() {
    Case first = Mouths.lowerMissing(36);
    Revision draft = Revision.of(first);
    assertThat(draft.number()).isEqualTo(1);
    assertThat(draft.issued()).isFalse();
    assertThat(draft.replaces()).isEmpty();

    Case out = issue(first);
    assertThat(Revision.of(out).issued()).isTrue();
    assertThat(Revision.of(out).number()).isEqualTo(1);
    assertThat(Revision.of(out).hash()).isEqualTo(draft.hash());

    Case changed = out.with(out.prescription().with(Item.TOOTH_SHADE, "B2"));
    Revision second = Revision.of(changed);
    assertThat(second.number()).isEqualTo(2);
    assertThat(second.issued()).isFalse();
    assertThat(second.hash()).isNotEqualTo(draft.hash());
    assertThat(second.replaces())
        .hasValueSatisfying(r -> assertThat(r.hash()).isEqualTo(draft.hash()));
    assertThat(Revision.of(issue(changed)).replaces()).isPresent();
  }
}
