package saddlewright.desktop.subject;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.casefile.Case;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Side;
import saddlewright.design.ArchDesign;
import saddlewright.design.Belonging;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.Mirrored;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;

/** What is done to all that is selected at once. */
public final class SelectionEdits {
  private final Worktable table;

  public SelectionEdits(Worktable table) {
    this.table = table;
  }

  /** The selected components of an arch, the chief one first. */
  private List<Component> selected(Arch arch) {
    return table.selectionProperty().get().stream()
        .filter(s -> s.arch() == arch)
        .flatMap(s -> table.component(s).stream())
        .toList();
  }

  private List<Component> selected() {
    List<Component> out = new ArrayList<>();
    table.selectionProperty().get().forEach(s -> table.component(s).ifPresent(out::add));
    return out;
  }

  /** Removes what is selected. */
  public void delete() {
    List<Component> all = selected();
    if (all.isEmpty()) {
      return;
    }
    Case next = table.current();
    for (Arch arch : Arch.values()) {
      for (Component c : selected(arch)) {
        next = next.with(arch, new DesignEdit.Remove(c.id()));
      }
    }
    table.apply(
        all.size() == 1
            ? Words.of("edit.remove", ComponentWords.full(all.get(0)))
            : Words.of("edit.remove-several", all.size()),
        next);
  }

  /**
   * Places the like of what is selected on the other side.
   *
   * @param whole whether what belongs to it goes along
   */
  public void mirror(boolean whole) {
    List<Component> left = new ArrayList<>();
    Case next = table.current();
    List<Component> all = selected();
    List<Subject> placed = new ArrayList<>();
    for (Arch arch : Arch.values()) {
      ArchDesign design = next.design(arch);
      Set<Component> parts = new LinkedHashSet<>();
      for (Component c : selected(arch)) {
        parts.add(c);
        if (whole) {
          parts.addAll(Belonging.to(design, c));
        }
      }
      Mirrored m = Mirrored.of(next.chart(arch), design, parts);
      left.addAll(m.left());
      if (m.edit().isPresent()) {
        next = next.with(arch, m.edit().get());
        next.design(arch).components().stream()
            .filter(c -> design.find(c.id()).isEmpty())
            .forEach(c -> placed.add(Subject.of(arch, c)));
      }
    }
    if (all.isEmpty()) {
      return;
    }
    table.apply(
        all.size() == 1
            ? Words.of("edit.mirror", ComponentWords.brief(all.get(0)))
            : Words.of("edit.mirror-several", all.size()),
        next);
    if (!placed.isEmpty()) {
      table.select(placed.toArray(Subject[]::new));
    }
    tell(left, placed.isEmpty());
  }

  private void tell(List<Component> left, boolean nothing) {
    if (!left.isEmpty()) {
      String names = String.join(", ", left.stream().map(ComponentWords::full).toList());
      table.noticeProperty().set(Optional.of(Words.of("notice.not-mirrored", names)));
    } else if (nothing) {
      table.noticeProperty().set(Optional.of(Words.of("notice.mirrored-already")));
    }
  }

  /** Makes the other side of the arches that are shown, or that of the selection, like one side. */
  public void mirrorSide(Side from) {
    Case next = table.current();
    List<Component> left = new ArrayList<>();
    boolean any = false;
    for (Arch arch : Arch.values()) {
      boolean meant =
          table
              .selected()
              .map(s -> s.arch() == arch)
              .orElse(table.shownProperty().get().shows(arch));
      if (meant) {
        ArchDesign design = next.design(arch);
        any = any || !design.components().isEmpty();
        left.addAll(
            Mirrored.of(next.chart(arch), ArchDesign.empty(arch), Mirrored.on(design, from))
                .left());
        Optional<DesignEdit> edit = Mirrored.side(next.chart(arch), design, from);
        next = edit.isPresent() ? next.with(arch, edit.get()) : next;
      }
    }
    boolean same = next.equals(table.current());
    table.apply(Words.of("edit.mirror-side." + from), next);
    if (any) {
      tell(left, same);
    }
  }
}
