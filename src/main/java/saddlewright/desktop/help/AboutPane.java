package saddlewright.desktop.help;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import saddlewright.casefile.Cautions;
import saddlewright.desktop.Words;

/** What the program is, its cautions and licence, and whose work it uses. */
public final class AboutPane extends StackPane {
  private static final String OWN_LICENCE = "https://www.apache.org/licenses/LICENSE-2.0";

  private final VBox text = new VBox();

  public AboutPane() {
    setId("about");
    getStyleClass().add("help");
    text.getStyleClass().add("help-text");
    add(Words.of("app.name"), "page-title");
    add(Words.of("about.version", version(), System.getProperty("java.version")), "form-words");
    add(Words.of("about.text"), "page-words");
    add(Words.of("help.cautions").replace("_", ""), "form-heading");
    Cautions.FULL.forEach(s -> add("•  " + s, "page-words"));
    add(Words.of("about.licence"), "form-heading");
    add(Words.of("about.licence-text"), "page-words");
    text.getChildren().add(address(OWN_LICENCE, Words.of("about.licence")));
    add(Words.of("about.others"), "form-heading");
    add(Words.of("about.others-text"), "page-words");
    Dependency.ALL.forEach(this::add);
    ScrollPane scroll = new ScrollPane(text);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    getChildren().add(scroll);
  }

  /** The version that the build wrote. */
  static String version() {
    try (InputStream in =
        AboutPane.class.getResourceAsStream("/saddlewright/command/version.properties")) {
      Properties p = new Properties();
      p.load(in);
      return p.getProperty("version", "");
    } catch (IOException e) {
      return "";
    }
  }

  private void add(Dependency d) {
    VBox card = new VBox(2);
    card.getStyleClass().add("term");
    card.getChildren()
        .addAll(
            words(d.name(), "term-name"),
            words(Words.of("about.used", d.use(), d.licence()), "page-words"),
            address(d.address(), Words.of("about.licence-of", d.name())));
    d.text()
        .ifPresent(
            resource -> {
              TextArea area = new TextArea(read(resource));
              area.setEditable(false);
              area.setWrapText(true);
              area.setPrefRowCount(10);
              area.setAccessibleText(Words.of("about.licence-of", d.name()));
              TitledPane pane = new TitledPane(Words.of("about.licence-words"), area);
              pane.setExpanded(false);
              pane.setAnimated(false);
              card.getChildren().add(pane);
            });
    text.getChildren().add(card);
  }

  private static String read(String resource) {
    try (InputStream in = AboutPane.class.getResourceAsStream(resource)) {
      return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return "";
    }
  }

  /** An address to be selected and copied; nothing here opens a network. */
  private static TextField address(String url, String name) {
    TextField field = new TextField(url);
    field.setEditable(false);
    field.setAccessibleText(name);
    field.getStyleClass().add("address");
    return field;
  }

  private void add(String words, String style) {
    text.getChildren().add(words(words, style));
  }

  private static Label words(String words, String style) {
    Label l = new Label(words);
    l.setWrapText(true);
    l.setMinHeight(USE_PREF_SIZE);
    l.getStyleClass().add(style);
    return l;
  }
}
