package saddlewright.desktop.tools;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.design.ClaspUnit;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.PostDam;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;

/** The tools of every step, and the one in hand. */
public final class ToolBox {
  /** Thickness of a spacer that is usual for relief, mm (common practice). */
  private static final double USUAL_RELIEF = 0.25;

  private final Map<Step, List<ToolChoice>> choices = new EnumMap<>(Step.class);
  private final Map<Step, ToolChoice> chosen = new EnumMap<>(Step.class);
  private final ReadOnlyObjectWrapper<Optional<ToolChoice>> inHand =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  public ToolBox(ReadOnlyObjectProperty<Step> step) {
    choices.put(Step.CHART, chart());
    choices.put(Step.SURVEY, survey());
    choices.put(Step.SADDLES, saddles());
    choices.put(Step.SUPPORT, support());
    choices.put(Step.RETENTION, retention());
    choices.put(Step.BRACING, bracing());
    choices.put(Step.CONNECTORS, connectors());
    choices.put(
        Step.INDIRECT_RETENTION,
        List.of(
            choice("indirect", new SupportTool(Rest.Form.STANDARD, true)), selecting("indirect")));
    choices.put(Step.REVIEW, List.of(selecting("review"), choice("note", new NoteTool())));
    choices.put(Step.PRESCRIPTION, List.of());
    choices.forEach((s, list) -> list.stream().findFirst().ifPresent(c -> chosen.put(s, c)));
    step.addListener((o, old, now) -> inHand.set(Optional.ofNullable(chosen.get(now))));
    inHand.set(Optional.ofNullable(chosen.get(step.get())));
  }

  /** What a step offers. */
  public List<ToolChoice> of(Step step) {
    return choices.get(step);
  }

  /** The tool that is in hand whenever the step is chosen. */
  public Optional<ToolChoice> chosen(Step step) {
    return Optional.ofNullable(chosen.get(step));
  }

  public ReadOnlyObjectProperty<Optional<ToolChoice>> inHandProperty() {
    return inHand.getReadOnlyProperty();
  }

  /** Takes a tool of a step in hand, or readies it for when the step is chosen. */
  public void take(Step step, ToolChoice choice, boolean now) {
    chosen.put(step, choice);
    if (now) {
      inHand.set(Optional.of(choice));
    }
  }

  private static List<ToolChoice> chart() {
    return List.of(
        choice("chart.missing", gap(ToothStatus.MISSING, GapDecision.REPLACED)),
        choice("chart.not-replaced", gap(ToothStatus.MISSING, GapDecision.NOT_REPLACED)),
        choice("chart.closed", gap(ToothStatus.MISSING, GapDecision.CLOSED)),
        choice("chart.extract", gap(ToothStatus.TO_BE_EXTRACTED, GapDecision.REPLACED)),
        choice("chart.root", gap(ToothStatus.RETAINED_ROOT, GapDecision.REPLACED)),
        choice("chart.implant", new ChartTool(ToothStatus.IMPLANT, Optional.empty())),
        choice("chart.unerupted", gap(ToothStatus.UNERUPTED, GapDecision.REPLACED)),
        choice("chart.standing", new ChartTool(ToothStatus.STANDING, Optional.empty())),
        selecting("chart"));
  }

  private static Tool gap(ToothStatus status, GapDecision decision) {
    return new ChartTool(status, Optional.of(decision));
  }

  private static List<ToolChoice> survey() {
    return List.of(
        choice("survey.025", new SurveyTool(Optional.of(0.25))),
        choice("survey.050", new SurveyTool(Optional.of(0.5))),
        choice("survey.075", new SurveyTool(Optional.of(0.75))),
        choice("survey.none", new SurveyTool(Optional.empty())),
        selecting("survey"));
  }

  private static List<ToolChoice> saddles() {
    List<ToolChoice> out = new ArrayList<>();
    for (SaddleTool t : SaddleTool.values()) {
      out.add(new ToolChoice("saddle." + t.name(), Words.of(t), Words.of("hint.saddle"), t));
    }
    out.add(selecting("saddle"));
    return out;
  }

  private static List<ToolChoice> support() {
    List<ToolChoice> out = new ArrayList<>();
    for (Rest.Form f : Rest.Form.values()) {
      out.add(
          new ToolChoice(
              "rest." + f.name(), Words.of(f), Words.of("hint.rest"), new SupportTool(f, false)));
    }
    out.add(selecting("rest"));
    return out;
  }

  private static List<ToolChoice> retention() {
    List<ToolChoice> out = new ArrayList<>();
    out.add(choice("clasp.proposed", new RetentionTool(Optional.empty())));
    for (ClaspUnit u : ClaspUnit.values()) {
      out.add(
          new ToolChoice(
              "clasp." + u.name(),
              Words.of(u),
              Words.of("hint.clasp"),
              new RetentionTool(Optional.of(u))));
    }
    out.add(selecting("clasp"));
    return out;
  }

  private static List<ToolChoice> bracing() {
    List<ToolChoice> out = new ArrayList<>();
    for (BracingTool t : BracingTool.values()) {
      out.add(new ToolChoice("bracing." + t.name(), Words.of(t), Words.of("hint.bracing"), t));
    }
    out.add(selecting("bracing"));
    return out;
  }

  private static List<ToolChoice> connectors() {
    List<ToolChoice> out = new ArrayList<>();
    for (ConnectorForm f : ConnectorForm.values()) {
      out.add(
          new ToolChoice(
              "connector." + f.name(),
              Words.of(f),
              Words.of("hint.connector", f.arch().code()),
              new ConnectorTool(f),
              Optional.of(f.arch())));
    }
    out.add(choice("minor", new StrutTool()));
    for (PostDam.Extent e : PostDam.Extent.values()) {
      PostDam dam = new PostDam(ComponentId.of("dam-1"), e);
      out.add(part("dam." + e.name(), Words.of(e), Optional.of(Arch.UPPER), dam));
    }
    for (Relief.Area a : Relief.Area.values()) {
      Optional<Arch> arch =
          switch (a) {
            case GINGIVAL_MARGINS -> Optional.empty();
            case UNDER_LOWER_CONNECTOR -> Optional.of(Arch.LOWER);
            default -> Optional.of(Arch.UPPER);
          };
      Relief relief = new Relief(ComponentId.of("relief-1"), a, USUAL_RELIEF);
      out.add(part("relief." + a.name(), Words.of(a), arch, relief));
    }
    out.add(selecting("connector"));
    return out;
  }

  private static ToolChoice part(
      String id, String label, Optional<Arch> arch, saddlewright.design.Component part) {
    return new ToolChoice(
        id, label, Words.of("hint.whole-arch"), new PlacingTool(arch, part, label), arch);
  }

  private static ToolChoice choice(String id, Tool tool) {
    return new ToolChoice(id, Words.of("tool." + id), Words.of("hint." + id), tool);
  }

  private static ToolChoice selecting(String step) {
    return new ToolChoice(
        step + ".select", Words.of("tool.select"), Words.of("hint.select"), (a, n) -> List.of());
  }
}
