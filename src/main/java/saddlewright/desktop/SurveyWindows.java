package saddlewright.desktop;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.stage.Stage;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.desktop.survey.card.ToothCard;
import saddlewright.desktop.survey.table.QuickEntryPane;
import saddlewright.desktop.survey.tissue.TissuePane;

/** The windows beside the editor in which the survey is entered. */
final class SurveyWindows {
  private final Worktable table;
  private final Stage editor;
  private Optional<SideWindow> card = Optional.empty();
  private Optional<ToothCard> cardPane = Optional.empty();
  private Optional<SideWindow> tissue = Optional.empty();
  private Optional<SideWindow> quickEntry = Optional.empty();
  private Optional<QuickEntryPane> entryPane = Optional.empty();

  SurveyWindows(Worktable table, Stage editor) {
    this.table = table;
    this.editor = editor;
    follow(table.cardShownProperty(), this::showCard, () -> card);
    follow(table.tissueShownProperty(), this::showTissue, () -> tissue);
    follow(table.quickEntryShownProperty(), this::showQuickEntry, () -> quickEntry);
  }

  private static void follow(
      BooleanProperty shown, Runnable show, Supplier<Optional<SideWindow>> window) {
    shown.addListener(
        (o, was, is) -> {
          if (is) {
            show.run();
          } else {
            window.get().ifPresent(SideWindow::hide);
          }
        });
  }

  private void showTissue() {
    if (tissue.isEmpty()) {
      tissue =
          Optional.of(
              new SideWindow(
                      table, editor, Words.of("tissue.window"), new TissuePane(table), 1290, 780)
                  .onHidden(() -> table.tissueShownProperty().set(false)));
    }
    tissue.get().show();
  }

  /** The window of the soft tissues, once it has been opened. */
  Optional<SideWindow> tissue() {
    return tissue;
  }

  private void showCard() {
    if (card.isEmpty()) {
      ToothCard pane = new ToothCard(table);
      cardPane = Optional.of(pane);
      card =
          Optional.of(
              new SideWindow(table, editor, Words.of("card.window"), pane, 1240, 810)
                  .onHidden(() -> table.cardShownProperty().set(false)));
    }
    card.get().show();
    cardPane.orElseThrow().focus();
  }

  /** The window of the tooth card, once it has been opened. */
  Optional<SideWindow> card() {
    return card;
  }

  private void showQuickEntry() {
    if (quickEntry.isEmpty()) {
      QuickEntryPane pane = new QuickEntryPane(table);
      entryPane = Optional.of(pane);
      quickEntry =
          Optional.of(
              new SideWindow(table, editor, Words.of("entry.title"), pane, 1360, 820)
                  .onHidden(() -> table.quickEntryShownProperty().set(false)));
    }
    quickEntry.get().show();
    selectedTooth().ifPresent(entryPane.get()::go);
    entryPane.get().shown();
  }

  private Optional<Tooth> selectedTooth() {
    return table
        .selected()
        .filter(Subject.OfTooth.class::isInstance)
        .map(s -> ((Subject.OfTooth) s).tooth());
  }

  /** The window of quick entry, once it has been opened. */
  Optional<SideWindow> quickEntry() {
    return quickEntry;
  }
}
