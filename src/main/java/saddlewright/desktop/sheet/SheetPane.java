package saddlewright.desktop.sheet;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.animation.PauseTransition;
import javafx.beans.InvalidationListener;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.shape.Rectangle;
import javafx.util.Duration;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.subject.SubjectMenu;
import saddlewright.desktop.tools.Aim;
import saddlewright.desktop.tools.Proposal;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.drawing.Callout;
import saddlewright.drawing.Drawing;
import saddlewright.drawing.DrawingOptions;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Mark;
import saddlewright.drawing.Palette;
import saddlewright.drawing.SheetDrawing;
import saddlewright.geometry.Box;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;
import saddlewright.layout.Layout;
import saddlewright.prescription.ComponentNumbers;
import saddlewright.prescription.growth.GrowthStage;
import saddlewright.rules.Remedy;

/** The page on the desk: pans, zooms, and shows what lies on it. */
public final class SheetPane extends Pane {
  private static final double MARGIN = 18;

  /** Tooth numbers stand this far outside the box of an arch, mm. */
  private static final double LABELS = 4;

  private static final Point ORIGIN = new Point(0, 0);

  /** About the middle of an arch, in its own frame. */
  private static final Point MIDST = new Point(0, 25);

  /** What is looked at closely is shown with this much around it, mm. */
  private static final double CLOSELY = 6;

  /** What belongs to the page reaches this far beyond its edges, mm. */
  private static final double AROUND = 3;

  private final Worktable table;
  private final Group world = new Group();
  private final Rectangle page = new Rectangle();
  private final Layers layers = new Layers();
  private final DrawnArches drawn = new DrawnArches();
  private final Camera camera = new Camera(world);
  private final MovingPicture moving = new MovingPicture(world, camera);
  private final Ghost ghost;
  private final Highlights highlights;
  private final AxisLines axes;
  private final Grips handles;
  private final SulcusGrips sulci;
  private final FindingMarkers markers;
  private final SiteCursor cursor = new SiteCursor();
  private final Choices choices;
  private final PauseTransition rest = new PauseTransition(Duration.millis(180));
  private boolean live = true;
  // An empty sheet until a case is laid on the desk.
  private Optional<Assessment> drawnOf = Optional.empty();
  private SheetDrawing sheet =
      SheetDrawing.of(Optional.empty(), Optional.empty(), DrawingOptions.DEFAULT);
  private List<Callout> numbers = List.of();
  private Optional<Arch> framed = Optional.empty();

