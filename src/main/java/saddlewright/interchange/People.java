package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.Signature;

/**
 * Those whom an order concerns: the patient, the prescriber with the practice, the laboratory.
 *
 * @param requester who asks: the prescriber in the practice, or the practice alone
 * @param performer the laboratory
 * @param prescriber the person who prescribes
 */
record People(
    Resource patient,
    Optional<Resource> requester,
    Optional<Resource> performer,
    Optional<Resource> prescriber) {

  /** The fields that these resources tell when they are there. */
  private static final Set<Item> OF_PRESCRIBER =
      EnumSet.of(Item.PRESCRIBER_NAME, Item.PRESCRIBER_REGISTRATION, Item.PRESCRIBER_CONTACT);

  private static final Set<Item> OF_LABORATORY =
      EnumSet.of(
          Item.LABORATORY_NAME,
          Item.LABORATORY_ADDRESS,
          Item.LABORATORY_REGISTRATION,
          Item.LABORATORY_ATTENTION);

  static People of(Order order, Entries entries) {
    Resource patient = entries.add(patient(order));
    Optional<Resource> prescriber = prescriber(order).map(entries::add);
    Optional<Resource> practice =
        organisation(order, "practice", order.details().text(Item.PRACTICE)).map(entries::add);
    Optional<Resource> role =
        prescriber.map(p -> entries.add(role(order, p, practice))).or(() -> practice);
    // An exercise asks no laboratory for work.
    Optional<Resource> laboratory =
        order.coursework() ? Optional.empty() : laboratory(order).map(entries::add);
    return new People(patient, role, laboratory, prescriber);
  }

  /** Whether a field is told by one of these. */
  boolean tells(Item item) {
    return prescriber.isPresent() && OF_PRESCRIBER.contains(item)
        || performer.isPresent() && OF_LABORATORY.contains(item)
        || item == Item.PRACTICE;
  }

  private static Resource patient(Order order) {
    Resource r = order.resource("Patient", "patient");
    String reference = order.subject().reference();
    r.narrative(
        List.of(
            (order.coursework() ? "An exercise, and nobody: " : "Patient of case ") + reference,
            order.patient().map(p -> p.name()).orElse("")));
    r.identifier(IdentifierSystem.CASE, reference);
    order
        .patient()
        .ifPresent(
            p -> {
              if (!p.record().isBlank()) {
                ObjectNode record = DataTypes.identifier(IdentifierSystem.RECORD, p.record());
                record.set(
                    "type",
                    DataTypes.concept(
                        "http://terminology.hl7.org/CodeSystem/v2-0203",
                        "MR",
                        "Medical record number"));
                r.add("identifier", record);
              }
              if (!p.name().isBlank()) {
                r.add("name", DataTypes.words(p.name()));
              }
              r.put("birthDate", p.born().flatMap(DataTypes::date));
            });
    return r;
  }

  private static Optional<Resource> prescriber(Order order) {
    String name = order.details().text(Item.PRESCRIBER_NAME);
    return name.isBlank()
        ? Optional.empty()
        : Optional.of(
            practitioner(
                order, "prescriber", name, order.details().text(Item.PRESCRIBER_REGISTRATION)));
  }

  private static Resource practitioner(Order order, String part, String name, String registration) {
    Resource r = order.resource("Practitioner", part);
    r.narrative(List.of(name, registration.isBlank() ? "" : "Registration " + registration));
    if (!registration.isBlank()) {
      r.identifier(IdentifierSystem.PRESCRIBER, registration);
    }
    return r.add("name", DataTypes.words(name));
  }

  private static Resource role(Order order, Resource person, Optional<Resource> practice) {
    Resource r = order.resource("PractitionerRole", "prescriber");
    String contact = order.details().text(Item.PRESCRIBER_CONTACT);
    r.narrative(List.of("Prescriber of case " + order.subject().reference(), contact));
    r.set("practitioner", person);
    practice.ifPresent(p -> r.set("organization", p));
    contact
        .lines()
        .flatMap(l -> Stream.of(l.split("[,;]")))
        .filter(c -> !Plain.of(c).isEmpty())
        .forEach(c -> r.add("telecom", telecom(c)));
    return r;
  }

  private static ObjectNode telecom(String contact) {
    String plain = Plain.of(contact);
    String system =
        plain.matches("\\S+@\\S+") ? "email" : plain.matches("[+0-9 ()./-]+") ? "phone" : "other";
    return DataTypes.object().put("system", system).put("value", plain);
  }

  private static Optional<Resource> laboratory(Order order) {
    String name = order.details().text(Item.LABORATORY_NAME);
    String address = order.details().text(Item.LABORATORY_ADDRESS);
    return organisation(order, "laboratory", name.isBlank() ? "" : name + "\n" + address)
        .map(
            r -> {
              String registration = order.details().text(Item.LABORATORY_REGISTRATION);
              if (!registration.isBlank()) {
                r.identifier(IdentifierSystem.LABORATORY, registration);
              }
              String attention = order.details().text(Item.LABORATORY_ATTENTION);
              if (!attention.isBlank()) {
                ObjectNode contact = DataTypes.object();
                contact.set("name", DataTypes.words(attention));
                r.add("contact", contact);
              }
              return r;
            });
  }

  /** An organisation from lines: its name, then its address. */
  private static Optional<Resource> organisation(Order order, String part, String lines) {
    List<String> filled =
        new ArrayList<>(lines.lines().filter(l -> !Plain.of(l).isEmpty()).toList());
    if (filled.isEmpty()) {
      return Optional.empty();
    }
    Resource r = order.resource("Organization", part);
    r.narrative(filled);
    r.put("name", filled.remove(0));
    if (!filled.isEmpty()) {
      r.add("address", DataTypes.words(String.join("\n", filled)));
    }
    return Optional.of(r);
  }

  /** Who signed: the prescriber, or someone else with a resource of their own. */
  Resource signer(Order order, Signature signature, Entries entries) {
    boolean same = signature.name().equals(order.details().text(Item.PRESCRIBER_NAME));
    return prescriber
        .filter(p -> same)
        .orElseGet(
            () ->
                entries.add(
                    practitioner(order, "signer", signature.name(), signature.registration())));
  }
}
