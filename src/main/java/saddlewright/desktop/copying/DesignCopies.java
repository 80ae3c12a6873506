package saddlewright.desktop.copying;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.input.Clipboard;
import javafx.scene.input.MouseEvent;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.design.transfer.Transfer;
import saddlewright.desktop.Offer;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.sheet.SheetPane;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.desktop.tools.Aim;
import saddlewright.rules.Remedy;

/**
 * Copies designs and components to the clipboard and pastes them. Where the mouth does not bear all
 * of them it is said what does not fit, and left to the user, who sees on the sheet what is chosen.
 */
public final class DesignCopies {
  /** So many are named one by one; of more it is said how many. */
  private static final int NAMED = 4;

  private final Worktable table;
  private final SheetPane sheet;
  private final Consumer<List<Path>> openFiles;
  private Optional<double[]> pointer = Optional.empty();
  private Optional<Remedy> shown = Optional.empty();
  private int asked;

  public DesignCopies(Worktable table, SheetPane sheet, Consumer<List<Path>> openFiles) {
    this.table = table;
    this.sheet = sheet;
    this.openFiles = openFiles;
    table.noticeProperty().addListener(o -> forget());
    sheet.addEventFilter(
        MouseEvent.MOUSE_MOVED, e -> pointer = Optional.of(new double[] {e.getX(), e.getY()}));
    sheet.addEventFilter(MouseEvent.MOUSE_EXITED, e -> pointer = Optional.empty());
  }

  /** The arch that is meant: that of the selection, the only one shown, the only one designed. */
  private Optional<Arch> meant() {
    List<Arch> shown =
        Stream.of(Arch.values()).filter(a -> table.shownProperty().get().shows(a)).toList();
    List<Arch> designed =
        shown.stream().filter(a -> !table.current().design(a).components().isEmpty()).toList();
    return table
        .selected()
        .map(Subject::arch)
        .or(() -> shown.size() == 1 ? Optional.of(shown.get(0)) : Optional.empty())
        .or(() -> designed.size() == 1 ? Optional.of(designed.get(0)) : Optional.empty());
  }

  /** Copies the whole design of the arch that is meant. */
  public void copyDesign() {
    if (meant().isEmpty()) {
      table.say(Words.of("copying.which-arch"));
      return;
    }
    ArchDesign design = table.current().design(meant().get());
    if (design.components().isEmpty()) {
      table.say(Words.of("copying.no-design", design.arch().code()));
    } else {
      put(
          new DesignClipboard(design, true),
          Words.of("copying.design-copied", design.arch().code(), design.components().size()));
    }
  }

  /** Copies the selected components. */
  public void copyParts() {
    List<Subject> chosen = table.selectionProperty().get();
    Optional<Arch> arch = chosen.stream().findFirst().map(Subject::arch);
    List<Component> parts =
        chosen.stream()
            .filter(s -> arch.filter(a -> a == s.arch()).isPresent())
            .flatMap(s -> table.component(s).stream())
            .toList();
    if (!parts.isEmpty()) {
      put(new DesignClipboard(new ArchDesign(arch.get(), parts), false), copied(parts));
    }
  }

  private static String copied(List<Component> parts) {
    return parts.size() == 1
        ? Words.of("copying.part-copied", ComponentWords.full(parts.get(0)))
        : Words.of("copying.parts-copied", parts.size());
  }

  private void put(DesignClipboard copy, String done) {
    table.say(copy.put() ? done : Words.of("notice.not-copied"));
  }

  /** Pastes what lies on the clipboard: components to where one points, a design, or files. */
  public void paste() {
    if (Clipboard.getSystemClipboard().hasFiles()) {
      openFiles.accept(
          Clipboard.getSystemClipboard().getFiles().stream().map(File::toPath).toList());
      return;
    }
    Optional<DesignClipboard> copy = found();
    if (copy.isEmpty() || !isReady()) {
      table.say(Words.of(isReady() ? "copying.nothing" : "copying.no-sheet"));
    } else if (copy.get().whole()) {
      paste(copy.get());
    } else {
      pasteParts(copy.get());
    }
  }

