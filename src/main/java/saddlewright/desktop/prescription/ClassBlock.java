package saddlewright.desktop.prescription;

import saddlewright.casefile.order.Item;
import saddlewright.dentition.Arch;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;

/** The class of an arch as the prescriber reads it, beside the one that is worked out. */
final class ClassBlock extends AnswerBlock {
  private final Worktable table;
  private final Arch arch;

  ClassBlock(Worktable table, Item item, Arch arch) {
    super(table, item);
    this.table = table;
    this.arch = arch;
  }

  @Override
  void refresh() {
    super.refresh();
    hint(Words.of("class.hint", table.assessment().arch(arch).classification().label()));
  }
}
