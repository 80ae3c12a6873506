package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Cautions;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.Disinfection;
import saddlewright.casefile.order.Enclosure;
import saddlewright.casefile.order.IssuedRevision;
import saddlewright.casefile.order.Item;
import saddlewright.classification.Classification;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.prescription.FormField;
import saddlewright.prescription.Issue;
import saddlewright.prescription.Schedule;
import saddlewright.prescription.ToothWords;
import saddlewright.rules.Situation;

/** A DeviceRequest for each arch that has a design. */
final class Dentures {
  private final Order order;
  private final People people;

  private Dentures(Order order, People people) {
    this.order = order;
    this.people = people;
  }

  static List<Denture> of(
      Order order,
      People people,
      Teeth teeth,
      Attachments attachments,
      Optional<Resource> allergy,
      Entries entries) {
    Dentures dentures = new Dentures(order, people);
    List<Denture> out = new ArrayList<>();
    for (Arch arch : Arch.values()) {
      if (!order.assessment().arch(arch).design().components().isEmpty()) {
        Resource r = dentures.denture(arch);
        attachments.all().forEach(a -> r.add("supportingInfo", a));
        allergy.ifPresent(a -> r.add("supportingInfo", a));
        teeth.in(arch).forEach(t -> r.add("supportingInfo", t));
        dentures.notes(r);
        out.add(new Denture(arch, entries.add(r)));
      }
    }
    return out;
  }

  private Resource denture(Arch arch) {
    Situation situation = order.assessment().arch(arch);
    Schedule schedule = Schedule.of(order.assessment(), Notation.FDI);
    int number = order.revision().number();
    Resource r = order.ofRevision("DeviceRequest", arch.code());
    r.narrative(narrative(arch, schedule));
    r.identifier(IdentifierSystem.DENTURE, order.name(arch, number));
    order.revision().replaces().ifPresent(old -> r.add("priorRequest", prior(arch, old)));
    r.set(
        "groupIdentifier", DataTypes.identifier(IdentifierSystem.PRESCRIPTION, order.name(number)));
    r.put("status", order.status());
    r.put("intent", order.intent());
    r.set("codeCodeableConcept", device(arch));
    parameters(arch, schedule).forEach(p -> r.add("parameter", p));
    r.set("subject", people.patient());
    r.put("occurrenceDateTime", day(Item.DATE_REQUIRED).flatMap(DataTypes::date));
    r.put("authoredOn", DataTypes.date(day(Item.DATE_ISSUED).orElse(order.day())));
    people.requester().ifPresent(p -> r.set("requester", p));
    people.performer().ifPresent(p -> r.set("performer", p));
    r.add("reasonCode", kennedy(situation.classification()));
    return r;
  }

  /** Kinds of document first: a reader who sees nothing else must see that. */
  private List<String> narrative(Arch arch, Schedule schedule) {
    List<String> out = new ArrayList<>();
    out.add(order.details().kind().title() + ", " + order.name(arch, order.revision().number()));
    out.add(Issue.stateOf(order.subject()));
    out.add(device(arch).get("text").asText());
    out.add(order.assessment().arch(arch).classification().label());
    out.add("Teeth numbered by " + ToothWords.name(Notation.FDI) + ".");
    schedule.in(arch).forEach(l -> out.add(l.number() + ". " + l.place() + ": " + l.text()));
    return out;
  }

  /** A reference by identifier: the revision that went out before is not in this bundle. */
  private ObjectNode prior(Arch arch, IssuedRevision old) {
    ObjectNode reference = DataTypes.object().put("type", "DeviceRequest");
    reference.set(
        "identifier",
        DataTypes.identifier(IdentifierSystem.DENTURE, order.name(arch, old.number())));
    return reference.put(
        "display",
        Plain.of("Revision " + old.number() + " of " + old.on() + ", content " + old.hash()));
  }

  private ObjectNode device(Arch arch) {
    String type = order.details().text(Item.DEVICE_TYPE);
    String code = arch.code() + "-partial-denture";
    String display = LocalCodes.DEVICE.code(code).display();
    return LocalCodes.DEVICE.concept(code, type.isBlank() ? display : display + ": " + type);
  }

  private static ObjectNode kennedy(Classification c) {
    return LocalCodes.KENNEDY.concept(CodeList.codeOf(c.kennedy()), c.label());
  }

