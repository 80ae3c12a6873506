package saddlewright.prescription.growth;

import java.util.Optional;
import saddlewright.casefile.Case;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.layout.Layout;
import saddlewright.prescription.Category;

/**
 * A stage of the design as it grows in the order in which it is taught: the chart alone, then one
 * group of components after the other. It follows from the design and not from how it was drawn.
 */
public enum GrowthStage {
  CHART(Optional.empty()),
  SADDLES(Optional.of(Category.SADDLES)),
  SUPPORT(Optional.of(Category.SUPPORT)),
  RETENTION(Optional.of(Category.RETENTION)),
  BRACING(Optional.of(Category.BRACING)),
  CONNECTORS(Optional.of(Category.CONNECTORS)),
  INDIRECT_RETENTION(Optional.of(Category.INDIRECT_RETENTION)),
  COMPLETE(Optional.of(Category.OTHER));

  private final Optional<Category> category;

  GrowthStage(Optional<Category> category) {
    this.category = category;
  }

  /** What is placed at this stage; none of the chart. */
  public Optional<Category> category() {
    return category;
  }

  /** Such as "Chart and survey", "Support" or "The complete design". */
  public String title() {
    return switch (this) {
      case CHART -> "Chart and survey";
      case COMPLETE -> "The complete design";
      default -> category.orElseThrow().title();
    };
  }

  /** Whether a component stands at this stage. */
  public boolean holds(Component c) {
    return category.filter(last -> Category.of(c).compareTo(last) <= 0).isPresent();
  }

  /** The design as it stands at this stage. */
  public ArchDesign of(ArchDesign whole) {
    ArchDesign out = whole;
    for (Component c : whole.components()) {
      if (!holds(c)) {
        out = out.without(c.id());
      }
    }
    return out;
  }

  /** The layout of an arch as it stands at this stage. */
  public Layout of(Layout whole) {
    return this == COMPLETE ? whole : whole.redesigned(of(whole.design()));
  }

  /** The case with both designs as they stand at this stage. */
  public Case of(Case whole) {
    Case out = whole;
    for (Arch arch : Arch.values()) {
      out = out.with(of(whole.design(arch)));
    }
    return out;
  }

  /** The stage after this one; the last has none. */
  public Optional<GrowthStage> next() {
    return ordinal() + 1 < values().length
        ? Optional.of(values()[ordinal() + 1])
        : Optional.empty();
  }

  /** The stage before this one; the first has none. */
  public Optional<GrowthStage> previous() {
    return ordinal() > 0 ? Optional.of(values()[ordinal() - 1]) : Optional.empty();
  }
}
