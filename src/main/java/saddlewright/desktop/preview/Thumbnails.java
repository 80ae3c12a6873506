package saddlewright.desktop.preview;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.StackPane;
import saddlewright.desktop.Words;
import saddlewright.prescription.pdf.print.PageSize;

/** The pages made small, to go to one by choosing it. */
final class Thumbnails extends ListView<Integer> {
  private static final double WIDTH = 96;

  private final Map<Integer, Image> pictures = new HashMap<>();
  private final AtomicInteger generation = new AtomicInteger();
  private Optional<Document> document = Optional.empty();

  Thumbnails(PageStack stack) {
    setId("thumbnails");
    getStyleClass().add("thumbnails");
    setAccessibleText(Words.of("pages.thumbnails"));
    setCellFactory(list -> new Cell());
    setMinWidth(WIDTH + 56);
    setPrefWidth(WIDTH + 56);
    setMaxWidth(WIDTH + 56);
    getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, page) -> {
              if (page != null && page != stack.currentProperty().get()) {
                boolean mine = isFocused();
                stack.goTo(page);
                if (mine) {
                  requestFocus();
                }
              }
            });
    stack.currentProperty().addListener(o -> follow(stack.currentProperty().get()));
  }

  private void follow(int page) {
    if (page < getItems().size()) {
      getSelectionModel().select(page);
      scrollTo(Math.max(0, page - 1));
    }
  }

  void take(Document newer, int current) {
    document = Optional.of(newer);
    generation.incrementAndGet();
    pictures.keySet().removeIf(p -> p >= newer.count());
    asked.clear();
    if (getItems().size() == newer.count()) {
      refresh();
    } else {
      getItems().setAll(IntStream.range(0, newer.count()).boxed().toList());
    }
    follow(current);
  }

  private final Map<Integer, Integer> asked = new HashMap<>();

  private void ask(int page) {
    int now = generation.get();
    if (document.isEmpty() || Integer.valueOf(now).equals(asked.put(page, now))) {
      return;
    }
    double output =
        getScene() == null || getScene().getWindow() == null
            ? 1
            : getScene().getWindow().getOutputScaleX();
    Document d = document.get();
    d.picture(
        Backstage.Urgency.SMALL_PAGE,
        page,
        WIDTH / d.sizes().get(page).width() * output,
        () -> generation.get() == now,
        image -> {
          pictures.put(page, image);
          refresh();
        });
  }

  private final class Cell extends ListCell<Integer> {
    private final ImageView picture = new ImageView();
    private final StackPane paper = new StackPane(picture);

    Cell() {
      paper.getStyleClass().add("paper");
      picture.setFitWidth(WIDTH);
      picture.setPreserveRatio(true);
      setContentDisplay(ContentDisplay.TOP);
      getStyleClass().add("thumbnail");
    }

    @Override
    protected void updateItem(Integer page, boolean empty) {
      super.updateItem(page, empty);
      if (empty || page == null || document.isEmpty() || page >= document.get().count()) {
        setText(null);
        setGraphic(null);
        setAccessibleText(null);
        return;
      }
      PageSize size = document.get().sizes().get(page);
      paper.setMinSize(WIDTH, WIDTH * size.height() / size.width());
      paper.setMaxSize(WIDTH, WIDTH * size.height() / size.width());
      picture.setImage(pictures.get(page));
      setText(String.valueOf(page + 1));
      setGraphic(paper);
      setAccessibleText(Words.of("pages.page-of", page + 1, document.get().count()));
      ask(page);
    }
  }
}