  private List<ObjectNode> parameters(Arch arch, Schedule schedule) {
    List<ObjectNode> out = new ArrayList<>();
    out.add(field("document-kind", LocalCodes.DOCUMENT.concept(order.details().kind())));
    out.add(field("revision", DataTypes.words(Issue.stateOf(order.subject()))));
    out.add(
        field(
            "arches-and-notation",
            DataTypes.words(arch.code() + "; teeth by " + ToothWords.name(Notation.FDI))));
    out.add(
        field(
            "teeth",
            DataTypes.words(
                "standing: "
                    + ToothWords.list(
                        order.assessment().arch(arch).chart().standing(), Notation.FDI))));
    for (Schedule.Line l : schedule.in(arch)) {
      out.add(component(arch, l));
    }
    for (FormField f : FormField.ALL) {
      f.item().filter(i -> said(i, arch)).ifPresent(i -> out.add(answered(f, i)));
    }
    for (Enclosure e : order.details().enclosures()) {
      out.add(field("enclosed", LocalCodes.ENCLOSURE.concept(CodeList.codeOf(e.kind()), words(e))));
    }
    for (Disinfection d : order.details().disinfections()) {
      out.add(field("disinfected", DataTypes.words(words(d))));
    }
    if (order.coursework() && !order.details().coursework().candidate().isBlank()) {
      out.add(field("candidate-number", DataTypes.words(order.details().coursework().candidate())));
    }
    return out;
  }

  private ObjectNode component(Arch arch, Schedule.Line line) {
    String kind =
        order
            .assessment()
            .arch(arch)
            .design()
            .find(line.id())
            .orElseThrow()
            .accept(ComponentKind.FINDER);
    ObjectNode node = DataTypes.object().put("id", line.id().value());
    node.set(
        "code",
        LocalCodes.COMPONENT.concept(
            kind, line.number() + ", " + LocalCodes.COMPONENT.code(kind).display()));
    node.set("valueCodeableConcept", DataTypes.words(line.place() + ": " + line.text()));
    return node;
  }

  /** Whether an answer is to be told here: it is given, of this arch, and no resource tells it. */
  private boolean said(Item item, Arch arch) {
    Answer answer = order.details().answer(item);
    boolean given = answer.state() == Answer.State.GIVEN;
    boolean elsewhere =
        given && people.tells(item)
            || item == (arch == Arch.UPPER ? Item.CLASS_LOWER : Item.CLASS_UPPER)
            || (item == Item.DATE_ISSUED || item == Item.DATE_REQUIRED)
                && day(item).map(LocalDate::toString).filter(answer.text()::equals).isPresent();
    return !answer.isBlank() && !elsewhere;
  }

  private ObjectNode answered(FormField field, Item item) {
    Answer answer = order.details().answer(item);
    ObjectNode node = DataTypes.object();
    node.set("code", LocalCodes.FIELD.concept(field.key()));
    boolean yes = answer.text().strip().equalsIgnoreCase("yes");
    if (yes || answer.text().strip().equalsIgnoreCase("no")) {
      return node.put("valueBoolean", yes);
    }
    return node.set(
        "valueCodeableConcept",
        switch (answer.state()) {
          case BLANK -> throw new IllegalArgumentException(field.key() + " is blank");
          case GIVEN -> DataTypes.words(answer.text());
          case NONE -> LocalCodes.ANSWER.concept("none");
          case NOT_APPLICABLE -> LocalCodes.ANSWER.concept("not-applicable");
          case TO_FOLLOW ->
              LocalCodes.ANSWER.concept(
                  "to-follow", "To follow" + answer.by().map(d -> " by " + d).orElse(""));
        });
  }

  private static ObjectNode field(String key, ObjectNode value) {
    ObjectNode node = DataTypes.object();
    node.set("code", LocalCodes.FIELD.concept(key));
    return node.set("valueCodeableConcept", value);
  }

  private static String words(Enclosure e) {
    return e.count() + " × " + e.kind().words() + (e.detail().isBlank() ? "" : ": " + e.detail());
  }

  private static String words(Disinfection d) {
    StringBuilder out = new StringBuilder(d.what());
    if (!d.agent().isBlank()) {
      out.append(", ").append(d.agent());
    }
    d.minutes().ifPresent(m -> out.append(", ").append(m).append(" min"));
    if (!d.by().isBlank()) {
      out.append(", by ").append(d.by());
    }
    d.on().ifPresent(day -> out.append(", ").append(day));
    return out.toString();
  }

  /** The day at the start of an answer; empty when it is in words. */
  private Optional<LocalDate> day(Item item) {
    String text = order.details().text(item).strip();
    if (!text.matches("\\d{4}-\\d{2}-\\d{2}(\\D.*)?")) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(text.substring(0, 10)));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private void notes(Resource r) {
    if (order.coursework()) {
      r.add("note", DataTypes.note("An exercise. Nothing is to be made from it."));
    } else {
      order
          .lacking()
          .forEach(g -> r.add("note", DataTypes.note("Not yet complete: " + g.sentence())));
    }
    r.add("note", DataTypes.note(Cautions.LINE));
  }
}
