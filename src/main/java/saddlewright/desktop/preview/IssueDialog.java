package saddlewright.desktop.preview;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import saddlewright.desktop.Words;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.Dates;
import saddlewright.prescription.FormField;
import saddlewright.prescription.Issue;
import saddlewright.prescription.Revision;

/**
 * The box in which it is said which revision goes out, what it lacks and who has signed it, before
 * it does.
 */
public final class IssueDialog extends Dialog<ButtonType> {
  private static final double WIDTH = 540;

  /** So many gaps are seen at once; more are scrolled to. */
  private static final int SEEN = 7;

  private static final double GAP_HEIGHT = 24;

  private final ButtonType issue;
  private final ButtonType first =
      new ButtonType(Words.of("issue.first"), ButtonBar.ButtonData.OTHER);
  private final List<Completeness.Gap> gaps;
  private Consumer<FormField> go = f -> {};

  public IssueDialog(Window owner, Issue what) {
    gaps = what.gaps();
    issue =
        new ButtonType(
            Words.of(gaps.isEmpty() ? "issue.issue" : "issue.all-the-same"),
            ButtonBar.ButtonData.YES);
    initOwner(owner);
    setTitle(Words.of("file.issue").replace("_", ""));
    setResizable(true);
    DialogLook.wear(getDialogPane(), owner);
    VBox box = new VBox(10);
    box.setId("issue-form");
    box.setPrefWidth(WIDTH);
    Label state = words(headline(what));
    state.setId("issue-state");
    state.getStyleClass().add("form-heading");
    box.getChildren().add(state);
    if (what.isRepeated()) {
      box.getChildren().add(words(Words.of("issue.repeated")));
    }
    if (!gaps.isEmpty()) {
      Label missing = words(Words.of("issue.missing", gaps.size()));
      missing.setId("issue-missing");
      missing.getStyleClass().add("fit-cut");
      box.getChildren().addAll(missing, list());
    }
    what.signing().ifPresent(s -> box.getChildren().add(words(s)));
    getDialogPane().setContent(box);
    ButtonType cancel = new ButtonType(Words.of("print.cancel"), ButtonBar.ButtonData.CANCEL_CLOSE);
    getDialogPane().getButtonTypes().add(issue);
    if (!gaps.isEmpty()) {
      getDialogPane().getButtonTypes().add(first);
    }
    getDialogPane().getButtonTypes().add(cancel);
    if (!gaps.isEmpty()) {
      // What is missing is the likelier thing to see to.
      ((Button) getDialogPane().lookupButton(issue)).setDefaultButton(false);
      ((Button) getDialogPane().lookupButton(first)).setDefaultButton(true);
      getDialogPane().lookupButton(first).setId("issue-first");
      setOnShown(e -> getDialogPane().lookupButton(first).requestFocus());
    }
    getDialogPane().lookupButton(issue).setId("issue-now");
  }

  /** Which revision goes out when, and what it replaces. */
  private static String headline(Issue what) {
    Revision r = Revision.of(what.recorded().subject());
    String out = Words.of("issue.goes-out", r.number(), Dates.words(what.day()));
    return r.replaces()
            .map(p -> Words.of("issue.replaces", out, p.number(), Dates.words(p.on())))
            .orElse(out)
        + ".";
  }

  private Node list() {
    VBox rows = new VBox();
    for (Completeness.Gap g : gaps) {
      Hyperlink link = new Hyperlink(g.sentence());
      link.setWrapText(true);
      link.setOnAction(
          e -> {
            setResult(ButtonType.CANCEL);
            close();
            go.accept(g.field());
          });
      rows.getChildren().add(link);
    }
    ScrollPane scroll = new ScrollPane(rows);
    scroll.setFitToWidth(true);
    scroll.setPrefViewportHeight(Math.min(SEEN, gaps.size()) * GAP_HEIGHT);
    scroll.setMinHeight(Region.USE_PREF_SIZE);
    return scroll;
  }

  private static Label words(String text) {
    Label l = new Label(text);
    l.setWrapText(true);
    l.setMinHeight(Region.USE_PREF_SIZE);
    return l;
  }

  /**
   * Shows it.
   *
   * @param agreed what follows when it may go out
   * @param toField what follows when something is to be filled in first
   */
  public void ask(Runnable agreed, Consumer<FormField> toField) {
    go = toField;
    setOnHidden(
        e -> {
          if (getResult() == issue) {
            agreed.run();
          } else if (getResult() == first) {
            toField.accept(gaps.get(0).field());
          }
        });
    show();
  }
}
