package saddlewright.rules;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Subject;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;

/**
 * A major connector with its place and the edits that would make another of it.
 *
 * @param situation the design that it belongs to
 * @param connector the component
 * @param laid its place
 */
public record LaidConnector(Situation situation, MajorConnector connector, Laid laid) {

  /**
   * The major connectors of a design that have one of the forms; all of them when none is named.
   */
  public static List<LaidConnector> all(Situation s, ConnectorForm... forms) {
    return s.layout().all(MajorConnector.class).stream()
        .map(l -> new LaidConnector(s, (MajorConnector) l.component(), l))
        .filter(c -> forms.length == 0 || c.is(forms))
        .toList();
  }

  public ConnectorForm form() {
    return connector.form();
  }

  public boolean is(ConnectorForm... forms) {
    return List.of(forms).contains(connector.form());
  }

  public Subject subject() {
    return Subject.of(situation.arch(), connector);
  }

  /** Its name as a finding begins, such as "palatal strap". */
  public String name() {
    return Naming.of(connector);
  }

  public OptionalDouble measure(Measure measure) {
    return laid.measure(measure);
  }

  /** The standing teeth that it runs beside. */
  public List<Tooth> standing() {
    return connector.span().teeth().stream().filter(situation.chart()::stands).toList();
  }

  /** Another form over the same span, at its usual size. */
  public DesignEdit as(ConnectorForm form) {
    return new DesignEdit.Change(MajorConnector.of(connector.id(), form, connector.span()));
  }

  /** Such as "Make it a palatal ring". */
  public String label(ConnectorForm form) {
    return "Make it a " + Naming.of(MajorConnector.of(connector.id(), form, connector.span()));
  }

  /** The same connector with other sizes. */
  public DesignEdit shaped(ConnectorShape shape) {
    return new DesignEdit.Change(connector.withShape(shape));
  }

  /** The same connector with its height, or the width of its limbs, as usual. */
  public DesignEdit usualHeight() {
    return shaped(connector.shape().withHeight(Optional.empty()));
  }

  /** The same connector with its borders and opening as usual. */
  public DesignEdit usualBorders() {
    return shaped(
        connector
            .shape()
            .withBorders(Optional.empty(), Optional.empty())
            .withOpening(Optional.empty(), Optional.empty()));
  }

  /** The same connector with its borders, its opening and the breadth of its limbs as usual. */
  public DesignEdit usualLimbs() {
    return shaped(ConnectorShape.DEFAULT.withClearance(connector.shape().clearance()));
  }
}