  /** Pastes a design in the place of that of the arch that is meant. */
  public void pasteDesign() {
    Optional<DesignClipboard> copy = found();
    if (copy.isEmpty() || !copy.get().whole()) {
      table.say(Words.of(copy.isEmpty() ? "copying.nothing" : "copying.only-parts"));
    } else {
      paste(copy.get());
    }
  }

  private boolean isReady() {
    return table.openProperty().get() && table.stepProperty().get() != Step.PRESCRIPTION;
  }

  private Optional<DesignClipboard> found() {
    return DesignClipboard.get(meant().orElse(Arch.LOWER));
  }

  private void paste(DesignClipboard copy) {
    Arch from = copy.design().arch();
    Arch onto = target(from);
    Transfer t = Transfer.of(copy.components(), from, table.current().chart(onto));
    ArchDesign before = table.current().design(onto);
    if (t.parts(true).isEmpty()) {
      table.say(Words.of("copying.nothing-has-like", onto.code()));
      return;
    }
    String name = Words.of("edit.paste-design", onto.code());
    offer(
        t,
        all ->
            make(
                name,
                onto,
                t.replacing(table.current().design(onto), all),
                t,
                before.components().isEmpty()
                    ? Words.of("copying.design-pasted", t.parts(all).size(), onto.code())
                    : Words.of(
                        "copying.design-replaced",
                        t.parts(all).size(),
                        onto.code(),
                        before.components().size())),
        all -> new Remedy(name, onto, t.replacing(before, all)));
  }

  /** Where a design goes: the arch of the selection or the only one shown, otherwise its own. */
  private Arch target(Arch own) {
    List<Arch> shown =
        Stream.of(Arch.values()).filter(a -> table.shownProperty().get().shows(a)).toList();
    return table.selected().map(Subject::arch).orElse(shown.size() == 1 ? shown.get(0) : own);
  }

  private void pasteParts(DesignClipboard copy) {
    Arch from = copy.design().arch();
    List<Component> parts = copy.components();
    Optional<Tooth> place = place(parts);
    Arch onto = place.map(Tooth::arch).orElse(from);
    ArchDesign before = table.current().design(onto);
    Transfer t = Transfer.to(parts, from, table.current().chart(onto), place);
    if (t.parts(true).isEmpty()) {
      table.say(Words.of("copying.nothing-has-like", onto.code()));
      return;
    }
    if (t.adding(before, true).isEmpty()) {
      table.say(Words.of("copying.there-already"));
      return;
    }
    List<Component> all = t.parts(true);
    String name =
        all.size() == 1
            ? Words.of("edit.paste-part", ComponentWords.brief(all.get(0)))
            : Words.of("edit.paste-parts", all.size());
    offer(
        t,
        every ->
            t.adding(table.current().design(onto), every)
                .ifPresent(
                    edit ->
                        make(
                            name,
                            onto,
                            edit,
                            t,
                            Words.of(
                                "copying.parts-pasted",
                                t.parts(every).stream()
                                    .map(ComponentWords::full)
                                    .limit(NAMED)
                                    .collect(Collectors.joining(", ")),
                                t.parts(every).size() > NAMED ? " …" : ""))),
        every -> new Remedy(name, onto, t.adding(before, every).orElseGet(DesignEdit::several)));
  }

  /**
   * The tooth where parts go: the selected one, or that of another selected part, or pointed at.
   */
  private Optional<Tooth> place(List<Component> parts) {
    List<ComponentId> own = parts.stream().map(Component::id).toList();
    Optional<Tooth> selected =
        table
            .selected()
            .flatMap(
                s ->
                    s instanceof Subject.OfTooth t
                        ? Optional.of(t.tooth())
                        : table
                            .component(s)
                            .filter(c -> !own.contains(c.id()) || !parts.contains(c))
                            .flatMap(c -> c.teeth().stream().findFirst()));
    return selected
        .or(
            () ->
                pointer
                    .flatMap(p -> sheet.aim(p[0], p[1]))
                    .flatMap(Aim::near)
                    .map(PlacedTooth::tooth))
        // On the tooth that it was copied from it is already: then the other side is meant.
        .filter(t -> parts.stream().noneMatch(c -> c.teeth().contains(t)));
  }

