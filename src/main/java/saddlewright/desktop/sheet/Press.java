package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Case;
import saddlewright.design.Subject;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.sheet.Offers.Offer;
import saddlewright.desktop.tools.Aim;
import saddlewright.desktop.tools.Proposal;
import saddlewright.desktop.tools.Refusal;

/** What pressing a place of the sheet does, be it by pointer or by key. */
final class Press {
  private final SheetPane sheet;
  private final Worktable table;

  Press(SheetPane sheet, Worktable table) {
    this.sheet = sheet;
    this.table = table;
  }

  /** Places what is offered there; where nothing is, selects what is there. */
  void at(Aim aim, Offers offers, boolean bothSides) {
    Optional<Offer> offer = offers.at(aim, bothSides);
    if (offer.isEmpty()) {
      select(sheet.pick(aim), offers.refusal(aim).flatMap(Refusal::there));
      return;
    }
    place(offer.get().proposal(), aim);
    offers.begin();
  }

  /** Places it and selects what is new of it. */
  void place(Proposal p, Aim aim) {
    Case before = table.current();
    table.apply(p.name(), p.next());
    if (before.design(p.arch()).equals(p.next().design(p.arch()))) {
      aim.tooth().ifPresent(t -> table.select(Subject.of(t)));
    } else {
      table.selectNew(before.design(p.arch()), table.current().design(p.arch()));
    }
  }

  /**
   * Selects what is there, first what stood in the way of placing another; pressing again at the
   * same place goes on to what lies below.
   */
  private void select(List<Subject> there, Optional<Subject> first) {
    List<Subject> row = new ArrayList<>(there);
    first.ifPresent(
        s -> {
          row.remove(s);
          row.add(0, s);
        });
    if (row.isEmpty()) {
      table.select();
      return;
    }
    int i = table.selected().map(row::indexOf).orElse(-1);
    table.select(row.get((i + 1) % row.size()));
  }
}