  public SheetPane(Worktable table, ToolBox tools) {
    this.table = table;
    this.ghost = new Ghost(this, table);
    this.highlights = new Highlights(this, table);
    this.axes = new AxisLines(this, table);
    this.handles = new Grips(this, table, ghost);
    this.sulci = new SulcusGrips(this, table, ghost);
    this.markers = new FindingMarkers(this, table, ghost);
    this.choices = new Choices(this, table, tools, ghost);
    setId("sheet");
    getStyleClass().add("desk");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.NODE);
    setAccessibleRoleDescription(Words.of("sheet.description"));
    setAccessibleText(Words.of("sheet.accessible"));
    page.getStyleClass().add("page");
    world
        .getChildren()
        .addAll(new PageShadow(page), page, layers, axes, highlights, markers, ghost);
    getChildren().addAll(world, moving, handles, sulci, cursor, ghost.caption());
    Rectangle clip = new Rectangle();
    clip.widthProperty().bind(widthProperty());
    clip.heightProperty().bind(heightProperty());
    setClip(clip);
    rest.setOnFinished(e -> rest());
    InvalidationListener redraw = o -> redraw();
    table.assessmentProperty().addListener(o -> redrawIfChanged());
    table.notationProperty().addListener(redraw);
    table.surveyProperty().addListener(redraw);
    table.anatomyProperty().addListener(redraw);
    table.numbersProperty().addListener(redraw);
    table.blackAndWhiteProperty().addListener(redraw);
    table.darkDeskProperty().addListener(redraw);
    table.inksProperty().addListener(redraw);
    table.stageProperty().addListener(redraw);
    table.shownProperty().addListener(o -> refit());
    table.selectionProperty().addListener(o -> overlay());
    table.findingProperty().addListener(o -> overlay());
    table.stepProperty().addListener(o -> overlay());
    table.previewProperty().addListener(o -> preview());
    table.markersProperty().addListener(o -> markers.update());
    table.openProperty().addListener(o -> markers.update());
    camera.scaleProperty().addListener(o -> scaled());
    widthProperty().addListener(o -> keepFitted());
    heightProperty().addListener(o -> keepFitted());
    new ViewGestures(this);
    Walking walking = new Walking(this, table, tools, ghost, cursor);
    new Pointing(this, table, tools, ghost, handles, walking);
  }

  private void redrawIfChanged() {
    if (drawnOf.filter(table.assessment()::sharesDesignWith).isEmpty()) {
      redraw();
    }
  }

  public Camera camera() {
    return camera;
  }

  Palette palette() {
    return table.palette();
  }

  private DrawingOptions options() {
    return new DrawingOptions(
        table.notationProperty().get(),
        table.anatomyProperty().get(),
        table.surveyProperty().get());
  }

  /** Fades marks that are about to be replaced; none shows the sheet as it is. */
  void fade(Set<Mark> marks) {
    layers.fade(marks);
  }

  /** From the frame of an arch to that of the sheet; empty when the arch is not shown. */
  public Optional<Transform> place(Arch arch) {
    return sheet.place(arch);
  }

  /** Place in this pane of a point of an arch. */
  public Optional<Point> toPane(Arch arch, Point p) {
    return place(arch).map(t -> camera.toWindow(t.apply(p)));
  }

  /** What is aimed at from a place of this pane, on the arch that lies nearer. */
  public Optional<Aim> aim(double x, double y) {
    if (stage().isPresent()) {
      // A stage is looked at: what is placed on it would be placed on the whole design.
      return Optional.empty();
    }
    Point on = camera.toSheet(x, y);
    Map<Arch, Point> points = new EnumMap<>(Arch.class);
    for (Arch arch : Arch.values()) {
      place(arch).ifPresent(t -> points.put(arch, t.inverse().apply(on)));
    }
    Assessment now = table.assessment();
    // Both frames have their molars at large y; the arch whose box holds the point is meant.
    return points.entrySet().stream()
        .filter(e -> now.arch(e.getKey()).form().box().grown(6).contains(e.getValue()))
        .min(
            Comparator.comparingDouble(
                e -> outside(now.arch(e.getKey()).form().box(), e.getValue())))
        .map(e -> Aim.at(now.arch(e.getKey()).form(), e.getValue()));
  }

  private static double outside(Box b, Point p) {
    return Math.max(0, Math.max(b.minY() - p.y(), p.y() - b.maxY()));
  }

  /** What lies there, the smallest first. */
  public List<Subject> pick(Aim aim) {
    return Picking.at(table.assessment().arch(aim.arch()), aim);
  }

  /** All that can be done to the chief of what lies in one place. */
  public SubjectMenu menu(List<Subject> there) {
    SubjectMenu menu = new SubjectMenu(table, there);
    Subject chief = table.selected().filter(there::contains).orElse(there.get(0));
    List<Tooth> teeth =
        table.selectionProperty().get().stream()
            .filter(Subject.OfTooth.class::isInstance)
            .map(s -> ((Subject.OfTooth) s).tooth())
            .toList();
    if (stage().isPresent()) {
      return menu;
    }
    if (teeth.size() > 1 && there.stream().anyMatch(table.selectionProperty().get()::contains)) {
      choices.into(menu, teeth);
    } else {
      table.toothOf(chief).or(() -> middle(chief)).ifPresent(t -> choices.into(menu, t));
    }
    return menu;
  }

  /** Where what belongs to an arch as a whole is pointed at. */
  private static Optional<Tooth> middle(Subject subject) {
    return subject instanceof Subject.OfArch a
        ? Optional.of(Tooth.at(a.arch(), 7))
        : Optional.empty();
  }

  /** Opens the menu of what is selected beside it on the sheet. */
  void openMenu() {
    List<Subject> selected = table.selectionProperty().get();
    highlights
        .box(selected)
        .ifPresent(
            b -> {
              Point foot = camera.toWindow(new Point(b.maxX(), b.maxY()));
              Point2D at =
                  localToScreen(
                      Math.max(0, Math.min(getWidth() - 40, foot.x())),
                      Math.max(0, Math.min(getHeight() - 40, foot.y())));
              menu(selected.subList(0, 1)).show(this, at.getX(), at.getY());
            });
  }

  /** Whether it follows the case; one that nobody sees need not be drawn. */
  public void setLive(boolean now) {
    if (live != now) {
      live = now;
      if (live) {
        redraw();
      }
    }
  }

  private void redraw() {
    if (!live) {
      return;
    }
    Assessment now = table.assessment();
    Optional<Arch> looked = lookedAt();
    Optional<Point> before = looked.flatMap(a -> toPane(a, ORIGIN));
    drawnOf = Optional.of(now);
    numbers = table.numbersProperty().get() ? ComponentNumbers.callouts(now.subject()) : List.of();
    sheet =
        SheetDrawing.of(
            layout(Arch.UPPER, now), layout(Arch.LOWER, now), drawn.on(options(), numbers));
    stage().ifPresent(this::reduceTo);
    Box b = sheet.drawing().bounds();
    boolean grown = page.getHeight() != b.height() || page.getWidth() != b.width();
    page.setX(b.minX());
    page.setY(b.minY());
    page.setWidth(b.width());
    page.setHeight(b.height());
    page.setFill(Color.web(palette().hex(Ink.PAPER)));
    rest();
    moving.forget();
    layers.show(sheet.drawing(), palette());
    if (camera.isFitted()) {
      if (grown) {
        keepFitted();
      }
    } else {
      // What is added at the edge of the page must not push away what is being looked at.
      before.ifPresent(
          was ->
              looked
                  .flatMap(a -> toPane(a, ORIGIN))
                  .ifPresent(is -> camera.pan(was.x() - is.x(), was.y() - is.y())));
    }
    markers.update();
    overlay();
  }

  private Optional<GrowthStage> stage() {
    return table.stageProperty().get();
  }

  /** Shows the arches as they stand at a stage, on the page of the whole design. */
  private void reduceTo(GrowthStage stage) {
    for (Arch arch : Arch.values()) {
      Layout whole = table.assessment().arch(arch).layout();
      sheet = sheet.replacing(arch, drawNumbered(whole), drawNumbered(stage.of(whole)));
    }
  }

  /** The arch in the middle of the window. */
  private Optional<Arch> lookedAt() {
    double middle = camera.toSheet(getWidth() / 2, getHeight() / 2).y();
    return Arrays.stream(Arch.values())
        .filter(a -> place(a).isPresent())
        .min(
            Comparator.comparingDouble(
                a -> Math.abs(place(a).orElseThrow().apply(MIDST).y() - middle)));
  }

  /** The drawing of an arch in its own frame. */
  Drawing draw(Layout layout) {
    return drawn.of(layout, options());
  }

  /** The same with the numbers of its components, while these are shown. */
  Drawing drawNumbered(Layout layout) {
    return drawn.of(
        layout,
        options(),
        numbers.stream()
            .filter(n -> n.subject().component().flatMap(layout.design()::find).isPresent())
            .toList());
  }

  private Optional<Layout> layout(Arch arch, Assessment now) {
    return table.shownProperty().get().shows(arch)
        ? Optional.of(now.arch(arch).layout())
        : Optional.empty();
  }

  private void overlay() {
    if (!live) {
      return;
    }
    boolean whole = stage().isEmpty();
    highlights.setVisible(whole);
    axes.setVisible(whole);
    handles.setVisible(whole && !moving.isShown());
    sulci.setVisible(whole && !moving.isShown());
    markers.setVisible(stage().filter(s -> s != GrowthStage.COMPLETE).isEmpty());
    ghost.clear();
    highlights.update();
    axes.update();
    handles.update();
    sulci.update();
  }

  private void refit() {
    redraw();
    switch (table.shownProperty().get()) {
      case BOTH -> fit();
      case UPPER -> fit(Arch.UPPER);
      case LOWER -> fit(Arch.LOWER);
    }
  }

  private void keepFitted() {
    if (camera.isFitted()) {
      framed.ifPresentOrElse(this::fit, this::fit);
    }
    handles.update();
    sulci.update();
  }

  /** Fits the whole sheet into the window. */
  public void fit() {
    rest();
    framed = Optional.empty();
    camera.fit(sheet.drawing().bounds(), getWidth(), getHeight(), MARGIN);
  }

  /** Fits one arch into the window. */
  public void fit(Arch arch) {
    rest();
    place(arch)
        .ifPresent(
            t -> {
              framed = Optional.of(arch);
              Box b = drawNumbered(table.assessment().arch(arch).layout()).bounds().grown(LABELS);
              Point one = t.apply(new Point(b.minX(), b.minY()));
              Point other = t.apply(new Point(b.maxX(), b.maxY()));
              camera.fit(Box.around(List.of(one, other)), getWidth(), getHeight(), MARGIN);
            });
  }

  /** Shows the selected subjects as large as fits; the whole sheet where nothing is selected. */
  public void fitSelection() {
    rest();
    highlights
        .box(table.selectionProperty().get())
        .ifPresentOrElse(
            b -> camera.show(b.grown(CLOSELY), getWidth(), getHeight(), MARGIN), this::fit);
    handles.update();
    sulci.update();
  }

  /** Shows the sheet as large as it is printed; what is in the middle stays there. */
  public void trueSize() {
    zoom(camera.trueScaleProperty().get() / camera.scaleProperty().get());
  }

  public void zoom(double factor) {
    zoom(factor, getWidth() / 2, getHeight() / 2);
  }

  void zoom(double factor, double x, double y) {
    move(() -> camera.zoom(factor, x, y));
  }

  void pan(double dx, double dy) {
    move(() -> camera.pan(dx, dy));
  }

  /** While it moves, the sheet is a picture; it is painted anew when it rests. */
  private void move(Runnable step) {
    ghost.clear();
    moving.begin(getWidth(), getHeight(), sheet.drawing().bounds().grown(AROUND), ground());
    handles.setVisible(false);
    sulci.setVisible(false);
    step.run();
    moving.follow();
    rest.playFromStart();
  }

  private void rest() {
    rest.stop();
    if (moving.isShown()) {
      moving.end();
      scaled();
    }
  }

  /** Sets anew what is as large on the screen whatever the scale. */
  private void scaled() {
    if (!moving.isShown()) {
      markers.update();
      overlay();
    }
  }

  private Paint ground() {
    return Optional.ofNullable(getBackground())
        .flatMap(b -> b.getFills().stream().findFirst())
        .map(BackgroundFill::getFill)
        .orElse(Color.TRANSPARENT);
  }

  /** Shows what the remedy that is thought about would do. */
  private void preview() {
    Optional<Remedy> remedy = table.previewProperty().get();
    if (remedy.isEmpty()) {
      ghost.clear();
      return;
    }
    Remedy r = remedy.get();
    ghost.preview(
        new Proposal(
            Words.of("ghost.remedy", r.label()),
            r.arch(),
            table.current().with(r.arch(), r.edit())));
  }

  /** Brings subjects into view. */
  public void reveal(List<Subject> subjects) {
    highlights
        .box(subjects)
        .ifPresent(
            b -> {
              rest();
              camera.reveal(b.grown(8), getWidth(), getHeight());
              handles.update();
              sulci.update();
            });
  }
}