  /** Does it at once when all fits; otherwise says what does not, and leaves it to the user. */
  private void offer(
      Transfer t, Consumer<Boolean> paste, java.util.function.Function<Boolean, Remedy> preview) {
    if (t.misfits().isEmpty()) {
      paste.accept(true);
      return;
    }
    List<Offer> offers = new ArrayList<>();
    offers.add(
        new Offer(
            Words.of("copying.all"),
            () -> then(() -> paste.accept(true)),
            on -> show(preview.apply(true), on)));
    if (!t.fitting().isEmpty()) {
      offers.add(
          new Offer(
              Words.of("copying.what-fits", t.fitting().size(), t.parts(true).size()),
              () -> then(() -> paste.accept(false)),
              on -> show(preview.apply(false), on)));
    }
    offers.add(new Offer(Words.of("copying.none"), () -> then(() -> {})));
    table.say(Words.of("copying.misfits", misfits(t)) + rest(t), offers.toArray(Offer[]::new));
    asked = table.laidProperty().get();
  }

  /** Shows on the sheet what is thought about, as long as it is. */
  private void show(Remedy remedy, boolean on) {
    forget();
    if (on && asked == table.laidProperty().get()) {
      shown = Optional.of(remedy);
      table.previewProperty().set(shown);
    }
  }

  /** What was said is gone from above the sheet: what it was about is no longer shown. */
  private void forget() {
    if (shown.isPresent() && table.previewProperty().get().equals(shown)) {
      table.previewProperty().set(Optional.empty());
    }
    shown = Optional.empty();
  }

  private void then(Runnable what) {
    forget();
    // Another case may have taken the place of the one for which it was asked.
    if (asked == table.laidProperty().get()) {
      what.run();
    }
  }

  private void make(String name, Arch onto, DesignEdit edit, Transfer t, String done) {
    ArchDesign before = table.current().design(onto);
    table.apply(name, onto, edit);
    ArchDesign after = table.current().design(onto);
    List<Subject> fresh =
        after.components().stream()
            .filter(c -> before.find(c.id()).isEmpty())
            .map(c -> Subject.of(onto, c))
            .toList();
    if (!fresh.isEmpty() && before.components().size() < after.components().size()) {
      table.selectionProperty().set(fresh);
    }
    table.say(done + rest(t));
  }

  private static String misfits(Transfer t) {
    String named =
        t.misfits().stream()
            .limit(NAMED)
            .map(
                m ->
                    Words.of(
                        m.toothStands() ? "copying.tooth-stands" : "copying.tooth-lost",
                        ComponentWords.full(m.component()),
                        m.places().stream().map(Tooth::toString).collect(Collectors.joining(", "))))
            .collect(Collectors.joining("; "));
    int more = t.misfits().size() - NAMED;
    return more > 0 ? named + Words.of("copying.and-more", more) : named;
  }

  /** What became another form, and what the arch has no like of. */
  private static String rest(Transfer t) {
    StringBuilder out = new StringBuilder();
    t.changed()
        .forEach(
            c ->
                out.append(' ')
                    .append(
                        Words.of(
                            "copying.changed",
                            Words.of(c.from().form()),
                            Words.of(c.to().form()))));
    if (!t.left().isEmpty()) {
      out.append(' ')
          .append(
              Words.of(
                  "copying.left",
                  t.arch().code(),
                  t.left().stream()
                      .map(ComponentWords::full)
                      .distinct()
                      .collect(Collectors.joining(", "))));
    }
    return out.toString();
  }
}
